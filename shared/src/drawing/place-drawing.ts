/** Where drawings are and how far they reach. */
import { add, type Extent, type Point, runExtremes } from '../geometry/index.js';
import type { Drawing, DrawnText } from './drawing.js';

/** The mean advance of a letter of a sans-serif typeface over the height of its capitals; from memory, for leaving room only. */
const advanceOverHeight = 0.85;

/** The least rectangle around all lines and, about, all texts. */
export function extentOf({ lines, texts }: Drawing): Extent {
    const points = [...lines.flatMap(({ runs }) => runs.flatMap(runExtremes)), ...texts.flatMap(cornersOf)];
    let least = { x: Infinity, y: Infinity };
    let most = { x: -Infinity, y: -Infinity };
    for (const { x, y } of points) {
        least = { x: Math.min(least.x, x), y: Math.min(least.y, y) };
        most = { x: Math.max(most.x, x), y: Math.max(most.y, y) };
    }
    return { least, most };
}

function cornersOf({ text, at, height, anchor, turned }: DrawnText): readonly Point[] {
    const length = [...text].length * height * advanceOverHeight;
    const before = { start: 0, middle: length / 2, end: length }[anchor];
    const corners = [
        { x: -before, y: -height / 3 },
        { x: length - before, y: height },
    ];
    return corners.map(({ x, y }) => add(at, turned ? { x: -y, y: x } : { x, y }));
}

/** Drawings in one, from left to right with a gap between, standing on one line. */
export function sideBySide(drawings: readonly Drawing[], gap: number): Drawing {
    let x = 0;
    const moved = drawings.map((drawing) => {
        const { least, most } = extentOf(drawing);
        const placed = moveDrawing(drawing, { x: x - least.x, y: -least.y });
        x += most.x - least.x + gap;
        return placed;
    });
    return {
        title: drawings.map(({ title }) => title).join('; '),
        lines: moved.flatMap(({ lines }) => lines),
        texts: moved.flatMap(({ texts }) => texts),
    };
}

/** The drawing displaced, without what is only of use where it is cut into sheets of paper. */
function moveDrawing(drawing: Drawing, by: Point): Drawing {
    return {
        title: drawing.title,
        lines: drawing.lines.map((line) => ({
            ...line,
            runs: line.runs.map((run) => ({ ...run, from: add(run.from, by), to: add(run.to, by) })),
        })),
        texts: drawing.texts.map(({ elsewhere: _, names: __, ...text }) => ({ ...text, at: add(text.at, by) })),
    };
}
