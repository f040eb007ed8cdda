import { existsSync, readFileSync } from 'node:fs';
import * as path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');
const bundle = path.join(root, 'cli/dist/casewright.mjs');

/** The design that the clients open. */
export const EXAMPLE = path.join(root, 'examples/kiln-lane/kiln-lane.case');

/** What the program asks of Node in its first line. */
export function nodeOptions(): readonly string[] {
    if (!existsSync(bundle)) {
        throw new Error(`${path.relative(root, bundle)} is missing: run \`npm run build\` first`);
    }
    const [firstLine = ''] = readFileSync(bundle, 'utf8').split('\n', 1);
    return firstLine.split(/\s+/).filter((word) => word.startsWith('--'));
}

/** The command by which any editor starts the language server, as the first line of the program makes it. */
export function languageServerCommand(): readonly [program: string, ...args: string[]] {
    return [process.execPath, ...nodeOptions(), bundle, 'language-server', '--stdio'];
}
