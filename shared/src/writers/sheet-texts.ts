/**
 * The texts of a drawing on the sheets that it is cut into. A text stands whole inside the dashed lines of one sheet, so that it is neither
 * cut off by the printer nor sliced where two sheets join: what does not is moved, and what names a line is written on each sheet that
 * the line crosses.
 */
import type { DrawnText, TextPlace } from '../drawing/index.js';
import { add, distance, type Extent, type Point } from '../geometry/index.js';
import type { Tile, Tiling } from './tiles.js';

/** How long a text is when it is printed, in millimetres. */
export type LengthOf = (text: DrawnText) => number;

/** From a text to the line where its sheet is cut. */
const clearOfCut = 2.5;
/** A place that comes later is taken only where it spares the text a greater move than this. */
const dearerPlace = 4;
/** A text of which no place begins as near as this to a printed sheet is about what no sheet shows. */
const nearSheet = 15;
/** From one text to the next, and from a label to the ends of its line, on either side of them. */
const gap = 1;
const insideOfEnds = 4;
const pastEnds = 8;
/** A line that runs for less than this over a sheet needs no name on it. */
const shortest = 3;

/** The texts of each printed sheet. */
export function textsOnSheets(texts: readonly DrawnText[], { tiles }: Tiling, lengthOf: LengthOf): ReadonlyMap<Tile, readonly DrawnText[]> {
    const printed = tiles.filter(({ isBlank }) => !isBlank);
    const placed = new Map<Tile, DrawnText[]>(printed.map((one) => [one, []]));
    for (const text of texts) {
        if (text.isLegend || text.names) continue;
        const best = nearestPlace(text, printed, lengthOf);
        if (best) placed.get(best.on)?.push(best.text);
    }
    for (const text of texts) {
        if (!text.names) continue;
        for (const one of printed) {
            const label = labelOn(one, text, placed.get(one) ?? [], lengthOf);
            if (label) placed.get(one)?.push(label);
        }
    }
    return placed;
}

interface Placed {
    readonly text: DrawnText;
    readonly on: Tile;
}

/** The place, of those that a text may have, and the sheet on which it is whole with the least move. */
function nearestPlace(text: DrawnText, printed: readonly Tile[], lengthOf: LengthOf): Placed | undefined {
    let best: Placed | undefined;
    let least = Number.POSITIVE_INFINITY;
    const places: readonly TextPlace[] = [text, ...(text.elsewhere ?? [])];
    const near = printed.filter(({ cut }) => places.some(({ at }) => isNear(at, cut)));
    for (const [index, { at, anchor }] of places.entries()) {
        const there = { ...text, at, anchor };
        const box = boxOf(there, lengthOf);
        for (const one of near) {
            const move = moveInto(box, one.cut);
            const far = Math.abs(move.x) + Math.abs(move.y);
            if (far + index * dearerPlace >= least) continue;
            best = { on: one, text: { ...there, at: add(at, move) } };
            least = far + index * dearerPlace;
        }
    }
    return best;
}

function isNear({ x, y }: Point, { least, most }: Extent): boolean {
    return x > least.x - nearSheet && x < most.x + nearSheet && y > least.y - nearSheet && y < most.y + nearSheet;
}

/** A label at its line as far as that crosses a sheet: inside of its ends, else past them, and farther off where other texts stand. */
function labelOn(one: Tile, text: DrawnText, others: readonly DrawnText[], lengthOf: LengthOf): DrawnText | undefined {
    const { names, turned } = text;
    if (!names) return undefined;
    const [along, across] = turned ? (['y', 'x'] as const) : (['x', 'y'] as const);
    const { least, most } = one.cut;
    if (names.from[across] < least[across] || names.from[across] >= most[across]) return undefined;
    const from = Math.max(Math.min(names.from[along], names.to[along]), least[along]);
    const to = Math.min(Math.max(names.from[along], names.to[along]), most[along]);
    if (to - from < shortest) return undefined;
    const length = lengthOf(text);
    const away = Math.sign(text.at[across] - names.from[across]) * text.height * 1.4;
    const inside = [to - insideOfEnds - length, from + insideOfEnds];
    const past = [to + pastEnds, from - pastEnds - length];
    const starts = to - from < length + insideOfEnds ? [...past, ...inside] : [...inside, ...past];
    const wanted = [0, 1, 2].flatMap((lines) =>
        starts.map((start): DrawnText => {
            const at = { ...text.at, [along]: start, [across]: text.at[across] + lines * away };
            return { ...text, at, anchor: 'start' };
        }),
    );
    const moved = wanted.map((label) => movedInto(one.cut, label, lengthOf));
    const taken = others.map((other) => boxOf(other, lengthOf));
    const isFree = (label: DrawnText) => taken.every((other) => !overlap(boxOf(label, lengthOf), other));
    return moved.find((label, index) => distance(label.at, wanted[index]!.at) < gap && isFree(label)) ?? moved.find(isFree) ?? moved[0];
}

function movedInto(frame: Extent, text: DrawnText, lengthOf: LengthOf): DrawnText {
    return { ...text, at: add(text.at, moveInto(boxOf(text, lengthOf), frame)) };
}

/** The rectangle around a printed text, with its descenders. */
export function boxOf(text: DrawnText, lengthOf: LengthOf): Extent {
    const { at, height, anchor, turned } = text;
    const length = lengthOf(text);
    const before = { start: 0, middle: length / 2, end: length }[anchor];
    const under = height / 3;
    return turned
        ? { least: { x: at.x - height, y: at.y - before }, most: { x: at.x + under, y: at.y - before + length } }
        : { least: { x: at.x - before, y: at.y - under }, most: { x: at.x - before + length, y: at.y + height } };
}

/** The least move that brings a box into a frame. */
function moveInto(box: Extent, frame: Extent): Point {
    const along = (axis: 'x' | 'y') =>
        Math.max(0, frame.least[axis] + clearOfCut - box.least[axis]) + Math.min(0, frame.most[axis] - clearOfCut - box.most[axis]);
    return { x: along('x'), y: along('y') };
}

function overlap(a: Extent, b: Extent): boolean {
    return a.least.x - gap < b.most.x && b.least.x - gap < a.most.x && a.least.y < b.most.y && b.least.y < a.most.y;
}
