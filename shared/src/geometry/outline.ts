import {
    type ArcRun,
    distanceToRun,
    isInRunSegment,
    polylineRuns,
    reversedRun,
    runExtremes,
    runLength,
    runSegmentArea,
    sideOfChord,
} from './arc-run.js';
import { tolerance } from './tolerance.js';
import { add, cross, distance, type Point } from './vector.js';

/** A straight or round piece of an outline that knows which edge of the part it belongs to. */
export interface OutlineRun extends ArcRun {
    readonly edge: string;
}

/** A closed outline, counter-clockwise: each run begins where the one before it ends, the first where the last ends. */
export interface Outline {
    readonly runs: readonly OutlineRun[];
}

/** One edge of an outline to be made: a curve comes as its runs, or as the polyline sampled from it. */
export interface OutlineEdge {
    readonly edge: string;
    readonly runs: readonly ArcRun[];
}

export type OutlineOutcome =
    | { readonly ok: true; readonly outline: Outline }
    /** The runs do not close: the end of the edge and the start of the next are `gap` apart. */
    | { readonly ok: false; readonly edge: string; readonly next: string; readonly gap: number }
    /** There are no runs. */
    | { readonly ok: false; readonly edge: undefined };

/** The extent of a plane figure along the axes, in millimetres. */
export interface Extent {
    readonly least: Point;
    readonly most: Point;
}

/**
 * The outline made of edges given in order around it, whichever way around.
 * Refused when an edge does not begin where the one before it ends, within the geometry tolerance.
 */
export function closedOutline(edges: readonly OutlineEdge[]): OutlineOutcome {
    const runs = edges.flatMap(({ edge, runs: own }) => own.map((run) => ({ ...run, edge })));
    let before = runs.at(-1);
    if (before === undefined) {
        return { ok: false, edge: undefined };
    }
    for (const run of runs) {
        const gap = distance(before.to, run.from);
        if (!(gap <= tolerance.geometry)) {
            return { ok: false, edge: before.edge, next: run.edge, gap };
        }
        before = run;
    }
    const outline = { runs };
    return { ok: true, outline: outlineArea(outline) < 0 ? reversedOutline(outline) : outline };
}

/** The rectangle from the origin with an edge name for each side. */
export function rectangleOutline(
    width: number,
    height: number,
    edges: { readonly bottom: string; readonly right: string; readonly top: string; readonly left: string },
): Outline {
    const corners = [
        { x: 0, y: 0 },
        { x: width, y: 0 },
        { x: width, y: height },
        { x: 0, y: height },
        { x: 0, y: 0 },
    ];
    const names = [edges.bottom, edges.right, edges.top, edges.left];
    return { runs: polylineRuns(corners).map((run, index) => ({ ...run, edge: names[index] as string })) };
}

/** Area inside, in square millimetres. */
export function outlineArea(outline: Outline): number {
    const origin = outline.runs[0]?.from ?? { x: 0, y: 0 };
    let area = 0;
    for (const run of outline.runs) {
        const from = { x: run.from.x - origin.x, y: run.from.y - origin.y };
        const to = { x: run.to.x - origin.x, y: run.to.y - origin.y };
        area += cross(from, to) / 2 + runSegmentArea(run);
    }
    return area;
}

/** Length all round. */
export function outlinePerimeter(outline: Outline): number {
    return outline.runs.reduce((sum, run) => sum + runLength(run), 0);
}

/** Length of all the runs of one edge; 0 when it has none. */
export function edgeLength(outline: Outline, edge: string): number {
    return edgeRuns(outline, edge).reduce((sum, run) => sum + runLength(run), 0);
}

/** The runs of one edge, in order around the outline. */
export function edgeRuns(outline: Outline, edge: string): readonly OutlineRun[] {
    return outline.runs.filter((run) => run.edge === edge);
}

/** The least rectangle square to the axes around an outline, round pieces included. */
export function outlineExtent(outline: Outline): Extent {
    const points = outline.runs.flatMap(runExtremes);
    const along = points.map(({ x }) => x);
    const across = points.map(({ y }) => y);
    return {
        least: { x: Math.min(...along), y: Math.min(...across) },
        most: { x: Math.max(...along), y: Math.max(...across) },
    };
}

/** Whether a point is inside an outline that does not cross itself; on its edge, within the geometry tolerance, counts. */
export function outlineContains(outline: Outline, place: Point): boolean {
    if (outline.runs.some((run) => distanceToRun(place, run) <= tolerance.geometry)) {
        return true;
    }
    // Each chord that a ray from the place crosses, and each round piece between arc and chord that holds the place, turns it in or out.
    return outline.runs.reduce((inside, run) => (crossesRay(run, place) !== isInRunSegment(place, run) ? !inside : inside), false);
}

/** Whether the chord of a run crosses the ray from a place towards greater x. */
function crossesRay(run: ArcRun, place: Point): boolean {
    const rises = run.to.y > place.y;
    return run.from.y > place.y !== rises && rises === sideOfChord(place, run) > 0;
}

/** The outline displaced. */
export function moveOutline(outline: Outline, by: Point): Outline {
    return { runs: outline.runs.map((run) => ({ ...run, from: add(run.from, by), to: add(run.to, by) })) };
}

/** The outline of the other hand: its mirror image about the line of a given abscissa, with the same edge names. */
export function mirrorOutline(outline: Outline, abscissa: number): Outline {
    const image = ({ x, y }: Point) => ({ x: 2 * abscissa - x, y });
    return reversedOutline({
        runs: outline.runs.map((run) => ({ ...run, from: image(run.from), to: image(run.to), bulge: -run.bulge })),
    });
}

function reversedOutline(outline: Outline): Outline {
    return { runs: outline.runs.toReversed().map((run) => ({ ...run, ...reversedRun(run) })) };
}
