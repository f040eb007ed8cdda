import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JsonValue } from '../../src/documents/index.js';
import { sheetAsData, writeJson } from '../../src/writers/json.js';
import { rows, sheetOf } from './sample-sheet.js';

describe('data', () => {
    test('has its names in the order given, short values on one line, and a line end at the end', () => {
        const text = writeJson({ second: [1, 2], first: { b: 'x', a: null }, empty: [], none: {} });
        expect(text).toBe('{"second": [1, 2], "first": {"b": "x", "a": null}, "empty": [], "none": {}}\n');
        expect(writeJson({ long: ['x'.repeat(60), 'y'.repeat(60)] })).toBe(
            `{\n  "long": [\n    "${'x'.repeat(60)}",\n    "${'y'.repeat(60)}"\n  ]\n}\n`,
        );
    });

    test.each([
        [1 / 3, '0.333333'],
        [0.1 + 0.2, '0.3'],
        [-0, '0'],
        [-1e-9, '0'],
        [1e-7, '0'],
        [1676.4000000000001, '1676.4'],
        [123456789.25, '123456789.25'],
        [-12.5, '-12.5'],
    ])('%d is written %s', (value, written) => {
        expect(writeJson({ value })).toBe(`{"value": ${written}}\n`);
    });

    test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d is refused (RFC 8259, section 6)', (value) => {
        expect(() => writeJson({ list: [{ value }] })).toThrow(RangeError);
    });

    test('any data read back by JSON.parse is the same, but for the decimals past the sixth', () => {
        const decimals = (value: JsonValue): unknown =>
            JSON.parse(JSON.stringify(value), (_, each) => (typeof each === 'number' ? Math.round(each * 1e6) / 1e6 + 0 : each));
        const number = fc.integer({ min: -1e9, max: 1e9 }).map((millionths) => millionths / 1e6);
        const value = fc.letrec<{ value: JsonValue }>((tie) => ({
            value: fc.oneof(
                { maxDepth: 3, depthSize: 'small' },
                number,
                fc.string({ unit: 'binary' }),
                fc.boolean(),
                fc.constant(null),
                fc.array(tie('value')),
                fc.dictionary(fc.string(), tie('value'), { noNullPrototype: true }),
            ),
        })).value;
        fc.assert(
            fc.property(value, (each) => {
                expect(JSON.parse(writeJson({ each }))).toEqual({ each: decimals(each) });
            }),
        );
    });
});

describe('a sheet', () => {
    const data = sheetAsData(sheetOf(...rows));

    test('has amounts in metric units beside what is printed', () => {
        const [group] = data.groups as unknown as readonly { readonly rows: readonly object[] }[];
        expect(group?.rows).toEqual([
            {
                name: 'Tier[1..2]',
                group: 'Boards',
                count: 4,
                cut: {
                    // 2 33/64in and 1in, at 25.4 mm.
                    length: { value: 63.896875, unit: 'mm', printed: '2 17/32in shy' },
                    width: { value: 25.4, unit: 'mm', printed: '1in' },
                    thickness: null,
                },
                // 12.34ft at 304.8 mm.
                run: { value: 3761.232, unit: 'mm', printed: '12.3ft' },
            },
            { name: 'Floor', group: 'Boards', count: null, cut: null, run: null },
        ]);
    });

    test('says what it is, in which version, and what stands around the table', () => {
        expect(data).toMatchObject({
            document: 'sample',
            version: 1,
            title: 'Sample',
            facts: [{ label: 'Client', text: 'Fern Alley' }],
            groups: [{ heading: 'Boards', notes: ['No waste.'] }],
            notes: ['The end.'],
        });
    });
});
