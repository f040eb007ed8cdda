import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dimension, type Quantity, quantity, Rational, type Real, real, type SourceId, unitNamed } from '../../src/quantity/index.js';

const inch = unitNamed('in');
const inches = (text: string): Quantity => quantity.of(Rational.parse(text), inch);
const count = (text: string): Quantity => quantity.plain(Rational.parse(text));
const millimetres = (text: string): Quantity => quantity.of(Rational.parse(text), unitNamed('mm'));

function present<T>(value: T | undefined): T {
    if (value === undefined) throw new Error('the operation was refused');
    return value;
}

describe('arithmetic', () => {
    test('23 5/8in equals 600.075mm exactly', () => {
        expect(quantity.compare(present(quantity.add(inches('23'), inches('5/8'))), millimetres('600.075'))).toBe(0);
    });

    test('dimensions follow the operation', () => {
        const area = quantity.multiply(inches('48'), inches('96'));
        expect(area.dimension).toBe(dimension.area);
        expect(area.value).toEqual(Rational.of(48 * 96).times(Rational.parse('645.16')));
        expect(present(quantity.divide(area, inches('96'))).dimension).toBe(dimension.length);
        expect(present(quantity.divide(inches('3'), inches('4'))).value).toEqual(Rational.of(3, 4));
        expect(present(quantity.divide(inches('3'), inches('4'))).dimension).toBe(dimension.none);
    });

    test('refused: other dimensions, and nothing else, in add, subtract, compare, minimum, maximum', () => {
        for (const operation of [quantity.add, quantity.subtract, quantity.compare, quantity.minimum, quantity.maximum]) {
            expect(operation(inches('1'), count('1'))).toBeUndefined();
            expect(operation(inches('1'), quantity.multiply(inches('1'), inches('1')))).toBeUndefined();
            expect(operation(inches('1'), millimetres('0'))).toBeDefined();
        }
    });

    test('refused: division by zero, exact or approximate', () => {
        expect(quantity.divide(inches('1'), inches('0'))).toBeUndefined();
        expect(quantity.divide(inches('1'), quantity.plain(0))).toBeUndefined();
    });

    test('the unit in which it was written stays with sums, and with products and quotients by plain numbers', () => {
        expect(present(quantity.add(inches('1'), millimetres('1'))).unit).toBe(inch);
        expect(present(quantity.subtract(quantity.inBaseUnits(Rational.one, dimension.length), inches('1'))).unit).toBe(inch);
        expect(quantity.multiply(count('2'), inches('1')).unit).toBe(inch);
        expect(quantity.multiply(quantity.of(Rational.of(5), unitNamed('%')), inches('40')).unit).toBe(inch);
        expect(present(quantity.divide(inches('1'), count('2'))).unit).toBe(inch);
        expect(quantity.multiply(inches('1'), inches('1')).unit).toBeUndefined();
        expect(quantity.multiply(count('2'), quantity.of(Rational.of(5), unitNamed('%'))).unit).toBeUndefined();
        expect(quantity.writtenIn(inches('1'), unitNamed('mm')).unit?.symbol).toBe('mm');
    });

    test('minimum and maximum carry the deviations of the one they take', () => {
        const loose = quantity.deviating(inches('3/4'), 'sheet');
        expect(present(quantity.minimum(loose, inches('1'))).deviations).toBe(loose.deviations);
        expect(present(quantity.maximum(loose, inches('1'))).deviations).toBeUndefined();
        expect(present(quantity.maximum(loose, inches('3/4')))).toBe(loose);
    });

    test('absolute turns a value below zero, with its effects', () => {
        const below = quantity.negate(quantity.deviating(inches('3/4'), 'sheet'));
        expect(quantity.absolute(below)).toEqual(quantity.deviating(inches('3/4'), 'sheet'));
        expect(quantity.absolute(inches('3/4'))).toEqual(inches('3/4'));
    });
});

describe('rounding', () => {
    test('a plain number to an integer', () => {
        const bays = present(quantity.divide(inches('100'), inches('24')));
        expect(present(quantity.ceiling(bays)).value).toEqual(Rational.of(5));
        expect(present(quantity.floor(bays)).value).toEqual(Rational.of(4));
        expect(present(quantity.round(count('2.5'))).value).toEqual(Rational.of(3));
    });

    test('a length to a step, printed in the unit of the step', () => {
        const rounded = present(quantity.round(millimetres('600'), inches('1/8')));
        expect(rounded.value).toEqual(inches('189/8').value);
        expect(rounded.unit).toBe(inch);
    });

    test('a rounded quantity does not deviate: a step has no slope', () => {
        expect(present(quantity.round(quantity.deviating(inches('0.72'), 'sheet'), inches('1/8'))).deviations).toBeUndefined();
    });

    test('refused: a length without a step, a step of another dimension, a step of zero', () => {
        for (const operation of [quantity.floor, quantity.ceiling, quantity.round]) {
            expect(operation(inches('1.5'))).toBeUndefined();
            expect(operation(count('1.5'), inches('1'))).toBeUndefined();
            expect(operation(inches('1.5'), inches('0'))).toBeUndefined();
        }
    });
});

describe('deviations', () => {
    const t = quantity.deviating(inches('0.720'), 'sheet');
    const u = quantity.deviating(inches('0.705'), 'other sheet');

    test('none is undefined, never an empty map', () => {
        expect(inches('1').deviations).toBeUndefined();
        const zero = present(quantity.subtract(t, t));
        expect(zero.value).toEqual(Rational.zero);
        expect(zero.deviations).toBeUndefined();
        expect(quantity.scale(t, Rational.zero).deviations).toBeUndefined();
        expect(quantity.multiply(t, count('0')).deviations).toBeUndefined();
        expect(quantity.nominal(t).deviations).toBeUndefined();
    });

    test('of sums, multiples and negatives are exact', () => {
        const sum = present(quantity.add(quantity.scale(t, Rational.of(3)), quantity.negate(u)));
        expect(sum.deviations).toEqual(
            new Map([
                ['sheet', Rational.of(3)],
                ['other sheet', Rational.of(-1)],
            ]),
        );
        expect(present(quantity.divide(t, count('2'))).deviations).toEqual(new Map([['sheet', Rational.of(1, 2)]]));
        expect(quantity.deviating(t, 'sheet').deviations).toEqual(new Map([['sheet', Rational.of(2)]]));
    });

    test('of products and quotients follow the product rule', () => {
        expect(quantity.multiply(t, u).deviations).toEqual(
            new Map([
                ['sheet', u.value],
                ['other sheet', t.value],
            ]),
        );
        const ratio = present(quantity.divide(t, u));
        expect(ratio.deviations?.get('sheet')).toEqual(Rational.one.dividedBy(u.value as Rational));
        expect(quantity.multiply(ratio, u).deviations).toEqual(new Map([['sheet', Rational.one]]));
    });

    test('of an approximate value are approximate', () => {
        const curved = quantity.multiply(t, quantity.plain(1.5));
        expect(curved.deviations?.get('sheet')).toBe(1.5);
        expect(real.isExact(curved.value)).toBe(false);
    });
});

/** An expression over some sources, as a function of their values: evaluated once with quantities and twice with moved values. */
type Expression = (sources: readonly Quantity[]) => Quantity | undefined;
const leaf = fc.integer({ min: 0, max: 2 }).map(
    (index): Expression =>
        (sources) =>
            sources[index],
);
const expressions: fc.Arbitrary<Expression> = fc.letrec<{ node: Expression }>((tie) => ({
    node: fc.oneof(
        { maxDepth: 4 },
        leaf,
        fc.tuple(fc.constantFrom('add', 'subtract', 'multiply', 'divide'), tie('node'), tie('node')).map(
            ([name, a, b]): Expression =>
                (sources) => {
                    const [left, right] = [a(sources), b(sources)];
                    return left && right ? quantity[name](left, right) : undefined;
                },
        ),
        fc.tuple(fc.constantFrom('sine', 'cosine', 'tangent', 'squareRoot'), tie('node')).map(
            ([name, a]): Expression =>
                (sources) => {
                    const inner = a(sources);
                    if (!inner) return undefined;
                    return name === 'squareRoot' ? quantity.squareRoot(inner) : quantity[name]({ ...inner, dimension: dimension.angle });
                },
        ),
    ),
})).node;

test('the effect of a source is the slope of the value: checked against central differences', () => {
    let compared = 0;
    fc.assert(
        fc.property(
            fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: 20, max: 400 }))),
            fc.integer({ min: 0, max: 2 }),
            expressions,
            (values, moved, expression) => {
                const at = (shift: number): number | undefined => {
                    const value = expression(
                        values.map((each, index) => quantity.plain(each / 100 + (index === moved ? shift : 0))),
                    )?.value;
                    return value === undefined ? undefined : real.toNumber(value);
                };
                const step = 1e-5;
                const [whole, above, below, farAbove, farBelow] = [0, step, -step, 2 * step, -2 * step].map(at);
                const result = expression(
                    values.map((each, index) => quantity.deviating(quantity.plain(Rational.of(each, 100)), `${index}`)),
                );
                if (
                    result === undefined ||
                    [whole, above, below, farAbove, farBelow].some((each) => each === undefined || Math.abs(each) > 1e3)
                )
                    return;
                const slope = (present(above) - present(below)) / (2 * step);
                // Where the difference quotient itself is not settled (a pole, a root near zero) it is no witness.
                if (Math.abs((present(farAbove) - present(farBelow)) / (4 * step) - slope) > 1e-5 * (1 + Math.abs(slope))) return;
                const effect: Real = result.deviations?.get(`${moved}` as SourceId) ?? Rational.zero;
                expect(Math.abs(real.toNumber(effect) - slope)).toBeLessThan(1e-4 * (1 + Math.abs(slope)));
                compared++;
            },
        ),
        { numRuns: 2000 },
    );
    expect(compared).toBeGreaterThan(500);
});

describe('roots and angles', () => {
    const degrees = (text: string): Quantity => quantity.of(Rational.parse(text), unitNamed('deg'));

    test('degrees stay exact until a function makes them real', () => {
        expect(present(quantity.divide(degrees('360'), count('7'))).value).toEqual(Rational.of(360, 7));
        const sine = present(quantity.sine(degrees('30')));
        expect(real.isExact(sine.value)).toBe(false);
        expect(real.equalWithin(sine.value, Rational.of(1, 2), 1e-15)).toBe(true);
        expect(real.equalWithin(present(quantity.cosine(degrees('60'))).value, Rational.of(1, 2), 1e-15)).toBe(true);
        expect(real.equalWithin(present(quantity.tangent(degrees('45'))).value, Rational.one, 1e-15)).toBe(true);
    });

    test('refused: functions of what is no angle', () => {
        for (const operation of [quantity.sine, quantity.cosine, quantity.tangent]) {
            expect(operation(count('1'))).toBeUndefined();
            expect(operation(inches('1'))).toBeUndefined();
        }
    });

    test('the root of an area is a length, and approximate', () => {
        const side = present(quantity.squareRoot(quantity.multiply(inches('3'), inches('12'))));
        expect(side.dimension).toBe(dimension.length);
        expect(side.value).toBeCloseTo(6 * 25.4, 12);
    });

    test('refused: the root of a length, or of a value below zero', () => {
        expect(quantity.squareRoot(inches('4'))).toBeUndefined();
        expect(quantity.squareRoot(count('-4'))).toBeUndefined();
        expect(present(quantity.squareRoot(quantity.deviating(count('0'), 'x')))).toEqual(quantity.plain(0));
    });
});
