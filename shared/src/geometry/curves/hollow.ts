import type { Curve, Interval, LeastRadius } from './curve.js';
import { justInside } from './curve-by-distance.js';
import { type CurveFeature, surveyOf } from './survey.js';

/**
 * Where a curve is hollowed most tightly, seen from greater ordinates: what a round cutter that works from there must get into. Corners
 * are not looked at: see `innerCorners`.
 * @param over the abscissas between which it is looked for; all of the curve where they are not given
 * @returns undefined where the curve is hollow nowhere there
 */
export function tightestHollow(curve: Curve, over: Interval = curve.span): LeastRadius | undefined {
    const [first, last] = [curve.distanceAt(over.from), curve.distanceAt(over.to)];
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

/** Corners that open towards greater ordinates, into which no round cutter gets. */
export function innerCorners(curve: Curve, over: Interval = curve.span): readonly CurveFeature[] {
    return surveyOf(curve).filter(({ is, turn, point }) => is === 'corner' && (turn ?? 0) > 0 && point.x > over.from && point.x < over.to);
}

/** How much wood a round cutter leaves in a corner, from the corner to the cutter (geometry of the circle that touches both sides). */
export function leftInCorner(turn: number, radius: number): number {
    return radius * (1 / Math.cos(turn / 2) - 1);
}
