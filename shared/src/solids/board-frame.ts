/** How a board lies: along which axis it is seen from the side of its thickness, and where a place on it is in space. */
import type { Axis, Part } from '../casework/index.js';
import type { SpacePoint } from '../geometry/index.js';

/**
 * A board as it lies on a drawing: `along` to the right, `across` forward or up, `through` its thickness. Of a board that is bent the
 * drawing is its plan, so that `through` is its height.
 */
export interface BoardFrame {
    readonly along: Axis;
    readonly across: Axis;
    readonly through: Axis;
}

export function frameOf({ directions, bent }: Part): BoardFrame {
    if (bent || directions.thickness === 'z') return { along: 'x', across: 'y', through: 'z' };
    return directions.thickness === 'x' ? { along: 'z', across: 'y', through: 'x' } : { along: 'x', across: 'z', through: 'y' };
}

/** A place or a displacement by its coordinates on the board. */
export function inSpace({ along, across, through }: BoardFrame, u: number, v: number, t: number): SpacePoint {
    const place = { x: 0, y: 0, z: 0 };
    place[along] = u;
    place[across] = v;
    place[through] = t;
    return place;
}
