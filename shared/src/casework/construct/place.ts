/** Places: a distance, a way, a face. Where they lie on an axis, and which face of a part they place. */

import { Rational, real } from '../../quantity/index.js';
import type { Expression, Place, Relation } from '../design/design.js';
import type { Axis, FaceName } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { closestWords } from '../vocabulary/closest-words.js';
import type { Construction } from './construction.js';
import { evaluate, expectLength } from './evaluate.js';
import { axisOfFace, facesOfAxis, isFaceName, kindOfPart } from './kinds.js';
import { because, minus, numberOf, plus, type Says, times } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { type Asker, noOne, type Room, type Spot } from './room.js';
import type { Scope } from './scope.js';
import { describeValue, type Value } from './value.js';

type End = 'lo' | 'hi';

/** Where a part is put on one axis: which of its ends (or its middle) lies at the spot. */
export interface Placement {
    readonly axis: Axis;
    readonly end: End | 'middle';
    readonly spot: Spot;
    /** It lies against something, inside the room that is left, and yields to what was written before. */
    readonly against: boolean;
}

/** What a place is read in. */
export interface PlaceContext {
    readonly construction: Construction;
    readonly room: Room;
    readonly scope: Scope;
    readonly asker: Asker;
}

const relationAxis: Readonly<Record<Exclude<Relation, 'past' | 'short of'>, { readonly axis: Axis; readonly sign: 1 | -1 }>> = {
    above: { axis: 'z', sign: 1 },
    below: { axis: 'z', sign: -1 },
    before: { axis: 'y', sign: 1 },
    behind: { axis: 'y', sign: -1 },
    'right of': { axis: 'x', sign: 1 },
    'left of': { axis: 'x', sign: -1 },
};

/**
 * The placement of a part of a kind. A bare distance is from the room as it is stated: what is kept free there, or stands there, does not
 * move it. Undefined where the place is unknown or wrong, which has been reported. */
export function placementOf(context: PlaceContext, place: Place, kind: string): Placement | undefined {
    const { relation } = place;
    const known = kindOfPart(kind);
    if (!known || place.each) return noSuchPlace(context, place, 'a part is not put `at each` of something');
    if (relation === 'past' || relation === 'short of') {
        return noSuchPlace(
            context,
            place,
            `\`${relation}\` says where an edge is; a part is put above, below, before, behind, left of or right of something`,
        );
    }
    if (relation) {
        const { axis, sign } = relationAxis[relation];
        const spot = relatedSpot(context, place, axis, sign, sign > 0 ? 'hi' : 'lo');
        if (!spot) return undefined;
        const end = axis === known.thickness && axis === 'z' ? 'hi' : sign > 0 ? 'lo' : 'hi';
        return { axis, end, spot, against: false };
    }
    return place.distance && barePlacement(context, place, place.distance, known.thickness, axisOfFace(known.placed).end);
}

function barePlacement(context: PlaceContext, place: Place, target: Expression, normal: Axis, placed: End): Placement | undefined {
    const value = evaluate(context.construction, target, context.scope);
    if (!value) return undefined;
    switch (value.is) {
        case 'measure': {
            const from = context.room.face(facesOfAxis[normal].lo, noOne);
            const distance = expectLength(context.construction, value.measure, target.span);
            const spot = from && distance && offset(from, distance, 1, place);
            return spot && { axis: normal, end: placed, spot, against: false };
        }
        case 'word': {
            if (value.word === 'middle') return { axis: normal, end: 'middle', spot: middleOf(context, normal), against: false };
            const spot = wordSpot(context, value.word, place);
            return spot && { axis: spot.axis, end: spot.end, spot: spot.spot, against: true };
        }
        case 'face': {
            const spot = value.spot();
            return spot && { axis: value.axis, end: value.end === 'hi' ? 'lo' : 'hi', spot, against: false };
        }
        case 'parts': {
            const [part] = value.parts;
            if (!part || value.parts.length > 1) break;
            const across = spotAcross(context, part, place, normal);
            if (across) return { ...across, against: true };
            const extent = part.extents.value?.[normal];
            const room = [
                context.room.face(facesOfAxis[normal].lo, context.asker),
                context.room.face(facesOfAxis[normal].hi, context.asker),
            ];
            if (!extent || !room[0] || !room[1]) return undefined;
            const isFar = numberOf(extent.lo.measure) + numberOf(extent.hi.measure) > numberOf(room[0].measure) + numberOf(room[1].measure);
            const spot = part.faceSpot(normal, isFar ? 'lo' : 'hi');
            return spot && { axis: normal, end: isFar ? 'hi' : 'lo', spot, against: false };
        }
    }
    return noSuchPlace(context, place, `${describeValue(value)} is no place for a part`);
}

/** `rail at top` of a case with a top: the rail is at that end of the room, and what stands there stops it. */
function spotAcross(context: PlaceContext, part: PlacedPart, place: Place, normal: Axis): ReturnType<typeof wordSpot> {
    const { unnamed, name } = part.declaration;
    return unnamed && isFaceName(name) && axisOfFace(name).axis !== normal ? wordSpot(context, name, place) : undefined;
}

/** The spot of an edge: its axis and end are known, so a bare distance counts from the low side of the room. */
export function edgeSpot(context: PlaceContext, place: Place, face: FaceName): Spot | undefined {
    const { axis, end } = axisOfFace(face);
    const { relation } = place;
    if (relation === 'past' || relation === 'short of') {
        const outward = end === 'hi' ? 1 : -1;
        return relatedSpot(context, place, axis, relation === 'past' ? outward : (-outward as 1 | -1), end);
    }
    if (relation) {
        const { axis: found, sign } = relationAxis[relation];
        if (found !== axis) return noSuchPlace(context, place, `the ${face} edge moves ${wayOf(axis)}; \`${relation}\` is another way`);
        return relatedSpot(context, place, axis, sign, sign > 0 ? 'hi' : 'lo');
    }
    return place.distance && spotOnAxis(context, place, place.distance, axis, end);
}

function wayOf(axis: Axis): string {
    return axis === 'x' ? 'left and right' : axis === 'y' ? 'forward and back' : 'up and down';
}

/** Where a place lies on an axis of a room, for the ends of curves. */
export function placeAlong(construction: Construction, place: Place, axis: Axis, room: Room, scope: Scope): Measure | undefined {
    const context = { construction, room, scope, asker: noOne };
    const { relation } = place;
    if (relation === 'past' || relation === 'short of') return noSuchPlace(context, place, `\`${relation}\` says where an edge is`);
    if (!relation) return place.distance && spotOnAxis(context, place, place.distance, axis, 'hi')?.measure;
    const { axis: found, sign } = relationAxis[relation];
    if (found !== axis) return noSuchPlace(context, place, `the curve runs ${wayOf(axis)}; \`${relation}\` is another way`);
    return relatedSpot(context, place, axis, sign, sign > 0 ? 'hi' : 'lo')?.measure;
}

/** A bare target on a known axis: a distance from the low side, a face, a part's face towards it, a word. */
function spotOnAxis(context: PlaceContext, place: Place, target: Expression, axis: Axis, end: End): Spot | undefined {
    const value = evaluate(context.construction, target, context.scope);
    if (!value) return undefined;
    if (value.is === 'measure') {
        const from = context.room.face(facesOfAxis[axis].lo, noOne);
        const distance = expectLength(context.construction, value.measure, target.span);
        return from && distance && offset(from, distance, 1, place);
    }
    return targetSpot(context, place, value, axis, end);
}

/** A spot at a distance from a target, one way along an axis. `turned` is the end of the target that is turned that way. */
function relatedSpot(context: PlaceContext, place: Place, axis: Axis, sign: 1 | -1, turned: End): Spot | undefined {
    if (!place.target) return undefined;
    const value = evaluate(context.construction, place.target, context.scope);
    const spot = value && targetSpot(context, place, value, axis, turned);
    if (!spot || !place.distance) return spot;
    const measured = evaluate(context.construction, place.distance, context.scope);
    if (!measured) return undefined;
    if (measured.is !== 'measure') return noSuchPlace(context, place, `${describeValue(measured)} is no distance`);
    const distance = expectLength(context.construction, measured.measure, place.distance.span);
    return distance && offset(spot, distance, sign, place);
}

function targetSpot(context: PlaceContext, place: Place, value: Value, axis: Axis, turned: End): Spot | undefined {
    switch (value.is) {
        case 'face':
            if (value.axis === axis) return value.spot();
            return noSuchPlace(context, place, `\`${value.name}\` lies the other way: a face or part ${wayOf(axis)} of it is needed`);
        case 'word': {
            if (value.word === 'case') return context.room.build.room.face(facesOfAxis[axis][turned], noOne);
            if (value.word === 'middle') return middleOf(context, axis);
            const found = wordSpot(context, value.word, place);
            if (!found || found.axis === axis) return found?.spot;
            return noSuchPlace(context, place, `\`${value.word}\` lies the other way: something ${wayOf(axis)} of it is needed`);
        }
        case 'parts': {
            const [part] = value.parts;
            if (part && value.parts.length === 1) return part.faceSpot(axis, turned);
            return noSuchPlace(
                context,
                place,
                `\`${value.name}\` is a group of ${value.parts.length}: say which, such as \`${value.name}[1]\``,
            );
        }
        case 'opening':
            return value.room.face(facesOfAxis[axis][turned], context.asker);
        case 'curve':
            if (axis !== 'y') break;
            return { measure: undefined, bound: { name: value.law.name, stopped: false }, line: value.law };
    }
    return noSuchPlace(context, place, `${describeValue(value)} is no place`);
}

/** What is said for `middle` in everyday speech. */
const middleWords: ReadonlySet<string> = new Set(['half', 'halfway', 'centre', 'center', 'mid']);
const placeWords: readonly string[] = ['top', 'bottom', 'left', 'right', 'front', 'back', 'middle', 'floor', 'wall'];

/** A face of the room by its word; `floor` and `wall` are those of the outermost case. */
function wordSpot(
    context: PlaceContext,
    word: string,
    place: Place,
): { readonly axis: Axis; readonly end: End; readonly spot: Spot } | undefined {
    const outermost = word === 'floor' ? 'bottom' : word === 'wall' ? 'back' : undefined;
    const face = outermost ?? (isFaceName(word) ? word : undefined);
    if (!face) {
        const meant = middleWords.has(word) ? 'middle' : closestWords(word, placeWords)[0];
        const message = `\`${word}\` is no place in this case${meant === undefined ? '' : `; did you mean \`${meant}\`?`}`;
        return noSuchPlace(context, place, message, meant);
    }
    const spot = outermost ? context.room.build.outermost.room.face(face, noOne) : context.room.face(face, context.asker);
    return spot && { ...axisOfFace(face), spot };
}

function middleOf(context: PlaceContext, axis: Axis): Spot {
    const { lo, hi } = facesOfAxis[axis];
    const [a, b] = [context.room.face(lo, context.asker)?.measure, context.room.face(hi, context.asker)?.measure];
    const says = { kind: 'operation' as const, about: ['middle'] };
    return { measure: times(plus(a, b, says), Rational.of(1, 2), says), bound: { name: 'the middle', stopped: false } };
}

function offset(from: Spot, distance: Measure, sign: 1 | -1, place: Place): Spot {
    const says = { kind: 'face' as const, about: [`${sign > 0 ? 'on' : 'back'} from ${from.bound.name}`, 'the text'], span: place.span };
    const bound = { name: 'its place', stopped: false };
    if (from.line) return { ...pastLine(from, distance, sign, says), line: from.line, bound };
    const { measure } = from;
    // from the very start of an axis the place is the distance itself: a sum with zero explains nothing
    const isFromZero = sign > 0 && measure !== undefined && real.isZero(measure.quantity.value) && measure.why.inputs.length === 0;
    if (isFromZero) return { measure: because(distance, says), bound };
    return { measure: sign > 0 ? plus(measure, distance, says) : minus(measure, distance, says), bound };
}

/** A distance past a curve is kept beside it: how deep it is depends on where the part lies along the curve. */
function pastLine(from: Spot, distance: Measure, sign: 1 | -1, says: Says): Pick<Spot, 'measure' | 'beyond'> {
    const more = sign > 0 ? distance : times(distance, Rational.of(-1), says);
    const beyond = from.beyond ? plus(from.beyond, more, says) : more;
    const measure = plus(from.measure, more, says);
    return beyond ? { measure, beyond } : { measure };
}

/** @param meant the word that was probably meant for the one that stands there */
function noSuchPlace(context: PlaceContext, place: Place, message: string, meant?: string): undefined {
    return context.construction.report('PLC-010', {
        span: place.span,
        message,
        needed: 'a distance, a face, a part or a side of the room',
        ...(meant === undefined ? {} : { fix: { title: `write \`${meant}\``, span: place.span, text: meant, safe: false } }),
    });
}
