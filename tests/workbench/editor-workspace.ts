import { cp, mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { type BuildOptions, build } from 'esbuild';
import { ROOT, SUITE } from './paths.ts';

/** Bundles the suite for both extension hosts. */
export async function bundleSuite(): Promise<void> {
    const shared: BuildOptions = { bundle: true, format: 'cjs', target: 'es2023', logLevel: 'warning', absWorkingDir: ROOT };
    const entry = (name: string) => path.join(ROOT, 'tests/workbench/suite', `${name}.ts`);
    await Promise.all([
        build({ ...shared, platform: 'node', entryPoints: [entry('desktop')], outfile: SUITE.desktop, external: ['vscode', 'mocha'] }),
        build({
            ...shared,
            platform: 'browser',
            entryPoints: [entry('web')],
            outfile: SUITE.web,
            external: ['vscode'],
            define: { global: 'globalThis' },
        }),
    ]);
}

/** A folder with a copy of the examples; whoever asks for it removes it. */
export async function createWorkspace(): Promise<string> {
    const workspace = await mkdtemp(path.join(tmpdir(), 'casewright-workspace-'));
    const isWritten = (folder: string) => path.basename(folder) === 'out'; // what `build` has written there
    await cp(path.join(ROOT, 'examples'), workspace, { recursive: true, filter: (source) => !isWritten(source) });
    return workspace;
}
