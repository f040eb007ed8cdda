/** Bundles the benchmarks and runs them in Node as the program has it, with the garbage collector at hand for the one of memory. */
import { spawnSync } from 'node:child_process';
import { copyFile } from 'node:fs/promises';
import * as path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { nodeOptions } from '../protocol/language-server.ts';

const folder = path.resolve(import.meta.dirname, '..');
const bundle = path.join(folder, 'out/bench.mjs');

await build({
    absWorkingDir: folder,
    entryPoints: ['bench/run.ts'],
    outfile: bundle,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node22',
    logLevel: 'warning',
    banner: { js: "import { createRequire } from 'node:module';\nconst require = createRequire(import.meta.url);" },
});
// the kernel of solids looks for its code beside its script, and that is bundled
await copyFile(fileURLToPath(import.meta.resolve('manifold-3d/manifold.wasm')), path.join(folder, 'out/manifold.wasm'));
const run = spawnSync(process.execPath, [...nodeOptions(), '--expose-gc', bundle, ...process.argv.slice(2)], { stdio: 'inherit' });
process.exitCode = run.status ?? 1;
