/** How tightly dry wood and plywood may be bent. Lengths in millimetres, strains as shares. */

export type Wood = 'hardwood' | 'softwood';

/**
 * Radius of the inside face over thickness, at least, for a strip that is bent dry and stays bent: National Design Specification for Wood
 * Construction, ANSI/AWC NDS-2018, section 5.3.8 (from memory; the same ratios stand in the Wood Handbook). The standard counts southern
 * pine with the hardwoods; here it is counted with the softwoods.
 */
export const dryBend: Readonly<Record<Wood, number>> = { hardwood: 100, softwood: 125 };

/** The strain that `dryBend` allows: 0.5 % for hardwoods, 0.4 % for softwoods. */
export function dryStrain(wood: Wood): number {
    return 1 / (2 * dryBend[wood]);
}

/** Strain of the outermost fibres of a strip that is bent: thickness over twice the radius of its middle (geometry). */
export function outerStrain(thickness: number, radius: number): number {
    return thickness / (2 * radius);
}

/** The thickest strip that a radius of its middle strains no more than so. */
export function thickestFor(strain: number, radius: number): number {
    return 2 * radius * strain;
}

/**
 * Aircraft plywood at 10 % moisture, bent cold (US Federal Aviation Administration, AC 43.13-1B, table of minimum recommended bend radii).
 *
 * Thickness and least radius in inches, three and five plies: with the face grain around the bend, and with the grain up to half a right
 * angle from the axis of the bend. (Which of its angles is which is our reading, borne out by the strains: 0.35 % to 0.9 %.)
 */
const plywoodRadii: readonly (readonly [thickness: number, around: number, along: number])[] = [
    [0.035, 2.0, 1.1],
    [0.07, 5.2, 3.2],
    [0.1, 8.6, 5.2],
    [0.125, 12.0, 7.1],
    [0.155, 16.0, 10.0],
    [0.16, 17.0, 11.0],
    [0.185, 20.0, 13.0],
    [0.19, 21.0, 14.0],
    [0.225, 27.0, 17.0],
    [0.25, 31.0, 20.0],
    [0.315, 43.0, 28.0],
    [0.375, 54.0, 36.0],
];

export interface PlywoodBend {
    readonly radius: number;
    /** Whether the table goes so far; past its ends the ratio of radius to thickness of its end is kept. Thicker plywood takes less than that. */
    readonly inTable: boolean;
}

/**
 * The least radius of plywood that is bent dry, straight between the rows of the table. Cabinet plywood, of thicker and less even plies,
 * takes less than the aircraft plywood of the table.
 * @param grain of the face: around the bend, or along its axis
 */
export function leastRadiusOfPlywood(thickness: number, grain: 'around' | 'along'): PlywoodBend {
    const inches = thickness / 25.4;
    const column = grain === 'around' ? 1 : 2;
    const above = plywoodRadii.findIndex(([row]) => row >= inches);
    const after = plywoodRadii[above];
    const before = plywoodRadii[above - 1];
    if (after && before) {
        const share = (inches - before[0]) / (after[0] - before[0]);
        return { radius: 25.4 * (before[column] + share * (after[column] - before[column])), inTable: true };
    }
    const end = (after ?? plywoodRadii.at(-1))!;
    return { radius: (thickness * end[column]) / end[0], inTable: end[0] === inches };
}
