/** How a drawing at full size is cut into the sheets of a printer. */
import { type Drawing, extentOf } from '../drawing/index.js';
import { type ArcRun, type Extent, type Point, runExtremes } from '../geometry/index.js';
import { type PaperName, papers } from './paper.js';

/** What a printer cannot reach at the edges of a sheet, with some to spare. */
const margin = 8;
/** At the foot of each sheet, for its number and the bar to measure. */
const foot = 14;
/** What two neighbours both show, half of it on each side of the line where they are cut. */
export const overlap = 12;

export interface Tile {
    /** A, B, ... from left to right. */
    readonly column: number;
    /** 1, 2, ... from top to bottom. */
    readonly row: number;
    /** What is cut out of the sheet, in the drawing. */
    readonly cut: Extent;
    /** What is printed: the cut with half of the overlap around it. */
    readonly shown: Extent;
    /** Whether any line or text lies in it; one without is not printed. */
    readonly isBlank: boolean;
}

export interface Tiling {
    readonly paper: { readonly name: PaperName; readonly width: number; readonly height: number };
    /** Where the lower left corner of what is shown is on each sheet. */
    readonly corner: Point;
    readonly columns: number;
    readonly rows: number;
    readonly tiles: readonly Tile[];
}

/** The tiling that takes the fewest printed sheets, the paper upright or lying. */
export function tile(drawing: Drawing, paper: PaperName): Tiling {
    const { width, height } = papers[paper];
    const upright = tileOn(drawing, { name: paper, width, height });
    const lying = tileOn(drawing, { name: paper, width: height, height: width });
    return printed(lying) < printed(upright) ? lying : upright;
}

function printed({ tiles }: Tiling): number {
    return tiles.filter(({ isBlank }) => !isBlank).length;
}

function tileOn(drawing: Drawing, paper: Tiling['paper']): Tiling {
    // No line of the drawing lies where a sheet is cut.
    const { least, most } = grown(extentOf(drawing), overlap);
    const step = { x: paper.width - 2 * margin - overlap, y: paper.height - 2 * margin - foot - overlap };
    const columns = Math.max(1, Math.ceil((most.x - least.x) / step.x));
    const rows = Math.max(1, Math.ceil((most.y - least.y) / step.y));
    const boxes = inkOf(drawing);
    const tiles = Array.from({ length: columns * rows }, (_, index): Tile => {
        const [column, row] = [index % columns, Math.floor(index / columns)];
        const cut = {
            least: { x: least.x + column * step.x, y: most.y - (row + 1) * step.y },
            most: { x: least.x + (column + 1) * step.x, y: most.y - row * step.y },
        };
        return { column, row: row + 1, cut, shown: grown(cut, overlap / 2), isBlank: !boxes.some((box) => meet(box, cut)) };
    });
    return { paper, corner: { x: margin, y: margin + foot }, columns, rows, tiles };
}

/** The name of a tile: `B3`. */
export function tileName({ column, row }: Pick<Tile, 'column' | 'row'>): string {
    return `${columnName(column)}${row}`;
}

/** A to Z, then AA. */
function columnName(column: number): string {
    const letter = String.fromCharCode(65 + (column % 26));
    return column < 26 ? letter : columnName(Math.floor(column / 26) - 1) + letter;
}

function inkOf({ lines, texts }: Drawing): readonly Extent[] {
    const ofRuns = lines.flatMap(({ runs }) => runs.flatMap(boxesAlong));
    return [...ofRuns, ...texts.map((text) => extentOf({ title: '', lines: [], texts: [text] }))];
}

/** Small boxes along a run, so that the box of a long slanting one does not take in sheets that it never crosses. */
function boxesAlong(run: ArcRun): readonly Extent[] {
    if (run.bulge !== 0) return [extentOfPoints(runExtremes(run))];
    const count = Math.max(1, Math.ceil(Math.hypot(run.to.x - run.from.x, run.to.y - run.from.y) / 50));
    const at = (index: number) => ({
        x: run.from.x + ((run.to.x - run.from.x) * index) / count,
        y: run.from.y + ((run.to.y - run.from.y) * index) / count,
    });
    return Array.from({ length: count }, (_, index) => extentOfPoints([at(index), at(index + 1)]));
}

function extentOfPoints(points: readonly Point[]): Extent {
    const [along, across] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    return { least: { x: Math.min(...along), y: Math.min(...across) }, most: { x: Math.max(...along), y: Math.max(...across) } };
}

function grown({ least, most }: Extent, by: number): Extent {
    return { least: { x: least.x - by, y: least.y - by }, most: { x: most.x + by, y: most.y + by } };
}

function meet(a: Extent, b: Extent): boolean {
    return a.least.x <= b.most.x && b.least.x <= a.most.x && a.least.y <= b.most.y && b.least.y <= a.most.y;
}
