import { tolerance } from '../tolerance.js';
import { angleOf, distance, isMeasurable, type Point, subtract } from '../vector.js';
import type { CurveRefusal } from './curve.js';

/** The straight line between the ends of a curve, in order of the abscissa. */
export interface Chord {
    readonly from: Point;
    readonly to: Point;
    readonly length: number;
    /** Angle from the x axis, between -pi/2 and pi/2. */
    readonly tilt: number;
}

/** Whether a chord was found or refused. */
export type ChordOutcome = { readonly ok: true; readonly chord: Chord } | { readonly ok: false; readonly refusal: CurveRefusal };

/** The chord between two points in either order, or why it spans nothing. */
export function chordBetween(p: Point, q: Point): ChordOutcome {
    if (!isMeasurable(p) || !isMeasurable(q)) {
        return { ok: false, refusal: { reason: 'out-of-range' } };
    }
    const length = distance(p, q);
    if (length <= tolerance.geometry) {
        return { ok: false, refusal: { reason: 'zero-chord', at: p } };
    }
    if (Math.abs(q.x - p.x) <= tolerance.geometry) {
        return { ok: false, refusal: { reason: 'upright-chord', at: p } };
    }
    const [from, to] = p.x < q.x ? [p, q] : [q, p];
    return { ok: true, chord: { from, to, length, tilt: angleOf(subtract(to, from)) } };
}

/** How far the ends of a curve on this chord may turn from it before the curve folds back over the abscissa. */
export function greatestEndAngle(chord: Chord): number {
    return Math.PI / 2 - Math.abs(chord.tilt);
}
