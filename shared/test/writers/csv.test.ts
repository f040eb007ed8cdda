import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeCsv } from '../../src/writers/csv.js';
import { rows, sheetOf, text } from './sample-sheet.js';

/** Read back with csv-parse, by RFC 4180: every line has as many fields as the first, or it throws. */
function readBack(csv: string): string[][] {
    return parse(csv, { bom: true, record_delimiter: '\r\n' });
}

function nameReadBack(name: string): string | undefined {
    return readBack(writeCsv(sheetOf({ name: text(name) })))[1]?.[0];
}

test('one line of headings with units, then a line for each row; sizes again as numbers at the end', () => {
    expect(readBack(writeCsv(sheetOf(...rows)))).toEqual([
        ['Name', 'Group', 'Count', 'Cut (in)', 'Run (ft)', 'Cut length (in)', 'Cut width (in)', 'Cut thickness (in)'],
        ['Tier[1..2]', 'Boards', '4', '2 17/32 shy x 1 x ?', '12.34', '2.515625', '1', ''],
        ['Floor', 'Boards', '?', '', '', '', '', ''],
    ]);
});

test('lines end in CRLF, the last too (RFC 4180, section 2, 1 and 2)', () => {
    const csv = writeCsv(sheetOf(...rows));
    expect(csv.endsWith('\r\n')).toBe(true);
    expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
});

test('any text comes back as it was, but for the apostrophe before what looks like a formula', () => {
    fc.assert(
        fc.property(fc.string({ unit: fc.constantFrom(...'a",;\r\n\t\'=+-@é漢 ') }), (name) => {
            expect(nameReadBack(name)).toBe(/^[=+\-@\t\r\n]/.test(name) ? `'${name}` : name);
        }),
    );
});

describe('a cell of text is no formula (OWASP ASVS 5.0, 1.2.10; CWE-1236)', () => {
    test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\uFF1D1', '=HYPERLINK("http://example.invalid","x")'])('%j', (name) => {
        expect(nameReadBack(name)).toBe(`'${name}`);
    });

    test('a sign inside is left alone, and so is a number below zero', () => {
        expect(nameReadBack('a=b')).toBe('a=b');
        const below = sheetOf({ count: { is: 'count', count: -1 } });
        expect(readBack(writeCsv(below))[1]?.[2]).toBe('-1');
    });
});

describe('byte order mark', () => {
    test('none where all is ASCII, because UTF-8 and every code page agree on it', () => {
        expect(writeCsv(sheetOf(...rows)).startsWith('Name,')).toBe(true);
    });

    test('one where it is not, and then the first heading still reads the same', () => {
        const csv = writeCsv(sheetOf({ name: text('Café') }));
        expect(csv.startsWith('\uFEFFName,')).toBe(true);
        expect(readBack(csv)[0]?.[0]).toBe('Name');
    });
});
