import type { Point } from '../vector.js';

/** A closed range of abscissas, in millimetres. */
export interface Interval {
    readonly from: number;
    readonly to: number;
}

/** The ordinate of a curve over an abscissa; past the ends of the curve it is the end's own, and `beyond` is true. */
export interface CurveValue {
    readonly value: number;
    readonly beyond: boolean;
}

/** A place on a curve: distance along it from its start, and the point. */
export interface CurvePlace {
    readonly distance: number;
    readonly point: Point;
}

/** Where a curve bends most. A straight curve has radius Infinity, at its start. */
export interface LeastRadius extends CurvePlace {
    readonly radius: number;
}

export type CurveKind = 'line' | 'arc' | 'bow' | 'fair' | 'joined' | 'parallel';

/**
 * A plane curve that lies over a span of the abscissa `x` without folding back: depth `y` over height or over width.
 *
 * It runs from its start (least abscissa) to its end. Places on it are given by `distance`, the arc length from its start
 * (held to 0 and `length`), or by the abscissa `x`. Millimetres and radians. Curvature is positive where the curve turns
 * counter-clockwise, that is where it is hollow seen from greater `y`; a line bellied towards greater `y` has negative curvature.
 */
export interface Curve {
    readonly kind: CurveKind;
    readonly span: Interval;
    /** Arc length from start to end. */
    readonly length: number;
    readonly start: Point;
    readonly end: Point;
    /** Distances, between the ends, at which the law of the curve changes: joints of pieces, given points of a batten. */
    readonly breaks: readonly number[];
    /** Distances, between the ends and apart from the breaks, at which the curvature may be greatest or least. */
    readonly curvaturePeaks: readonly number[];

    pointAt(distance: number): Point;
    /** Direction of travel from the x axis, in [-pi/2, pi/2]. */
    angleAt(distance: number): number;
    tangentAt(distance: number): Point;
    curvatureAt(distance: number): number;
    /** Change of curvature along the curve, d(curvature)/d(distance). */
    curvatureRateAt(distance: number): number;

    /** Distance along the curve from its start to the place over `x`; held to the ends. */
    distanceAt(x: number): number;
    valueAt(x: number): CurveValue;
    /** dy/dx over `x`: at a kink that of the piece that begins there, 0 past the ends, infinite where the curve is upright. */
    slopeAt(x: number): number;
    /** The abscissas, rising, at which the ordinate is `value`; a level stretch gives its two ends. */
    abscissasAt(value: number): readonly number[];

    /** Where, between the ends, the ordinate turns from rising to falling or back: at a level place or a kink. By rising abscissa. */
    turns(): readonly Point[];

    leastRadius(): LeastRadius;
    /** Where the curvature changes sign between the ends; of a straight stretch between two opposite bends, its first point. */
    inflections(): readonly CurvePlace[];
    /**
     * Points on the curve, both ends included, whose polyline is nowhere further from it than `within` (held to no less than the
     * geometry tolerance, and to 100,000 points between two breaks).
     */
    sample(within: number): readonly Point[];
}

/** Why no such curve exists, with the numbers that a message needs. */
export type CurveRefusal =
    /** An argument is no number, or greater than the geometry can work with. */
    | { readonly reason: 'out-of-range' }
    | { readonly reason: 'zero-chord'; readonly at: Point }
    /** The ends are over one abscissa, so the curve spans nothing. */
    | { readonly reason: 'upright-chord'; readonly at: Point }
    /** With this rise the curve would fold back over the abscissa; `greatest` is the last rise that does not. */
    | { readonly reason: 'rise-too-great'; readonly rise: number; readonly greatest: number }
    /** No arc of this radius spans the chord without folding back; `least` is the first that does. */
    | { readonly reason: 'radius-too-small'; readonly radius: number; readonly least: number }
    /** The curve would go back over the abscissa at this point. */
    | { readonly reason: 'folds-back'; readonly at: Point }
    | { readonly reason: 'too-few-points'; readonly found: number; readonly needed: number }
    | { readonly reason: 'no-pieces' }
    /** Points must go forward along the abscissa; this one does not. */
    | { readonly reason: 'points-out-of-order'; readonly index: number; readonly at: Point }
    /** The search for a fair line through these points did not settle. */
    | { readonly reason: 'no-fair-line' }
    /** Piece `index`, as given, does not begin where the one before it along the abscissa ends. */
    | { readonly reason: 'pieces-apart'; readonly index: number; readonly gap: number; readonly at: Point }
    /** Nothing of the parallel lies over the span of its base. */
    | { readonly reason: 'offset-leaves-span' }
    /** The curve bends tighter here than the offset is wide, so the parallel would cusp; radius 0 where it is a corner that leaves no room. */
    | { readonly reason: 'cusp'; readonly distance: number; readonly radius: number; readonly at: Point };

export type CurveOutcome<Found extends Curve = Curve> =
    | { readonly ok: true; readonly curve: Found }
    | { readonly ok: false; readonly refusal: CurveRefusal };

export function made<Found extends Curve>(curve: Found): CurveOutcome<Found> {
    return { ok: true, curve };
}

export function refused(refusal: CurveRefusal): { readonly ok: false; readonly refusal: CurveRefusal } {
    return { ok: false, refusal };
}
