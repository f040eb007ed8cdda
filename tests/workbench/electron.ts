/**
 * Runs the suite of the extension in a VS Code of its own, which is downloaded first: for machines that can fetch it.
 * (`npm test` runs the same suite in the workbench that comes as an npm package.)
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { downloadAndUnzipVSCode, runTests } from '@vscode/test-electron';
import { bundleSuite, createWorkspace } from './editor-workspace.ts';
import { ROOT, SUITE } from './paths.ts';

const vscodeExecutablePath = await downloadAndUnzipVSCode({ cachePath: path.join(ROOT, 'tests/out/vscode') }).catch((error: unknown) => {
    console.error(`VS Code could not be fetched (${error}); \`npm test\` runs the same suite without it`);
    process.exit(1);
});
await bundleSuite();
const workspace = await createWorkspace();
const profile = await mkdtemp(path.join(tmpdir(), 'casewright-electron-'));
try {
    await runTests({
        vscodeExecutablePath,
        extensionDevelopmentPath: path.join(ROOT, 'extension'),
        extensionTestsPath: SUITE.desktop,
        launchArgs: [workspace, '--disable-extensions', '--user-data-dir', profile],
    });
} finally {
    await rm(workspace, { recursive: true, force: true });
    await rm(profile, { recursive: true, force: true });
}
