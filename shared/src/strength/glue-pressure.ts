/** The pressure that a glue wants while it sets. */
import type { Wood } from './bending-limits.js';

const poundsPerSquareInch = 0.006894757293168361;

/** From the least to the most, in MPa. */
export interface PressureRange {
    readonly least: number;
    readonly most: number;
}

/**
 * What makers of white glue (polyvinyl acetate) publish: 100 to 150 psi for softwoods, 175 to 250 psi for hardwoods. A study of the
 * greatest strength found far more (150 to 1,200 psi by species), and less is often enough for panels that carry nothing: a guide, no limit.
 */
export const gluePressure: Readonly<Record<Wood, PressureRange>> = {
    hardwood: { least: 175 * poundsPerSquareInch, most: 250 * poundsPerSquareInch },
    softwood: { least: 100 * poundsPerSquareInch, most: 150 * poundsPerSquareInch },
};
