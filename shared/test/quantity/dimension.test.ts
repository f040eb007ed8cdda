import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
    type BaseDimension,
    baseUnitSymbol,
    currencyOf,
    type Dimension,
    describeDimension,
    dimension,
    dimensionRoot2,
    divideDimensions,
    multiplyDimensions,
} from '../../src/quantity/index.js';

const bases: readonly Dimension[] = [
    dimension.length,
    dimension.mass,
    dimension.time,
    dimension.angle,
    dimension.money('USD'),
    dimension.money('EUR'),
];
const products = fc.array(fc.tuple(fc.constantFrom(...bases), fc.boolean()), { maxLength: 8 });

function multipliedOut(factors: readonly (readonly [Dimension, boolean])[]): Dimension {
    return factors.reduce(
        (product, [base, above]) => (above ? multiplyDimensions(product, base) : divideDimensions(product, base)),
        dimension.none,
    );
}

describe('equal dimensions are one object', () => {
    test('in whatever order they were multiplied', () => {
        fc.assert(
            fc.property(products, (factors) => {
                expect(multipliedOut(factors)).toBe(multipliedOut([...factors].reverse()));
            }),
        );
    });

    test('multiplying and dividing cancel', () => {
        fc.assert(
            fc.property(products, products, (a, b) => {
                const [x, y] = [multipliedOut(a), multipliedOut(b)];
                expect(divideDimensions(multiplyDimensions(x, y), y)).toBe(x);
                expect(divideDimensions(x, x)).toBe(dimension.none);
                expect(dimensionRoot2(multiplyDimensions(x, x))).toBe(x);
            }),
        );
    });

    test('named ones are what they are made of', () => {
        expect(multiplyDimensions(dimension.length, dimension.length)).toBe(dimension.area);
        expect(multiplyDimensions(dimension.area, dimension.length)).toBe(dimension.volume);
        expect(divideDimensions(dimension.mass, dimension.area)).toBe(dimension.areaLoad);
        expect(divideDimensions(dimension.mass, dimension.length)).toBe(dimension.lineLoad);
        expect(divideDimensions(dimension.mass, dimension.volume)).toBe(dimension.density);
        expect(divideDimensions(dimension.force, dimension.area)).toBe(dimension.pressure);
        expect(divideDimensions(dimension.length, dimension.length)).toBe(dimension.none);
        expect(dimension.money('USD')).toBe(dimension.money('USD'));
        expect(dimension.money('USD')).not.toBe(dimension.money('EUR'));
        expect(dimension.areaLoad).not.toBe(dimension.pressure);
    });

    test('exponents of zero are not kept', () => {
        const exponents: ReadonlyMap<BaseDimension, number> = divideDimensions(dimension.force, dimension.mass).exponents;
        expect([...exponents]).toEqual([
            ['length', 1],
            ['time', -2],
        ]);
    });
});

test('only even powers have a root', () => {
    expect(dimensionRoot2(dimension.area)).toBe(dimension.length);
    expect(dimensionRoot2(dimension.none)).toBe(dimension.none);
    expect(dimensionRoot2(dimension.volume)).toBeUndefined();
    expect(dimensionRoot2(dimension.force)).toBeUndefined();
});

describe('in words', () => {
    const per = (above: Dimension, below: Dimension): Dimension => divideDimensions(above, below);
    test.each<[string, Dimension]>([
        ['a plain number', dimension.none],
        ['a length', dimension.length],
        ['an area', dimension.area],
        ['a volume', dimension.volume],
        ['a mass', dimension.mass],
        ['a force', dimension.force],
        ['a pressure', dimension.pressure],
        ['a load per area', dimension.areaLoad],
        ['a load per length', dimension.lineLoad],
        ['a density', dimension.density],
        ['an angle', dimension.angle],
        ['a time', dimension.time],
        ['an amount of money in USD', dimension.money('USD')],
        ['a price in EUR per area', per(dimension.money('EUR'), dimension.area)],
        ['a price in USD per time', per(dimension.money('USD'), dimension.time)],
        ['a number per length', per(dimension.none, dimension.length)],
        ['a quantity in mm^4', multiplyDimensions(dimension.volume, dimension.length)],
        ['a quantity in kg²/s', per(multiplyDimensions(dimension.mass, dimension.mass), dimension.time)],
        ['a quantity in USD²', multiplyDimensions(dimension.money('USD'), dimension.money('USD'))],
        ['a quantity in EUR/USD', per(dimension.money('EUR'), dimension.money('USD'))],
    ])('%s', (words, of) => {
        expect(describeDimension(of)).toBe(words);
    });

    test('base units', () => {
        expect(baseUnitSymbol(dimension.none)).toBe('');
        expect(baseUnitSymbol(dimension.force)).toBe('mm·kg/s²');
        expect(baseUnitSymbol(per(dimension.none, dimension.area))).toBe('1/mm²');
    });

    test('the currency of an amount or a price', () => {
        expect(currencyOf(dimension.money('USD'))).toBe('USD');
        expect(currencyOf(per(dimension.money('GBP'), dimension.volume))).toBe('GBP');
        expect(currencyOf(per(dimension.none, dimension.money('GBP')))).toBeUndefined();
        expect(currencyOf(per(dimension.money('EUR'), dimension.money('USD')))).toBeUndefined();
        expect(currencyOf(dimension.length)).toBeUndefined();
    });
});
