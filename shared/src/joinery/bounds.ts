/** The box around what a feature takes out. */
import { type Box, boxAround, type SpacePoint } from '../geometry/index.js';
import { type axes, displaced } from './axes.js';
import type { FeatureSolid } from './feature.js';

/** Found once for each solid: several rules ask, and those of a joint that an edit leaves alone are the same at the next keystroke. */
const known = new WeakMap<FeatureSolid, Box>();

/** In millimetres, in the coordinates of the solid; of round solids no larger than they are along each axis. */
export function boundsOf(solid: FeatureSolid): Box {
    let bounds = known.get(solid);
    if (!bounds) {
        bounds = findBounds(solid);
        known.set(solid, bounds);
    }
    return bounds;
}

function findBounds(solid: FeatureSolid): Box {
    switch (solid.is) {
        case 'box':
            return solid.box;
        case 'cylinder': {
            const { start, direction, diameter, length, endDiameter = diameter } = solid;
            return around(disc(start, direction, diameter), disc(displaced(start, direction, length), direction, endDiameter));
        }
        case 'segment': {
            const { middle, along, into, radius, depth, thickness } = solid;
            const half = Math.sqrt(Math.max(0, radius ** 2 - (radius - depth) ** 2));
            const across = cross(along, into);
            const ends = [-1, 1].flatMap((way) =>
                [-1, 1].map((side) => displaced(displaced(middle, along, way * half), across, (side * thickness) / 2)),
            );
            return pointsAround([...ends, ...ends.map((end) => displaced(end, into, depth))]);
        }
        case 'prism': {
            const { along, over, section } = solid;
            const [first, second] = along === 'x' ? (['y', 'z'] as const) : along === 'y' ? (['z', 'x'] as const) : (['x', 'y'] as const);
            return pointsAround(
                section.flatMap(({ x, y }) =>
                    [over.from, over.to].map((place) => ({ x: 0, y: 0, z: 0, [along]: place, [first]: x, [second]: y })),
                ),
            );
        }
    }
}

/** A disc square to a direction reaches `r √(1 - d²)` along an axis. */
function disc(middle: SpacePoint, direction: SpacePoint, diameter: number): Box {
    const reach = (axis: (typeof axes)[number]) => (diameter / 2) * Math.sqrt(Math.max(0, 1 - direction[axis] ** 2));
    const by = { x: reach('x'), y: reach('y'), z: reach('z') };
    return { least: displaced(middle, by, -1), most: displaced(middle, by) };
}

function around(...boxes: readonly Box[]): Box {
    return pointsAround(boxes.flatMap(({ least, most }) => [least, most]));
}

function pointsAround(points: readonly SpacePoint[]): Box {
    const none = { least: { x: 0, y: 0, z: 0 }, most: { x: 0, y: 0, z: 0 } };
    return boxAround(points.map((point) => ({ least: point, most: point }))) ?? none;
}

function cross(a: SpacePoint, b: SpacePoint): SpacePoint {
    return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}
