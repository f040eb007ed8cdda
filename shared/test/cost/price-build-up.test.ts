/** Prices against worked examples of bookkeeping by hand: overhead on direct cost, margin as a share of the price, tax on the price. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hoursFor, priceBuildUp } from '../../src/cost/index.js';
import { Rational } from '../../src/quantity/index.js';

const money = (cents: number) => Rational.of(cents, 100);
const share = (percent: number) => Rational.of(percent, 100);
const said = (built: ReturnType<typeof priceBuildUp>) =>
    Object.fromEntries(Object.entries(built).map(([name, amount]) => [name, amount.toNumber()]));

describe('the price of a job', () => {
    it('of 500 of materials and 300 of labour at 25 % overhead costs 1000, and at a margin of 20 % is 1250, with 8 % of tax 1350', () => {
        expect(said(priceBuildUp(money(50_000), money(30_000), { overhead: share(25), margin: share(20), tax: share(8) }))).toEqual({
            materials: 500,
            labor: 300,
            overhead: 200,
            cost: 1000,
            profit: 250,
            price: 1250,
            tax: 100,
            total: 1350,
        });
    });

    it('at a margin of half is double the cost (a markup of 100 %, by definition of the two words)', () => {
        expect(priceBuildUp(money(12_345), Rational.zero, { margin: share(50) }).price.toNumber()).toBe(246.9);
    });

    it('without shares is what it costs', () => {
        expect(said(priceBuildUp(money(1), money(2), {}))).toMatchObject({ cost: 0.03, price: 0.03, total: 0.03, tax: 0, profit: 0 });
    });

    it('is never found for a margin of the whole price', () => {
        expect(() => priceBuildUp(money(1), money(1), { margin: share(100) })).toThrow(RangeError);
    });

    it('adds up line by line in whole cents, and the margin is what it is said to be, to the cent', () => {
        const percent = fc.integer({ min: 0, max: 95 });
        const cents = fc.integer({ min: 0, max: 100_000_000 });
        fc.assert(
            fc.property(cents, cents, percent, percent, percent, (materials, labor, overhead, margin, tax) => {
                const built = priceBuildUp(money(materials), money(labor), {
                    overhead: share(overhead),
                    margin: share(margin),
                    tax: share(tax),
                });
                for (const amount of Object.values(built)) expect(amount.times(Rational.of(100)).isInteger()).toBe(true);
                expect(built.cost.compare(built.materials.plus(built.labor).plus(built.overhead))).toBe(0);
                expect(built.price.compare(built.cost.plus(built.profit))).toBe(0);
                expect(built.total.compare(built.price.plus(built.tax))).toBe(0);
                const wanted = built.price.times(share(margin)).minus(built.profit).absolute();
                expect(wanted.compare(Rational.of(1, 100))).toBeLessThanOrEqual(0);
            }),
        );
    });
});

describe('hours', () => {
    it('of 45 cuts of a minute and a half are 1.13: 67.5 minutes to the hundredth of an hour', () => {
        expect(hoursFor(Rational.of(45), Rational.of(3, 2)).toNumber()).toBe(1.13);
    });

    it('of twenty minutes, nine times, are three', () => {
        expect(hoursFor(Rational.of(9), Rational.of(20)).toNumber()).toBe(3);
    });
});
