/** Areas, volumes and totals of sizes. What is unknown in a size is unknown in all that follows from it. */
import type { Size } from '../casework/index.js';
import { type Quantity, quantity, Rational } from '../quantity/index.js';

/** Length times width. */
export function areaOf(size: Size): Quantity | undefined {
    return size.length && size.width && quantity.multiply(size.length.quantity, size.width.quantity);
}

/** Length times width times thickness. */
export function volumeOf(size: Size): Quantity | undefined {
    const area = areaOf(size);
    return area && size.thickness && quantity.multiply(area, size.thickness.quantity);
}

/** So many times a quantity. */
export function times(of: Quantity | undefined, count: number): Quantity | undefined {
    return of && quantity.scale(of, Rational.of(count));
}

/** The sum of quantities of one dimension; unknown as soon as one of them is, or if there are none. */
export function total(quantities: readonly (Quantity | undefined)[]): Quantity | undefined {
    const [first, ...others] = quantities;
    return others.reduce((sum, next) => sum && next && quantity.add(sum, next), first);
}
