import type { Property } from '../design/design.js';
import type { Axis, FaceName } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { closestWords } from '../vocabulary/closest-words.js';
import type { Construction } from './construction.js';
import type { Description, Scoped } from './described.js';
import { evaluate } from './evaluate.js';
import { finishFront } from './front.js';
import { axes, axisOfFace, edgesOfPart, isFaceName, type KindOfPart } from './kinds.js';
import { minus, plus } from './measures.js';
import { edgeSpot, type PlaceContext, type Placement } from './place.js';
import type { PlacedPart } from './placed-part.js';
import { rabbetFor } from './reserves.js';
import type { Spot } from './room.js';
import { type Extent, type Extents, follow, type Run } from './run.js';
import { statedSize } from './stated-size.js';
import { around, roomOf } from './thickness-place.js';

type End = 'lo' | 'hi';

/** What the text fixes of a part before it runs. Where one of these is unknown, so is the part. */
interface Fixed {
    readonly placements: ReadonlyMap<Axis, Placement>;
    readonly sizes: ReadonlyMap<Axis, Measure>;
    readonly edges: ReadonlyMap<FaceName, Spot>;
}

export function findExtents(construction: Construction, part: PlacedPart): Extents | undefined {
    const kind = part.kindOf;
    if (!kind && !part.isAssembly) return undefined;
    const thickness = part.thicknessExtent.value;
    const fixed = readFixed(construction, part, kind);
    const room = roomOf(part);
    if (!fixed || !room || (kind && !thickness)) return undefined;
    const start: Extents = kind && thickness ? { ...room, [kind.thickness]: thickness } : { ...room };
    const set = new Set<string>();
    const from: Run['from'] = { ...kind?.from, ...part.room.from };
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
        name: part.path,
    };
    const stated = new Set([...set, ...[...fixed.sizes.keys()].flatMap((axis) => [`${axis}lo`, `${axis}hi`])]);
    return finishFront(part, kind, intoCuts(construction, part, followSized(run, fixed, part), stated));
}

/** A part ends at the boards that bound it, or in them where they are cut for it. */
function intoCuts(construction: Construction, part: PlacedPart, extents: Extents, stated: ReadonlySet<string>): Extents {
    const boards = part.build.reserves.filter((reserve) => reserve.isCut && reserve.for.id === part.declaration.id).map(({ by }) => by);
    const result = { ...extents };
    for (const board of new Set(boards)) {
        const axis = board?.kindOf?.thickness;
        if (!board || !axis) continue;
        for (const end of ['lo', 'hi'] as const) {
            const spot = result[axis][end];
            if (spot.bound.part !== board.path || stated.has(axis + end)) continue;
            const measure = rabbetFor(construction, board, part, axis, end === 'lo' ? 'hi' : 'lo');
            if (measure) result[axis] = { ...result[axis], [end]: { ...spot, measure } };
        }
    }
    return result;
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

function reportUnclear(part: PlacedPart, { extents, unclear }: ReturnType<typeof follow>): Extents {
    if (!unclear) return extents;
    const { obstacle, axis } = unclear;
    const [before, after] = axis === 'z' ? ['below', 'above'] : axis === 'x' ? ['left of', 'right of'] : ['behind', 'before'];
    part.report(
        'PLC-001',
        `\`${part.name}\` meets \`${obstacle.name}\`, which stands in the middle of its way: it could go ${before} or ${after} it`,
        {
            hint:
                axis === 'x'
                    ? `put it in an opening (\`as Left, Right\` names the openings that \`${obstacle.name}\` makes, then \`in Left\`), or write \`${part.name}\` before \`${obstacle.name}\`, which then stops at it`
                    : `say \`${after} ${obstacle.name}\` or \`${before} ${obstacle.name}\`, or write \`${part.name}\` before \`${obstacle.name}\`, which then stops at it`,
            found: `two places, ${before} and ${after} \`${obstacle.name}\``,
            needed: 'one place',
        },
    );
    return extents;
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

function readFixed(construction: Construction, part: PlacedPart, kind: KindOfPart | undefined): Fixed | undefined {
    const description = part.description.value;
    if (!description) return undefined;
    const context = (scope: PlaceContext['scope']): PlaceContext => ({ construction, room: part.room, scope, asker: part });
    const placements = part.placements.value;
    const sizes = readSizes(construction, part, kind, description.properties);
    if (!placements || !sizes) return undefined;
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
            if (!spot) return undefined;
            edges.set(name, spot);
        }
    }
    return { placements, sizes, edges };
}

function readSizes(
    construction: Construction,
    part: PlacedPart,
    kind: KindOfPart | undefined,
    said: Description['properties'],
): ReadonlyMap<Axis, Measure> | undefined {
    const sizes = new Map<Axis, Measure>();
    for (const [name, axis] of sizeProperties(kind)) {
        const property = said.get(name) ?? sizeOfDesign(construction, part, name);
        if (!property?.said.value || part.shared?.axis === axis) continue;
        const size = statedSize(construction, part, property);
        if (!size) return undefined;
        sizes.set(axis, size);
    }
    return sizes;
}

/** A case inside a case is as large as its own design says, where that says it and the place does not. */
function sizeOfDesign(construction: Construction, part: PlacedPart, name: string): Scoped<Property> | undefined {
    const design = part.nested;
    const said = design?.declaration.phrases.properties.find((one) => one.name === name);
    if (!design || !said?.value) return undefined;
    if (said.value.is !== 'name' || evaluate(construction, said.value, design.scope)?.is !== 'curve') return { said, scope: design.scope };
    return construction.report('PRP-007', {
        span: part.statement.phrases.of?.span ?? part.span,
        message: `the ${name} of \`${design.declaration.name}\` is a curve: this edition builds it by itself, not in another case`,
        hint: 'it gets a straight front here; build it beside the other case with `build`',
        related: [{ span: said.span, message: 'the curve' }],
    });
}

export function reportNoSuchEdge(part: PlacedPart, name: string, span: PlacedPart['span']): void {
    const known = edgesOfPart(part.kind).map((edge) => `\`${edge}\``);
    const [near] = closestWords(name, edgesOfPart(part.kind));
    part.report('EDG-005', `a ${part.kind} has no \`${name}\` edge${near ? `; did you mean \`${near}\`?` : ''}`, {
        span,
        hint: known.length > 0 ? `its edges are ${known.join(', ')}` : 'it has no edges of its own',
        found: `\`${name}\``,
        needed: known.join(', '),
        ...(near ? { fix: { title: `write \`${near}\``, span, text: near, safe: false } } : {}),
    });
}

/** Which property gives the size along which axis. */
function sizeProperties(kind: KindOfPart | undefined): readonly (readonly [string, Axis])[] {
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
