import { readdirSync, readFileSync } from 'node:fs';
import * as path from 'node:path';
import { expect, it } from 'vitest';
import { libraryNames } from '../../src/workspace/library.js';
import { libraryTexts } from '../../src/workspace/library-texts.js';
import { lowerText } from '../files-in-memory.js';

const library = path.resolve(import.meta.dirname, '../../library');

it('knows what it declares without reading it as a design', async () => {
    for (const module of libraryTexts.keys()) {
        const { design } = await lowerText(`use ${module}\n`);
        const ofLibrary = `casewright:/library/${module.replace('casewright.', '')}.case`;
        const declared = [...design.declarations.values()].filter(({ span, is }) => span.file === ofLibrary && is === 'fact');
        const expected = declared.map((one) => ({ name: one.name, kind: one.is === 'fact' ? one.kind : '', module }));
        expect(libraryNames().filter((one) => one.module === module)).toEqual(expected);
        expect(expected.length).toBeGreaterThan(20);
    }
});

it('carries the library as it stands in its files; `npm run library --workspace language` writes it anew', () => {
    const files = readdirSync(library).sort();
    expect([...libraryTexts.keys()]).toEqual(files.map((file) => `casewright.${path.basename(file, '.case')}`));
    for (const file of files) {
        expect(libraryTexts.get(`casewright.${path.basename(file, '.case')}`), file).toBe(readFileSync(path.join(library, file), 'utf8'));
    }
});
