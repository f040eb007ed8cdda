import { tolerance } from '../tolerance.js';
import type { Point } from '../vector.js';
import type { Curve, LeastRadius } from './curve.js';
import { CurveByDistance, justInside, turningPoints } from './curve-by-distance.js';
import { type Bend, inflectionsBetween } from './inflection.js';

/** Curves end to end, in order of the abscissa, taken as one. At a joint the later piece counts. */
export abstract class CompositeCurve extends CurveByDistance {
    readonly start: Point;
    readonly end: Point;
    readonly length: number;
    readonly breaks: readonly number[];
    readonly curvaturePeaks: readonly number[];
    /** Distance to the start of each piece. */
    protected readonly starts: readonly number[];

    /** @param pieces at least one, each beginning where the one before it ends */
    constructor(protected readonly parts: readonly Curve[]) {
        super();
        const starts = [0];
        for (const part of parts) {
            starts.push((starts.at(-1) as number) + part.length);
        }
        this.length = starts.pop() as number;
        this.starts = starts;
        this.start = (parts[0] as Curve).start;
        this.end = (parts.at(-1) as Curve).end;
        this.breaks = parts.flatMap((part, index) => {
            const from = starts[index] as number;
            return [...(index === 0 ? [] : [from]), ...part.breaks.map((distance) => from + distance)];
        });
        this.curvaturePeaks = parts.flatMap((part, index) => part.curvaturePeaks.map((distance) => (starts[index] as number) + distance));
    }

    pointAt(distance: number): Point {
        if (distance >= this.length) {
            return this.end;
        }
        const [part, along] = this.partAt(distance);
        return part.pointAt(along);
    }

    angleAt(distance: number): number {
        const [part, along] = this.partAt(distance);
        return part.angleAt(along);
    }

    curvatureAt(distance: number): number {
        const [part, along] = this.partAt(distance);
        return part.curvatureAt(along);
    }

    curvatureRateAt(distance: number): number {
        const [part, along] = this.partAt(distance);
        return part.curvatureRateAt(along);
    }

    override leastRadius(): LeastRadius {
        let least: LeastRadius = { radius: Infinity, distance: 0, point: this.start };
        for (const [index, part] of this.parts.entries()) {
            const found = part.leastRadius();
            if (found.radius < least.radius) {
                least = { ...found, distance: (this.starts[index] as number) + found.distance };
            }
        }
        return least;
    }

    protected override findTurns(): readonly Point[] {
        return turningPoints([this.start, ...this.parts.flatMap((part) => [...part.turns(), part.end])]);
    }

    protected inflectionDistances(): readonly number[] {
        return inflectionsBetween(this.parts.flatMap((part, index) => bendsOf(part, this.starts[index] as number)));
    }

    protected override distanceInside(x: number): number {
        const index = this.indexWhere((part) => part.start.x <= x);
        return (this.starts[index] as number) + (this.parts[index] as Curve).distanceAt(x);
    }

    protected override valueInside(x: number): number {
        return (this.parts[this.indexWhere((part) => part.start.x <= x)] as Curve).valueAt(x).value;
    }

    private partAt(distance: number): readonly [Curve, number] {
        const index = this.indexWhere((_, at) => (this.starts[at] as number) <= distance);
        return [this.parts[index] as Curve, distance - (this.starts[index] as number)];
    }

    /** The last piece that has begun; the first where none has. */
    private indexWhere(begun: (part: Curve, index: number) => boolean): number {
        let low = 0;
        let high = this.parts.length;
        while (high - low > 1) {
            const middle = (low + high) >> 1;
            if (begun(this.parts[middle] as Curve, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}

/** The parts of a curve that bend one way, at distances counted from elsewhere. */
function bendsOf(curve: Curve, from: number): readonly Bend[] {
    const stations = [0, ...curve.breaks, ...curve.inflections().map(({ distance }) => distance), curve.length].sort((a, b) => a - b);
    return stations.slice(1).map((to, index) => {
        const start = stations[index] as number;
        const places = [start, (start + to) / 2, justInside(to, start)];
        const curvature = places.map((place) => curve.curvatureAt(place)).reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
        return { from: from + start, to: from + to, curvature };
    });
}

/** How well two curves go on into one another where one begins and the other ends. */
export interface CurveJoint {
    readonly distance: number;
    readonly point: Point;
    /** Distance between the two ends, within the geometry tolerance. */
    readonly gap: number;
    /** Change of direction, counter-clockwise positive: not zero at a kink. */
    readonly turn: number;
    /** Change of curvature. */
    readonly curvatureJump: number;
    /** The highest of position, tangent and curvature that goes on without a break. */
    readonly continuity: 'position' | 'tangent' | 'curvature';
}

/** The joint of two curves, at a distance along the whole. */
export function jointBetween(before: Curve, after: Curve, distance: number): CurveJoint {
    const turn = after.angleAt(0) - before.angleAt(before.length);
    const curvatureJump = after.curvatureAt(0) - before.curvatureAt(before.length);
    const smooth = Math.abs(turn) <= tolerance.angle;
    return {
        distance,
        point: after.start,
        gap: Math.hypot(after.start.x - before.end.x, after.start.y - before.end.y),
        turn,
        curvatureJump,
        continuity: !smooth ? 'position' : Math.abs(curvatureJump) <= tolerance.curvature ? 'curvature' : 'tangent',
    };
}
