import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
    dimension,
    formatLength,
    type LengthStyle,
    nearestTradeFraction,
    type PrintedMeasure,
    printingStep,
    quantity,
    Rational,
    type Real,
    readMeasure,
    real,
    sayMeasure,
    unitNamed,
} from '../../src/quantity/index.js';

const inch = Rational.of(127, 5);
const inches = (text: string): Rational => Rational.parse(text).times(inch);

function readBack(text: string): Real {
    const reading = readMeasure(text.replace(/^-/, ''));
    if (!reading.ok) throw new Error(reading.problem.message);
    expect(reading.quantity.dimension).toBe(dimension.length);
    return text.startsWith('-') ? real.negate(reading.quantity.value) : reading.quantity.value;
}

describe('fractions of an inch', () => {
    const thirtySeconds: LengthStyle = { system: 'inch', denominator: 32 };

    test.each<[string, string, PrintedMeasure['off']]>([
        ['3/4', '3/4in', undefined],
        ['24/32', '3/4in', undefined],
        ['5/4', '1 1/4in', undefined],
        ['40', '40in', undefined],
        ['0', '0in', undefined],
        // 13.166in lies a little over 13 5/32in (13.15625in)
        ['13.166', '13 5/32in', 'full'],
        ['13.15', '13 5/32in', 'shy'],
        // carry: 15 63.9/64 becomes 16
        ['15.998', '16in', 'shy'],
        ['0.998', '1in', 'shy'],
        // half away from zero
        ['1/64', '1/32in', 'shy'],
        ['-1/64', '-1/32in', 'shy'],
        ['1/65', '0in', 'full'],
        ['-1/65', '0in', 'full'],
        ['-5/4', '-1 1/4in', undefined],
        ['-0.75', '-3/4in', undefined],
    ])('%sin prints %s', (value, text, off) => {
        expect(formatLength(inches(value), thirtySeconds)).toEqual({ text, exact: off === undefined, off });
    });

    test('down to another denominator, which need not be a power of two', () => {
        expect(formatLength(inches('13.166'), { system: 'inch', denominator: 64 }).text).toBe('13 11/64in');
        expect(formatLength(inches('13.166'), { system: 'inch', denominator: 1 }).text).toBe('13in');
        expect(formatLength(inches('13.166'), { system: 'inch', denominator: 10 }).text).toBe('13 1/5in');
    });

    test('marks', () => {
        expect(formatLength(inches('5/4'), { system: 'inch', denominator: 8, mark: 'marks' }).text).toBe('1 1/4"');
        expect(formatLength(inches('5/4'), { system: 'inch', denominator: 8, mark: 'none' }).text).toBe('1 1/4');
    });

    test.each([
        ['141/2', `5'10 1/2"`],
        ['72', "6'"],
        ['71.999', "6'"],
        ['70', `5'10"`],
        ['121/2', `5'0 1/2"`],
        ['11.5', '11 1/2in'],
        ['11.999', "1'"],
        ['-141/2', `-5'10 1/2"`],
    ])('%sin in feet is %s', (value, text) => {
        expect(formatLength(inches(value), { system: 'inch', denominator: 32, feet: 'from 12in' }).text).toBe(text);
    });
});

describe('decimals', () => {
    test.each<[string, LengthStyle, string, PrintedMeasure['off']]>([
        ['37.12', { system: 'inch', decimals: 3 }, '37.120in', undefined],
        ['37.12', { system: 'inch', decimals: 3, zeros: 'dropped' }, '37.12in', undefined],
        ['37.12', { system: 'inch', decimals: 1, zeros: 'dropped' }, '37.1in', 'full'],
        ['37.98', { system: 'inch', decimals: 1, zeros: 'dropped' }, '38in', 'shy'],
        ['40', { system: 'inch', decimals: 2, mark: 'marks' }, '40.00"', undefined],
        ['-0.004', { system: 'inch', decimals: 2 }, '0.00in', 'full'],
        ['-0.005', { system: 'inch', decimals: 2 }, '-0.01in', 'shy'],
        ['1', { system: 'mm', decimals: 1 }, '25.4mm', undefined],
        ['1', { system: 'mm', decimals: 0 }, '25mm', 'full'],
        ['3/4', { system: 'mm', decimals: 1, zeros: 'dropped' }, '19.1mm', 'shy'],
        ['100', { system: 'mm', decimals: 1, zeros: 'dropped' }, '2540mm', undefined],
        ['1', { system: 'mm', decimals: 1, mark: 'none' }, '25.4', undefined],
        ['1', { system: 'mm', decimals: 1, mark: 'marks' }, '25.4mm', undefined],
    ])('%sin in %j is %s', (value, style, text, off) => {
        expect(formatLength(inches(value), style)).toEqual({ text, exact: off === undefined, off });
    });
});

describe('approximate lengths', () => {
    test('are never exact, and not called full or shy for the noise of their arithmetic', () => {
        expect(formatLength(304.79999999999995, { system: 'inch', denominator: 32 })).toEqual({
            text: '12in',
            exact: false,
            off: undefined,
        });
        expect(formatLength(304.7, { system: 'inch', denominator: 32 })).toEqual({ text: '12in', exact: false, off: 'shy' });
        expect(formatLength(304.9, { system: 'mm', decimals: 0 })).toEqual({ text: '305mm', exact: false, off: 'shy' });
        expect(formatLength(-304.9, { system: 'mm', decimals: 0 }).text).toBe('-305mm');
        expect(formatLength(-0.01, { system: 'mm', decimals: 0 }).text).toBe('0mm');
    });

    test('out of range they say so instead of printing nonsense', () => {
        for (const value of [Number.POSITIVE_INFINITY, Number.NaN])
            expect(formatLength(value, { system: 'mm', decimals: 1 }).text).toBe('out of range');
    });
});

describe('there and back', () => {
    function returns(value: Rational, style: LengthStyle): boolean {
        const printed = formatLength(value, style);
        const reading = readMeasure(printed.text);
        return printed.exact && reading.ok && value.equals(reading.quantity.value as Rational);
    }

    test('every 64th of an inch up to 120in, as a fraction and in feet', () => {
        const values = Array.from({ length: 120 * 64 + 1 }, (_, n) => Rational.of(n, 64).times(inch));
        expect(values.filter((value) => !returns(value, { system: 'inch', denominator: 64 }))).toEqual([]);
        expect(values.filter((value) => !returns(value, { system: 'inch', denominator: 64, feet: 'from 12in' }))).toEqual([]);
    });

    test('every tenth of a mm up to 3000mm', () => {
        const values = Array.from({ length: 30_001 }, (_, n) => Rational.of(n, 10));
        expect(values.filter((value) => !returns(value, { system: 'mm', decimals: 1 }))).toEqual([]);
    });

    const lengths = fc
        .tuple(fc.integer({ min: -2_000_000, max: 2_000_000 }), fc.integer({ min: 1, max: 5000 }))
        .map(([n, d]) => Rational.of(n, d));
    const zeros = fc.constantFrom('kept' as const, 'dropped' as const);
    const decimals = fc.integer({ min: 0, max: 6 });
    const styles: fc.Arbitrary<LengthStyle> = fc.oneof(
        fc.record({ system: fc.constant('inch' as const), denominator: fc.constantFrom(1, 2, 3, 8, 10, 16, 32, 64, 128) }),
        fc.record({
            system: fc.constant('inch' as const),
            denominator: fc.constantFrom(2, 16, 64),
            feet: fc.constant('from 12in' as const),
        }),
        fc.record({ system: fc.constant('inch' as const), decimals, zeros }),
        fc.record({ system: fc.constant('mm' as const), decimals, zeros }),
    );

    test('what is printed is within half a step, full or shy on the right side, and prints again unchanged', () => {
        fc.assert(
            fc.property(lengths, styles, (value, style) => {
                const printed = formatLength(value, style);
                const back = readBack(printed.text) as Rational;
                const half = printingStep(style).dividedBy(Rational.of(2));
                expect(value.minus(back).absolute().compare(half)).toBeLessThanOrEqual(0);
                expect(printed.exact).toBe(value.equals(back));
                const over = value.absolute().compare(back.absolute());
                expect(printed.off).toBe(over > 0 ? 'full' : over < 0 ? 'shy' : undefined);
                expect(formatLength(back, style)).toEqual({ text: printed.text, exact: true, off: undefined });
                expect(printed.text).not.toMatch(/^-0(in|mm|\.0*(in|mm))$| 0\/|^0 /);
            }),
            { numRuns: 3000 },
        );
    });

    test('an approximate length prints like the exact one beside it', () => {
        fc.assert(
            fc.property(lengths, styles, (value, style) => {
                const step = printingStep(style);
                // Away from the middle between two steps, where a float may fall to either side.
                const part = value.dividedBy(step).minus(value.dividedBy(step).floor()).toNumber();
                fc.pre(Math.abs(part - 0.5) > 1e-6);
                expect(formatLength(value.toNumber(), style).text).toBe(formatLength(value, style).text);
            }),
        );
    });
});

test('a quantity prints like its value', () => {
    expect(formatLength(quantity.of(Rational.of(3, 4), unitNamed('in')), { system: 'inch', denominator: 32 }).text).toBe('3/4in');
});

test('nearestTradeFraction gives the parts of what is printed', () => {
    expect(nearestTradeFraction(inches('-13.166'), 32)).toEqual({
        negative: true,
        whole: 13n,
        numerator: 5n,
        denominator: 32n,
        value: inches('-421/32'),
        exact: false,
        off: 'full',
    });
    expect(nearestTradeFraction(inches('2'), 32)).toMatchObject({ negative: false, whole: 2n, numerator: 0n, exact: true });
});

test('sayMeasure adds the trade word', () => {
    expect(sayMeasure(formatLength(inches('13.166'), { system: 'inch', denominator: 32 }))).toBe('13 5/32in full');
    expect(sayMeasure(formatLength(inches('13'), { system: 'inch', denominator: 32 }))).toBe('13in');
});

test('styles that make no sense are refused', () => {
    for (const denominator of [0, -8, 1.5, Number.NaN])
        expect(() => formatLength(inches('1'), { system: 'inch', denominator })).toThrow(RangeError);
    for (const decimals of [-1, 13, 0.5, Number.NaN])
        expect(() => formatLength(inches('1'), { system: 'mm', decimals })).toThrow(RangeError);
});
