import { tolerance } from '../tolerance.js';
import { isMeasurable, isMeasurableLength, type Point, subtract, turnBetween } from '../vector.js';
import { type Chord, chordBetween, greatestEndAngle } from './chord.js';
import { type Curve, type CurveOutcome, made, refused } from './curve.js';
import { CurveByDistance } from './curve-by-distance.js';

/** A circular arc over the abscissa. */
export interface ArcCurve extends Curve {
    readonly kind: 'arc';
    /** From the middle of the chord, square to it: positive towards greater ordinates. */
    readonly rise: number;
    /** Always positive; Infinity when the rise is 0. */
    readonly radius: number;
}

/**
 * The formulas are written with chords and half turns from the start, so they lose no places as the radius grows without limit:
 * the chord from the start to the place at distance s has length s sin(h)/h and stands h = s curvature / 2 from the start's tangent.
 */
class CircularArc extends CurveByDistance implements ArcCurve {
    readonly kind = 'arc';
    readonly breaks: readonly number[] = [];
    readonly curvaturePeaks: readonly number[] = [];
    readonly start: Point;
    readonly end: Point;
    readonly length: number;
    readonly radius: number;
    private readonly startAngle: number;
    private readonly startSine: number;
    private readonly startCosine: number;
    private readonly curvature: number;

    constructor(
        chord: Chord,
        readonly rise: number,
    ) {
        super();
        const halfTurn = -2 * Math.atan((2 * rise) / chord.length);
        this.start = chord.from;
        this.end = chord.to;
        this.startAngle = chord.tilt - halfTurn;
        this.startSine = Math.sin(this.startAngle);
        this.startCosine = Math.max(Math.cos(this.startAngle), 0);
        this.curvature = (2 * Math.sin(halfTurn)) / chord.length;
        this.length = chord.length / sineOver(halfTurn);
        this.radius = 1 / Math.abs(this.curvature);
    }

    pointAt(distance: number): Point {
        if (distance <= 0) {
            return this.start;
        }
        if (distance >= this.length) {
            return this.end;
        }
        const halfTurn = (this.curvature * distance) / 2;
        const chord = distance * sineOver(halfTurn);
        return {
            x: this.start.x + chord * Math.cos(this.startAngle + halfTurn),
            y: this.start.y + chord * Math.sin(this.startAngle + halfTurn),
        };
    }

    angleAt(distance: number): number {
        return this.startAngle + this.curvature * Math.min(Math.max(distance, 0), this.length);
    }

    curvatureAt(): number {
        return this.curvature;
    }

    curvatureRateAt(): number {
        return 0;
    }

    protected inflectionDistances(): readonly number[] {
        return [];
    }

    /** From sin(angle) - sin(start angle) = curvature (x - start x), and the same for the cosines and y. */
    protected override valueInside(x: number): number {
        const along = x - this.start.x;
        const sine = Math.min(Math.max(this.startSine + this.curvature * along, -1), 1);
        const cosines = Math.sqrt((1 - sine) * (1 + sine)) + this.startCosine;
        return cosines > 0 ? this.start.y + (along * (sine + this.startSine)) / cosines : this.end.y;
    }

    protected override distanceInside(x: number): number {
        const chord = Math.hypot(x - this.start.x, this.valueInside(x) - this.start.y);
        const halfTurn = Math.asin(Math.min(Math.max((this.curvature * chord) / 2, -1), 1));
        return Math.min(chord / sineOver(halfTurn), this.length);
    }
}

/** sin(angle) / angle, 1 at angle 0. */
function sineOver(angle: number): number {
    return angle === 0 ? 1 : Math.sin(angle) / angle;
}

/**
 * The circular arc between two points, given in either order, with a rise.
 * @param rise from the middle of the chord, square to it, in millimetres: positive bellies towards greater ordinates
 * @returns the arc; refused when the ends span nothing or the arc would fold back over the abscissa
 */
export function arcCurve(p: Point, q: Point, rise: number): CurveOutcome<ArcCurve> {
    const found = chordBetween(p, q);
    if (!found.ok) {
        return found;
    }
    if (!isMeasurableLength(rise)) {
        return refused({ reason: 'out-of-range' });
    }
    const greatest = (found.chord.length / 2) * Math.tan(greatestEndAngle(found.chord) / 2);
    if (Math.abs(rise) > greatest + tolerance.geometry) {
        return refused({ reason: 'rise-too-great', rise, greatest });
    }
    return made(new CircularArc(found.chord, Math.min(Math.max(rise, -greatest), greatest)));
}

/**
 * The lesser circular arc between two points with a radius.
 * @param radius in millimetres: positive bellies towards greater ordinates, negative towards lesser
 */
export function arcCurveOfRadius(p: Point, q: Point, radius: number): CurveOutcome<ArcCurve> {
    const found = chordBetween(p, q);
    if (!found.ok) {
        return found;
    }
    if (!isMeasurableLength(radius)) {
        return refused({ reason: 'out-of-range' });
    }
    const least = found.chord.length / 2 / Math.sin(greatestEndAngle(found.chord));
    if (Math.abs(radius) < least - tolerance.geometry) {
        return refused({ reason: 'radius-too-small', radius, least });
    }
    const halfAngle = Math.asin(Math.min(found.chord.length / 2 / Math.abs(radius), Math.sin(greatestEndAngle(found.chord))));
    return made(new CircularArc(found.chord, Math.sign(radius) * (found.chord.length / 2) * Math.tan(halfAngle / 2)));
}

/**
 * The circular arc through three points, given in any order; it ends at the outer two.
 * Points in one line give an arc without curvature.
 */
export function arcCurveThrough(a: Point, b: Point, c: Point): CurveOutcome<ArcCurve> {
    if (!isMeasurable(a) || !isMeasurable(b) || !isMeasurable(c)) {
        return refused({ reason: 'out-of-range' });
    }
    const [first, middle, last] = [a, b, c].sort((p, q) => p.x - q.x) as [Point, Point, Point];
    for (const [p, q] of [
        [first, middle],
        [middle, last],
    ] as const) {
        const found = chordBetween(p, q);
        if (!found.ok) {
            return found;
        }
    }
    const chord = Math.hypot(last.x - first.x, last.y - first.y);
    // The chords to and from a point of a circle turn by half the angle of the whole arc at its centre.
    const halfAngle = -turnBetween(subtract(middle, first), subtract(last, middle));
    return arcCurve(first, last, (chord / 2) * Math.tan(halfAngle / 2));
}

/** Whether a curve is a circular arc. */
export function isArc(curve: Curve): curve is ArcCurve {
    return curve.kind === 'arc';
}
