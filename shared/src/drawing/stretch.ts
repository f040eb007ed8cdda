/** Stretches of a curve as arcs. */
import {
    type ArcRun,
    angleOf,
    type Curve,
    direction,
    type Point,
    reduceToArcs,
    subtract,
    tolerance,
    turnBetween,
} from '../geometry/index.js';
import { drawingTolerance } from './drawing.js';

/**
 * The runs of a curve between two abscissas, in order. Past the ends of the curve they go straight on at its end's own depth, as
 * everything that follows a curve does.
 */
export function runsBetween(curve: Curve, from: number, to: number): readonly ArcRun[] {
    const inside = reduceToArcs(curve, drawingTolerance).runs.flatMap((run) => cut(run, curve, from, to));
    const first = { x: from, y: curve.valueAt(from).value };
    const last = { x: to, y: curve.valueAt(to).value };
    const runs = [...inside];
    const [begin, end] = [inside[0]?.from ?? first, inside.at(-1)?.to ?? first];
    if (begin.x - from > tolerance.geometry) runs.unshift({ from: first, to: begin, bulge: 0 });
    if (to - end.x > tolerance.geometry) runs.push({ from: end, to: last, bulge: 0 });
    return runs;
}

function cut(run: ArcRun, curve: Curve, from: number, to: number): readonly ArcRun[] {
    if (run.to.x <= from + tolerance.geometry || run.from.x >= to - tolerance.geometry) return [];
    const on = (x: number) => ({ x, y: curve.valueAt(x).value });
    const head = run.to.x > to + tolerance.geometry ? { ...run, to: on(to), bulge: bulgeTo(run, on(to)) } : run;
    if (head.from.x >= from - tolerance.geometry) return [head];
    return [{ from: on(from), to: head.to, bulge: Math.tan(Math.atan(head.bulge) - Math.atan(bulgeTo(head, on(from)))) }];
}

/** The bulge of a run from its start to a place on it: the chord turns away from the start's tangent by half of the turn. */
function bulgeTo({ from, to, bulge }: ArcRun, place: Point): number {
    if (bulge === 0) return 0;
    const tangent = direction(angleOf(subtract(to, from)) - 2 * Math.atan(bulge));
    return Math.tan(turnBetween(tangent, subtract(place, from)) / 2);
}
