import { readdirSync, readFileSync } from 'node:fs';
import * as path from 'node:path';
import { expect, it } from 'vitest';
import { libraryTexts } from '../../src/workspace/library-texts.js';

const library = path.resolve(import.meta.dirname, '../../library');

it('carries the library as it stands in its files; `npm run library --workspace language` writes it anew', () => {
    const files = readdirSync(library).sort();
    expect([...libraryTexts.keys()]).toEqual(files.map((file) => `casewright.${path.basename(file, '.case')}`));
    for (const file of files) {
        expect(libraryTexts.get(`casewright.${path.basename(file, '.case')}`), file).toBe(readFileSync(path.join(library, file), 'utf8'));
    }
});
