import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { Rational } from '../../src/quantity/index.js';

/** Numerators on both sides of the border between safe integers and BigInt. */
const numerators = fc.oneof(fc.bigInt(-500n, 500n), fc.bigInt(-(2n ** 53n), 2n ** 53n), fc.bigInt(-(2n ** 90n), 2n ** 90n));
const denominators = fc.oneof(fc.constantFrom(1n, 2n, 5n, 10n, 64n, 320n), fc.bigInt(1n, 2n ** 53n), fc.bigInt(1n, 2n ** 80n));
const pairs = fc.tuple(numerators, denominators);

const ours = ([n, d]: readonly [bigint, bigint]): Rational => Rational.of(n, d);
/** As text: fraction.js cuts other arguments down to numbers here and there. */
const theirs = ([n, d]: readonly [bigint, bigint]): Fraction => new Fraction(`${n}/${d}`);
function same(a: Rational, b: Fraction): void {
    expect(a.toString()).toBe(b.toFraction());
}

// Outside check: fraction.js 5 (MIT, Robert Eisele), an independent implementation of rational arithmetic.
describe('arithmetic agrees with fraction.js', () => {
    test.each([
        ['plus', 'add'],
        ['minus', 'sub'],
        ['times', 'mul'],
    ] as const)('%s', (our, their) => {
        fc.assert(
            fc.property(pairs, pairs, (a, b) => same(ours(a)[our](ours(b)), theirs(a)[their](theirs(b)))),
            { numRuns: 1000 },
        );
    });

    test('dividedBy', () => {
        fc.assert(
            fc.property(
                pairs,
                pairs.filter(([n]) => n !== 0n),
                (a, b) => same(ours(a).dividedBy(ours(b)), theirs(a).div(theirs(b))),
            ),
            { numRuns: 1000 },
        );
    });

    test('compare, equals, sign, negated, absolute, floor, ceiling', () => {
        fc.assert(
            fc.property(pairs, pairs, (a, b) => {
                const [x, y, p, q] = [ours(a), ours(b), theirs(a), theirs(b)];
                expect(x.compare(y)).toBe(Math.sign(p.compare(q)));
                expect(x.equals(y)).toBe(p.equals(q));
                expect(x.sign()).toBe(Math.sign(p.compare(0)));
                expect(x.isZero()).toBe(p.equals(0));
                same(x.negated(), p.neg());
                same(x.absolute(), p.abs());
                same(x.floor(), p.floor());
                same(x.ceiling(), p.ceil());
            }),
            { numRuns: 1000 },
        );
    });

    test('rounded: to the nearest integer, a half away from zero', () => {
        fc.assert(
            fc.property(pairs, (a) => {
                const [n, d] = a;
                // floor(|a| + 1/2) with the sign of a, in the outside library
                const expected = theirs([n < 0n ? -n : n, d])
                    .add('1/2')
                    .floor();
                same(ours(a).rounded(), n < 0n ? expected.neg() : expected);
            }),
            { numRuns: 1000 },
        );
    });
});

describe('one form for each value', () => {
    test('a value that came through BigInt equals one that did not', () => {
        fc.assert(
            fc.property(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: 1, max: 1000 }), (n, d) => {
                const far = Rational.of(2n ** 70n, 3n);
                const back = Rational.of(n, d).times(far).dividedBy(far);
                expect(back.equals(Rational.of(n, d))).toBe(true);
                expect(back).toEqual(Rational.of(n, d));
            }),
        );
    });

    test('reduced, with the sign above', () => {
        expect(Rational.of(6, -8).toString()).toBe('-3/4');
        expect(Rational.of(6, -8).numerator).toBe(-3n);
        expect(Rational.of(6, -8).denominator).toBe(4n);
        expect(Rational.of(-6n, -8n).toString()).toBe('3/4');
        expect(Rational.of(0, -5)).toEqual(Rational.zero);
        expect(Rational.of(-(2n ** 80n), -(2n ** 81n)).toString()).toBe('1/2');
    });

    test('no negative zero from any operation', () => {
        const zero = Rational.of(-0);
        const third = Rational.of(-1, 3);
        for (const value of [
            zero,
            zero.negated(),
            zero.times(third),
            zero.dividedBy(third),
            third.plus(third.negated()),
            Rational.of(-1, 4).rounded(),
        ]) {
            expect(Object.is(value.toNumber(), 0)).toBe(true);
            expect(value.toString()).toBe('0');
        }
    });

    test('crosses the border of safe integers in both directions without loss', () => {
        const most = Rational.of(Number.MAX_SAFE_INTEGER);
        expect(most.plus(Rational.one).toString()).toBe('9007199254740992');
        expect(most.plus(Rational.one).minus(Rational.one)).toEqual(most);
        expect(most.plus(most).negated().toString()).toBe('-18014398509481982');
        expect(most.times(most).dividedBy(most)).toEqual(most);
    });
});

describe('parse', () => {
    test.each([
        ['3/4', '3/4'],
        ['1.25', '5/4'],
        ['-2', '-2'],
        ['-0.50', '-1/2'],
        ['0.720', '18/25'],
        ['007', '7'],
        ['10/4', '5/2'],
        ['123456789012345678901234567890', '123456789012345678901234567890'],
        ['0.0000000000000000000001', '1/10000000000000000000000'],
    ])('%s is %s', (text, value) => {
        expect(Rational.parse(text).toString()).toBe(value);
    });

    test('reads back what toString writes', () => {
        fc.assert(
            fc.property(pairs, (a) => {
                expect(Rational.parse(ours(a).toString())).toEqual(ours(a));
            }),
        );
    });

    test.each(['', 'x', '1 1/4', '.5', '1.', '+1', '1e3', '1/-2', '3/4in', ' 1'])('refuses %j', (text) => {
        expect(() => Rational.parse(text)).toThrow(SyntaxError);
    });
});

describe('refused', () => {
    test('a denominator of zero, and division by zero', () => {
        expect(() => Rational.of(1, 0)).toThrow(RangeError);
        expect(() => Rational.of(1n, 0n)).toThrow(RangeError);
        expect(() => Rational.parse('1/0')).toThrow(RangeError);
        expect(() => Rational.one.dividedBy(Rational.zero)).toThrow(RangeError);
        expect(() => Rational.of(2n ** 70n).dividedBy(Rational.zero)).toThrow(RangeError);
        expect(() => Rational.one.roundedTo(Rational.zero)).toThrow(RangeError);
    });

    test.each([0.5, Number.NaN, Number.POSITIVE_INFINITY])('%d as a part of a fraction', (value) => {
        expect(() => Rational.of(value)).toThrow(RangeError);
        expect(() => Rational.of(1, value)).toThrow(RangeError);
        expect(() => Rational.of(1n, value)).toThrow(RangeError);
    });
});

describe('toNumber', () => {
    test('a written decimal gives the number that the same digits give in source text', () => {
        fc.assert(
            fc.property(fc.bigInt(0n, 10n ** 25n), fc.integer({ min: 1, max: 24 }), (digits, places) => {
                const text = `${digits}`.padStart(places + 1, '0');
                const written = `${text.slice(0, -places)}.${text.slice(-places)}`;
                // Outside check: the conversion of decimal text to the nearest double (ECMA-262, StringToNumber).
                expect(Rational.parse(written).toNumber()).toBe(Number(written));
            }),
            { numRuns: 2000 },
        );
    });

    test('of a value a hair above the middle between two doubles is the upper one', () => {
        const middle = Rational.of(2n ** 53n + 1n);
        expect(middle.toNumber()).toBe(2 ** 53);
        expect(middle.plus(Rational.of(1n, 2n ** 100n)).toNumber()).toBe(2 ** 53 + 2);
    });

    test('of parts too large for a double', () => {
        expect(Rational.of(10n ** 400n, 3n * 10n ** 400n).toNumber()).toBe(1 / 3);
        expect(Rational.of(-(10n ** 400n) * 2n, 10n ** 399n).toNumber()).toBe(-20);
        expect(Rational.of(1n, 10n ** 300n).toNumber()).toBe(1e-300);
    });
});

describe('roundedTo', () => {
    test.each([
        ['13/64', '1/32', '7/32'],
        ['-13/64', '1/32', '-7/32'],
        ['0.05', '0.1', '0.1'],
        ['5', '3', '6'],
    ])('%s to a multiple of %s is %s', (value, step, expected) => {
        expect(Rational.parse(value).roundedTo(Rational.parse(step))).toEqual(Rational.parse(expected));
    });

    test('never moves by more than half a step', () => {
        fc.assert(
            fc.property(pairs, fc.constantFrom('1', '1/64', '127/320', '1/10'), (a, step) => {
                const moved = ours(a).roundedTo(Rational.parse(step)).minus(ours(a)).absolute();
                expect(moved.compare(Rational.parse(step).dividedBy(Rational.of(2)))).toBeLessThanOrEqual(0);
            }),
        );
    });
});

test('isLongerThan bounds numerator and denominator', () => {
    expect(Rational.of(2n ** 100n).isLongerThan(100)).toBe(true);
    expect(Rational.of(2n ** 100n - 1n).isLongerThan(100)).toBe(false);
    expect(Rational.of(-1n, 2n ** 100n).isLongerThan(100)).toBe(true);
    expect(Rational.of(256).isLongerThan(8)).toBe(true);
    expect(Rational.of(255, 254).isLongerThan(8)).toBe(false);
});

describe('sizes on paper stay what they are', () => {
    const inch = Rational.parse('25.4');

    test('every 64th of an inch up to 120in, kept in mm, comes back; so does their running sum', () => {
        const lost: number[] = [];
        let sum = Rational.zero;
        const step = Rational.of(1, 64).times(inch);
        for (let n = 0; n <= 120 * 64; n++) {
            if (!sum.dividedBy(inch).equals(Rational.of(n, 64)) || !sum.equals(Rational.of(n, 64).times(inch))) lost.push(n);
            sum = sum.plus(step);
        }
        expect(lost).toEqual([]);
    });

    test('every tenth of a mm up to 3000mm, kept in inches, comes back', () => {
        const values = Array.from({ length: 30_001 }, (_, n) => Rational.of(n, 10));
        expect(values.filter((value) => !value.dividedBy(inch).times(inch).equals(value))).toEqual([]);
    });

    test('a width divided into equal bays adds up to the width', () => {
        for (let bays = 1; bays <= 12; bays++) {
            for (const width of ['1187/16', '927.3', '40', '119']) {
                const bay = Rational.parse(width).dividedBy(Rational.of(bays));
                let sum = Rational.zero;
                for (let i = 0; i < bays; i++) sum = sum.plus(bay);
                expect(sum).toEqual(Rational.parse(width));
            }
        }
    });
});
