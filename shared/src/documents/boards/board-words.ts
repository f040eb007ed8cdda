/** What is said of boards in words: how a blank is got, how boards are milled, and what to be careful of. */
import { cautions } from '../cautions.js';
import { lengthInWords, type PrintStyle } from '../print-style.js';
import type { BoardBlank } from './board-blanks.js';
import type { BoardJob, BoardSize } from './board-jobs.js';

/** Thinner than this a strip breaks in the saw and the planer; veneer is bought. In millimetres; common practice, no source. */
const thinnestResawn = 1.5;
/** What a planer takes in one pass of hard wood, in millimetres (1/16 in): common practice, no source. */
const greatestPass = 1.5875;
/** Shorter boards are not fed through a planer, in millimetres (12 in): common practice, no source. */
const shortestPlaned = 304.8;

/** `ripped from the edge of the board`, `glued up of 3 strips` */
export function wayInWords({ way, pieces, count }: BoardBlank, print: PrintStyle): string {
    const pieceCount = pieces.reduce((sum, piece) => sum + piece.quantity, 0);
    switch (way.is) {
        case 'flat':
            return 'flat';
        case 'onEdge':
            return 'ripped from the edge of the board';
        case 'resawn': {
            const veneer = way.sawnTo < thinnestResawn ? '; too thin to saw: buy it as veneer' : '';
            return `resaw each into ${way.strips} of ${lengthInWords(way.sawnTo, print)}, for ${pieceCount} in all${veneer}`;
        }
        case 'gluedUp':
            return `glue up ${way.strips} edge to edge, ${count / way.strips} in all`;
        case 'laminated':
            return `glue up ${way.layers} face to face`;
    }
}

/** How the boards of a material are milled, each a sentence. */
export function millingNotes({ stock, milling, blanks }: BoardJob, print: PrintStyle): readonly string[] {
    const say = (length: number) => lengthInWords(length, print);
    const taken = Math.ceil((stock.roughThickness - stock.surfaced) / greatestPass - 1e-6);
    const notes = [
        `Cut ${say(milling.boardEnd)} off each end, joint or saw ${say(milling.boardEdge)} off each edge until it is straight, and plane both faces flat, to ${say(stock.surfaced)} at the least: ${taken} passes of ${say(greatestPass)} at the most.`,
    ];
    const thinner = [...new Set(blanks.filter(({ way }) => way.is === 'flat' || way.is === 'gluedUp').map(({ planedTo }) => planedTo))]
        .filter((thickness) => thickness < stock.surfaced - 1e-6)
        .sort((one, other) => other - one);
    for (const thickness of thinner) {
        const passes = Math.ceil((stock.surfaced - thickness) / greatestPass - 1e-6);
        notes.push(`Plane what is to be ${say(thickness)} from there: ${passes} more ${passes === 1 ? 'pass' : 'passes'} at the least.`);
    }
    notes.push(
        `In the sizes are ${say(milling.long)} of length and ${say(milling.wide)} of width for a board that is planed and jointed, and ${say(milling.face)} for the sawn face of a strip.`,
    );
    return notes;
}

/** What to be careful of, for the whole document. */
export function millingCautions({ milling, kerf }: BoardJob, print: PrintStyle): readonly string[] {
    const say = (length: number) => lengthInWords(length, print);
    return [
        `Sizes are along the grain first. The saw takes ${say(kerf)}. The fence stands at the size of what is cut off.`,
        `Strips thinner than ${say(milling.thinRip)} are not ripped between blade and fence: let them fall off on the free side, with a stop that sets each of them alike, or saw them at the band saw.`,
        `Resaw at the band saw, with a tall fence. Nothing shorter than ${say(shortestPlaned)} goes through the planer, and what is thinner than ${say(milling.thinRip)} only on a carrier board: plane before crosscutting.`,
        'Rough boards are crooked: only a straight edge goes against the fence, and a flat face on the table. Keep a riving knife behind the blade, and to the instructions of the machines and their guards.',
        cautions.dust,
    ];
}

/** `at least 5in wide, 8ft long` */
export function boardSizeInWords({ width, length }: BoardSize, print: PrintStyle): string {
    return `at least ${lengthInWords(width, print)} wide, ${sayLength(length, print)} long`;
}

/** Whole feet as feet. */
export function sayLength(length: number, print: PrintStyle): string {
    const feet = Math.round(length / 304.8);
    return print.system === 'inch' && Math.abs(length - feet * 304.8) < 1e-6 ? `${feet}ft` : lengthInWords(length, print);
}
