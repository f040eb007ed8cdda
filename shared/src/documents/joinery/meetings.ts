/** Where parts meet: on which face or edge of the receiving part, and how far the entering one lies from that part's own edges. */
import type { Casework, FaceName, Joint, Part } from '../../casework/index.js';
import { type Box, type Interval, type SpaceAxis, tolerance } from '../../geometry/index.js';
import { real } from '../../quantity/index.js';

/** A joint as it is marked out on the part that receives. Lengths in millimetres. */
export interface Meeting {
    readonly joint: Joint;
    readonly enters: Part;
    readonly receives: Part;
    /** The side of the receiving part that is met, and whether that is a face of the board or an edge. */
    readonly side: FaceName;
    readonly isFace: boolean;
    /** How deep it enters: 0 where the two only touch. */
    readonly depth: number;
    /** Across the entering board: from its one face to its other, measured from an edge of the receiving part. Not of a bent board, whose ends lie askew. */
    readonly lines: Measured | undefined;
    /** Along the meeting, measured likewise. */
    readonly reach: Measured | undefined;
    /** Where fasteners stand along the meeting, for each step of the joint that says its count and how far the first is from the end. */
    readonly fasteners: readonly { readonly does: string; readonly at: readonly number[] }[];
}

/** A stretch from an edge of the receiving part. */
export interface Measured {
    readonly from: FaceName;
    readonly stretch: Interval;
}

const axes: readonly SpaceAxis[] = ['x', 'y', 'z'];
/** The edges that everything is measured from: one datum for each direction. */
const datums: Readonly<Record<SpaceAxis, FaceName>> = { x: 'left', y: 'back', z: 'bottom' };
const sides: Readonly<Record<SpaceAxis, readonly [low: FaceName, high: FaceName]>> = {
    x: ['left', 'right'],
    y: ['back', 'front'],
    z: ['bottom', 'top'],
};

/** The meetings of all joints between parts that touch or overlap, by the part that receives, in the order in which parts are built. */
export function meetingsOf(casework: Casework): readonly (readonly [part: Part, meetings: readonly Meeting[]])[] {
    return [...casework.parts.values()].flatMap((part) => {
        const meetings = part.joints.flatMap((index) => {
            const joint = casework.joints[index];
            const enters = joint?.receives === part.path ? casework.parts.get(joint.enters) : undefined;
            return joint && enters ? (meetingOf(joint, enters, part) ?? []) : [];
        });
        const inOrder = [...meetings].sort((one, other) => (one.lines?.stretch.from ?? 0) - (other.lines?.stretch.from ?? 0));
        return meetings.length === 0 ? [] : [[part, inOrder] as const];
    });
}

function meetingOf(joint: Joint, enters: Part, receives: Part): Meeting | undefined {
    const overlap = (axis: SpaceAxis) =>
        Math.min(enters.box.most[axis], receives.box.most[axis]) - Math.max(enters.box.least[axis], receives.box.least[axis]);
    const contact = axes.reduce((one, other) => (overlap(other) < overlap(one) - tolerance.fit ? other : one));
    if (axes.some((axis) => overlap(axis) < -tolerance.fit)) return undefined;
    const across = enters.directions.thickness === contact ? undefined : enters.directions.thickness;
    const along = axes.filter((axis) => axis !== contact && axis !== across);
    const longest = along.reduce((one, other) => (overlap(other) > overlap(one) ? other : one));
    const [low, high] = sides[contact];
    const reach = measured(longest, enters.box, receives.box);
    return {
        joint,
        enters,
        receives,
        side: middle(enters.box, contact) > middle(receives.box, contact) ? high : low,
        isFace: receives.directions.thickness === contact,
        depth: Math.max(0, overlap(contact)),
        lines: across && !enters.bent ? measured(across, enters.box, receives.box) : undefined,
        reach,
        fasteners: fastenersOf(joint, reach.stretch),
    };
}

function middle({ least, most }: Box, axis: SpaceAxis): number {
    return (least[axis] + most[axis]) / 2;
}

/** The part of the entering box that lies within the receiving one, from the datum of that one. */
function measured(axis: SpaceAxis, enters: Box, receives: Box): Measured {
    const from = Math.max(enters.least[axis], receives.least[axis]) - receives.least[axis];
    const to = Math.min(enters.most[axis], receives.most[axis]) - receives.least[axis];
    return { from: datums[axis], stretch: { from, to } };
}

/** From the first to the last at their insets, at even spaces; nothing where the joint does not say both. */
function fastenersOf(joint: Joint, { from, to }: Interval): Meeting['fasteners'] {
    return joint.steps.flatMap(({ does, count, inset }) => {
        if (count === undefined || !inset) return [];
        const end = real.toNumber(inset.quantity.value);
        const space = count > 1 ? (to - from - 2 * end) / (count - 1) : 0;
        if (space < 0) return [];
        return [{ does, at: Array.from({ length: count }, (_, index) => from + end + index * space) }];
    });
}
