import { tolerance } from '../tolerance.js';
import { angleOf, distance, isMeasurable, type Point, subtract } from '../vector.js';
import { type Curve, type CurveOutcome, made, refused } from './curve.js';
import { CurveByDistance } from './curve-by-distance.js';
import { type EulerSpiral, spiralAngle, spiralOverChord, spiralPoint } from './euler-spiral.js';
import { fairAngles } from './fair-angles.js';
import { type Bend, inflectionsBetween } from './inflection.js';

/** The line that a batten takes through pins. */
export interface FairCurve extends Curve {
    readonly kind: 'fair';
    /** The given points, in order of the abscissa. */
    readonly points: readonly Point[];
}

/** Euler spirals end to end, one between each two points, with one tangent and one curvature where they meet. */
class EulerSpiralSpline extends CurveByDistance implements FairCurve {
    readonly kind = 'fair';
    readonly start: Point;
    readonly end: Point;
    readonly length: number;
    readonly breaks: readonly number[];
    readonly curvaturePeaks: readonly number[] = [];
    private readonly starts: readonly number[];

    constructor(
        readonly points: readonly Point[],
        private readonly spirals: readonly EulerSpiral[],
    ) {
        super();
        const starts = [0];
        for (const spiral of spirals) {
            starts.push((starts.at(-1) as number) + spiral.length);
        }
        this.length = starts.pop() as number;
        this.starts = starts;
        this.breaks = starts.slice(1);
        this.start = points[0] as Point;
        this.end = points.at(-1) as Point;
    }

    pointAt(distance: number): Point {
        if (distance >= this.length) {
            return this.end;
        }
        const [spiral, along] = this.spiralAt(distance);
        return along === 0 ? spiral.start : spiralPoint(spiral, along);
    }

    angleAt(distance: number): number {
        const [spiral, along] = this.spiralAt(distance);
        return spiralAngle(spiral, along);
    }

    curvatureAt(distance: number): number {
        const [spiral, along] = this.spiralAt(distance);
        return spiral.startCurvature + spiral.curvatureRate * along;
    }

    curvatureRateAt(distance: number): number {
        return this.spiralAt(distance)[0].curvatureRate;
    }

    /** Where the curve would turn past the upright, if it does. */
    foldsAt(): Point | undefined {
        const steep = [0, ...this.breaks, ...this.inflectionDistances(), this.length].find(
            (distance) => Math.abs(this.angleAt(distance)) > Math.PI / 2 + tolerance.angle,
        );
        return steep === undefined ? undefined : this.pointAt(steep);
    }

    protected inflectionDistances(): readonly number[] {
        return inflectionsBetween(this.spirals.flatMap((spiral, index) => spiralBends(spiral, this.starts[index] as number)));
    }

    protected override distanceInside(x: number): number {
        let low = 0;
        let high = this.points.length - 1;
        while (high - low > 1) {
            const middle = (low + high) >> 1;
            if ((this.points[middle] as Point).x <= x) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return this.distanceBetween(x, this.starts[low] as number, this.starts[high] ?? this.length);
    }

    /** The spiral at a distance held to the ends, and the distance from that spiral's start. */
    private spiralAt(distance: number): readonly [EulerSpiral, number] {
        let low = 0;
        let high = this.starts.length;
        while (high - low > 1) {
            const middle = (low + high) >> 1;
            if ((this.starts[middle] as number) <= distance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        const spiral = this.spirals[low] as EulerSpiral;
        return [spiral, Math.min(Math.max(distance - (this.starts[low] as number), 0), spiral.length)];
    }
}

/** The parts of a spiral that bend one way, at distances from the start of the curve. */
function spiralBends(spiral: EulerSpiral, from: number): readonly Bend[] {
    const to = from + spiral.length;
    const first = spiral.startCurvature;
    const last = first + spiral.curvatureRate * spiral.length;
    if (first * last >= 0) {
        return [{ from, to, curvature: Math.abs(first) > Math.abs(last) ? first : last }];
    }
    const change = from - first / spiral.curvatureRate;
    return [
        { from, to: change, curvature: first },
        { from: change, to, curvature: last },
    ];
}

/**
 * The fair line through points given in order along the abscissa, forward or back: what a batten takes that is pinned there and free
 * at its ends.
 *
 * An Euler-spiral spline: curvature is continuous, even between neighbouring points, and zero at both ends. It is close to the line
 * of least bending energy for small turning and better behaved for large (Levien, From Spiral to Spline, 2009, from memory).
 */
export function fairThrough(points: readonly Point[]): CurveOutcome<FairCurve> {
    if (points.length < 2) {
        return refused({ reason: 'too-few-points', found: points.length, needed: 2 });
    }
    if (!points.every(isMeasurable)) {
        return refused({ reason: 'out-of-range' });
    }
    const forward = (points.at(-1) as Point).x >= (points[0] as Point).x;
    const sense = forward ? 1 : -1;
    for (const [index, at] of points.entries()) {
        const before = points[index - 1];
        if (before !== undefined && sense * (at.x - before.x) <= tolerance.geometry) {
            return refused({ reason: 'points-out-of-order', index, at });
        }
    }
    const ordered = forward ? points : points.toReversed();
    const angles = fairAngles(ordered);
    if (angles === undefined) {
        return refused({ reason: 'no-fair-line' });
    }
    const curve = new EulerSpiralSpline(ordered, spiralsThrough(ordered, angles));
    const fold = curve.foldsAt();
    return fold === undefined ? made(curve) : refused({ reason: 'folds-back', at: fold });
}

/** The spirals between points whose directions there are known. */
function spiralsThrough(points: readonly Point[], angles: readonly number[]): readonly EulerSpiral[] {
    return points.slice(1).map((end, index) => {
        const start = points[index] as Point;
        const chord = distance(start, end);
        const tilt = angleOf(subtract(end, start));
        const spiral = spiralOverChord((angles[index] as number) - tilt, (angles[index + 1] as number) - tilt);
        const length = chord * spiral.length;
        return {
            start,
            startAngle: angles[index] as number,
            startCurvature: spiral.startCurvature / chord,
            curvatureRate: (spiral.endCurvature - spiral.startCurvature) / chord / length,
            length,
        };
    });
}

/** Whether a curve is that of a batten through points. */
export function isFair(curve: Curve): curve is FairCurve {
    return curve.kind === 'fair';
}
