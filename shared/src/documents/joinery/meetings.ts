/** Where parts meet, as it is marked out on either of them: from the features and contacts of the joinery. */
import type { Axis, Casework, FaceName, Joint, Part } from '../../casework/index.js';
import type { Box, Interval } from '../../geometry/index.js';
import { type Contact, centreOf, datums, type Feature, joineryOf, lengthOf, spanOf } from '../../joinery/index.js';

/** A joint as it is marked out on one of its parts. Lengths in millimetres. */
export interface Meeting {
    readonly joint: Joint;
    /** The part that is marked, and the one that it meets. */
    readonly on: Part;
    readonly meets: Part;
    /** The side of the marked part on which it meets the other, and whether that is a face of the board or an edge. */
    readonly side: FaceName;
    readonly isFace: boolean;
    /** How deep the other enters: 0 where the two only touch, or where the marked part is the one that enters. */
    readonly depth: number;
    /** Across the entering board: from its one face to its other. Only on the part that receives, and not of a bent board. */
    readonly lines: Measured | undefined;
    /** Along the meeting, as far as there is wood in both. */
    readonly reach: Measured | undefined;
    /** Where holes and slots are cut in the marked part along the meeting, for each step of the joint. */
    readonly fasteners: readonly { readonly does: string; readonly at: readonly number[] }[];
}

/** A stretch from an edge of the marked part. */
export interface Measured {
    readonly from: FaceName;
    readonly stretch: Interval;
}

/** The meetings of all joints between parts that touch or overlap, by the part that is marked, in the order in which parts are built. */
export function meetingsOf(casework: Casework): readonly (readonly [part: Part, meetings: readonly Meeting[]])[] {
    const { byPart } = joineryOf(casework);
    return [...casework.parts.values()].flatMap((part) => {
        const own = byPart.get(part.path);
        if (!own) return [];
        const received = own.receives.flatMap((contact) => onReceiving(casework, contact, part, own.features) ?? []);
        const entered = own.enters.flatMap((contact) => onEntering(casework, contact, part, own.features) ?? []);
        const inOrder = received.sort((one, other) => (one.lines?.stretch.from ?? 0) - (other.lines?.stretch.from ?? 0));
        return inOrder.length + entered.length === 0 ? [] : [[part, [...inOrder, ...entered]] as const];
    });
}

function onReceiving(casework: Casework, contact: Contact, part: Part, features: readonly Feature[]): Meeting | undefined {
    const joint = casework.joints[contact.joint];
    const enters = casework.parts.get(contact.enters);
    if (!joint || !enters) return undefined;
    const { thickness } = enters.directions;
    const across = thickness === contact.axis ? undefined : thickness;
    return {
        joint,
        on: part,
        meets: enters,
        side: contact.sideOfReceiving,
        isFace: part.directions.thickness === contact.axis,
        depth: contact.depth,
        lines: across && !enters.bent ? measured(across, clipped(spanOf(enters.box, across), part.box, across), part) : undefined,
        reach: measured(contact.along, contact.reach, part),
        fasteners: centresOf(joint, contact, part, features),
    };
}

/** Of the part that enters only what is cut in it: undefined where nothing is. */
function onEntering(casework: Casework, contact: Contact, part: Part, features: readonly Feature[]): Meeting | undefined {
    const joint = casework.joints[contact.joint];
    const receives = casework.parts.get(contact.receives);
    const fasteners = joint ? centresOf(joint, contact, part, features) : [];
    if (!joint || !receives || fasteners.length === 0) return undefined;
    return {
        joint,
        on: part,
        meets: receives,
        side: contact.sideOfEntering,
        isFace: part.directions.thickness === contact.axis,
        depth: 0,
        lines: undefined,
        reach: measured(contact.along, contact.reach, part),
        fasteners,
    };
}

function clipped({ from, to }: Interval, box: Box, axis: Axis): Interval {
    const within = spanOf(box, axis);
    return { from: Math.max(from, within.from), to: Math.min(to, within.to) };
}

/** A stretch in space, from the datum of a part. */
function measured(axis: Axis, { from, to }: Interval, { box }: Part): Measured {
    const start = box.least[axis];
    return { from: datums[axis], stretch: { from: from - start, to: to - start } };
}

/** The marks of each step along a joint, from the datum of the part that is marked; one mark for all holes of one screw. */
function centresOf({ steps }: Joint, contact: Contact, { box }: Part, features: readonly Feature[]): Meeting['fasteners'] {
    const bySteps = new Map<number, number[]>();
    for (const feature of features) {
        const { cause } = feature;
        const centre = cause.is === 'joint' && cause.joint === contact.joint ? centreOf(feature) : undefined;
        if (!centre || cause.is !== 'joint') continue;
        const at = centre[contact.along] - box.least[contact.along];
        const known = bySteps.get(cause.step) ?? [];
        if (!known.some((place) => lengthOf({ from: Math.min(place, at), to: Math.max(place, at) }) < 0.001)) known.push(at);
        bySteps.set(cause.step, known);
    }
    return [...bySteps].map(([step, at]) => ({ does: steps[step]?.does ?? '', at }));
}
