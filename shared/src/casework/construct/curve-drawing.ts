/** A declared curve drawn: its ends and pieces read, each piece made, and all joined. */
import {
    arcCurve,
    arcCurveOfRadius,
    arcCurveThrough,
    bowCurve,
    type Curve,
    type CurveOutcome,
    type CurveRefusal,
    distance,
    fairThrough,
    joined,
    lineCurve,
    type Point,
    point,
    tolerance,
} from '../../geometry/index.js';
import type { Expression, FactDeclaration, Place, Property, Span } from '../design/design.js';
import type { Axis } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { sayRefusal } from './curve-refusal.js';
import { evaluateMeasure, expectLength } from './evaluate.js';
import { axisOfFace, isFaceName } from './kinds.js';
import { numberOf } from './measures.js';
import { placeAlong } from './place.js';
import { sayLength } from './say-length.js';
import type { Scope } from './scope.js';

/** Where a curve is drawn: places along it may be turned over or moved, and depths counted from elsewhere. */
export interface CurveFrame {
    readonly placeOf: (along: number) => number;
    readonly depthFrom: number;
}
/** As the case itself counts. */
export const ownFrame: CurveFrame = { placeOf: (along) => along, depthFrom: 0 };

/** What a declared curve is read in. */
export interface CurveContext {
    readonly construction: Construction;
    readonly declaration: FactDeclaration;
    readonly build: CaseBuild;
    readonly scope: Scope;
    readonly axis: Axis;
}

/** A piece as it was drawn, with the words that say it. */
export interface DrawnPiece {
    readonly curve: Curve;
    readonly span: Span;
    /** Of a line through points, where each of those is said, by rising abscissa. */
    readonly points?: readonly Span[];
}

/** One piece as it is written: from where the one before it ends to its own `to`. */
interface WrittenPiece {
    readonly to: Property;
    readonly shape: Property | undefined;
}

/** The pieces of a declared curve, in the order of writing; undefined where one cannot be drawn, which is reported or follows from what is. */
export function drawPieces(context: CurveContext, frame: CurveFrame): readonly DrawnPiece[] | undefined {
    const from = context.declaration.properties.find(({ name }) => name === 'from');
    let start = from && endOf(context, from, 'lo', frame);
    if (!start) return undefined;
    const drawn: DrawnPiece[] = [];
    let sense = 0;
    for (const { to, shape } of piecesOf(context.declaration)) {
        const end = endOf(context, to, 'hi', frame);
        if (!end) return undefined;
        const way = Math.sign(end.x - start.x);
        if (sense !== 0 && way !== 0 && way !== sense) return reportBack(context, to, end, start);
        if (Math.abs(end.x - start.x) > tolerance.geometry) sense = way;
        const curve = drawPiece(context, frame, { start, end, shape, before: drawn.at(-1)?.curve, to });
        if (!curve) return undefined;
        const points = shape?.value?.is === 'points' ? shape.value.points.map((one) => one.span) : undefined;
        drawn.push({
            curve,
            // asked for each time: the words may have moved since, while the case that they stand in is used again
            get span() {
                return { ...to.span, end: Math.max(to.span.end, shape?.span.end ?? 0) };
            },
            ...(points ? { points: way < 0 ? points.reverse() : points } : {}),
        });
        start = end;
    }
    return drawn;
}

/** The pieces as one curve. */
export function joinPieces(context: CurveContext, pieces: readonly DrawnPiece[]): Curve | undefined {
    const [only, ...more] = pieces;
    if (!only || more.length === 0) return only?.curve;
    const outcome = joined(pieces.map(({ curve }) => curve));
    return outcome.ok ? outcome.curve : refuseCurve(context, outcome.refusal, context.declaration.nameSpan);
}

/** Reports why a curve cannot be drawn, at the words that ask for it; where those stand elsewhere, `drawn` is where the curve itself is. */
export function refuseCurve(context: CurveContext, refusal: CurveRefusal, span: Span, drawn?: Span): undefined {
    const { construction, declaration, build, axis } = context;
    const along = axis === 'x' ? 'width' : 'height';
    const said = sayRefusal(refusal, declaration.name, along, (millimetres) => sayLength(build, millimetres));
    const related = drawn ? [{ span: drawn, message: `\`${declaration.name}\`, which bends that much` }] : [];
    return construction.report(refusal.reason === 'cusp' ? 'CRV-008' : 'CRV-002', { span, ...said, related });
}

const shapes: readonly string[] = ['arc', 'bow', 'fair', 'radius'];

/** What stands behind a `to` is the shape of its piece; what stands before the first one is that of the first. */
function piecesOf({ properties }: FactDeclaration): readonly WrittenPiece[] {
    const pieces: { to: Property; shape: Property | undefined }[] = [];
    let early: Property | undefined;
    for (const property of properties) {
        const last = pieces.at(-1);
        if (property.name === 'to') {
            pieces.push({ to: property, shape: early });
            early = undefined;
        } else if (shapes.includes(property.name)) {
            if (last) last.shape ??= property;
            else early = property;
        }
    }
    return pieces;
}

function reportBack({ construction, declaration, build, axis }: CurveContext, to: Property, end: Point, start: Point): undefined {
    const [here, before] = [sayLength(build, end.x), sayLength(build, start.x)];
    return construction.report('CRV-002', {
        span: to.span,
        message: `\`${declaration.name}\` turns back here: this piece goes from ${before} to ${here} of the ${axis === 'x' ? 'width' : 'height'}, and the one before it came from the other side`,
        hint: 'write its pieces in the order in which they lie',
        found: here,
        needed: `a place on the other side of ${before}`,
    });
}

/** A depth at a place along the axis; without a place, at that end of the room. */
function endOf(context: CurveContext, { value, at }: Property, end: 'lo' | 'hi', frame: CurveFrame): Point | undefined {
    if (!value) return undefined;
    const { build, axis } = context;
    const [place] = at;
    if (place) return pointAt(context, value, place, frame);
    const depth = lengthOf(context, value);
    const along = numberOf(build.edgeOfRoom(axis, end));
    return depth === undefined || Number.isNaN(along) ? undefined : point(frame.placeOf(along), depth - frame.depthFrom);
}

function pointAt(context: CurveContext, value: Expression, place: Place, { placeOf, depthFrom }: CurveFrame): Point | undefined {
    const depth = lengthOf(context, value);
    const along = endOfRoom(context, place) ?? placeAlong(context.construction, place, context.axis, context.build.room, context.scope);
    return depth === undefined || !along ? undefined : point(placeOf(numberOf(along)), depth - depthFrom);
}

/** `at top` is the end of the room, also where the case has a part that goes by its kind: how far that reaches hangs on the curve. */
function endOfRoom({ construction, build, axis }: CurveContext, { relation, distance }: Place): Measure | undefined {
    if (relation || distance?.is !== 'name' || !isFaceName(distance.name)) return undefined;
    const declaration = construction.design.declarations.get(distance.id);
    if (declaration?.is !== 'part' || !declaration.unnamed) return undefined;
    const { axis: across, end } = axisOfFace(distance.name);
    return across === axis ? build.edgeOfRoom(axis, end) : undefined;
}

function lengthOf({ construction, scope }: CurveContext, value: Expression): number | undefined {
    const length = expectLength(construction, evaluateMeasure(construction, value, scope), value.span);
    return length && numberOf(length);
}

interface PieceToDraw {
    readonly start: Point;
    readonly end: Point;
    readonly shape: Property | undefined;
    readonly before: Curve | undefined;
    readonly to: Property;
}

function drawPiece(context: CurveContext, frame: CurveFrame, piece: PieceToDraw): Curve | undefined {
    const { start, end, shape, to } = piece;
    const value = shape?.value;
    if (!shape) return settled(context, lineCurve(start, end), () => to.span);
    if (value?.is === 'points') return drawThrough(context, frame, piece, shape, value.points);
    if (value?.is === 'word' && value.word === 'tangent') return drawTangent(context, piece, shape);
    const amount = amountOf(context, shape);
    if (amount === undefined) return undefined;
    const outcome = amount === 0 ? lineCurve(start, end) : curveOfShape(shape.name, start, end, amount);
    return settled(context, outcome, ({ reason }) => (reason === 'zero-chord' || reason === 'upright-chord' ? to : shape).span);
}

function settled(context: CurveContext, outcome: CurveOutcome, spanOf: (refusal: CurveRefusal) => Span): Curve | undefined {
    return outcome.ok ? outcome.curve : refuseCurve(context, outcome.refusal, spanOf(outcome.refusal));
}

function drawThrough(
    context: CurveContext,
    frame: CurveFrame,
    { start, end, to }: PieceToDraw,
    shape: Property,
    points: Extract<Expression, { is: 'points' }>['points'],
): Curve | undefined {
    const between = points.map(({ depth, at }) => pointAt(context, depth, at, frame));
    const known = between.filter((one) => one !== undefined);
    if (known.length < between.length) return undefined;
    const [only] = known;
    const outOfOrder = known.findIndex((one, index) => Math.sign(end.x - start.x) * (one.x - (known[index - 1] ?? start).x) <= 0);
    const isPast = (one: Point | undefined) => one !== undefined && Math.sign(end.x - start.x) * (end.x - one.x) <= 0;
    const wrong = outOfOrder >= 0 ? outOfOrder : known.findIndex(isPast);
    const at = known[wrong];
    if (at && end.x !== start.x) {
        return refuseCurve(context, { reason: 'points-out-of-order', index: wrong + 1, at }, points[wrong]?.span ?? shape.span);
    }
    const outcome = shape.name === 'arc' && only ? arcCurveThrough(start, only, end) : fairThrough([start, ...known, end]);
    return settled(context, outcome, ({ reason }) => (reason === 'points-out-of-order' ? to : shape).span);
}

/** A circle that begins as the piece before it ends. */
function drawTangent(context: CurveContext, { start, end, before, to }: PieceToDraw, shape: Property): Curve | undefined {
    if (!before) {
        return context.construction.report('CRV-002', {
            span: shape.span,
            message: `nothing of \`${context.declaration.name}\` lies before this piece that it could be tangent to`,
            hint: 'give the first piece a rise, such as `arc out 1in`',
            found: '`tangent` in the first piece',
            needed: 'a piece before it',
        });
    }
    const isOnward = end.x > start.x;
    const chord = isOnward ? Math.atan2(end.y - start.y, end.x - start.x) : Math.atan2(start.y - end.y, start.x - end.x);
    const turned = isOnward ? before.angleAt(before.length) - chord : chord - before.angleAt(0);
    const rise = (distance(start, end) / 2) * Math.tan(turned / 2);
    const outcome = Math.abs(turned) <= tolerance.angle ? lineCurve(start, end) : arcCurve(start, end, rise);
    return settled(context, outcome, ({ reason }) => (reason === 'rise-too-great' ? shape : to).span);
}

/** The rise or radius: below zero where it goes in. */
function amountOf(context: CurveContext, { value }: Property): number | undefined {
    if (!value) return undefined;
    const [word, amount] = value.is === 'worded' ? [value.word, value.value] : [undefined, value];
    const length = lengthOf(context, amount);
    if (length === undefined) return undefined;
    return word?.is === 'word' && word.word === 'in' ? -length : length;
}

function curveOfShape(shape: string, from: Point, to: Point, amount: number): CurveOutcome {
    if (shape === 'bow') return bowCurve(from, to, amount);
    return shape === 'arc' ? arcCurve(from, to, amount) : arcCurveOfRadius(from, to, amount);
}
