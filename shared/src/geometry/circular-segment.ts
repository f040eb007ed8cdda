/** What a chord and a rise fix about a circular arc. Lengths in millimetres, angles in radians, area in square millimetres. */
export interface CircularSegment {
    readonly radius: number;
    /** Angle at the centre, up to twice pi: more than pi when the rise is more than half the chord. */
    readonly includedAngle: number;
    readonly length: number;
    /** Area between arc and chord. */
    readonly area: number;
    /** tan(included angle / 4) = 2 rise / chord: how DXF writes an arc between two vertices. */
    readonly bulge: number;
}

/**
 * The circular segment on a chord with a rise (sagitta), both positive.
 *
 * radius = (chord^2/4 + rise^2) / (2 rise); bulge = 2 rise / chord; included angle = 4 arctan(bulge).
 */
export function circularSegment(chord: number, rise: number): CircularSegment {
    const bulge = (2 * rise) / chord;
    const radius = (chord * chord) / 8 / rise + rise / 2;
    const includedAngle = 4 * Math.atan(bulge);
    return {
        radius,
        includedAngle,
        length: radius * includedAngle,
        area: radius * radius * angleLessSine(includedAngle) * 0.5,
        bulge,
    };
}

/** angle - sin(angle), without the cancellation that it suffers at small angles. */
function angleLessSine(angle: number): number {
    if (Math.abs(angle) > 0.5) {
        return angle - Math.sin(angle);
    }
    let term = angle ** 3 / 6;
    let sum = term;
    for (let power = 5; power <= 15; power += 2) {
        term *= -(angle * angle) / (power * (power - 1));
        sum += term;
    }
    return sum;
}
