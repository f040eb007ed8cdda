import { tolerance } from './tolerance.js';
import type { SpacePoint } from './vector.js';

export type SpaceAxis = 'x' | 'y' | 'z';
const axes: readonly SpaceAxis[] = ['x', 'y', 'z'];

/** A box whose faces are square to the axes, in millimetres; `least` is nowhere greater than `most`. */
export interface Box {
    readonly least: SpacePoint;
    readonly most: SpacePoint;
}

/** The box with two opposite corners, in whatever order. */
export function boxBetween(a: SpacePoint, b: SpacePoint): Box {
    return {
        least: { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y), z: Math.min(a.z, b.z) },
        most: { x: Math.max(a.x, b.x), y: Math.max(a.y, b.y), z: Math.max(a.z, b.z) },
    };
}

/** The sizes of a box along the axes. */
export function boxSize(box: Box): SpacePoint {
    return { x: box.most.x - box.least.x, y: box.most.y - box.least.y, z: box.most.z - box.least.z };
}

/** Volume of a box, in cubic millimetres. */
export function boxVolume(box: Box): number {
    const size = boxSize(box);
    return size.x * size.y * size.z;
}

/** What two boxes have in common, when that is more than the tolerance along every axis; boxes that only touch have nothing. */
export function boxOverlap(a: Box, b: Box, within: number = tolerance.fit): Box | undefined {
    if (!boxesShare(a, b, within)) return undefined;
    return {
        least: { x: Math.max(a.least.x, b.least.x), y: Math.max(a.least.y, b.least.y), z: Math.max(a.least.z, b.least.z) },
        most: { x: Math.min(a.most.x, b.most.x), y: Math.min(a.most.y, b.most.y), z: Math.min(a.most.z, b.most.z) },
    };
}

/** Whether two boxes share more than the tolerance along every axis; with a tolerance below zero, whether they come so near to each other. */
export function boxesShare(a: Box, b: Box, within: number = tolerance.fit): boolean {
    return sharedAlong(a, b, 'x') > within && sharedAlong(a, b, 'y') > within && sharedAlong(a, b, 'z') > within;
}

/** How much two boxes share along an axis; below zero, how far they are apart. */
function sharedAlong(a: Box, b: Box, axis: SpaceAxis): number {
    return Math.min(a.most[axis], b.most[axis]) - Math.max(a.least[axis], b.least[axis]);
}

/** The volume of what two boxes have in common, 0 where that is within the tolerance along any axis; in cubic millimetres. */
export function boxOverlapVolume(a: Box, b: Box, within: number = tolerance.fit): number {
    const overlap = boxOverlap(a, b, within);
    return overlap === undefined ? 0 : boxVolume(overlap);
}

/**
 * The axis square to the faces with which two boxes touch: there they meet within the tolerance, along the other two axes they share
 * more than the tolerance. Boxes that overlap, stand apart or share no more than an edge touch along no axis.
 */
export function boxContact(a: Box, b: Box, within: number = tolerance.fit): SpaceAxis | undefined {
    let meeting: SpaceAxis | undefined;
    for (const axis of axes) {
        const shared = sharedAlong(a, b, axis);
        if (shared > within) continue;
        if (shared < -within || meeting !== undefined) return undefined;
        meeting = axis;
    }
    return meeting;
}

/** The least box around all the boxes; none around no box. */
export function boxAround(boxes: Iterable<Box>): Box | undefined {
    let around: Box | undefined;
    for (const box of boxes) {
        around =
            around === undefined
                ? box
                : {
                      least: boxBetween(around.least, box.least).least,
                      most: boxBetween(around.most, box.most).most,
                  };
    }
    return around;
}

/** Whether the inner box stands out of the outer by no more than the tolerance. */
export function boxContains(outer: Box, inner: Box, within: number = tolerance.fit): boolean {
    return axes.every((axis) => inner.least[axis] >= outer.least[axis] - within && inner.most[axis] <= outer.most[axis] + within);
}

/** Whether a point is inside a box or outside it by no more than the tolerance along each axis. */
export function boxContainsPoint(box: Box, place: SpacePoint, within: number = tolerance.fit): boolean {
    return boxContains(box, { least: place, most: place }, within);
}

/** The box displaced. */
export function moveBox(box: Box, by: SpacePoint): Box {
    return {
        least: { x: box.least.x + by.x, y: box.least.y + by.y, z: box.least.z + by.z },
        most: { x: box.most.x + by.x, y: box.most.y + by.y, z: box.most.z + by.z },
    };
}

/** The mirror image of a box in the plane square to an axis at a place along it. */
export function mirrorBox(box: Box, axis: SpaceAxis, at: number): Box {
    return {
        least: { ...box.least, [axis]: 2 * at - box.most[axis] },
        most: { ...box.most, [axis]: 2 * at - box.least[axis] },
    };
}
