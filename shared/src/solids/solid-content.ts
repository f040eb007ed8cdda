/** What a closed surface holds. */
import type { SpacePoint } from '../geometry/index.js';
import type { TriangleMesh } from './part-solid.js';

/** Volume in cubic millimetres, and the middle of it. */
export interface SolidContent {
    readonly volume: number;
    readonly centre: SpacePoint;
}

/**
 * Volume and centre of what a closed surface holds: the sum of the tetrahedra over its triangles from one corner of it (divergence
 * theorem; the volume of each is a sixth of the triple product of its edges, its centre the mean of its corners). Nothing has its centre at that corner.
 */
export function contentOf({ places, triangles }: TriangleMesh): SolidContent {
    const origin = cornerAt(places, 0);
    let volume = 0;
    const moment = { x: 0, y: 0, z: 0 };
    for (let index = 0; index < triangles.length; index += 3) {
        const [a, b, c] = [0, 1, 2].map((step) => {
            const { x, y, z } = cornerAt(places, triangles[index + step]!);
            return { x: x - origin.x, y: y - origin.y, z: z - origin.z };
        }) as [SpacePoint, SpacePoint, SpacePoint];
        const own = (a.x * (b.y * c.z - b.z * c.y) + a.y * (b.z * c.x - b.x * c.z) + a.z * (b.x * c.y - b.y * c.x)) / 6;
        volume += own;
        for (const axis of ['x', 'y', 'z'] as const) moment[axis] += (own * (a[axis] + b[axis] + c[axis])) / 4;
    }
    const from = (axis: 'x' | 'y' | 'z') => origin[axis] + (volume === 0 ? 0 : moment[axis] / volume);
    return { volume, centre: { x: from('x'), y: from('y'), z: from('z') } };
}

function cornerAt(places: Float32Array, corner: number): SpacePoint {
    return { x: places[3 * corner] ?? 0, y: places[3 * corner + 1] ?? 0, z: places[3 * corner + 2] ?? 0 };
}
