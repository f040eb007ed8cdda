/** What keeps a case square when it is pushed along the wall: boards that face the room, as panels in shear. Newtons and millimetres. */
import type { Assembly, Casework, Joint, Part } from '../casework/index.js';
import { boxesShare, tolerance } from '../geometry/index.js';
import { type Fastener, type Joinery, joineryOf } from '../joinery/index.js';
import { real } from '../quantity/index.js';
import { partsIn } from './cases.js';
import { driven } from './joints/driven.js';
import type { Hold } from './joints/hold.js';
import { designFactors } from './joints/yield.js';

/** A case that stands by itself on at least two upright boards with something lying between them that is joined to both. */
export interface RackedCase {
    readonly assembly: Assembly;
    /** Over its lowest part. */
    readonly height: number;
    readonly braces: readonly Part[];
    /** What braces it from its lower half to its upper one, or in both. */
    readonly isBracedThroughout: boolean;
}

const found = new WeakMap<Casework, readonly RackedCase[]>();

/** The outermost cases that are built, are not anchored and would sway without a back; in the order of building. */
export function rackedCases(casework: Casework): readonly RackedCase[] {
    let cases = found.get(casework);
    if (!cases) {
        cases = casework.assemblies
            .filter(({ inside, count, anchor }) => inside === undefined && count > 0 && !anchor)
            .flatMap((assembly) => rackedCase(casework, assembly) ?? []);
        found.set(casework, cases);
    }
    return cases;
}

function rackedCase(casework: Casework, assembly: Assembly): RackedCase | undefined {
    const parts = partsIn(casework, assembly);
    // a case of which a part has no place may have a back yet
    if ([...(casework.unplaced ?? [])].some((path) => path.startsWith(`${assembly.path}.`))) return undefined;
    const uprights = parts.filter(({ directions }) => directions.thickness === 'x');
    const uprightPaths = new Set(uprights.map(({ path }) => path));
    if (!parts.some((part) => part.directions.thickness === 'z' && joinsTwo(casework, part, uprightPaths))) return undefined;
    const braces = parts.filter(
        (part) => part.directions.thickness === 'y' && uprights.some((one) => touch(one, part)) && isFixed(casework, part),
    );
    const { least, most } = assembly.extent;
    const middle = (least.z + most.z) / 2;
    const reaches = (holds: (part: Part) => boolean) => braces.some(holds);
    return {
        assembly,
        height: most.z - least.z,
        braces,
        isBracedThroughout: reaches(({ box }) => box.least.z < middle) && reaches(({ box }) => box.most.z > middle),
    };
}

/** Whether a lying board is joined to two upright ones: of a case whose joints are not written yet nothing is known. */
function joinsTwo(casework: Casework, { path, joints }: Part, uprights: ReadonlySet<string>): boolean {
    const joined = joints.flatMap((index) => {
        const joint = casework.joints[index];
        return joint?.touching ? [joint.enters === path ? joint.receives : joint.enters] : [];
    });
    return new Set(joined.filter((other) => uprights.has(other))).size > 1;
}

function touch(a: Part, b: Part): boolean {
    return boxesShare(a.box, b.box, -tolerance.fit);
}

/** What can be taken out, or only lies there, keeps nothing square. A joint that is missing is another mistake. */
function isFixed(casework: Casework, { joints }: Part): boolean {
    const held = joints.flatMap((index) => casework.joints[index] ?? []);
    return held.length === 0 || held.some((joint) => !joint.steps.some(({ does }) => does === 'loose' || does === 'rest'));
}

/** One board in shear: what the fasteners along its four edges may carry, and the push at its top that this comes to. */
export interface Brace {
    readonly part: Part;
    /** Between the boards along its sides, and along its bottom and top. */
    readonly wide: number;
    readonly high: number;
    readonly edges: readonly BraceEdge[];
    /** The push along its upper edge that it may take for ten minutes; undefined where one of its edges has no published value. */
    readonly capacity: number | undefined;
}

export interface BraceEdge {
    readonly side: 'left' | 'right' | 'bottom' | 'top';
    readonly holds: readonly Hold[];
    /** Of the fasteners along it; undefined where there is no figure. */
    readonly capacity: number | undefined;
}

/** The pushed case with what its back may take. */
export interface Bracing {
    readonly push: number;
    readonly braces: readonly Brace[];
    /** Of all of them; undefined where not one is known. */
    readonly capacity: number | undefined;
}

/** Base units are millimetres, kilograms and seconds: a force of one is a thousandth of a newton. */
const newton = 1 / 1000;

/**
 * A declared push against the boards that brace a case. Along a board `b` wide and `h` high a push `H` on its upper edge is a shear of
 * `H / b` on all four edges: `H` along top and bottom, `H h / b` along the sides. Statics of a panel in pure shear on a hinged frame; what
 * the joints of the frame add is not counted on. Undefined where no push is declared.
 */
export function bracingOf(casework: Casework, { assembly, braces }: RackedCase): Bracing | undefined {
    if (!assembly.push) return undefined;
    const joinery = joineryOf(casework);
    const known = braces.map((part) => braceOf(casework, joinery, part));
    const capacities = known.flatMap(({ capacity }) => (capacity === undefined ? [] : [capacity]));
    return {
        push: real.toNumber(assembly.push.quantity.value) * newton,
        braces: known,
        capacity: capacities.length === 0 ? undefined : capacities.reduce((sum, one) => sum + one, 0),
    };
}

function braceOf(casework: Casework, joinery: Joinery, part: Part): Brace {
    const joined = part.joints.flatMap((index): readonly Joined[] => {
        const joint = casework.joints[index];
        const other = joint && casework.parts.get(joint.enters === part.path ? joint.receives : joint.enters);
        return joint?.touching && other ? [{ joint, index, other }] : [];
    });
    const [left, right] = outermost(part, joined, 'x');
    const [bottom, top] = outermost(part, joined, 'z');
    const between = (low: Joined | undefined, high: Joined | undefined, axis: 'x' | 'z') =>
        low && high ? middleOf(high.other, axis) - middleOf(low.other, axis) : part.box.most[axis] - part.box.least[axis];
    const [wide, high] = [between(left, right, 'x'), between(bottom, top, 'z')];
    const edges = [
        edgeOf(casework, joinery, part, 'left', left),
        edgeOf(casework, joinery, part, 'right', right),
        edgeOf(casework, joinery, part, 'bottom', bottom),
        edgeOf(casework, joinery, part, 'top', top),
    ];
    const pushes = edges.map(({ side, capacity }) =>
        capacity === undefined ? undefined : side === 'top' || side === 'bottom' ? capacity : (capacity * wide) / high,
    );
    const capacity = pushes.includes(undefined) ? undefined : Math.min(...pushes.flatMap((one) => one ?? []));
    return { part, wide, high, edges, capacity };
}

/** A board that the bracing one is joined to. */
interface Joined {
    readonly joint: Joint;
    readonly index: number;
    readonly other: Part;
}

function middleOf({ box }: Part, axis: 'x' | 'z'): number {
    return (box.least[axis] + box.most[axis]) / 2;
}

/** The boards across an axis that lie furthest out, one in either half of the bracing board. */
function outermost(part: Part, joined: readonly Joined[], axis: 'x' | 'z'): readonly [Joined | undefined, Joined | undefined] {
    const across = joined
        .filter(({ other }) => other.directions.thickness === axis)
        .sort((a, b) => middleOf(a.other, axis) - middleOf(b.other, axis));
    const middle = middleOf(part, axis);
    const [first, last] = [across[0], across.at(-1)];
    return [
        first && middleOf(first.other, axis) < middle ? first : undefined,
        last && middleOf(last.other, axis) > middle ? last : undefined,
    ];
}

function edgeOf(casework: Casework, joinery: Joinery, part: Part, side: BraceEdge['side'], joined: Joined | undefined): BraceEdge {
    const holds = joined ? holdsOf(casework, joinery, part, joined) : [];
    const known = holds.flatMap((hold) => (hold.is === 'known' ? [hold.capacity] : []));
    return { side, holds, capacity: known.length === 0 ? undefined : known.reduce((sum, one) => sum + one, 0) };
}

function holdsOf(casework: Casework, joinery: Joinery, part: Part, { joint, index }: Joined): readonly Hold[] {
    const bySteps = new Map<number, Fastener[]>();
    for (const fastener of joinery.byPart.get(part.path)?.fasteners ?? []) {
        if (fastener.cause.is !== 'joint' || fastener.cause.joint !== index) continue;
        bySteps.set(fastener.cause.step, [...(bySteps.get(fastener.cause.step) ?? []), fastener]);
    }
    const duration = designFactors.tenMinutes;
    return joint.steps.flatMap((step, at) => driven(casework, { way: 'beside', duration }, step, bySteps.get(at) ?? []));
}
