import { expect, test } from 'vitest';
import { documentKinds } from '../../src/documents/index.js';
import { writeDocument } from '../../src/writers/index.js';
import { options } from '../documents/options.js';
import { bookcase } from '../documents/sample-casework.js';

const files = documentKinds
    .filter((kind) => kind.make(bookcase, options))
    // a scene is made of solids, which this sample has none of: tests/casework/solids writes those of real designs
    .flatMap((kind) => kind.formats.filter((format) => format !== 'glb').map((format) => ({ kind, format })))
    .flatMap((each) => (['in', 'mm'] as const).map((units) => ({ ...each, units })));

test.each(files)(
    '$kind.kind as $format in $units: the same bytes each time, and no text that JavaScript made by accident',
    async ({ kind, format, units }) => {
        const write = () => writeDocument(kind.make(bookcase, { ...options, units })!, format);
        const text = await write();
        expect(await write()).toEqual(text);
        if (typeof text !== 'string') return; // the texts of a PDF are compressed
        expect(text).not.toMatch(/undefined|NaN|\[object|Infinity|-0(?![.\d])/);
        expect(text).toMatch(/Walnut|Left|Bookcase/);
    },
);

test('data is not written as a table', async () => {
    const model = documentKinds.find(({ kind }) => kind === 'model')!.make(bookcase, options)!;
    await expect(writeDocument(model, 'csv')).rejects.toThrow('data can be written as json, not as csv');
});
