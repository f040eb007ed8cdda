/** Axes, sides and boxes, as joints are reckoned with. */
import type { Axis, FaceName, Part } from '../casework/index.js';
import type { Box, Interval, SpacePoint } from '../geometry/index.js';

export const axes: readonly Axis[] = ['x', 'y', 'z'];

/** The sides of a part at the low and at the high end of each axis. */
const sidesOf: Readonly<Record<Axis, readonly [low: FaceName, high: FaceName]>> = {
    x: ['left', 'right'],
    y: ['back', 'front'],
    z: ['bottom', 'top'],
};

/** The edges that everything is measured from: one datum for each direction. */
export const datums: Readonly<Record<Axis, FaceName>> = { x: 'left', y: 'back', z: 'bottom' };

const places: Readonly<Record<FaceName, { readonly axis: Axis; readonly way: -1 | 1 }>> = {
    left: { axis: 'x', way: -1 },
    right: { axis: 'x', way: 1 },
    back: { axis: 'y', way: -1 },
    front: { axis: 'y', way: 1 },
    bottom: { axis: 'z', way: -1 },
    top: { axis: 'z', way: 1 },
};

/** The axis that is square to a side, and which way it looks out along it. */
export function wayOf(side: FaceName): { readonly axis: Axis; readonly way: -1 | 1 } {
    return places[side];
}

export function sideAt(axis: Axis, way: number): FaceName {
    return sidesOf[axis][way < 0 ? 0 : 1];
}

export function oppositeSide(side: FaceName): FaceName {
    const { axis, way } = places[side];
    return sideAt(axis, -way);
}

/** The axis that is neither of two. */
export function thirdAxis(one: Axis, other: Axis): Axis {
    return axes.find((axis) => axis !== one && axis !== other) ?? one;
}

/** The unit vector along an axis, one way or the other. */
export function along(axis: Axis, way = 1): SpacePoint {
    return { ...origin, [axis]: way };
}

export const origin: SpacePoint = { x: 0, y: 0, z: 0 };

export function displaced(place: SpacePoint, by: SpacePoint, factor = 1): SpacePoint {
    return { x: place.x + factor * by.x, y: place.y + factor * by.y, z: place.z + factor * by.z };
}

export function spanOf({ least, most }: Box, axis: Axis): Interval {
    return { from: least[axis], to: most[axis] };
}

export function withSpan({ least, most }: Box, axis: Axis, { from, to }: Interval): Box {
    return { least: { ...least, [axis]: from }, most: { ...most, [axis]: to } };
}

export function middleOf({ from, to }: Interval): number {
    return (from + to) / 2;
}

export function lengthOf({ from, to }: Interval): number {
    return to - from;
}

/** Where a side of a box lies along its axis. */
export function placeOfSide(box: Box, side: FaceName): number {
    const { axis, way } = places[side];
    return way < 0 ? box.least[axis] : box.most[axis];
}

/** How thick a part is, in millimetres, by its box; of a bent one, how far it reaches. */
export function stockOf({ box, directions }: Part): number {
    return lengthOf(spanOf(box, directions.thickness));
}
