/** Which way a surface faces at the corners of its triangles. */

interface Surface {
    /** x, y and z of each corner in turn. */
    readonly places: Float32Array;
    /** Three corners for each triangle, counter-clockwise from outside. */
    readonly triangles: Uint32Array;
}

/** Triangles that meet at less than this are one curved face: 25 degrees, above the steps of a round and below those of a chamfer. */
const gentlest = Math.cos((25 * Math.PI) / 180);

type Direction = readonly [number, number, number];

/**
 * The surface with a direction at each corner: of all triangles there that face nearly the same way, by their areas. Corners at which
 * faces meet in an edge are there once for each; triangles without an area are left out.
 */
export function smoothed({ places, triangles }: Surface): Surface & { readonly normals: Float32Array } {
    const facing = facesOf(places, triangles);
    const around = trianglesAround(places.length / 3, triangles);
    const [corners, normals, kept]: [number[], number[], number[]] = [[], [], []];
    const known = new Map<string, number>();
    for (let triangle = 0; triangle < facing.length; triangle++) {
        const own = facing[triangle]!;
        if (own.area === 0) continue;
        for (let step = 0; step < 3; step++) {
            const corner = triangles[triangle * 3 + step]!;
            const normal = meanOf(around[corner]!.map((other) => facing[other]!).filter((other) => isNear(own.direction, other.direction)));
            const key = `${corner} ${normal.map((share) => share.toFixed(4)).join(' ')}`;
            let place = known.get(key);
            if (place === undefined) {
                place = corners.length / 3;
                known.set(key, place);
                corners.push(places[corner * 3]!, places[corner * 3 + 1]!, places[corner * 3 + 2]!);
                normals.push(...normal);
            }
            kept.push(place);
        }
    }
    return { places: Float32Array.from(corners), normals: Float32Array.from(normals), triangles: Uint32Array.from(kept) };
}

interface Facing {
    readonly direction: Direction;
    readonly area: number;
}

function facesOf(places: Float32Array, triangles: Uint32Array): readonly Facing[] {
    const at = (corner: number): Direction => [places[corner * 3]!, places[corner * 3 + 1]!, places[corner * 3 + 2]!];
    return Array.from({ length: triangles.length / 3 }, (_, index) => {
        const [a, b, c] = [at(triangles[index * 3]!), at(triangles[index * 3 + 1]!), at(triangles[index * 3 + 2]!)];
        const [u, v] = [minus(b, a), minus(c, a)];
        const square: Direction = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
        const area = Math.hypot(...square);
        return { direction: area > 0 ? [square[0] / area, square[1] / area, square[2] / area] : [0, 0, 0], area };
    });
}

function trianglesAround(count: number, triangles: Uint32Array): readonly (readonly number[])[] {
    const around: number[][] = Array.from({ length: count }, () => []);
    for (const [index, corner] of triangles.entries()) around[corner]!.push(Math.floor(index / 3));
    return around;
}

function isNear(a: Direction, b: Direction): boolean {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2] > gentlest;
}

function meanOf(faces: readonly Facing[]): Direction {
    const along = (axis: 0 | 1 | 2) => faces.reduce((sum, { direction, area }) => sum + direction[axis] * area, 0);
    const sum: Direction = [along(0), along(1), along(2)];
    const length = Math.hypot(...sum);
    return [sum[0] / length, sum[1] / length, sum[2] / length];
}

function minus(a: Direction, b: Direction): Direction {
    return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}
