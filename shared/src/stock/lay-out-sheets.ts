/** Layouts of sheets that a saw can cut from edge to edge: a good one at once, then better ones. */
import { joinOffcuts, turnGrids } from './easier-cuts.js';
import { leastCost } from './least-cost.js';
import type { LaidOutSheet, Piece, SheetJob, SheetLayout } from './sheet-job.js';
import type { SheetRegion } from './sheet-region.js';
import { type FoundSheets, type SheetOffer, SheetSearch, type SinglePiece } from './sheet-search.js';

export interface LayOutOptions {
    /** How often a layout is changed in search of a better one. The same number finds the same layout. */
    readonly steps: number;
    /** Asked between steps whether to go on; without it all steps are made. */
    readonly goesOn?: () => boolean;
    /** Any whole number: another finds others. */
    readonly seed?: number;
}

/** How many steps are made before it is asked whether to go on. */
const stepsAtOnce = 64;
/** The last part of the steps, in which the offcuts get larger. */
const shareForOffcuts = 0.2;

/**
 * Lays a job out on sheets, at the least cost that is found, then with the largest offcuts.
 * Blanks that fit no sheet, or for which the sheets do not suffice, are left over and counted.
 */
export function layOutSheets(job: SheetJob, { steps, goesOn = () => true, seed = 1 }: LayOutOptions): SheetLayout {
    const offers = job.stock.map(({ width, height, cost, count = Number.POSITIVE_INFINITY }) => ({
        width: width + job.kerf,
        height: height + job.kerf,
        cost,
        count,
    }));
    const all: SinglePiece[] = job.blanks.flatMap(({ width, height, count, mayTurn }, blank) =>
        Array.from({ length: count }, () => ({ blank, width: width + job.kerf, height: height + job.kerf, mayTurn })),
    );
    const pieces = all.filter((piece) => offers.some((offer) => offer.count > 0 && fits(piece, offer)));
    const least = leastCost(pieces, offers);
    const search = new SheetSearch(pieces, offers, job.stages ?? Number.POSITIVE_INFINITY, seed);
    const isDone = () => search.best.unplaced.length === 0 && search.best.cost <= least;
    const forCost = steps * (1 - shareForOffcuts);
    let made = 0;
    for (; made < forCost && !isDone() && goesOn(); made += stepsAtOnce) advance(search);
    search.lookForLargeOffcuts();
    for (const end = made + steps * shareForOffcuts; made < end && goesOn(); made += stepsAtOnce) advance(search);
    return describe(job, pieces, all, search.best, least);
}

function advance(search: SheetSearch): void {
    for (let step = 0; step < stepsAtOnce; step++) search.step();
}

function fits({ width, height, mayTurn }: SinglePiece, offer: SheetOffer): boolean {
    return (width <= offer.width && height <= offer.height) || (mayTurn && height <= offer.width && width <= offer.height);
}

function describe(
    job: SheetJob,
    pieces: readonly SinglePiece[],
    all: readonly SinglePiece[],
    found: FoundSheets,
    least: number,
): SheetLayout {
    const unplaced = job.blanks.map(() => 0);
    for (const { blank } of all) unplaced[blank]!++;
    for (const { blank } of pieces) unplaced[blank]!--;
    for (const index of found.unplaced) unplaced[pieces[index]!.blank]!++;
    const sheets: LaidOutSheet[] = found.sheets.map(({ offer, root }) => {
        joinOffcuts(root);
        turnGrids(root);
        return { stock: offer, whole: pieceOf(root, 0, 0, job.kerf, (index) => pieces[index]!.blank) };
    });
    return { sheets, cost: found.cost, unplaced, leastCost: least };
}

/** A region without the kerf, at its place, with what it is cut into. */
function pieceOf(region: SheetRegion, x: number, y: number, kerf: number, blankOf: (piece: number) => number): Piece {
    const at = { x, y, width: region.width - kerf, height: region.height - kerf };
    if (region.blank >= 0) return { ...at, kind: 'blank', blank: blankOf(region.blank), turned: region.turned };
    if (region.parts.length === 0) return { ...at, kind: 'offcut' };
    const pieces: Piece[] = [];
    let offset = 0;
    const size = (part: SheetRegion) => (region.alongWidth ? part.width : part.height);
    // One setting of the fence after the other, the widest first; the offcut last: it is what is in hand after the last cut.
    const inOrder = [...region.parts].sort((one, other) => Number(one.isFree) - Number(other.isFree) || size(other) - size(one));
    for (const part of inOrder) {
        // The saw leaves nothing of what is not wider than its kerf.
        if (part.isFree && Math.min(part.width, part.height) <= kerf) continue;
        pieces.push(region.alongWidth ? pieceOf(part, x + offset, y, kerf, blankOf) : pieceOf(part, x, y + offset, kerf, blankOf));
        offset += size(part);
    }
    return { ...at, kind: 'cut', along: region.alongWidth ? 'width' : 'height', pieces };
}
