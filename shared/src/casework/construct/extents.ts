/** Where a part begins and ends along each axis: its place, its sizes, and how far it runs in the room that is left. */
import { dimension, Rational } from '../../quantity/index.js';
import type { Axis, FaceName } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { evaluateMeasure, expectDimension } from './evaluate.js';
import { axes, axisOfFace, edgesOfPart, facesOfAxis, isFaceName, type KindOfPart } from './kinds.js';
import { because, minus, plus, smaller, times } from './measures.js';
import { edgeSpot, type PlaceContext, type Placement, placementOf } from './place.js';
import type { PlacedPart } from './placed-part.js';
import { rabbetFor, spotOfReserve } from './reserves.js';
import type { Spot } from './room.js';
import { type Extent, type Extents, follow, type Run } from './run.js';

type End = 'lo' | 'hi';

/** What the text fixes of a part before it runs. */
interface Fixed {
    readonly placements: ReadonlyMap<Axis, Placement>;
    readonly sizes: ReadonlyMap<Axis, Measure>;
    readonly edges: ReadonlyMap<FaceName, Spot>;
}

export function findExtents(construction: Construction, part: PlacedPart): Extents | undefined {
    const kind = part.kindOf;
    if (!kind && !part.isAssembly) return undefined;
    const fixed = readFixed(construction, part, kind);
    if (!fixed) return undefined;
    const room = roomOf(part);
    if (!room) return undefined;
    const start: Extents = { ...room };
    const set = new Set<string>();
    const from: Run['from'] = { ...kind?.from, ...part.room.from };
    if (kind && !placeThickness(part, kind, fixed, start, from)) return undefined;
    for (const [face, spot] of fixed.edges) fixEnd(start, set, axisOfFace(face).axis, axisOfFace(face).end, spot);
    for (const placement of fixed.placements.values()) {
        if (placement.axis === kind?.thickness || placement.end === 'middle') continue;
        if (placement.against) from[placement.axis] = placement.end;
        else fixEnd(start, set, placement.axis, placement.end, placement.spot);
    }
    if (part.shared && part.shared.axis !== kind?.thickness && !share(part, start, set)) return undefined;
    const free = axes.filter((axis) => axis !== kind?.thickness);
    const run: Run = {
        extents: start,
        free,
        fixed: set,
        from,
        through: kind ? [kind.thickness] : [],
        obstacles: part.build.partsBefore(part),
        into: (obstacle, axis) => rabbetFor(construction, obstacle, part, axis),
        name: part.path,
    };
    return finish(part, kind, followSized(run, fixed, part));
}

/** Runs once to find the ends that sizes are measured from, and once more with those sizes. */
function followSized(run: Run, fixed: Fixed, part: PlacedPart): Extents {
    const first = follow(run);
    if (fixed.sizes.size === 0) return reportUnclear(part, first);
    const extents = { ...run.extents };
    const set = new Set(run.fixed);
    for (const [axis, size] of fixed.sizes) {
        const placement = fixed.placements.get(axis);
        extents[axis] = placement?.end === 'middle' ? around(placement.spot, size) : sized(first.extents[axis], size, run, axis);
        set.add(`${axis}lo`).add(`${axis}hi`);
    }
    return reportUnclear(part, follow({ ...run, extents, fixed: set }));
}

function sized(found: Extent, size: Measure, run: Run, axis: Axis): Extent {
    const isFromHigh = run.fixed.has(`${axis}hi`) ? !run.fixed.has(`${axis}lo`) : !run.fixed.has(`${axis}lo`) && run.from[axis] === 'hi';
    const says = { kind: 'face' as const, about: ['its size', 'the text'] };
    const bound = { name: 'its size', stopped: false };
    return isFromHigh
        ? { lo: { measure: minus(found.hi.measure, size, says), bound }, hi: found.hi }
        : { lo: found.lo, hi: { measure: plus(found.lo.measure, size, says), bound } };
}

function around(middle: Spot, size: Measure): Extent {
    const says = { kind: 'operation' as const, about: ['half'] };
    const half = times(size, Rational.of(1, 2), says);
    const end = { kind: 'face' as const, about: ['its size', 'the middle'] };
    const bound = { name: 'the middle', stopped: false };
    return { lo: { measure: minus(middle.measure, half, end), bound }, hi: { measure: plus(middle.measure, half, end), bound } };
}

function reportUnclear(part: PlacedPart, { extents, unclear }: ReturnType<typeof follow>): Extents {
    if (!unclear) return extents;
    const { obstacle, axis } = unclear;
    const [before, after] = axis === 'z' ? ['below', 'above'] : axis === 'x' ? ['left of', 'right of'] : ['behind', 'before'];
    part.report(
        'PLC-001',
        `\`${part.name}\` meets \`${obstacle.name}\`, which stands in the middle of its way: it could be ${before} it or ${after} it`,
        {
            hint:
                axis === 'x'
                    ? `put it in an opening (\`as Left, Right\` names the openings that \`${obstacle.name}\` makes, then \`in Left\`), or write it before \`${obstacle.name}\`, which then stops at it`
                    : `say \`${after} ${obstacle.name}\` or \`${before} ${obstacle.name}\`, or write it before \`${obstacle.name}\`, which then stops at it`,
            found: `two places, ${before} and ${after} \`${obstacle.name}\``,
            needed: 'one place',
        },
    );
    return extents;
}

/** The room a part starts from: the opening it is in, less what is kept free for others. */
function roomOf(part: PlacedPart): Extents | undefined {
    const result = {} as Extents;
    for (const axis of axes) {
        const { lo, hi } = facesOfAxis[axis];
        const ends = { lo: part.room.face(lo, part), hi: part.room.face(hi, part) };
        if (!ends.lo || !ends.hi) return undefined;
        result[axis] = { lo: ends.lo, hi: ends.hi };
    }
    return result;
}

function fixEnd(extents: Extents, set: Set<string>, axis: Axis, end: End, spot: Spot): void {
    extents[axis] = { ...extents[axis], [end]: spot };
    set.add(axis + end);
}

function share(part: PlacedPart, extents: Extents, set: Set<string>): boolean {
    const { shared } = part;
    const [lo, hi] = [shared?.lo(), shared?.hi()];
    if (!shared || !lo || !hi) return false;
    fixEnd(extents, set, shared.axis, 'lo', lo);
    fixEnd(extents, set, shared.axis, 'hi', hi);
    return true;
}

/** Puts the thickness in its place; false where it has none, which is reported or known to be unknown. */
function placeThickness(part: PlacedPart, kind: KindOfPart, fixed: Fixed, extents: Extents, from: Run['from']): boolean {
    const axis = kind.thickness;
    const thickness = part.thickness.value;
    const extent = thicknessExtent(part, kind, fixed, extents, from, thickness);
    if (!extent || extent === 'nowhere') {
        if (extent === 'nowhere') reportNoPlace(part);
        return false;
    }
    extents[axis] = extent;
    return true;
}

function thicknessExtent(
    part: PlacedPart,
    kind: KindOfPart,
    fixed: Fixed,
    extents: Extents,
    from: Run['from'],
    thickness: Measure | undefined,
): Extent | 'nowhere' | undefined {
    const axis = kind.thickness;
    if (part.shared?.axis === axis) {
        const [lo, hi] = [part.shared.lo(), part.shared.hi()];
        return lo && hi && { lo, hi };
    }
    const placement = fixed.placements.get(axis);
    if (placement && !placement.against) {
        return placement.end === 'middle' ? thickness && around(placement.spot, thickness) : slab(placement.spot, placement.end, thickness);
    }
    const reserve = spotOfReserve(part);
    if (reserve && !placement) return slab(reserve, 'hi', thickness);
    const end = placement?.end === 'hi' || placement?.end === 'lo' ? placement.end : defaultEnd(part, kind);
    if (!end) return isPlacedElsewhere(part) ? undefined : 'nowhere';
    const left = follow({
        extents,
        free: axes,
        fixed: new Set(),
        from: { ...from, [axis]: end },
        through: [],
        obstacles: part.build.partsBefore(part),
        name: part.path,
    }).extents[axis][end];
    if (left.line) {
        return part.report('PLC-001', `\`${part.name}\` stands against a curved front, so it needs a place of its own`, {
            hint: 'say how far behind an edge it stands, such as `at 2 1/2in behind Floor.front`',
        });
    }
    return slab(left, end, thickness);
}

/** A part whose every place was wrong has had its report already. */
function isPlacedElsewhere(part: PlacedPart): boolean {
    return (part.description.value?.at?.said.length ?? 0) > 0;
}

/** Of two sides in one statement the first stands left, the second right. */
function defaultEnd(part: PlacedPart, kind: KindOfPart): End | undefined {
    if (part.kind === 'side') return part.place.count === 2 ? (part.place.index === 0 ? 'lo' : 'hi') : undefined;
    return kind.against && axisOfFace(kind.against).end;
}

function slab(spot: Spot, end: End, thickness: Measure | undefined): Extent {
    const own = { name: 'its thickness', stopped: false };
    const says = { kind: 'face' as const, about: ['its thickness', 'its place'] };
    return end === 'lo'
        ? { lo: spot, hi: { measure: plus(spot.measure, thickness, says), bound: own } }
        : { lo: { measure: minus(spot.measure, thickness, says), bound: own }, hi: spot };
}

function reportNoPlace(part: PlacedPart): void {
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
    part.report('PLC-001', `nothing says where \`${part.name}\` is`, {
        hint: hints[part.kind] ?? 'give it a place with `at`',
        needed: 'a place',
    });
}

function readFixed(construction: Construction, part: PlacedPart, kind: KindOfPart | undefined): Fixed | undefined {
    const description = part.description.value;
    if (!description) return undefined;
    const context = (scope: PlaceContext['scope']): PlaceContext => ({ construction, room: part.room, scope, asker: part });
    const placements = new Map<Axis, Placement>();
    if (description.at && !part.shared) {
        const { said, scope } = description.at;
        for (const place of placesOf(part, said)) {
            const placement = placementOf(context(scope), place, part.kind);
            if (placement) placements.set(placement.axis, placement);
        }
    }
    const sizes = new Map<Axis, Measure>();
    for (const [name, axis] of sizeProperties(part, kind)) {
        const property = description.properties.get(name);
        if (!property?.said.value || part.shared?.axis === axis) continue;
        const { value } = property.said;
        const measure = expectDimension(construction, evaluateMeasure(construction, value, property.scope), dimension.length, value.span);
        const says = { kind: 'property' as const, about: [name, part.name], span: property.said.span };
        const said = because(measure, says);
        if (said) sizes.set(axis, said);
    }
    const edges = new Map<FaceName, Spot>();
    for (const { said, scope } of description.edges) {
        const [place] = said.at ?? [];
        if (!place) continue;
        for (const { name, span } of said.edges) {
            if (!isFaceName(name) || !(part.isAssembly || edgesOfPart(part.kind).includes(name))) {
                reportNoSuchEdge(part, name, span);
                continue;
            }
            const spot = edgeSpot(context(scope), place, name);
            if (spot) edges.set(name, spot);
        }
    }
    return { placements, sizes, edges };
}

export function reportNoSuchEdge(part: PlacedPart, name: string, span: PlacedPart['span']): void {
    const known = edgesOfPart(part.kind);
    part.report('EDG-005', `a ${part.kind} has no \`${name}\` edge`, {
        span,
        hint: known.length > 0 ? `its edges are ${known.join(', ')}` : 'it has no edges of its own',
        found: name,
        needed: known.join(', '),
    });
}

/** One place for each part of a group, or all places for a single part. */
function placesOf<T>(part: PlacedPart, places: readonly T[]): readonly T[] {
    const { index, count } = part.place;
    if (count === 1) return places;
    const own = places[index];
    if (places.length === count && own !== undefined) return [own];
    if (places.length === 1) return places;
    part.report('PLC-006', `${places.length} places are given for ${count} parts`, {
        found: `${places.length} places`,
        needed: `${count} places, one for each part in order`,
    });
    return [];
}

/** Which property gives the size along which axis. */
function sizeProperties(_part: PlacedPart, kind: KindOfPart | undefined): readonly (readonly [string, Axis])[] {
    if (!kind) {
        return [
            ['width', 'x'],
            ['depth', 'y'],
            ['height', 'z'],
        ];
    }
    const named: (readonly [string, Axis])[] = [
        ['height', 'z'],
        ['depth', 'y'],
        ['length', kind.length],
        ['width', kind.width],
    ];
    return named.filter(([, axis]) => axis !== kind.thickness);
}

/** The front of a part that lies under a curve: its line, or the depth where it is. */
function finish(part: PlacedPart, kind: KindOfPart | undefined, extents: Extents): Extents {
    const { line } = extents.y.hi;
    if (!line) return extents;
    const along = extents[line.axis];
    const { lo } = extents.y;
    if (kind?.thickness === 'z' && line.over === 'height') {
        const [below, above] = [
            line.at(along.lo.measure, `the lower face of ${part.name}`),
            line.at(along.hi.measure, `the upper face of ${part.name}`),
        ];
        const bound = { name: `the curve ${line.name}`, stopped: false };
        return { ...extents, y: { lo, hi: { measure: smaller(above, below), bound } } };
    }
    const where = line.over === 'height' ? `the ends of ${part.name}` : `the width of ${part.name}`;
    const measure = line.extreme(along.lo.measure, along.hi.measure, 'greatest', where);
    return { ...extents, y: { lo, hi: { measure, bound: { name: `the curve ${line.name}`, stopped: false }, line } } };
}
