/** A second way to the content of solids: points are thrown at random, always the same ones, and counted where they fall inside. */
import type { PartSolid, TriangleMesh } from 'casewright-shared/solids';

export interface Thrown {
    /** In cubic millimetres. */
    readonly volume: number;
    /** The standard error of the volume: of a share p of n points, sqrt(p (1 - p) / n) (binomial distribution). */
    readonly error: number;
}

type Place = readonly [number, number, number];

/** The volume that solids have in common, by points in a box around one of them. */
export function volumeByPoints(solids: readonly PartSolid[], points: number): Thrown {
    const { least, most } = solids[0]!.extent;
    const size = [most.x - least.x, most.y - least.y, most.z - least.z] as const;
    const random = randomNumbers(20_240_607);
    let inside = 0;
    for (let point = 0; point < points; point++) {
        const place: Place = [least.x + random() * size[0], least.y + random() * size[1], least.z + random() * size[2]];
        if (solids.every(({ bodies }) => bodies.some(({ mesh }) => isInside(place, mesh)))) inside++;
    }
    const whole = size[0] * size[1] * size[2];
    const share = inside / points;
    return { volume: share * whole, error: Math.sqrt((share * (1 - share)) / points) * whole };
}

/** Whether a line from the place towards greater x passes out of the surface more often than into it. */
function isInside([x, y, z]: Place, { places, triangles }: TriangleMesh): boolean {
    let crossings = 0;
    for (let index = 0; index < triangles.length; index += 3) {
        const [a, b, c] = [triangles[index]! * 3, triangles[index + 1]! * 3, triangles[index + 2]! * 3];
        const side = (from: number, to: number) =>
            (places[to + 1]! - places[from + 1]!) * (z - places[from + 2]!) -
            (places[to + 2]! - places[from + 2]!) * (y - places[from + 1]!);
        const [u, v, w] = [side(b, c), side(c, a), side(a, b)];
        const isOver = (u > 0 && v > 0 && w > 0) || (u < 0 && v < 0 && w < 0);
        if (isOver && (u * places[a]! + v * places[b]! + w * places[c]!) / (u + v + w) > x) crossings++;
    }
    return crossings % 2 === 1;
}

/** Mulberry32, from memory: a generator of 32 bits that is fair enough for throwing points. */
function randomNumbers(seed: number): () => number {
    let state = seed;
    return () => {
        state = (state + 0x6d2b79f5) | 0;
        let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
        mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
        return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
    };
}
