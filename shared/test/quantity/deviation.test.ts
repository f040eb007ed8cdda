import { describe, expect, test } from 'vitest';
import {
    type DeviationSource,
    largestContributor,
    likelyCase,
    type Quantity,
    quantity,
    Rational,
    type Real,
    type SourceId,
    unitNamed,
    worstCase,
} from '../../src/quantity/index.js';

const inch = unitNamed('in');
const inches = (text: string): Quantity => quantity.of(Rational.parse(text), inch);
const inInches = (length: Real): number => (typeof length === 'number' ? length : length.toNumber()) / 25.4;

function sources(...rows: readonly (readonly [id: SourceId, minus: string, plus: string])[]): ReadonlyMap<SourceId, DeviationSource> {
    return new Map(rows.map(([id, minus, plus]) => [id, { id, minus: inches(minus).value, plus: inches(plus).value }] as const));
}

function minus(a: Quantity, ...others: readonly Quantity[]): Quantity {
    return others.reduce((rest, other) => {
        const less = quantity.subtract(rest, other);
        if (!less) throw new Error('lengths are subtracted from lengths');
        return less;
    }, a);
}

describe('a 40in case with two sides of two layers of 0.720 ± 0.010in', () => {
    const names = ['Left/1', 'Left/2', 'Right/1', 'Right/2'];
    const table = sources(...names.map((name) => [name, '0.010', '0.010'] as const));
    const layers = names.map((name) => quantity.deviating(inches('0.720'), name));
    const shelf = minus(inches('40'), ...layers);

    test('the shelf is 37.12in, exactly', () => {
        expect(quantity.valueIn(shelf, inch)).toEqual(Rational.parse('37.12'));
    });

    test('worst ± 0.040in, exactly', () => {
        expect(worstCase(shelf, table)).toEqual({ minus: inches('0.040').value, plus: inches('0.040').value });
    });

    test('likely ± 0.020in: the root of the sum of four squares of 0.010', () => {
        const likely = likelyCase(shelf, table);
        expect(inInches(likely.minus)).toBeCloseTo(0.02, 12);
        expect(inInches(likely.plus)).toBeCloseTo(0.02, 12);
    });

    test('four equal contributors: the first is named, with a quarter', () => {
        const largest = largestContributor(shelf, table);
        expect(largest?.source.id).toBe('Left/1');
        expect(largest?.share).toBe(0.25);
    });

    test('a thickness less itself is 0 ± 0, where interval arithmetic would say ± 0.020in', () => {
        const [layer = inches('0')] = layers;
        const nothing = minus(layer, layer);
        expect(worstCase(nothing, table)).toEqual({ minus: Rational.zero, plus: Rational.zero });
        expect(likelyCase(nothing, table)).toEqual({ minus: 0, plus: 0 });
        expect(largestContributor(nothing, table)).toBeUndefined();
    });

    test('the same sheet counted twice is one source with twice the effect', () => {
        const [layer = inches('0')] = layers;
        const doubled = minus(inches('40'), layer, layer);
        expect(inInches(worstCase(doubled, table).plus)).toBeCloseTo(0.02, 12);
        expect(inInches(likelyCase(doubled, table).plus)).toBeCloseTo(0.02, 12);
    });
});

describe('limits that differ on both sides', () => {
    const table = sources(['sheet', '0.6', '0.2'], ['wall', '0', '1'], ['exact', '0', '0']);
    const sheet = quantity.deviating(inches('18'), 'sheet');

    test('change sides with the sign of the effect', () => {
        expect(worstCase(sheet, table)).toEqual({ minus: inches('0.6').value, plus: inches('0.2').value });
        expect(worstCase(quantity.negate(sheet), table)).toEqual({ minus: inches('0.2').value, plus: inches('0.6').value });
        expect(inInches(likelyCase(quantity.negate(sheet), table).plus)).toBeCloseTo(0.6, 12);
    });

    test('the largest contributor is the one with the widest range', () => {
        const room = quantity.deviating(quantity.scale(sheet, Rational.of(-2)), 'wall');
        const largest = largestContributor(room, table);
        expect(largest?.source.id).toBe('sheet');
        expect(largest).toMatchObject({ minus: inches('0.4').value, plus: inches('1.2').value });
        expect(largest?.share).toBeCloseTo(1.6 / 2.6, 12);
    });

    test('a source without range contributes nothing', () => {
        expect(largestContributor(quantity.deviating(inches('1'), 'exact'), table)).toBeUndefined();
    });

    test('a source that is not in the table is a mistake of the caller', () => {
        const lost = quantity.deviating(inches('1'), 'lost');
        for (const ask of [worstCase, likelyCase, largestContributor])
            expect(() => ask(lost, table)).toThrow('no source of deviation is called lost');
    });
});
