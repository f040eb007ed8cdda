import { existsSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import * as path from 'node:path';
import type { TestProject } from 'vitest/node';
import { bundleSuite, createWorkspace } from './editor-workspace.js';
import { installWorkbench } from './install-workbench.js';
import { ROOT, VSIX } from './paths.js';

declare module 'vitest' {
    interface ProvidedContext {
        /** A folder with a copy of the examples, which the tests may change. */
        workspace: string;
    }
}

/** Before the first workbench test: bundles the suite, puts the workbench in place and makes the folder that it opens. */
export default async function prepare(project: TestProject): Promise<() => Promise<void>> {
    if (!existsSync(VSIX)) {
        throw new Error(`${path.relative(ROOT, VSIX)} is missing: run \`npm run package\` first`);
    }
    await installWorkbench();
    await bundleSuite();
    const workspace = await createWorkspace();
    project.provide('workspace', workspace);
    return () => rm(workspace, { recursive: true, force: true });
}
