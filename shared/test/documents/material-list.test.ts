import { describe, expect, test } from 'vitest';
import type { Casework, Joint } from '../../src/casework/index.js';
import type { Row, Sheet } from '../../src/documents/index.js';
import { materialList } from '../../src/documents/material-list.js';
import { countBySpacing } from '../../src/joinery/index.js';
import { cellText } from '../../src/writers/cell-text.js';
import { joint, material, piece, size } from './casework-builder.js';
import { bookcase, withPieces } from './sample-casework.js';

const inInches = (casework: Casework): Sheet => materialList(casework, { units: 'in' });
const withJoints = (...joints: readonly Joint[]): Casework => ({ ...bookcase, joints });

function rowsOf(sheet: Sheet, heading: string): readonly Row[] {
    return sheet.groups.find((group) => group.heading === heading)?.rows ?? [];
}
function texts(rows: readonly Row[], ...keys: readonly string[]): readonly (readonly string[])[] {
    return rows.map((row) => keys.map((key) => cellText(row[key])));
}

describe('sheets', () => {
    test('area of the rough pieces over all builds, and sheets by that area', () => {
        // By hand: 8 layers of 66 3/8 x 12 3/8in are 6,571.125 square inches, 45.63 square feet; a 48 x 96in sheet has 32.
        const rows = rowsOf(inInches(bookcase), 'Sheets');
        expect(texts(rows, 'item', 'pieces', 'area', 'sheet', 'sheets')).toContainEqual(['WalnutPly', '8', '45.63', '48in x 96in', '2']);
    });

    test.each([
        ['exactly two sheets are two', '96in', '48in', 2, '2'],
        ['a hair more is three', '96in', '48.001in', 2, '3'],
        ['a scrap is one', '1in', '1in', 1, '1'],
    ])('%s', (_, length, width, quantity, sheets) => {
        const cut = piece({
            part: 'Bookcase.back',
            role: 'core',
            name: 'back',
            material: material('WalnutPly4'),
            quantity,
            finished: size(length, width, '0.205in'),
        });
        expect(texts(rowsOf(inInches(withPieces(cut)), 'Sheets'), 'sheets')).toEqual([[sheets]]);
    });

    test('every size of sheet in stock has its count', () => {
        const [walnut] = rowsOf(inInches(bookcase), 'Sheets').filter((row) => cellText(row.item) === 'WalnutPly');
        expect(cellText(walnut?.notes)).toBe('or 2 of 60in x 60in');
    });

    test('it says that it is no layout', () => {
        const sheets = inInches(bookcase).groups.find(({ heading }) => heading === 'Sheets');
        expect(sheets?.notes.join()).toContain('not a layout');
    });

    test('a size that is not known leaves the area unknown, never smaller', () => {
        const known = piece({
            part: 'Bookcase.back',
            role: 'core',
            name: 'back',
            material: material('Mdf'),
            quantity: 1,
            finished: size('10in', '10in', '3/4in'),
        });
        const unknown = piece({
            part: 'Bookcase.kick',
            role: 'core',
            name: 'kick',
            material: material('Mdf'),
            quantity: 1,
            finished: size(undefined, '10in', '3/4in'),
        });
        expect(texts(rowsOf(inInches(withPieces(known, unknown)), 'Sheets'), 'area', 'sheets')).toEqual([['?', '?']]);
    });
});

describe('solid wood', () => {
    const board = (length: string, width: string, thickness: string) =>
        piece({
            part: 'Bookcase.kick',
            role: 'solid',
            name: 'kick',
            material: material('Walnut'),
            quantity: 1,
            finished: size(length, width, thickness),
        });

    // Board foot: 144 cubic inches (Wood Handbook FPL-GTR-282, glossary). Worked examples of the hardwood trade, from memory.
    test.each([
        ['1 x 6in x 8ft of 4/4', '96in', '6in', '1in', '4.00'],
        ['12 x 12in, planed to 3/4in from 4/4: bought as 1in', '12in', '12in', '3/4in', '1.00'],
    ])('%s', (_, length, width, thickness, boardFeet) => {
        expect(texts(rowsOf(inInches(withPieces(board(length, width, thickness))), 'Solid wood'), 'volume')).toEqual([[boardFeet]]);
    });

    test('pieces of one section are one row with their length, the largest section first, and the material has its sum', () => {
        const sheet = inInches(bookcase);
        // By hand: 6 nosings of 38.12in are 19.06ft; 4 bands of 67in and 4 of 13in are 26 2/3ft.
        expect(texts(rowsOf(sheet, 'Solid wood'), 'section', 'pieces', 'length', 'use')).toEqual([
            ['3 1/4 x 3/4', '2', '6.2', 'boards'],
            ['1 1/8 x 3/4', '6', '19.1', 'nosings'],
            ['1 9/16 full x 1/8', '8', '26.7', 'bands'],
        ]);
        expect(sheet.groups.find(({ heading }) => heading === 'Solid wood')?.notes[0]).toBe('Walnut in all: 3.45 bdft.');
    });

    test('in metres and cubic metres', () => {
        const rows = rowsOf(materialList(withPieces(board('2000mm', '100mm', '20mm')), { units: 'mm' }), 'Solid wood');
        // 2 m x 0.1 m x 1in (4/4) is 0.00508 m3.
        expect(texts(rows, 'length', 'volume')).toEqual([['2.00', '0.0051']]);
    });
});

describe('fasteners', () => {
    test('a stated count is that of one joint; joints are counted over all builds', () => {
        const rows = rowsOf(inInches(bookcase), 'Fasteners and glue');
        expect(texts(rows, 'item', 'count', 'use')).toContainEqual(['biscuit #20', '8', 'ShelfJoint']);
        expect(texts(rows, 'item', 'count', 'use')).toContainEqual(['pocket screw 1 1/4in', '24', 'ShelfJoint']);
    });

    test('a spacing is counted along the length over which the two parts meet', () => {
        // By hand: 66in at 6in are 11 screws, 37.12in are 7; two builds.
        expect(texts(rowsOf(inInches(bookcase), 'Fasteners and glue'), 'item', 'count')).toContainEqual(['screw #8 x 1 1/4in', '36']);
    });

    // Common practice, no source: half a space is left at the ends, or the inset that is stated.
    test.each([
        [600, 150, undefined, 4],
        [601, 150, undefined, 5],
        [600, 100, 50, 6],
        [600, 110, 50, 6],
        [600, 250, 50, 3],
        [40, 150, undefined, 2],
        [40, 150, 30, 2],
    ])('%d mm at %d mm, inset %s: %d', (length, spacing, inset, count) => {
        expect(countBySpacing(length, spacing, inset)).toBe(count);
    });

    test('no two are farther apart than the spacing, and one fewer would be', () => {
        for (let length = 100; length <= 2000; length += 7) {
            const count = countBySpacing(length, 150, 40);
            expect((length - 80) / (count - 1)).toBeLessThanOrEqual(150);
            if (count > 2) expect((length - 80) / (count - 2)).toBeGreaterThan(150);
        }
    });

    test('whole cases that stand beside one another are joined too', () => {
        const [first] = bookcase.assemblies;
        const { least, most } = first!.extent;
        const beside = { ...first!, path: 'Second', extent: { least: { ...least, x: most.x }, most: { ...most, x: 2 * most.x } } };
        const bolted = joint('Second', 'Bookcase', 'Neighbours', { does: 'bolt', size: 'M6', spacing: '24in' });
        const rows = rowsOf(inInches({ ...withJoints(bolted), assemblies: [first!, beside] }), 'Fasteners and glue');
        // 66in high at 24in are 3, and two are built of each.
        expect(texts(rows, 'item', 'count')).toContainEqual(['bolt M6', '6']);
    });

    test('the count is unknown where parts do not meet, or nothing is said of how many', () => {
        const apart = joint('Bookcase.kick', 'Bookcase.Tier[3]', 'Fixed', { does: 'screw', size: '#8', spacing: '6in' });
        const silent = joint('Bookcase.Tier[1]', 'Bookcase.Left', 'Pegged', { does: 'dowel', amount: '8mm' });
        const rows = rowsOf(inInches(withJoints(apart, silent)), 'Fasteners and glue');
        expect(texts(rows, 'item', 'count')).toEqual([
            ['screw #8', '?'],
            ['dowel 8mm', '?'],
            ['glue', ''],
        ]);
    });

    test('a fastener keeps the size it is sold by, also in a list in millimetres', () => {
        const rows = rowsOf(materialList(bookcase, { units: 'mm' }), 'Fasteners and glue');
        expect(texts(rows, 'item')).toContainEqual(['screw #8 x 1 1/4in']);
    });

    test('glue is named with all that is glued, and left out where nothing is', () => {
        expect(texts(rowsOf(inInches(bookcase), 'Fasteners and glue'), 'item', 'use')).toContainEqual([
            'glue',
            'ShelfJoint, bands, nosings, layers',
        ]);
        const dry = { ...withPieces(), joints: [joint('Bookcase.back', 'Bookcase.Left', 'BackFix', { does: 'screw', count: 4 })] };
        expect(texts(rowsOf(inInches(dry), 'Fasteners and glue'), 'item')).toEqual([['screw']]);
    });
});

test('pieces without a material are not passed over in silence', () => {
    const cut = piece({
        part: 'Bookcase.back',
        role: 'core',
        name: 'back',
        material: undefined,
        quantity: 3,
        finished: size('1in', '1in', '1in'),
    });
    const sheet = inInches({ ...withPieces(cut), joints: [] });
    expect(sheet.groups).toEqual([]);
    expect(sheet.notes.join()).toContain('3 pieces');
});
