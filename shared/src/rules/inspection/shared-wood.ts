/** Where two parts claim the same wood, and where a joint, a rabbet or a layer that stops short makes room for one in the other. */
import type { Casework, EdgeStep, Joint, Part } from '../../casework/index.js';
import { type Box, boxOverlap, boxSize, type SpaceAxis, tolerance } from '../../geometry/index.js';
import { letsIn } from './edge-steps.js';
import { boxAlongside, type FrontLines } from './front-line.js';
import { jointsBetween } from './neighbours.js';
import { millimetresOf } from './sound-parts.js';

const axes: readonly SpaceAxis[] = ['x', 'y', 'z'];

export interface SharedWood {
    /** The axis along which the least must be given up to part them. */
    readonly axis: SpaceAxis;
    /** How much of it is claimed twice, in mm, beyond what was made for it. */
    readonly depth: number;
    /** Whether they cross: each stands out of the other on two opposite sides. */
    readonly isCross: boolean;
}

/** So much room for another part, along an axis. */
interface Room {
    readonly axis: SpaceAxis;
    readonly depth: number;
}

/** What two parts claim twice, or undefined. */
export function sharedWood(casework: Casework, lines: FrontLines, a: Part, b: Part): SharedWood | undefined {
    const overlap = boxOverlap(boxAlongside(lines, a, b.box), boxAlongside(lines, b, a.box));
    if (!overlap || layerMakesRoom(a, overlap) || layerMakesRoom(b, overlap)) return undefined;
    const size = boxSize(overlap);
    const thinnest = thinnestAxis(overlap);
    const room = [...roomByJoints(jointsBetween(casework, a, b), thinnest), ...roomByCuts(a, b), ...roomByCuts(b, a)];
    const beyond = (room.length > 0 ? room : [{ axis: thinnest, depth: 0 }]).map(({ axis, depth }) => ({
        axis,
        depth: size[axis] - depth,
    }));
    const least = beyond.reduce((one, other) => (other.depth < one.depth ? other : one));
    return least.depth > tolerance.fit ? { ...least, isCross: standsOut(a, b) && standsOut(b, a) } : undefined;
}

/** Whether a rabbet or groove of one of two parts is made for the other. */
export function roomMade(a: Part, b: Part): boolean {
    return cutsFor(a, b).length > 0 || cutsFor(b, a).length > 0;
}

/** Whether the one stands out of the other on two opposite sides. */
function standsOut({ box: one }: Part, { box: other }: Part): boolean {
    return axes.some((axis) => one.least[axis] < other.least[axis] - tolerance.fit && one.most[axis] > other.most[axis] + tolerance.fit);
}

function thinnestAxis(box: Box): SpaceAxis {
    const size = boxSize(box);
    return size.x <= size.y && size.x <= size.z ? 'x' : size.y <= size.z ? 'y' : 'z';
}

/** A dado or a tenon lets the one into the other by what it adds to it, the way the two overlap least. */
function roomByJoints(joints: readonly Joint[], axis: SpaceAxis): readonly Room[] {
    return joints.flatMap(({ adds }) => (adds ? [{ axis, depth: millimetresOf(adds) }] : []));
}

/** A rabbet or groove of the host takes the guest in as deep as it goes; one of unknown depth, however deep. */
function roomByCuts(host: Part, guest: Part): readonly Room[] {
    const axis = host.directions.thickness;
    return cutsFor(host, guest).map(({ amount }) => ({ axis, depth: amount ? millimetresOf(amount) : Number.POSITIVE_INFINITY }));
}

function cutsFor(host: Part, guest: Part): readonly EdgeStep[] {
    return host.edges.flatMap(({ steps }) => steps).filter((step) => letsIn(step) && step.for === guest.path);
}

/** Whether no layer of the part lies in the overlap: each that would stops short of it. */
function layerMakesRoom(part: Part, overlap: Box): boolean {
    const boxes = part.layers.map(({ box }) => box);
    return boxes.length > 1 && boxes.every((box) => box !== undefined && boxOverlap(box, overlap) === undefined);
}
