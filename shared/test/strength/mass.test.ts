import { describe, expect, test } from 'vitest';
import type { Casework, Piece } from '../../src/casework/index.js';
import { arcCurve, circularSegment, point } from '../../src/geometry/index.js';
import { real } from '../../src/quantity/index.js';
import { densityOf, massOfPart } from '../../src/strength/mass.js';
import { approximate, material, part, piece, size, span } from '../documents/casework-builder.js';
import { bookcase, things, withPieces } from '../documents/sample-casework.js';

const pound = 0.45359237;
const cubicFoot = 304.8 ** 3;

function kilograms(casework: Casework, path: string): number | undefined {
    const found = massOfPart(casework, casework.parts.get(path)!);
    return found && real.toNumber(found.value);
}

function cut(
    role: Piece['role'],
    name: string,
    quantity: number,
    dimensions: readonly [string, string, string],
    more: Partial<Piece> = {},
) {
    return {
        ...piece({ part: 'Bookcase.kick', role, name: role, material: material(name), quantity, finished: size(...dimensions) }),
        ...more,
    };
}

test('density times volume, in kilograms (1 lb = 0.45359237 kg, the international pound of 1959)', () => {
    // One cubic foot of a 48 lb/ft3 board weighs 48 lb.
    expect(kilograms(withPieces(cut('core', 'Mdf', 2, ['24in', '12in', '6in'])), 'Bookcase.kick')).toBeCloseTo(48 * pound, 9);
});

test('a board weighs what its species weighs (Wood Handbook FPL-GTR-282, Table 5-3b and Equation 4-14: black walnut 0.55, 38.5 lb/ft3)', () => {
    // Equation 4-14 at 12 %: 62.43 * 0.55 * 1.12 lb/ft3.
    const walnut = densityOf(
        bookcase,
        things.find(({ name }) => name === 'Walnut'),
    )!;
    expect((real.toNumber(walnut.value) * cubicFoot) / pound).toBeCloseTo(62.43 * 0.55 * 1.12, 1);
});

test('all pieces of the part count: layers, bands and nosings', () => {
    const layer = cut('layer', 'Mdf', 4, ['12in', '12in', '6in']);
    const band = cut('band', 'Walnut', 2, ['12in', '12in', '1in']);
    expect(kilograms(withPieces(layer, band), 'Bookcase.kick')).toBeCloseTo((48 + 38.5 / 12) * pound, 9);
});

test('a piece counts without the bands on it, and a band as it is delivered', () => {
    const core = cut('core', 'Mdf', 2, ['12in', '12in', '12in'], { core: size('12in', '6in', '12in') });
    const band = cut('band', 'Walnut', 2, ['12in', '6in', '12in'], { rough: size('24in', '24in', '24in') });
    expect(kilograms(withPieces(core, band), 'Bookcase.kick')).toBeCloseTo(((48 + 38.5) / 2) * pound, 9);
});

describe('what is not known is undefined, never zero', () => {
    test('the species of a panel is only that of its faces', () => {
        expect(
            densityOf(
                bookcase,
                things.find(({ name }) => name === 'WalnutPly'),
            ),
        ).toBeUndefined();
        expect(kilograms(bookcase, 'Bookcase.Left')).toBeUndefined();
    });

    test.each([
        ['a size', cut('core', 'Mdf', 2, ['12in', '12in', '12in'], { core: size(undefined, '12in', '12in') })],
        ['the material', cut('core', 'Mdf', 2, ['12in', '12in', '12in'], { material: undefined })],
    ])('%s', (_, unknown) => {
        expect(kilograms(withPieces(cut('core', 'Mdf', 2, ['12in', '12in', '12in']), unknown), 'Bookcase.kick')).toBeUndefined();
    });

    test('no pieces', () => {
        expect(kilograms(withPieces(), 'Bookcase.kick')).toBeUndefined();
    });
});

describe('under a curve', () => {
    const [assembly] = bookcase.assemblies;
    /** A side 1000 high whose front is an arc of rise 100 over a depth of 300 at both ends. */
    const outcome = arcCurve(point(0, 300), point(1000, 300), 100);
    const side = part({
        path: 'Bookcase.Left',
        kind: 'side',
        quantity: 1,
        size: { ...size('1000mm', undefined, '20mm'), width: approximate(400) },
        along: ['z', 'y', 'x'],
        at: [0, 0, 0],
        frontCurve: 'Bookcase.Sweep',
    });
    const model = {
        path: 'Bookcase.Sweep',
        name: 'Sweep',
        assembly: 'Bookcase',
        over: 'height',
        curve: outcome.ok ? outcome.curve : undefined,
        pieces: [],
        joints: [],
        used: undefined,
        parts: [side.path],
        span,
        nameSpan: span,
    } as const;
    const block = piece({
        part: side.path,
        role: 'core',
        name: 'side',
        material: material('Mdf'),
        quantity: 1,
        finished: side.sizes.finished,
    });
    const curved = (changes: Partial<Casework>): Casework => ({
        ...bookcase,
        pieces: [block],
        parts: new Map([[side.path, side]]),
        curves: [model],
        ...changes,
    });

    test('the area under an arc is that of the rectangle and of the circular segment (elementary geometry)', () => {
        const area = 300 * 1000 + circularSegment(1000, 100).area;
        const density = (48 * pound) / cubicFoot;
        const found = kilograms(curved({}), side.path)!;
        expect(Math.abs(found / (area * 20 * density) - 1)).toBeLessThan(1e-6);
    });

    test('what lies behind the part does not count: one that begins 100 before the wall has that much less of the same area', () => {
        const before = { ...side, box: { ...side.box, least: { ...side.box.least, y: 100 } } };
        const cutShort = { ...block, core: { ...block.core, width: approximate(300) } };
        const area = 200 * 1000 + circularSegment(1000, 100).area;
        const found = kilograms(curved({ pieces: [cutShort], parts: new Map([[side.path, before]]) }), side.path)!;
        expect(Math.abs((found * cubicFoot) / (48 * pound) / (area * 20) - 1)).toBeLessThan(1e-6);
    });

    test('it does not matter where the case stands', () => {
        const by = { x: 70, y: 90, z: 110 };
        const moved = (box: typeof side.box) => ({
            least: { x: box.least.x + by.x, y: box.least.y + by.y, z: box.least.z + by.z },
            most: { x: box.most.x + by.x, y: box.most.y + by.y, z: box.most.z + by.z },
        });
        const elsewhere = curved({
            assemblies: [{ ...assembly!, room: moved(assembly!.room!) }],
            parts: new Map([[side.path, { ...side, box: moved(side.box) }]]),
        });
        expect(kilograms(elsewhere, side.path)).toBeCloseTo(kilograms(curved({}), side.path)!, 9);
    });

    test('a shelf lies across a curve over height, and is the block that its sizes span', () => {
        const flat = { ...side, directions: { length: 'x', width: 'y', thickness: 'z' } as const };
        const found = kilograms(curved({ parts: new Map([[side.path, flat]]) }), side.path);
        expect(found).toBeCloseTo((1000 * 400 * 20 * 48 * pound) / cubicFoot, 9);
    });

    test('the mass is not known where the curve is not', () => {
        expect(kilograms(curved({ curves: [{ ...model, curve: undefined }] }), side.path)).toBeUndefined();
        expect(kilograms(curved({ curves: [] }), side.path)).toBeUndefined();
    });
});
