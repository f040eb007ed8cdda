/**
 * Every tolerance of the geometry, by name, so that no function carries an epsilon of its own.
 * Lengths in millimetres, angles in radians.
 */
export const tolerance = {
    /** Two points nearer than this are one point: far below any shop measure, far above rounding error at room size. */
    geometry: 1e-6,

    /** No coordinate may be greater, 1000 km: beyond it doubles no longer carry the geometry tolerance. */
    greatestLength: 1e9,

    /** Two directions nearer than this are one direction (one geometry tolerance over a kilometre). */
    angle: 1e-9,

    /** Two curvatures (1/mm) nearer than this are one: across a 10 m part they part by less than 0.02 mm. */
    curvature: 1e-9,

    /** Two parts that share less than this along an axis touch and do not overlap: no shop tool can see it. */
    fit: 0.01,

    /** A drawn line may stray this far from the true one: under half of the narrowest pen, 0.13 mm (ISO 128, from memory). */
    display: 0.05,

    /** A share of a length that no longer counts. */
    relative: 1e-12,

    /** Relative change at which an iteration is finished: a few units in the last place of a double. */
    convergence: 4e-16,
} as const;

/** Whether two lengths are the same to the geometry tolerance. */
export function sameLength(a: number, b: number): boolean {
    return Math.abs(a - b) <= tolerance.geometry;
}
