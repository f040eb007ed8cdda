import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Rational, type Real, real } from '../../src/quantity/index.js';

const exact = fc.tuple(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: 1, max: 64 })).map(([n, d]) => Rational.of(n, d));
const approximate = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const half = Rational.of(1, 2);

describe('exactness', () => {
    test('an operation on exact values is exact, and one approximate value makes it approximate, for good', () => {
        fc.assert(
            fc.property(exact, exact, approximate, (a, b, x) => {
                for (const operation of [real.add, real.subtract, real.multiply]) {
                    expect(real.isExact(operation(a, b))).toBe(true);
                    for (const [left, right] of [
                        [a, x],
                        [x, b],
                        [x, x],
                    ] as const)
                        expect(real.isExact(operation(left, right))).toBe(false);
                }
                for (const operation of [real.negate, real.absolute, real.floor, real.ceiling, real.round]) {
                    expect(real.isExact(operation(a))).toBe(true);
                    expect(real.isExact(operation(x))).toBe(false);
                }
            }),
        );
    });

    test('both kinds agree in value', () => {
        fc.assert(
            fc.property(exact, exact, (a, b) => {
                const [x, y] = [a.toNumber(), b.toNumber()];
                for (const operation of [real.add, real.subtract, real.multiply, real.minimum, real.maximum]) {
                    expect(real.toNumber(operation(x, y))).toBeCloseTo(real.toNumber(operation(a, b)), 8);
                }
                expect(real.compare(a, b)).toBe(real.compare(x, y));
                expect(real.sign(a)).toBe(real.sign(x));
            }),
        );
    });

    test('a product that grows without end is given up for a number instead of growing', () => {
        let value: Real = Rational.of(10n ** 20n + 1n, 7);
        let turns = 0;
        while (real.isExact(value) && turns < 100) {
            value = real.multiply(value, value);
            turns++;
        }
        expect(turns).toBe(4);
        expect(real.toNumber(value)).toBeGreaterThan(1e300);
    });

    test('isFinite tells a number that ran out of range', () => {
        expect(real.isFinite(real.multiply(1e300, 1e300))).toBe(false);
        expect(real.isFinite(Number.NaN)).toBe(false);
        expect(real.isFinite(1e300)).toBe(true);
        expect(real.isFinite(Rational.of(10n ** 400n))).toBe(true);
    });
});

describe('rounding', () => {
    test.each<[Real, number]>([
        [half, 1],
        [half.negated(), -1],
        [2.5, 3],
        [-2.5, -3],
        [-0.2, 0],
        [0.49999999999999994, 0],
    ])('%s rounds to %d', (value, expected) => {
        expect(real.toNumber(real.round(value))).toBe(expected);
    });

    test('roundTo keeps the kind of the value', () => {
        expect(real.roundTo(Rational.of(13, 64), Rational.of(1, 32))).toEqual(Rational.of(7, 32));
        expect(real.roundTo(0.2032, Rational.of(1, 32))).toBe(0.21875);
    });

    test('no negative zero', () => {
        for (const value of [real.negate(0), real.ceiling(-0.5), real.round(-0.2), real.negate(Rational.zero)]) {
            expect(Object.is(real.toNumber(value), 0)).toBe(true);
        }
    });
});

test('division by zero is refused, exact and approximate', () => {
    expect(() => real.divide(Rational.one, Rational.zero)).toThrow(RangeError);
    expect(() => real.divide(Rational.one, 0)).toThrow(RangeError);
    expect(() => real.divide(1, Rational.zero)).toThrow(RangeError);
    expect(real.divide(Rational.one, 4)).toBe(0.25);
    expect(real.divide(Rational.one, Rational.of(4))).toEqual(Rational.of(1, 4));
});

test('equalWithin compares with a named tolerance', () => {
    expect(real.equalWithin(304.79999999999995, Rational.of(3048, 10), 1e-9)).toBe(true);
    expect(real.equalWithin(Rational.of(1), Rational.of(3, 2), half)).toBe(true);
    expect(real.equalWithin(Rational.of(1), Rational.of(8, 5), half)).toBe(false);
});

test('minimum and maximum give the first of two equal values', () => {
    const [a, b] = [Rational.of(1, 2), 0.5];
    expect(real.minimum(a, b)).toBe(a);
    expect(real.maximum(b, a)).toBe(b);
});
