import { describe, expect, test } from 'vitest';
import type { Piece } from '../../src/casework/index.js';
import { cutList } from '../../src/documents/cut-list.js';
import type { Row, Sheet } from '../../src/documents/index.js';
import { cellText } from '../../src/writers/cell-text.js';
import { approximate, material, measure, type PieceWords, piece, size } from './casework-builder.js';
import { options } from './options.js';
import { bookcase, withPieces } from './sample-casework.js';

function shelf(words: Partial<PieceWords>): Piece {
    return piece({
        part: 'Bookcase.Tier[1]',
        role: 'core',
        name: 'shelf',
        material: material('Mdf'),
        quantity: 2,
        finished: size('30in', '10in', '3/4in'),
        ...words,
    });
}

function rowsOf(sheet: Sheet): readonly Row[] {
    return sheet.groups.flatMap((group) => group.rows);
}

function column(sheet: Sheet, key: string): readonly string[] {
    return rowsOf(sheet).map((row) => cellText(row[key]));
}

describe('rows', () => {
    test('pieces that are truly identical are one row, with all that is built counted', () => {
        const sheet = cutList(bookcase, options);
        const parts = column(sheet, 'parts');
        expect(parts[0]).toBe('Tier[1..2]');
        expect(column(sheet, 'quantity')[0]).toBe('4');
        expect(
            column(sheet, 'quantity')
                .map(Number)
                .reduce((a, b) => a + b),
        ).toBe(bookcase.pieces.reduce((sum, each) => sum + each.quantity, 0));
    });

    test('a shelf that is 1/32in shallower than its neighbour has a row of its own', () => {
        const sheet = cutList(bookcase, options);
        const shelves = rowsOf(sheet).filter((row) => cellText(row.material) === 'Mdf');
        expect(shelves.map((row) => cellText(row.parts))).toEqual(['Tier[1..2]', 'Tier[3]']);
        expect(shelves.map((row) => cellText(row.core))).toEqual(['37 1/8 shy x 11 1/16 shy x 3/4', '37 1/8 shy x 11 1/32 shy x 3/4']);
    });

    test('a piece that prints like another and is not the same is a row with a warning', () => {
        const sheet = cutList(
            withPieces(
                shelf({ part: 'Bookcase.Tier[1]', finished: size('30.003in', '10in', '3/4in') }),
                shelf({ part: 'Bookcase.Tier[2]', finished: size('30.002in', '10in', '3/4in'), notes: [['loose']] }),
                shelf({ part: 'Bookcase.Tier[3]', finished: size('29in', '10in', '3/4in') }),
            ),
            options,
        );
        expect(column(sheet, 'finished')).toEqual(['30 full x 10 x 3/4', '30 full x 10 x 3/4', '29 x 10 x 3/4']);
        expect(column(sheet, 'notes')).toEqual(['', 'not the same as Tier[1]: they differ by less than is printed; loose', '']);
    });

    test('left and right are two rows', () => {
        const sheet = cutList(bookcase, options);
        const layers = rowsOf(sheet).filter((row) => cellText(row.material) === 'WalnutPly');
        expect(layers.map((row) => [cellText(row.parts), cellText(row.piece), cellText(row.hand), cellText(row.quantity)])).toEqual([
            ['Left', 'outer layer, inner layer', 'left', '4'],
            ['Right', 'outer layer, inner layer', 'right', '4'],
        ]);
    });

    test('a board is called by its part alone, and what is only some of a part by what it is', () => {
        const sheet = cutList(bookcase, options);
        const names = rowsOf(sheet).map((row) => `${cellText(row.parts)} ${cellText(row.piece)}`.trim());
        expect(names).toEqual([
            ...['Tier[1..2]', 'Tier[3]'],
            ...['Left outer layer, inner layer', 'Right outer layer, inner layer', 'back'],
            ...['Tier[1..3] front nosing', 'kick', 'Left, Right front band', 'Left, Right top band'],
        ]);
    });

    test('a band says nothing of edges: it is the treatment of one', () => {
        const strips = rowsOf(cutList(bookcase, options)).filter((row) => /band|nosing/.test(cellText(row.piece)));
        expect(strips.length).toBe(3);
        expect(strips.map((row) => cellText(row.edges))).toEqual(['', '', '']);
    });

    test('grain is said in words, and not at all of a panel without grain', () => {
        const sheet = cutList(withPieces(shelf({ grain: 'none' }), shelf({ grain: 'width' }), shelf({ grain: 'length' })), options);
        expect(column(sheet, 'grain')).toEqual(['', 'along width', 'along length']);
    });
});

describe('order', () => {
    test('sheets by name, then solid wood, then what has no material', () => {
        const sheet = cutList(
            withPieces(
                shelf({ material: undefined }),
                shelf({ material: material('Walnut') }),
                shelf({ material: material('WalnutPly') }),
                shelf({ material: material('Mdf') }),
            ),
            options,
        );
        expect(sheet.groups.map(({ heading }) => heading)).toEqual([
            'Mdf: fibreboard, 3/4in, actual 0.75in',
            'WalnutPly: plywood, BlackWalnut, 3/4in, actual 0.72in',
            'Walnut: lumber, BlackWalnut, 4/4, planed to 3/4in',
            'Material not known',
        ]);
    });

    test('within a material the thickest first, then the longest, then the widest; what is equal as it was built', () => {
        const sizes: readonly (readonly [string | undefined, string, string])[] = [
            ['30in', '10in', '1/2in'],
            ['20in', '10in', '3/4in'],
            ['30in', '9in', '3/4in'],
            ['30in', '11in', '3/4in'],
            [undefined, '11in', '3/4in'],
        ];
        const sheet = cutList(withPieces(...sizes.map((each) => shelf({ finished: size(...each) }))), options);
        expect(column(sheet, 'rough')).toEqual(['30 x 11 x 3/4', '30 x 9 x 3/4', '20 x 10 x 3/4', '? x 11 x 3/4', '30 x 10 x 1/2']);
        const alike = ['Bookcase.kick', 'Bookcase.Tier[1]', 'Bookcase.back'].map((part, index) => ({
            ...shelf({ part }),
            alike: String(index),
        }));
        expect(column(cutList(withPieces(...alike), options), 'parts')).toEqual(['kick', 'Tier[1]', 'back']);
    });
});

describe('units', () => {
    const sheet = (units: 'in' | 'mm' | undefined) =>
        cutList(
            withPieces(shelf({ finished: { length: measure('927mm'), width: approximate(955.1333333), thickness: measure('3/4in') } })),
            units ? { ...options, units } : options,
        );

    test('those of the project where the options ask for none', () => {
        expect(sheet(undefined).columns.find(({ key }) => key === 'rough')?.unit?.symbol).toBe('in');
        const metric = { ...bookcase, project: { ...bookcase.project!, units: 'mm' as const } };
        expect(cutList(metric, options).columns.find(({ key }) => key === 'rough')?.unit?.symbol).toBe('mm');
        const { project: _, ...withoutProject } = bookcase;
        expect(cutList(withoutProject, options).columns.find(({ key }) => key === 'rough')?.unit?.symbol).toBe('in');
    });

    test('inches to 1/32, millimetres to one decimal where it is not whole, full or shy where that is not exact', () => {
        expect(column(sheet('mm'), 'finished')).toEqual(['927 x 955.1 full x 19.1 shy']);
        expect(column(sheet('in'), 'finished')).toEqual(['36 1/2 shy x 37 19/32 full x 3/4']);
    });

    test('the head says how sizes are printed', () => {
        expect(sheet('in').facts.find(({ label }) => label === 'Sizes')?.text).toContain('1/32');
        expect(sheet('mm').facts.find(({ label }) => label === 'Sizes')?.text).toContain('millimetres');
    });
});

test('the head names project, client, revision and what is built', () => {
    expect(cutList(bookcase, options).facts.slice(0, 4)).toEqual([
        { label: 'Project', text: 'Fern Alley bookcases' },
        { label: 'Client', text: 'Fern Alley Books' },
        { label: 'Revision', text: 'A' },
        { label: 'Builds', text: '2 Bookcase, 40in wide, 66in high, 12in deep over all' },
    ]);
});
