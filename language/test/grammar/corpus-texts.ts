// The texts that the tests of the grammar read: the corpus, which uses every construct, and the examples that users copy.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export interface NamedText {
    name: string;
    text: string;
}

function read(folder: string): NamedText[] {
    const path = fileURLToPath(new URL(folder, import.meta.url));
    return readdirSync(path, { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.case'))
        .sort()
        .map((name) => ({ name, text: readFileSync(`${path}/${name}`, 'utf8') }));
}

export const corpus: readonly NamedText[] = read('corpus');
export const examples: readonly NamedText[] = read('../../../examples');
