import { existsSync } from 'node:fs';
import * as path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');
const bundle = path.join(root, 'cli/dist/casewright.mjs');

/** The design that the clients open. */
export const EXAMPLE = path.join(root, 'examples/kiln-lane/kiln-lane.case');

/** The command by which any editor starts the language server. */
export function languageServerCommand(): readonly [program: string, ...args: string[]] {
    if (!existsSync(bundle)) {
        throw new Error(`${path.relative(root, bundle)} is missing: run \`npm run build\` first`);
    }
    return [process.execPath, bundle, 'language-server', '--stdio'];
}
