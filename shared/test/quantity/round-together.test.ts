import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printingStep, Rational, type Real, real, roundTogether } from '../../src/quantity/index.js';

const rounded = (values: readonly string[], step = '1'): readonly string[] =>
    roundTogether(
        values.map((value) => Rational.parse(value)),
        Rational.parse(step),
    ).map((value) => value.toString());

describe('closing on the printed total', () => {
    test('three openings of 927 1/3mm close on 2782mm as 927, 928, 927', () => {
        expect(rounded(['2782/3', '2782/3', '2782/3'])).toEqual(['927', '928', '927']);
    });

    test.each([
        // the largest remainder gets the step that is missing
        [
            ['10.3', '10.3', '10.9'],
            ['11', '10', '11'],
        ],
        [
            ['10.4', '10.2', '10.4'],
            ['11', '10', '10'],
        ],
        [
            ['0.1', '0.8', '0.1'],
            ['0', '1', '0'],
        ],
        // equal remainders are spread along the row
        [
            ['2/3', '2/3', '2/3'],
            ['1', '0', '1'],
        ],
        [
            ['1/2', '1/2'],
            ['1', '0'],
        ],
        [
            ['1/4', '1/4', '1/4', '1/4'],
            ['0', '1', '0', '0'],
        ],
        [
            ['1/2', '1/2', '1/2', '1/2'],
            ['1', '0', '1', '0'],
        ],
        [
            ['1/5', '1/5', '1/5', '1/5', '1/5'],
            ['0', '0', '1', '0', '0'],
        ],
        // nothing to share out
        [
            ['3', '4', '5'],
            ['3', '4', '5'],
        ],
        [
            ['3', '1/3', '5'],
            ['3', '0', '5'],
        ],
        [[], []],
        // sizes below zero go down as well
        [
            ['-0.5', '1.5'],
            ['0', '1'],
        ],
        [
            ['-1/3', '-1/3', '-1/3'],
            ['0', '-1', '0'],
        ],
    ] as const)('%j print as %j', (values, expected) => {
        expect(rounded(values)).toEqual(expected);
    });

    test('three equal openings in 37.12in close on 37 1/8in in 32nds', () => {
        const step = printingStep({ system: 'inch', denominator: 32 });
        const opening = Rational.parse('37.12').times(Rational.of(127, 5)).dividedBy(Rational.of(3));
        const inSteps = roundTogether([opening, opening, opening], step).map((value) => value.dividedBy(step).toString());
        expect(inSteps).toEqual(['396', '396', '396']);
    });
});

describe('for any row', () => {
    const values = fc.array(
        fc.tuple(fc.integer({ min: -5000, max: 50_000 }), fc.integer({ min: 1, max: 97 })).map(([n, d]) => Rational.of(n, d)),
        { minLength: 1, maxLength: 12 },
    );
    const steps = fc.constantFrom('1', '1/10', '127/160').map((step) => Rational.parse(step));
    const sum = (row: readonly Rational[]): Rational => row.reduce((total, value) => total.plus(value), Rational.zero);

    test('the printed sizes add up to the printed total, and none is off by a whole step', () => {
        fc.assert(
            fc.property(values, steps, (row, step) => {
                const printed = roundTogether(row, step);
                expect(sum(printed)).toEqual(sum(row).roundedTo(step));
                printed.forEach((value, index) => {
                    const off = value.minus(row[index] ?? Rational.zero).absolute();
                    expect(off.compare(step)).toBe(-1);
                    expect(value.dividedBy(step).isInteger()).toBe(true);
                });
            }),
        );
    });

    test('a larger remainder never goes down when a smaller one goes up', () => {
        fc.assert(
            fc.property(values, steps, (row, step) => {
                const parts = roundTogether(row, step).map((value, index) => {
                    const exact = (row[index] ?? Rational.zero).dividedBy(step);
                    return { remainder: exact.minus(exact.floor()), up: value.dividedBy(step).compare(exact.floor()) > 0 };
                });
                for (const up of parts.filter((part) => part.up)) {
                    for (const down of parts.filter((part) => !part.up))
                        expect(up.remainder.compare(down.remainder)).toBeGreaterThanOrEqual(0);
                }
            }),
        );
    });

    test('approximate sizes print like the exact ones they approximate', () => {
        const third = Rational.of(2782, 3);
        const row: readonly Real[] = [third.toNumber(), 927.3333333333334, third];
        expect(roundTogether(row, Rational.one).map((value) => value.toNumber())).toEqual([927, 928, 927]);
        expect(roundTogether([926.9999999999999, 1.0000000000001], Rational.one).reduce<Real>(real.add, Rational.zero)).toEqual(
            Rational.of(928),
        );
    });
});

test('refused: a step that is not above zero, a value that is not finite', () => {
    expect(() => roundTogether([Rational.one], Rational.zero)).toThrow(RangeError);
    expect(() => roundTogether([Rational.one], Rational.of(-1))).toThrow(RangeError);
    expect(() => roundTogether([Number.NaN], Rational.one)).toThrow(RangeError);
});
