/** Measures as the numbers of the model. */
import type { Measure } from '../casework/index.js';
import { dimension, type Quantity, quantity, readUnit, real } from '../quantity/index.js';

/** A length in mm; null if it is not known. */
export function millimetres(measure: Measure | undefined): number | null {
    return measure && measure.quantity.dimension === dimension.length ? real.toNumber(measure.quantity.value) : null;
}

/** A length in mm, an angle in degrees, or a plain number such as a share; null if it is not known. */
export function baseValue(measure: Measure | undefined): number | null {
    return measure ? real.toNumber(measure.quantity.value) : null;
}

export function kilograms(mass: Quantity | undefined): number | null {
    return mass ? real.toNumber(mass.value) : null;
}

const kilogramsPerCubicMetre = readUnit('kg/m3');

/** A density in kg/m3; null if it is not known. */
export function densityValue(density: Quantity | undefined): number | null {
    return density && kilogramsPerCubicMetre ? real.toNumber(quantity.valueIn(density, kilogramsPerCubicMetre)) : null;
}
