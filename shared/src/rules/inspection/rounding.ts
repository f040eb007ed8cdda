/** Lengths of curves, in mm, as far as a message says them: what is found on a curve is no size that is cut. */

const sixteenth = 25.4 / 16;
const sixtyFourth = 25.4 / 64;

/** For a radius: to a whole sixteenth of an inch. */
export function roundedRadius(radius: number): number {
    return Math.round(radius / sixteenth) * sixteenth;
}

/** For a place on a curve: to a 64th of an inch. */
export function roundedPlace(place: number): number {
    return Math.round(place / sixtyFourth) * sixtyFourth;
}

/** For a thickness at most: down to a 64th of an inch. */
export function roundedDown(thickness: number): number {
    return Math.floor(thickness / sixtyFourth + 1e-9) * sixtyFourth;
}
