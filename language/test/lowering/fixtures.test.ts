/** What is found while a text becomes a design, at which words, and nothing else. One folder a subject. */
import * as path from 'node:path';
import { expect, test } from 'vitest';
import { checkFolder, foldersIn } from '../fixture-folders.js';

const fixtures = path.join(import.meta.dirname, 'fixtures');
const folders = foldersIn(fixtures);

test.each(folders)('%s', async (folder) => {
    await checkFolder(path.join(fixtures, folder));
});

test('there are fixtures', () => {
    expect(folders.length).toBeGreaterThan(5);
});
