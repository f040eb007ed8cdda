import { describe, expect, test } from 'vitest';
import type { Layer, Part } from '../../src/casework/index.js';
import { board, caseworkOf, findingsOf, measure, pieceOf, property, spanOf, thingOf } from './casework-of.js';

const idOf = (name: string) => `hand-made.case#${name}`;

describe('MAT-002 unlike-layers', () => {
    const things = [
        thingOf('species', 'Birch', 'hardwood'),
        thingOf('species', 'BlackWalnut', 'hardwood'),
        thingOf('material', 'ShopPly', 'plywood', { species: property.thing('Birch') }),
        thingOf('material', 'ShopPly6', 'plywood', { species: property.thing('Birch') }),
        thingOf('material', 'WalnutPly', 'plywood', { species: property.thing('BlackWalnut') }),
        thingOf('material', 'Mdf', 'fibreboard'),
    ];
    const side = (...materials: readonly string[]): Part => {
        const part = board(1, 'side', 'Left', ['0in', '1.44in'], ['0in', '11in'], ['0in', '36in']);
        const layers = materials.map(
            (name, index): Layer => ({
                material: idOf(name),
                thickness: measure('0.72in'),
                grain: 'length',
                size: part.sizes.finished,
                box: undefined,
                span: spanOf(10 + index),
            }),
        );
        return { ...part, layers };
    };

    test.each([
        [['WalnutPly'], 0],
        [['WalnutPly', 'WalnutPly'], 0],
        [['ShopPly', 'ShopPly6'], 0],
        [['WalnutPly', 'Mdf', 'WalnutPly'], 0],
        [['ShopPly', 'WalnutPly'], 1],
        [['Mdf', 'ShopPly'], 1],
        [['WalnutPly', 'Mdf', 'ShopPly'], 1],
        [['WalnutPly', 'ShopPly', 'Mdf', 'WalnutPly'], 1],
        // What is not known is not judged.
        [['ShopPly', 'Unknown'], 0],
    ])('%j', (materials, count) => {
        expect(findingsOf('MAT-002', caseworkOf({ parts: [side(...materials)], things }))).toHaveLength(count);
    });

    test('names both', () => {
        expect(findingsOf('MAT-002', caseworkOf({ parts: [side('ShopPly', 'WalnutPly')], things }))).toEqual([
            'Case.Left: `Left` has `WalnutPly` where the other side has `ShopPly`: it will cup',
        ]);
    });
});

describe('MAT-003 larger-than-sheet and MAT-004 grain-not-to-be-had', () => {
    const sheet = (grain: string | undefined, family = 'plywood') =>
        thingOf('material', 'Ply', family, {
            sheet: property.sheets(['48in', '96in'], ['60in', '60in']),
            ...(grain === undefined ? {} : { grain: property.word(grain) }),
        });

    /** A side `length` long and `width` wide, with its grain along its length unless said otherwise. */
    const codes = (
        length: string,
        width: string,
        {
            grain = 'length',
            pieceGrain = 'length',
            trim,
            family = 'plywood',
        }: { grain?: string; pieceGrain?: 'length' | 'width' | 'none'; trim?: string; family?: string } = {},
    ) => {
        const part = board(1, 'side', 'Left', ['0in', '0.72in'], ['0in', width], ['0in', length]);
        const casework = caseworkOf({
            parts: [part],
            things: [sheet(grain, family)],
            pieces: [pieceOf(part, { material: idOf('Ply'), grain: pieceGrain })],
        });
        const cut = { ...casework, shop: { ...casework.shop, trim: trim === undefined ? undefined : measure(trim) } };
        return [...findingsOf('MAT-003', cut), ...findingsOf('MAT-004', cut)].map((text) => text.slice('Case.Left: '.length));
    };

    test('what fits', () => {
        expect(codes('96in', '48in')).toEqual([]);
        expect(codes('60in', '60in')).toEqual([]);
    });

    test('larger than every sheet, either way round', () => {
        expect(codes('100in', '11in')).toEqual(['`Left` is 11in x 100in as first cut, and the largest sheet of `Ply` is 48in x 96in']);
        expect(codes('61in', '50in')).toHaveLength(1);
    });

    test('what the shop trims off is not there to be cut', () => {
        expect(codes('96in', '11in', { trim: '1/4in' })).toEqual([
            '`Left` is 11in x 96in as first cut, and the largest sheet of `Ply` is 48in x 96in, less 1/4in on each edge',
        ]);
        expect(codes('95 1/2in', '11in', { trim: '1/4in' })).toEqual([]);
    });

    test('grain that no sheet can give', () => {
        expect(codes('48in', '70in')).toEqual([
            '`Left` wants 48in along the grain and 70in across it, and a sheet of `Ply` has that only the other way round',
        ]);
        expect(codes('70in', '48in', { pieceGrain: 'width' })).toHaveLength(1);
        expect(codes('48in', '70in', { pieceGrain: 'width' })).toEqual([]);
    });

    test('a sheet whose grain runs across its length', () => {
        expect(codes('48in', '70in', { grain: 'width' })).toEqual([]);
        expect(codes('70in', '48in', { grain: 'width' })).toHaveLength(1);
    });

    test('without grain either way round will do', () => {
        expect(codes('48in', '70in', { pieceGrain: 'none' })).toEqual([]);
        expect(codes('48in', '70in', { grain: 'none' })).toEqual([]);
        expect(codes('48in', '70in', { family: 'fibreboard', grain: 'none' })).toEqual([]);
    });

    test('bands can be pieced together and are not judged', () => {
        const part = board(1, 'side', 'Left', ['0in', '0.72in'], ['0in', '11in'], ['0in', '100in']);
        const pieces = [pieceOf(part, { material: idOf('Ply'), role: 'band' })];
        expect(findingsOf('MAT-003', caseworkOf({ parts: [part], things: [sheet('length')], pieces }))).toEqual([]);
    });
});
