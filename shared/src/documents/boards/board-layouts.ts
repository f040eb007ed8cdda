/** Boards: what hardwood to take, what is ripped, resawn and crosscut from each board, and what is planed and glued up of it. */
import type { Casework } from '../../casework/index.js';
import { quantity } from '../../quantity/index.js';
import type { SheetLayout } from '../../stock/index.js';
import { thingName, wordOf } from '../../strength/index.js';
import type { DocumentOptions } from '../document-options.js';
import { materialInWords } from '../material-words.js';
import { onlyBuilt } from '../only-built.js';
import { namesInWords, nameWithinPart, partNamer } from '../part-names.js';
import { lengthAmount, type PrintStyle, printStyle, totalCell } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import { type Column, type Group, type Row, type Sheet, textCell } from '../sheet.js';
import { count, cutColumns, cutGroups, millimetres, patternsOf, type SawWork, sawDrawings, usedShare } from '../sheets/saw-work.js';
import type { ShopDocument } from '../shop-document.js';
import type { BoardBlank } from './board-blanks.js';
import { clearYield, surfaceMeasure } from './board-feet.js';
import { type BoardJob, boardVolume } from './board-jobs.js';
import { boardSizeInWords, millingCautions, millingNotes, sayLength, wayInWords } from './board-words.js';
import { type LaidOutBoards, laidOutBoards } from './laid-out-boards.js';

/** Boards are drawn at 1:10 up to 12 feet: at 1:20 the strips are narrower than their marks. They are not printed on pages. */
const longestOnPaper = 370;

interface LaidOut {
    readonly of: BoardJob;
    readonly layout: SheetLayout;
    readonly work: SawWork;
}

/** The boards of all that is built; undefined where no solid wood says its `boards`. */
export function boardLayouts(evaluated: Casework, options: Pick<DocumentOptions, 'units'>): ShopDocument | undefined {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const { laidOut: found, without } = laidOutBoards(evaluated);
    const [first] = found;
    if (!first) return undefined;
    const laidOut = found.map((one) => layOut(one, casework, print));
    const sheet: Sheet = {
        kind: 'boards',
        title: 'Boards',
        facts: projectFacts(casework, print),
        columns: columns(print),
        groups: laidOut.flatMap((one) => [boardsGroup(one, casework), piecesGroup(one), ...cutGroups(one.work)]),
        notes: [
            ...millingCautions(first.of, print),
            ...without.map(
                (material) =>
                    `${thingName(casework, material)} does not say its \`boards\` and \`rough\` thickness, so nothing of it is laid out.`,
            ),
        ],
    };
    return {
        is: 'sheet',
        sheet,
        pages: { drawings: laidOut.flatMap(({ work }) => sawDrawings(work, longestOnPaper)), units: print.system === 'inch' ? 'in' : 'mm' },
    };
}

function layOut({ of, layout }: LaidOutBoards, casework: Casework, print: PrintStyle): LaidOut {
    const nameOf = partNamer(casework);
    const names = of.blanks.map(({ pieces }) => {
        const within = [...new Set(pieces.map((piece) => nameWithinPart(piece, casework)))].filter((name) => name !== '');
        return [namesInWords(pieces.map((piece) => nameOf(piece.part))), ...within].join(', ');
    });
    const work: SawWork = {
        material: thingName(casework, of.material),
        noun: 'board',
        patterns: patternsOf(layout.sheets),
        names,
        stockInWords: of.sizes.map((size) => `Board ${boardSizeInWords(size, print)}, its ends and edges cut off`),
        trims: [],
        hasGrain: true,
        print,
    };
    return { of, layout, work };
}

function columns(print: PrintStyle): readonly Column[] {
    return [
        { key: 'group', heading: 'Group', align: 'left', saidByGroup: true },
        { key: 'mark', heading: 'Mark', align: 'right' },
        { key: 'item', heading: 'What', align: 'left' },
        ...cutColumns(print),
        { key: 'count', heading: 'Count', align: 'right' },
        { key: 'along', heading: 'Crosscut to', unit: print.sizeUnit, align: 'right' },
        { key: 'across', heading: 'Rip to', unit: print.sizeUnit, align: 'right' },
        { key: 'way', heading: 'How', align: 'left' },
        { key: 'planed', heading: 'Plane to', unit: print.sizeUnit, align: 'right' },
        { key: 'volume', heading: 'Volume', unit: print.volumeUnit, align: 'right' },
        { key: 'used', heading: 'Used', align: 'right' },
        { key: 'gives', heading: 'Gives', align: 'left' },
        { key: 'left', heading: 'Then left', align: 'left' },
    ];
}

function boardsGroup({ of, layout, work }: LaidOut, casework: Casework): Group {
    const { print, material } = work;
    const heading = `${materialInWords(casework, of.material, print)}: boards to take`;
    const rows = of.sizes.flatMap((size, stock): Row[] => {
        const taken = layout.sheets.filter((sheet) => sheet.stock === stock);
        if (taken.length === 0) return [];
        return [
            {
                group: textCell(heading),
                item: textCell(boardSizeInWords(size, print)),
                count: count(taken.length),
                volume: volumeCell(taken.length * boardVolume(of, size, print.system), print),
                used: textCell(`${Math.round(usedShare(taken) * 100)} %`),
            },
        ];
    });
    return {
        heading,
        rows,
        notes: [...amountNotes(of, layout, print, material), ...proofOf(of, layout, material, print), ...millingNotes(of, print)],
    };
}

function volumeCell(volume: number, print: PrintStyle) {
    return totalCell(quantity.of(volume, print.volumeUnit), print.volumeUnit, print.system === 'inch' ? 1 : 4);
}

/** How much that is in all, as the dealer counts it, and what the grade adds. */
function amountNotes(of: BoardJob, { sheets }: SheetLayout, print: PrintStyle, material: string): string[] {
    const taken = sheets.map(({ stock }) => of.sizes[stock]!);
    const whole = taken.reduce((sum, size) => sum + boardVolume(of, size, print.system), 0);
    const say = (volume: number) => (print.system === 'inch' ? `${volume.toFixed(1)} bdft` : `${volume.toFixed(3)} m3`);
    const notes = [`${material} in all: ${say(whole)}, if every board is as narrow as the narrowest that it may be.`];
    if (print.system === 'inch') {
        let halves = 0;
        const square = taken.reduce((sum, { width, length }) => {
            const [down, up] = [surfaceMeasure(width, length, false), surfaceMeasure(width, length, true)];
            return sum + (down === up ? down : surfaceMeasure(width, length, halves++ % 2 === 0));
        }, 0);
        const quarters = Math.max(4, Math.round(of.stock.roughThickness / 6.35));
        notes.push(
            `A dealer's tally, board by board to whole square feet: ${square} ft2 of surface, ${((square * quarters) / 4).toFixed(1)} bdft. Kiln-dried wood is often billed by its tally before the kiln, about 7 % more.`,
        );
    }
    const grade = wordOf(of.thing.properties.get('grade'));
    const clear = grade === undefined ? undefined : clearYield(grade);
    notes.push(
        clear === undefined
            ? 'The layout takes clear wood. Buy more for knots, sapwood and checks: 15 to 25 % in the best grade, 30 to 40 % in No. 1 Common (common practice); `grade "FAS"` in the material lets it be worked out.'
            : `The layout takes clear wood. ${grade} has at least ${Math.round(clear * 1000) / 10} % of its surface clear, in cuttings of the size that the grade says: buy ${say(whole / clear)}.`,
    );
    return notes;
}

function proofOf(
    { sizes, unknown, job }: BoardJob,
    { cost, leastCost, unplaced, sheets }: SheetLayout,
    material: string,
    print: PrintStyle,
): string[] {
    const notes: string[] = [];
    const left = unplaced.reduce((sum, number) => sum + number, 0);
    if (left === 0 && sheets.length > 0) {
        const share = Math.max(0, Math.round((1 - leastCost / cost) * 1000) / 10);
        notes.push(
            cost <= leastCost + 1e-9
                ? `No layout of ${material} on such boards takes less wood: this is proved.`
                : `No layout of ${material} on such boards can take over ${share} % less wood; that one as good as this is the best is not proved.`,
        );
    }
    const longest = Math.max(...sizes.map(({ length }) => length));
    if (left > 0)
        notes.push(
            `Not laid out, because they are longer or wider than what is left of every board (the longest is ${sayLength(longest, print)}): ${job.blanks
                .flatMap((_, index) => (unplaced[index]! > 0 ? [`${unplaced[index]} of piece ${index + 1}`] : []))
                .join(', ')}.`,
        );
    if (unknown.length > 0) notes.push(`Not laid out, because their sizes are not known: ${unknown.length} of the pieces.`);
    return notes;
}

function piecesGroup({ of, work }: LaidOut): Group {
    const heading = `${work.material}: pieces`;
    const rows = of.job.blanks.map((blank, index): Row => {
        const made: BoardBlank = of.blanks[index]!;
        return {
            group: textCell(heading),
            mark: count(index + 1),
            item: textCell(work.names[index] ?? ''),
            count: count(blank.count),
            along: { is: 'amount', amount: lengthAmount(millimetres(blank.height), work.print) },
            across: { is: 'amount', amount: lengthAmount(millimetres(blank.width), work.print) },
            way: textCell(wayInWords(made, work.print)),
            planed: { is: 'amount', amount: lengthAmount(made.planedTo, work.print) },
        };
    });
    return { heading, rows, notes: [] };
}
