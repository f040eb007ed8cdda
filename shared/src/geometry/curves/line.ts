import { angleOf, between, distance, type Point, subtract } from '../vector.js';
import { chordBetween } from './chord.js';
import { type CurveOutcome, made } from './curve.js';
import { CurveByDistance } from './curve-by-distance.js';

/** A straight piece, from the end of lesser abscissa; `lineCurve` makes it of any two points. */
export class LineCurve extends CurveByDistance {
    readonly kind = 'line';
    readonly breaks: readonly number[] = [];
    readonly curvaturePeaks: readonly number[] = [];
    readonly length: number;
    private readonly angle: number;

    constructor(
        readonly start: Point,
        readonly end: Point,
    ) {
        super();
        this.length = distance(start, end);
        this.angle = angleOf(subtract(end, start));
    }

    pointAt(distance: number): Point {
        return between(this.start, this.end, Math.min(Math.max(distance / this.length, 0), 1));
    }

    angleAt(): number {
        return this.angle;
    }

    curvatureAt(): number {
        return 0;
    }

    curvatureRateAt(): number {
        return 0;
    }

    protected inflectionDistances(): readonly number[] {
        return [];
    }

    protected override distanceInside(x: number): number {
        return ((x - this.start.x) / (this.end.x - this.start.x)) * this.length;
    }
}

/** The straight line between two points, given in either order. Refused when they are over one abscissa. */
export function lineCurve(p: Point, q: Point): CurveOutcome {
    const found = chordBetween(p, q);
    return found.ok ? made(new LineCurve(found.chord.from, found.chord.to)) : found;
}
