import { describe, expect, test } from 'vitest';
import {
    dimension,
    formatNumber,
    formatQuantity,
    type Quantity,
    quantity,
    Rational,
    type Real,
    readMeasure,
    usualStyle,
} from '../../src/quantity/index.js';

function measure(text: string): Quantity {
    const reading = readMeasure(text);
    if (!reading.ok) throw new Error(reading.problem.message);
    return reading.quantity;
}

const inch = usualStyle('inch', 32);
const mm = usualStyle('mm', 32);

describe('in the unit as written, and in the two systems', () => {
    test.each([
        ['3/4in', '3/4in', '3/4in', '19.1mm'],
        ['19mm', '19mm', '3/4in', '19mm'],
        ['6ft', '72in', '72in', '1828.8mm'],
        ['2.5lb', '2.5lb', '2.5lb', '1.13kg'],
        ['20kg', '20kg', '44.09lb', '20kg'],
        ['25 lb/ft2', '25 lb/ft2', '25 lb/ft2', '122.06 kg/m2'],
        ['30 kg/m', '30 kg/m', '20.16 lb/ft', '30 kg/m'],
        ['1500 psi', '1500 psi', '1500 psi', '10.34 MPa'],
        ['10 lbf', '10 lbf', '10 lbf', '44.48 N'],
        ['38 lb/ft3', '38 lb/ft3', '38 lb/ft3', '608.7 kg/m3'],
        ['4 m2', '4 m2', '43.06 ft2', '4 m2'],
        ['12°', '12°', '12°', '12°'],
        ['8%', '8%', '8%', '8%'],
        ['65 USD/hour', '65.00 USD/hour', '65.00 USD/hour', '65.00 USD/hour'],
        ['14 USD/bdft', '14.00 USD/bdft', '14.00 USD/bdft', '5932.86 USD/m3'],
        ['118 USD', '118.00 USD', '118.00 USD', '118.00 USD'],
        ['1 hour', '1 hour', '1 hour', '1 hour'],
        ['2 days', '2 days', '48 hours', '48 hours'],
        ['1/4in/ft', '0.25in/ft', '0.25in/ft', '0.25in/ft'],
        ['40', '40', '40', '40'],
    ])('%s', (text, written, inches, millimetres) => {
        expect(formatQuantity(measure(text), inch).text).toBe(written);
        expect(formatQuantity(measure(text), { ...inch, units: 'of the system' }).text).toBe(inches);
        expect(formatQuantity(measure(text), { ...mm, units: 'of the system' }).text).toBe(millimetres);
    });

    test('a computed quantity has no written unit and goes by the system', () => {
        const area = quantity.multiply(measure('48in'), measure('96in'));
        expect(formatQuantity(area, inch)).toEqual({ text: '32 ft2', exact: true, off: undefined });
        expect(formatQuantity(area, mm).text).toBe('2.97 m2');
    });

    test('a dimension without a unit of its own is printed in base units', () => {
        const area = quantity.multiply(measure('10mm'), measure('10mm'));
        expect(formatQuantity(quantity.multiply(area, area), mm).text).toBe('10000 mm^4');
        expect(formatQuantity({ ...measure('3'), dimension: dimension.none.dividedBy(dimension.length) }, mm).text).toBe('3 1/mm');
    });

    test('says whether it is exact, full or shy', () => {
        expect(formatQuantity(measure('1/3lb'), inch)).toEqual({ text: '0.33lb', exact: false, off: 'full' });
        expect(formatQuantity(measure('2/3lb'), inch)).toEqual({ text: '0.67lb', exact: false, off: 'shy' });
        expect(formatQuantity(quantity.plain(0.1 + 0.2), inch)).toEqual({ text: '0.3', exact: false, off: undefined });
    });

    test('a small value is not printed as nothing', () => {
        expect(formatQuantity(measure('0.00123lb'), inch).text).toBe('0.0012lb');
        expect(formatQuantity(measure('0lb'), inch).text).toBe('0lb');
        expect(formatQuantity(quantity.plain(-0.0004), inch).text).toBe('-0.0004');
        expect(formatQuantity(quantity.plain(1e-300), inch).text).toBe('0');
    });

    test('out of range', () => {
        expect(formatQuantity(quantity.plain(Number.NaN), inch)).toEqual({ text: 'out of range', exact: false, off: undefined });
    });

    test('what is printed exactly reads back as the same quantity', () => {
        for (const text of ['3/4in', '19mm', '2.5lb', '25 lb/ft2', '12°', '8%', '14 USD/bdft', '2 days', '1/4in/ft', '40']) {
            const printed = formatQuantity(measure(text), inch);
            expect(printed.exact).toBe(true);
            expect(measure(printed.text).value).toEqual(measure(text).value);
            expect(measure(printed.text).dimension).toBe(measure(text).dimension);
        }
    });
});

describe('formatNumber', () => {
    test.each<[Real, number, 'kept' | 'dropped', string]>([
        [Rational.of(1, 3), 3, 'kept', '0.333'],
        [Rational.of(2, 3), 0, 'kept', '1'],
        [Rational.of(-1, 2), 0, 'kept', '-1'],
        [Rational.of(-1, 3), 0, 'kept', '0'],
        [Rational.of(5), 2, 'kept', '5.00'],
        [Rational.of(5), 2, 'dropped', '5'],
        [Rational.of(100), 0, 'dropped', '100'],
        [Rational.of(1005, 1000), 2, 'kept', '1.01'],
        // The nearest double to 1.005 lies below it (IEEE 754), so it is rounded down.
        [1.005, 2, 'kept', '1.00'],
        [-2.5, 0, 'kept', '-3'],
        [-0.001, 2, 'kept', '0.00'],
        [1e21, 1, 'kept', '1000000000000000000000.0'],
        [123456.789, 2, 'dropped', '123456.79'],
        [Number.POSITIVE_INFINITY, 2, 'kept', 'out of range'],
    ])('%s with %d decimals, zeros %s: %s', (value, decimals, zeros, text) => {
        expect(formatNumber(value, { decimals, zeros })).toBe(text);
    });

    test('refuses decimals that are no count', () => {
        expect(() => formatNumber(1, { decimals: -1, zeros: 'kept' })).toThrow(RangeError);
    });
});
