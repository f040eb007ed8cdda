/** What is got out of boards: a job for each solid wood that says its `boards`, from the rough sizes of its pieces. */
import type { Casework, Measure, Piece, Thing } from '../../casework/index.js';
import { quantity, real, unitNamed } from '../../quantity/index.js';
import { layOutSheets, layOutStrips, type SheetJob, type SheetLayout } from '../../stock/index.js';
import { isSolidWood, roughThickness } from '../../strength/index.js';
import { alikePieces, piecesByMaterial } from '../pieces-by-material.js';
import { downwards, inMillimetres, upwards } from '../sheets/sheet-jobs.js';
import { type BoardBlank, type BoardStock, boardBlank } from './board-blanks.js';
import { boardFeet } from './board-feet.js';
import { type Milling, millingOf } from './milling.js';

/** A board as it is bought, in millimetres. */
export interface BoardSize {
    readonly width: number;
    readonly length: number;
}

export interface BoardJob {
    readonly material: string;
    readonly thing: Thing;
    readonly stock: BoardStock;
    readonly milling: Milling;
    /** In millimetres. */
    readonly kerf: number;
    readonly sizes: readonly BoardSize[];
    /** In the order of the job's blanks. */
    readonly blanks: readonly BoardBlank[];
    readonly job: SheetJob;
    /** Pieces whose size is not known. */
    readonly unknown: readonly Piece[];
}

/** The boards that a material says it comes in, in millimetres. */
interface StatedBoards {
    readonly widths: readonly [number, number];
    readonly lengths: readonly [number, number];
    readonly thickness: number;
}

/** Jobs in the order of the cut list, and the solid woods that do not say enough for one. */
export function boardJobs(casework: Casework): { readonly jobs: readonly BoardJob[]; readonly without: readonly string[] } {
    const jobs: BoardJob[] = [];
    const without: string[] = [];
    for (const [material, pieces] of piecesByMaterial(casework)) {
        const thing = casework.things.get(material);
        if (!thing || !isSolidWood(thing)) continue;
        const stated = statedBoards(thing);
        if (stated) jobs.push(jobOf(material, thing, pieces, stated, casework));
        else without.push(material);
    }
    return { jobs, without };
}

function statedBoards(thing: Thing): StatedBoards | undefined {
    const thickness = roughThickness(thing);
    const boards = thing.properties.get('boards');
    if (!thickness || boards?.is !== 'measures') return undefined;
    const [narrowest, widest, shortest, longest] = boards.measures.map((measure: Measure) => inMillimetres(measure));
    if (!narrowest || !widest || !shortest || !longest) return undefined;
    return {
        widths: [Math.min(narrowest, widest), Math.max(narrowest, widest)],
        lengths: [Math.min(shortest, longest), Math.max(shortest, longest)],
        thickness: real.toNumber(quantity.valueIn(thickness, unitNamed('mm'))),
    };
}

function jobOf(material: string, thing: Thing, pieces: readonly Piece[], stated: StatedBoards, casework: Casework): BoardJob {
    const milling = millingOf(casework);
    const kerf = inMillimetres(casework.shop.kerf);
    const across = (width: number) => width - 2 * milling.boardEdge;
    const stock: BoardStock = {
        roughThickness: stated.thickness,
        surfaced: stated.thickness - 2 * milling.face,
        leastWidth: across(stated.widths[0]),
        greatestWidth: across(stated.widths[1]),
    };
    const blanks: BoardBlank[] = [];
    const unknown: Piece[] = [];
    for (const batch of alikePieces(pieces)) {
        const blank = boardBlank(batch, stock, milling, kerf);
        if (blank) blanks.push(blank);
        else unknown.push(...batch);
    }
    const isInch = (casework.project?.units ?? 'in') === 'in';
    const sizes = boardSizes(stated, blanks, milling, isInch);
    return {
        material,
        thing,
        stock,
        milling,
        kerf,
        sizes,
        blanks,
        unknown,
        job: {
            kerf: upwards(kerf),
            blanks: blanks.map(({ width, length, count }, index) => ({
                id: String(index),
                width: upwards(width),
                height: upwards(length),
                count,
                mayTurn: false,
            })),
            stock: sizes.map(({ width, length }, index) => ({
                id: String(index),
                width: downwards(across(width)),
                height: downwards(length - 2 * milling.boardEnd),
                cost: (width * length) / 1e6,
            })),
        },
    };
}

/**
 * The boards to plan with. Widths are random, so the plan takes the narrowest: any board that is delivered will do. Only what needs a wider one asks
 * for it. Lengths go up by whole feet, as they are tallied, or by 300 mm.
 */
function boardSizes(
    { widths, lengths }: StatedBoards,
    blanks: readonly BoardBlank[],
    milling: Milling,
    isInch: boolean,
): readonly BoardSize[] {
    const [step, widthStep] = isInch ? [304.8, 25.4] : [300, 10];
    const wide = blanks.map(({ width }) => width + 2 * milling.boardEdge).filter((width) => width > widths[0]);
    const needed = wide.map((width) => Math.min(widths[1], Math.ceil(width / widthStep - 1e-9) * widthStep));
    const allWidths = [...new Set([widths[0], ...needed])].sort((one, other) => one - other);
    const allLengths: number[] = [];
    for (let length = lengths[0]; length < lengths[1] + 1e-6; length += step) allLengths.push(length);
    return allWidths.flatMap((width) => allLengths.map((length) => ({ width, length })));
}

/** How often a layout is changed in search of a better one: a fraction of a second for a case. */
const steps = 4000;

/** The layout with the least area of boards; of two alike the one whose strips run the whole length of a board. */
export function layOutBoards({ job }: BoardJob): SheetLayout {
    const strips = layOutStrips(job);
    const free = layOutSheets(job, { steps });
    const left = ({ unplaced }: { readonly unplaced: readonly number[] }) => unplaced.reduce((sum, count) => sum + count, 0);
    const isBetter = (left(free) - left(strips) || free.cost - strips.cost) < -1e-9;
    return isBetter ? free : { ...strips, leastCost: free.leastCost };
}

/** In board feet by the trade's rule, or in cubic metres. */
export function boardVolume({ stock }: BoardJob, size: BoardSize, system: 'inch' | 'mm'): number {
    return system === 'inch'
        ? boardFeet({ thickness: stock.roughThickness, ...size })
        : (stock.roughThickness * size.width * size.length) / 1e9;
}
