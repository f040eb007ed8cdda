/** What a layout must cost at least, by areas that are rescaled so that no sheet can hold more than its own. */
import type { SheetOffer, SinglePiece } from './sheet-search.js';

/** Maps a length so that lengths which fit into the whole together still fit together afterwards. Its result is a share of the whole. */
type Rescaling = (length: number) => number;

/**
 * The least cost of any layout, guillotine or not.
 *
 * Dual feasible functions: S. P. Fekete and J. Schepers, "A general framework for bounds for higher-dimensional orthogonal packing
 * problems", Mathematical Methods of Operations Research 60 (2004); J. Carlier, F. Clautiaux and A. Moukrim, "New reduction
 * procedures and lower bounds for the two-dimensional bin packing problem with fixed orientation", Computers & Operations
 * Research 34 (2007).
 * @param pieces those that can be placed at all, those of one blank after each other; with the kerf in their measures
 * @param offers with the kerf in their measures
 */
export function leastCost(pieces: readonly SinglePiece[], offers: readonly SheetOffer[]): number {
    if (pieces.length === 0) return 0;
    const [only, ...more] = offers;
    if (!only) return 0;
    if (more.length > 0 || offers.some(({ count }) => count !== Number.POSITIVE_INFINITY)) return costByArea(pieces, offers);
    return only.cost * leastSheets(pieces, only);
}

interface Choice {
    readonly area: number;
    readonly cost: number;
    readonly count: number;
}

/** How many choices of numbers of sheets are looked at, before a fraction of a sheet is taken for enough. */
const mostChoices = 50_000;

/** The cheapest numbers of sheets whose area is enough. */
function costByArea(pieces: readonly SinglePiece[], offers: readonly SheetOffer[]): number {
    const needed = pieces.reduce((sum, { width, height }) => sum + width * height, 0);
    const choices: readonly Choice[] = offers
        .map(({ width, height, cost, count }) => ({ area: width * height, cost, count }))
        .sort((one, other) => one.cost / one.area - other.cost / other.area);
    const supply = choices.reduce((sum, { area, count }) => sum + area * count, 0);
    let [least, left] = [Number.POSITIVE_INFINITY, mostChoices];
    const choose = (from: number, open: number, spent: number): void => {
        if (open <= 0) {
            least = Math.min(least, spent);
            return;
        }
        const choice = choices[from];
        if (!choice || left-- <= 0 || spent + inFractions(choices, from, open) >= least) return;
        for (let sheets = Math.min(choice.count, Math.ceil(open / choice.area)); sheets >= 0; sheets--) {
            choose(from + 1, open - sheets * choice.area, spent + sheets * choice.cost);
        }
    };
    if (supply < needed) return choices.reduce((sum, { cost, count }) => sum + cost * count, 0);
    choose(0, needed, 0);
    return left > 0 ? least : inFractions(choices, 0, needed);
}

/** What an area costs where sheets can be had in parts, the cheapest first. */
function inFractions(choices: readonly Choice[], from: number, area: number): number {
    let [open, cost] = [area, 0];
    for (const choice of choices.slice(from)) {
        const used = Math.min(open, choice.area * choice.count);
        cost += (used / choice.area) * choice.cost;
        open -= used;
        if (open <= 0) break;
    }
    return open > 0 ? Number.POSITIVE_INFINITY : cost;
}

function leastSheets(pieces: readonly SinglePiece[], { width, height }: SheetOffer): number {
    const across = rescalings(width, [
        ...new Set(pieces.flatMap((piece) => (piece.mayTurn ? [piece.width, piece.height] : [piece.width]))),
    ]);
    const along = rescalings(height, [
        ...new Set(pieces.flatMap((piece) => (piece.mayTurn ? [piece.width, piece.height] : [piece.height]))),
    ]);
    let most = 1;
    const counts = new Map<number, number>();
    for (const { blank } of pieces) counts.set(blank, (counts.get(blank) ?? 0) + 1);
    const kinds = pieces.filter(({ blank }, index) => index === 0 || pieces[index - 1]!.blank !== blank);
    for (const acrossBy of across) {
        const widths = kinds.map((piece) => acrossBy(piece.width));
        const turnedWidths = kinds.map((piece) => (piece.mayTurn && piece.height <= width ? acrossBy(piece.height) : Number.NaN));
        for (const alongBy of along) {
            let sum = 0;
            kinds.forEach((piece, index) => {
                const upright = piece.height <= height && piece.width <= width ? widths[index]! * alongBy(piece.height) : Number.NaN;
                const turned = piece.mayTurn && piece.width <= height ? turnedWidths[index]! * alongBy(piece.width) : Number.NaN;
                const share = Number.isNaN(turned) ? upright : Number.isNaN(upright) ? turned : Math.min(upright, turned);
                sum += share * counts.get(piece.blank)!;
            });
            most = Math.max(most, Math.ceil(sum - 1e-6));
        }
    }
    return most;
}

/** The rescalings that the measures of the pieces suggest. */
function rescalings(whole: number, lengths: readonly number[]): readonly Rescaling[] {
    const marks = [...new Set(lengths.flatMap((length) => [length, whole - length]))].filter((mark) => mark > 0 && mark <= whole / 2);
    const steps = Array.from({ length: 20 }, (_, index) => index + 1);
    return [
        (length) => length / whole,
        ...marks.map((mark) => withoutSmall(whole, mark)),
        ...marks.map((mark) => inRounds(whole, mark)),
        ...steps.map((step) => inSteps(whole, step)),
    ];
}

/** Small lengths count nothing, and those that leave room for small ones only count as the whole. */
function withoutSmall(whole: number, mark: number): Rescaling {
    return (length) => (length > whole - mark ? 1 : length < mark ? 0 : length / whole);
}

/** Lengths in whole times a mark, rounded down up to the half, and up above it. */
function inRounds(whole: number, mark: number): Rescaling {
    const rounds = Math.floor(whole / mark);
    return (length) => {
        if (length * 2 > whole) return 1 - Math.floor((whole - length) / mark) / rounds;
        return length * 2 === whole ? 0.5 : Math.floor(length / mark) / rounds;
    };
}

/** Lengths in steps of the whole, rounded down; those that are a whole number of steps stay. */
function inSteps(whole: number, step: number): Rescaling {
    return (length) => {
        const scaled = ((step + 1) * length) / whole;
        return Number.isInteger(scaled) ? length / whole : Math.floor(scaled) / step;
    };
}
