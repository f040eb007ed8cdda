/** Coverage of coatings against the arithmetic that data sheets of paints and lacquers print: 231 cubic inches a gallon, 144 square inches a square foot. */
import { describe, expect, it } from 'vitest';
import { coverage, dryFilm, liquidFor, wetFilm } from '../../src/cost/index.js';
import { real, unitNamed } from '../../src/quantity/index.js';

const mil = real.toNumber(unitNamed('mil').factor);
const [gallon, litre] = ['gal', 'litre'].map((symbol) => real.toNumber(unitNamed(symbol).factor)) as [number, number];
const squareFoot = 304.8 ** 2;
const squareFeetByGallon = (area: number) => (area * gallon) / squareFoot;

describe('coverage', () => {
    it('of a gallon one mil thick is 1604.17 square feet: 231 / 0.001 / 144, the theoretical coverage of the paint trade', () => {
        expect(squareFeetByGallon(coverage(mil, 1)).toFixed(2)).toBe('1604.17');
    });

    it('of a litre one micrometre thick is 1000 square metres', () => {
        expect((coverage(0.001, 1) * litre) / 1e6).toBeCloseTo(1000, 9);
    });

    it('4 mil wet at 24 % solids dry to 0.96 mil; a gallon covers 401.0 square feet, and 260.7 where 65 % is transferred', () => {
        expect((dryFilm(4 * mil, 0.24) / mil).toFixed(2)).toBe('0.96');
        expect(squareFeetByGallon(coverage(4 * mil, 1)).toFixed(1)).toBe('401.0');
        expect(squareFeetByGallon(coverage(4 * mil, 0.65)).toFixed(1)).toBe('260.7');
    });

    it('by the dry film is the same: 1604.17 x solids / dry mils', () => {
        const wet = wetFilm({ dry: 0.96 * mil, solids: 0.24 });
        expect(wet! / mil).toBeCloseTo(4, 12);
        expect(squareFeetByGallon(coverage(wet!, 1))).toBeCloseTo((1604.1667 * 0.24) / 0.96, 3);
    });

    it('is not known where nothing says how thick a coat is', () => {
        expect(wetFilm({ solids: 0.3 })).toBeUndefined();
        expect(wetFilm({ dry: 0.03 })).toBeUndefined();
    });

    it('two coats on 521.4 square feet at 260.7 a gallon take four gallons', () => {
        expect(liquidFor(521.4 * squareFoot, 2, 4 * mil, 0.65) / gallon).toBeCloseTo(4, 3);
    });
});
