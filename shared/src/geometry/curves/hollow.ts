import type { Curve, Interval, LeastRadius } from './curve.js';
import { justInside } from './curve-by-distance.js';
import { surveyOf } from './survey.js';

/**
 * Where a curve is hollowed most tightly, seen from greater ordinates: what a round cutter that works from there must get into. A corner
 * that opens towards it has radius 0.
 * @param over the abscissas between which it is looked for; all of the curve where they are not given
 * @returns undefined where the curve is hollow nowhere there
 */
export function tightestHollow(curve: Curve, over: Interval = curve.span): LeastRadius | undefined {
    const [first, last] = [curve.distanceAt(over.from), curve.distanceAt(over.to)];
    const corner = surveyOf(curve).find(
        ({ is, turn, distance }) => is === 'corner' && (turn ?? 0) > 0 && distance > first && distance < last,
    );
    if (corner) {
        return { radius: 0, distance: corner.distance, point: corner.point };
    }
    let greatest = 0;
    let at = 0;
    let start = first;
    for (const to of [...curve.breaks.filter((stop) => stop > first && stop < last), last]) {
        const inside = curve.curvaturePeaks.filter((peak) => peak > start && peak < to);
        for (const distance of [start, ...inside, justInside(to, start)]) {
            const curvature = curve.curvatureAt(distance);
            if (curvature > greatest) {
                [greatest, at] = [curvature, distance];
            }
        }
        start = to;
    }
    // Gentler than this it is a straight line: a circle of 100 km.
    return greatest <= 1e-8 ? undefined : { radius: 1 / greatest, distance: at, point: curve.pointAt(at) };
}
