/** Where the thickness of a part lies: at its place, by its share, or against a side of the room that is left. */
import { Rational } from '../../quantity/index.js';
import type { Span } from '../design/design.js';
import type { Axis } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { bentExtent } from './front.js';
import type { FrontLine } from './front-line.js';
import { axes, axisOfFace, facesOfAxis, type KindOfPart, nameOfFace } from './kinds.js';
import { minus, plus, times } from './measures.js';
import { type Placement, placementOf } from './place.js';
import type { PlacedPart } from './placed-part.js';
import { spotOfReserve } from './reserves.js';
import type { Spot } from './room.js';
import { type Extent, type Extents, follow } from './run.js';

type End = 'lo' | 'hi';

/** Its extent along the axis of its thickness; undefined where it has none, which is reported or follows from what is. */
export function findThicknessExtent(part: PlacedPart): Extent | undefined {
    const kind = part.kindOf;
    if (!kind) return undefined;
    const axis = kind.thickness;
    if (part.shared?.axis === axis) {
        const [lo, hi] = [part.shared.lo(), part.shared.hi()];
        return lo && hi && { lo, hi };
    }
    const placements = part.placements.value;
    if (!placements) return undefined;
    const placement = placements.get(axis);
    if (placement?.spot.line) return alongCurve(part, placement.spot, placement.end === 'lo' ? 'lo' : 'hi');
    if (placement && !placement.against) {
        if (placement.end !== 'middle') return slab(part, kind, placement.spot, placement.end);
        const thickness = part.thickness.value;
        return thickness && around(placement.spot, thickness);
    }
    const reserve = spotOfReserve(part);
    if (reserve && !placement) return slab(part, kind, reserve, 'hi');
    const end = placement?.end === 'hi' || placement?.end === 'lo' ? placement.end : defaultEnd(part, kind);
    return end ? againstRoom(part, kind, end) : reportNoPlace(part);
}

/** A board that stands across is bent to a curve over the width; over the height it would have to be bent the other way too. */
function alongCurve(part: PlacedPart, spot: Spot, end: End): Extent | undefined {
    const extents = roomOf(part);
    if (!spot.line || !extents) return undefined;
    return spot.line.over === 'width' ? bentExtent(part, spot, end, extents.x) : reportAlongCurve(part, spot.line);
}

function reportAlongCurve(part: PlacedPart, { name }: FrontLine): undefined {
    const message = `\`${part.name}\` stands straight up, and the curve \`${name}\` does not: nothing says where along it \`${part.name}\` stands`;
    return part.report('PLC-001', message, {
        hint: 'say how far behind the edge of a lying board it stands, such as `at 2 1/2in behind Floor.front`',
        needed: 'a place that does not bend',
    });
}

/** Against a side of the room, or against what was written before and stands right across that side. */
function againstRoom(part: PlacedPart, kind: KindOfPart, end: End): Extent | undefined {
    const axis = kind.thickness;
    const isFirst = part.build.partsBefore(part).length === 0;
    const left = isFirst ? part.room.face(facesOfAxis[axis][end], part) : endOfRegion(part, kind, axis, end);
    if (!left) return undefined;
    return left.line ? alongCurve(part, left, end) : slab(part, kind, left, end);
}

function endOfRegion(part: PlacedPart, kind: KindOfPart, axis: Axis, end: End): Spot | undefined {
    const extents = roomOf(part);
    if (!extents) return undefined;
    const from: Partial<Record<Axis, End>> = { ...kind.from, ...part.room.from, [axis]: end };
    for (const placement of part.placements.value?.values() ?? []) if (placement.end !== 'middle') from[placement.axis] = placement.end;
    const obstacles = part.build.partsBefore(part);
    return follow({ extents, free: axes, fixed: new Set(), from, through: [], obstacles, name: part.path }).extents[axis][end];
}

/** The room a part starts from: the opening it is in, less what is kept free for others. */
export function roomOf(part: PlacedPart): Extents | undefined {
    const { known } = part;
    known.room ??= findRoom(part);
    return known.room;
}

function findRoom(part: PlacedPart): Extents | undefined {
    const [x, y, z] = [roomAlong(part, 'x'), roomAlong(part, 'y'), roomAlong(part, 'z')];
    return x && y && z && { x, y, z };
}

function roomAlong(part: PlacedPart, axis: Axis): Extent | undefined {
    const { lo, hi } = facesOfAxis[axis];
    const ends = { lo: part.room.face(lo, part), hi: part.room.face(hi, part) };
    return ends.lo && ends.hi && { lo: ends.lo, hi: ends.hi };
}

/** The places that the text gives a part, by axis; undefined where one of them came to nothing, which has been reported. */
export function findPlacements(construction: Construction, part: PlacedPart): ReadonlyMap<Axis, Placement> | undefined {
    const placements = new Map<Axis, Placement>();
    const at = part.description.value?.at;
    if (!at || part.shared) return placements;
    const places = placesOf(part, at.said);
    if (!places) return undefined;
    for (const place of places) {
        const placement = placementOf({ construction, room: part.room, scope: at.scope, asker: part }, place, part.kind);
        if (!placement) return undefined;
        if (placements.has(placement.axis)) reportTwoPlaces(part, placement.axis, place.span);
        else placements.set(placement.axis, placement);
    }
    return placements;
}

const axisInWords: Readonly<Record<Axis, string>> = { x: 'from left to right', y: 'from back to front', z: 'from bottom to top' };

function reportTwoPlaces(part: PlacedPart, axis: Axis, span: Span): void {
    part.report('PLC-006', `\`${part.name}\` is given two places ${axisInWords[axis]}`, {
        span,
        hint: 'keep one of them; several parts are counted, such as `shelf Tier[2] at 12in, 24in`',
        found: '2 places',
        needed: '1 place',
    });
}

/** Of two sides in one statement the first stands left, the second right. */
function defaultEnd(part: PlacedPart, kind: KindOfPart): End | undefined {
    if (part.kind === 'side') return part.place.count === 2 ? (part.place.index === 0 ? 'lo' : 'hi') : undefined;
    return kind.against && axisOfFace(kind.against).end;
}

/** A part is as thick as it is, from the end that is placed. */
function slab(part: PlacedPart, kind: KindOfPart, spot: Spot, end: End): Extent {
    const { lo, hi } = facesOfAxis[kind.thickness];
    const far = nameOfFace(part.kind, end === 'lo' ? hi : lo, part.hand);
    const bound = { name: 'its thickness', stopped: false };
    const says = { kind: 'face' as const, about: [far, part.name] };
    const thickness = part.thickness.value;
    return end === 'lo'
        ? { lo: spot, hi: { measure: plus(spot.measure, thickness, says), bound } }
        : { lo: { measure: minus(spot.measure, thickness, says), bound }, hi: spot };
}

/** As far to both sides of a middle. */
export function around(middle: Spot, size: Measure): Extent {
    const says = { kind: 'operation' as const, about: ['half'] };
    const half = times(size, Rational.of(1, 2), says);
    const end = { kind: 'face' as const, about: ['its size', 'the middle'] };
    const bound = { name: 'the middle', stopped: false };
    return { lo: { measure: minus(middle.measure, half, end), bound }, hi: { measure: plus(middle.measure, half, end), bound } };
}

function reportNoPlace(part: PlacedPart): undefined {
    const { count } = part.place;
    const hints: Readonly<Record<string, string>> = {
        side: 'say `at left` or `at right`, or name both sides in one line: `side Left, Right`',
        shelf:
            count > 1
                ? `say \`clear equal\`, or give ${count} heights: \`at 12in, 24in, ...\``
                : 'say where its upper face is, such as `at 12in`',
        divider:
            count > 1
                ? 'say `clear equal`, or list the openings: `clear 14in, rest, 14in`'
                : 'say `at middle`, a distance from the left, or `clear equal`',
    };
    return part.report('PLC-001', `nothing says where \`${part.name}\` is`, {
        hint: hints[part.kind] ?? 'give it a place with `at`',
        needed: 'a place',
    });
}

/** One place for each part of a group, or all places for a single part. */
function placesOf<T>(part: PlacedPart, places: readonly T[]): readonly T[] | undefined {
    const { index, count } = part.place;
    if (count === 1) return places;
    const own = places[index];
    if (places.length === count && own !== undefined) return [own];
    if (places.length === 1) return places;
    part.report('PLC-006', `${places.length} places are given for ${count} parts`, {
        found: `${places.length} places`,
        needed: `${count} places, one for each part in order`,
    });
    return undefined;
}
