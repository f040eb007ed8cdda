import type { Point } from '../vector.js';
import type { Curve } from './curve.js';

/** The points of a curve that lie lowest and highest over a range of abscissas. */
export interface OrdinateRange {
    readonly least: Point;
    readonly greatest: Point;
}

/** Between two abscissas, `low` no greater than `high`; where several points lie alike, the first by abscissa. */
export function ordinateRange(curve: Curve, low: number, high: number): OrdinateRange {
    const first = { x: low, y: curve.valueAt(low).value };
    let [least, greatest] = [first, first];
    const consider = (place: Point): void => {
        if (place.y < least.y) least = place;
        if (place.y > greatest.y) greatest = place;
    };
    for (const turn of curve.turns()) if (turn.x > low && turn.x < high) consider(turn);
    if (high > low) consider({ x: high, y: curve.valueAt(high).value });
    return { least, greatest };
}
