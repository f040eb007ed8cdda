import { risingRoot } from '../roots.js';
import { tolerance } from '../tolerance.js';
import { add, cross, distance, isMeasurableLength, type Point, scale, subtract } from '../vector.js';
import { CompositeCurve } from './composite.js';
import { type Curve, type CurveOutcome, type CurveRefusal, type Interval, made, refused } from './curve.js';
import { justInside } from './curve-by-distance.js';
import { isJoined } from './joined.js';
import { LineCurve } from './line.js';
import { ParallelPiece } from './parallel-piece.js';

/** A curve that keeps its distance from another. */
export interface ParallelCurve extends Curve {
    readonly kind: 'parallel';
    readonly base: Curve;
    /** Positive towards lesser ordinates: inside a finished front by the thickness of its band. */
    readonly offset: number;
    /**
     * Straight lengths, along the tangent, by which it was continued at its ends to the abscissas of the base's ends; 0 where it
     * was cut off there instead. On them it keeps its distance from the base's end tangent. An end that stands so steep that the
     * continuation would be over four offsets long is not continued.
     */
    readonly continuedBy: { readonly start: number; readonly end: number };
}

class Parallel extends CompositeCurve implements ParallelCurve {
    readonly kind = 'parallel';

    constructor(
        readonly base: Curve,
        readonly offset: number,
        readonly continuedBy: { readonly start: number; readonly end: number },
        parts: readonly Curve[],
    ) {
        super(parts);
    }
}

/** A stretch of a parallel, or a straight continuation of one. */
type Part = ParallelPiece | LineCurve;

type MetParts = { readonly ok: true; readonly parts: readonly Part[] } | { readonly ok: false; readonly refusal: CurveRefusal };

/** How many offsets long a straight continuation may be; an end that stands steeper keeps its own, shorter span. */
const longestContinuation = 4;

/**
 * The parallel of a curve over the same span.
 *
 * At a kink the parallels of the two pieces are brought to one point: cut where they cross, or continued straight where they gape.
 * @param offset positive towards lesser ordinates, in millimetres
 * @returns refused with `cusp` where the curve bends no more gently than the offset, or a kink leaves a piece no room
 */
export function parallelCurve(base: Curve, offset: number): CurveOutcome<ParallelCurve> {
    if (!isMeasurableLength(offset)) {
        return refused({ reason: 'out-of-range' });
    }
    const pieces = isJoined(base) ? base.pieces : [base];
    let from = 0;
    for (const piece of pieces) {
        const cusp = cuspOf(piece, offset, from);
        if (cusp !== undefined) {
            return refused(cusp);
        }
        from += piece.length;
    }
    const met = meetAtKinks(
        pieces.map((piece) => new ParallelPiece(piece, offset, 0, piece.length)),
        offset,
    );
    if (!met.ok) {
        return met;
    }
    return overSpan(base, offset, met.parts);
}

/** Where a smooth curve bends as tightly as the offset, on the side it is offset to. */
function cuspOf(piece: Curve, offset: number, from: number): CurveRefusal | undefined {
    let tightest: { curvature: number; distance: number } | undefined;
    let start = 0;
    for (const to of [...piece.breaks, piece.length]) {
        for (const distance of [start, ...piece.curvaturePeaks, justInside(to, start)]) {
            const curvature = piece.curvatureAt(distance);
            if (1 + offset * curvature <= tolerance.relative && offset * curvature < offset * (tightest?.curvature ?? 0)) {
                tightest = { curvature, distance };
            }
        }
        start = to;
    }
    return tightest === undefined
        ? undefined
        : {
              reason: 'cusp',
              distance: from + tightest.distance,
              radius: 1 / Math.abs(tightest.curvature),
              at: piece.pointAt(tightest.distance),
          };
}

/** Brings neighbouring pieces, which gape or cross where the base has a kink, to one point. */
function meetAtKinks(pieces: readonly ParallelPiece[], offset: number): MetParts {
    const parts: Part[] = [];
    let current = pieces[0] as ParallelPiece;
    let from = 0;
    for (const after of pieces.slice(1)) {
        from += current.base.length;
        let next = after;
        if (distance(current.end, after.start) <= tolerance.geometry) {
            parts.push(current);
        } else if (offset * (after.angleAt(0) - current.angleAt(current.length)) > 0) {
            const corner = tangentCorner(current, after);
            parts.push(current, new LineCurve(current.end, corner), new LineCurve(corner, after.start));
        } else {
            const x = crossing(current, after, Math.sign(offset));
            if (x === undefined) {
                return { ok: false, refusal: { reason: 'cusp', distance: from, radius: 0, at: after.base.start } };
            }
            parts.push(new ParallelPiece(current.base, offset, current.from, current.baseDistanceOver(x)));
            next = new ParallelPiece(after.base, offset, after.baseDistanceOver(x), after.to);
        }
        current = next;
    }
    return { ok: true, parts: [...parts, current] };
}

/** Where the end tangent of one curve meets the start tangent of the next. */
function tangentCorner(before: Curve, after: Curve): Point {
    const along = before.tangentAt(before.length);
    const onward = after.tangentAt(0);
    return add(before.end, scale(along, cross(subtract(after.start, before.end), onward) / cross(along, onward)));
}

/** The abscissa at which one parallel passes out of the other beside a kink; undefined where a piece ends before they cross. */
function crossing(before: Curve, after: Curve, side: number): number | undefined {
    const low = Math.max(before.start.x, after.start.x);
    const high = Math.min(before.end.x, after.end.x);
    const excess = (x: number) => side * (before.valueAt(x).value - after.valueAt(x).value);
    if (!(low < high && excess(low) <= 0 && excess(high) >= 0)) {
        return undefined;
    }
    return risingRoot(excess, (x) => side * (before.slopeAt(x) - after.slopeAt(x)), low, high, (low + high) / 2);
}

/** Continues or cuts the ends so that the parallel lies over the span of its base. */
function overSpan(base: Curve, offset: number, parts: readonly Part[]): CurveOutcome<ParallelCurve> {
    const first = parts[0] as Part;
    const last = parts.at(-1) as Part;
    const longest = longestContinuation * Math.abs(offset);
    const head = straightOn(first.start, first.angleAt(0), base.span.from, -1, longest);
    const tail = straightOn(last.end, last.angleAt(last.length), base.span.to, 1, longest);
    const whole = [...(head ?? []), ...parts, ...(tail ?? [])];
    const kept = whole.flatMap((part) => cutToSpan(part, offset, base.span));
    if (kept.length === 0) {
        return refused({ reason: 'offset-leaves-span' });
    }
    return made(new Parallel(base, offset, { start: head?.[0].length ?? 0, end: tail?.[0].length ?? 0 }, kept));
}

/** The straight line on from an end along its tangent to an abscissa, where that lies onward and not too far. */
function straightOn(end: Point, angle: number, x: number, sense: 1 | -1, longest: number): readonly [LineCurve] | undefined {
    const onward = sense * (x - end.x);
    if (onward <= tolerance.geometry || onward > longest * Math.cos(angle)) {
        return undefined;
    }
    const goal = { x, y: end.y + (x - end.x) * Math.tan(angle) };
    return [sense < 0 ? new LineCurve(goal, end) : new LineCurve(end, goal)];
}

/** What of a part lies over the span, if anything. */
function cutToSpan(part: Part, offset: number, span: Interval): readonly Part[] {
    const startsBefore = part.start.x < span.from - tolerance.geometry;
    const endsAfter = part.end.x > span.to + tolerance.geometry;
    if (part.end.x <= span.from + tolerance.geometry || part.start.x >= span.to - tolerance.geometry) {
        return [];
    }
    if (!startsBefore && !endsAfter) {
        return [part];
    }
    if (part instanceof LineCurve) {
        const at = (x: number) => ({ x, y: part.valueAt(x).value });
        return [new LineCurve(startsBefore ? at(span.from) : part.start, endsAfter ? at(span.to) : part.end)];
    }
    const from = startsBefore ? part.baseDistanceOver(span.from) : part.from;
    const to = endsAfter ? part.baseDistanceOver(span.to) : part.to;
    return [new ParallelPiece(part.base, offset, from, to)];
}
