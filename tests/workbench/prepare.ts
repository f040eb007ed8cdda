import { existsSync } from 'node:fs';
import * as path from 'node:path';
import { bundleSuite } from './editor-workspace.js';
import { installWorkbench } from './install-workbench.js';
import { ROOT, VSIX } from './paths.js';

/** Before the first workbench test: puts the workbench in place and bundles the suite. */
export default async function prepare(): Promise<void> {
    if (!existsSync(VSIX)) {
        throw new Error(`${path.relative(ROOT, VSIX)} is missing: run \`npm run package\` first`);
    }
    await installWorkbench();
    await bundleSuite();
}
