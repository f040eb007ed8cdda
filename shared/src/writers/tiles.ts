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
    /** 0, 1, ... from left to right. */
    readonly column: number;
    /** 1, 2, ... from top to bottom. */
    readonly row: number;
    /** What is cut out of the sheet, in the drawing. */
    readonly cut: Extent;
    /** What is printed: the cut with half of the overlap around it. */
    readonly shown: Extent;
    /** Whether nothing that has to be at full size lies in it: it is not printed. */
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

/** Sheets are cut at round places, so that each can be laid by a rule: at quarters of an inch or five millimetres, where no edge lies. */
const modules = { in: 12.7, mm: 10 } as const;

/** The tiling that takes the fewest printed sheets, the paper upright or lying. */
export function tile(drawing: Drawing, paper: PaperName, units: 'in' | 'mm'): Tiling {
    const { width, height } = papers[paper];
    const fullSize = {
        ...drawing,
        lines: drawing.lines.filter(({ isLegend }) => !isLegend),
        texts: drawing.texts.filter(({ isLegend }) => !isLegend),
    };
    const upright = bestOn(fullSize, { name: paper, width, height }, modules[units]);
    const lying = bestOn(fullSize, { name: paper, width: height, height: width }, modules[units]);
    return sheetsOf(lying) < sheetsOf(upright) ? lying : upright;
}

/** How many sheets are printed. */
export function sheetsOf({ tiles }: Tiling): number {
    return tiles.filter(({ isBlank }) => !isBlank).length;
}

/** The grid moved by whole modules to where the fewest sheets are printed, and among those where most texts are whole in one of their places. */
function bestOn(drawing: Drawing, paper: Tiling['paper'], module: number): Tiling {
    const room = { x: paper.width - 2 * margin - overlap, y: paper.height - 2 * margin - foot - overlap };
    const step = { x: Math.floor(room.x / module) * module, y: Math.floor(room.y / module) * module };
    const needed = drawing.cut ? drawing.cut.edge.flatMap(boxesAlong) : inkOf(drawing);
    const texts = drawing.texts
        .filter(({ names }) => !names)
        .map((text) =>
            [text, ...(text.elsewhere ?? [])].map((place) => extentOf({ title: '', lines: [], texts: [{ ...text, ...place }] })),
        );
    const extent = grown(extentOf(drawing), overlap);
    let best: Tiling | undefined;
    let [fewest, mostWhole] = [Number.POSITIVE_INFINITY, -1];
    for (let right = 0; right < step.x; right += module) {
        for (let up = 0; up < step.y; up += module) {
            const tiling = tileOn({ extent, needed, step, module, shift: { x: right, y: up } }, paper);
            const sheets = sheetsOf(tiling);
            if (sheets > fewest) continue;
            const cuts = tiling.tiles.filter(({ isBlank }) => !isBlank).map(({ cut }) => cut);
            const whole = texts.filter((places) => places.some((place) => cuts.some((cut) => lies(place, cut)))).length;
            if (sheets === fewest && whole <= mostWhole) continue;
            [best, fewest, mostWhole] = [tiling, sheets, whole];
        }
    }
    return best ?? tileOn({ extent, needed, step, module, shift: { x: 0, y: 0 } }, paper);
}

interface Grid {
    readonly extent: Extent;
    /** What sheets are printed for. */
    readonly needed: readonly Extent[];
    readonly step: Point;
    readonly module: number;
    /** How far the grid begins before the drawing does. */
    readonly shift: Point;
}

function tileOn({ extent, needed, step, module, shift }: Grid, paper: Tiling['paper']): Tiling {
    const left = Math.floor(extent.least.x / module) * module - shift.x - module / 2;
    const top = Math.ceil(extent.most.y / module) * module + shift.y + module / 2;
    const columns = Math.max(1, Math.ceil((extent.most.x - left) / step.x));
    const rows = Math.max(1, Math.ceil((top - extent.least.y) / step.y));
    const tiles = Array.from({ length: columns * rows }, (_, index): Tile => {
        const [column, row] = [index % columns, Math.floor(index / columns)];
        const cut = {
            least: { x: left + column * step.x, y: top - (row + 1) * step.y },
            most: { x: left + (column + 1) * step.x, y: top - row * step.y },
        };
        return { column, row: row + 1, cut, shown: grown(cut, overlap / 2), isBlank: !needed.some((box) => meet(box, cut)) };
    });
    return { paper, corner: { x: margin, y: margin + foot }, columns, rows, tiles };
}

/** The row and the place in it: `3-2`. Letters with numbers would be names of paper sizes: A4, B4. */
export function tileName({ column, row }: Pick<Tile, 'column' | 'row'>): string {
    return `${row}-${column + 1}`;
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

function lies(inner: Extent, outer: Extent): boolean {
    return inner.least.x >= outer.least.x && inner.most.x <= outer.most.x && inner.least.y >= outer.least.y && inner.most.y <= outer.most.y;
}
