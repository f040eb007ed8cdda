/** Sizes of built designs as a test says them: exactly as written, or near a number. */
import { type Casework, lookUp, type Measure, sayQuantity } from 'casewright-shared/casework';
import { type Quantity, quantity, readMeasure, real } from 'casewright-shared/quantity';
import { expect } from 'vitest';

/** The size at a path; fails where there is none or it is not known. */
export function measureAt(casework: Casework, path: string): Measure {
    const found = lookUp(casework, path);
    if (!found.ok) throw new Error(`${path}: ${JSON.stringify(found)}`);
    return found.measure;
}

/** A length as it is written, with a minus before it where it is to the left of where its axis begins. */
export function quantityOf(written: string): Quantity {
    const reading = readMeasure(written.replace(/^-/, ''));
    if (!reading.ok) throw new Error(`${written}: ${reading.problem.message}`);
    return written.startsWith('-') ? quantity.negate(reading.quantity) : reading.quantity;
}

/** That sizes are exactly those written: `{ 'Case.Shelf.length': '38 1/2in' }`. */
export function expectSizes(casework: Casework, sizes: Readonly<Record<string, string>>): void {
    const found = Object.keys(sizes).map((path) => [path, exactly(measureAt(casework, path).quantity, sizes[path] ?? '')]);
    expect(Object.fromEntries(found)).toEqual(sizes);
}

/** What was expected, if it is exactly that; otherwise what there is. */
function exactly(found: Quantity, written: string): string {
    const wanted = quantityOf(written);
    const isSame = found.dimension === wanted.dimension && real.isExact(found.value) && real.compare(found.value, wanted.value) === 0;
    return isSame ? written : `${sayQuantity(found, wanted.unit?.system ?? 'inch')} (${real.toNumber(found.value)})`;
}

/** The size at a path in inches, exact or not. */
export function inchesAt(casework: Casework, path: string): number {
    return real.toNumber(measureAt(casework, path).quantity.value) / 25.4;
}
