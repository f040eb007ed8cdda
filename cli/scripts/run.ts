/**
 * Runs the command line from the checkout, with the arguments given, in the folder that the user stands in.
 * Bundles it first where the bundle is missing or older than a source.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import * as path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');
const bundle = path.join(root, 'cli/dist/casewright.mjs');
const sources = ['shared/src', 'language/src', 'cli/src', 'cli/scripts', 'package-lock.json'].map((source) => path.join(root, source));

if (!existsSync(bundle) || sources.some((source) => newestChange(source) > statSync(bundle).mtimeMs)) {
    const built = spawnSync(process.execPath, [path.join(root, 'cli/scripts/bundle.ts')], { stdio: ['ignore', 'ignore', 'inherit'] });
    if (built.status !== 0) {
        process.exit(2);
    }
}
const run = spawnSync(process.execPath, [bundle, ...process.argv.slice(2)], {
    cwd: process.env.INIT_CWD ?? process.cwd(),
    stdio: 'inherit',
});
process.exitCode = run.status ?? 2;

function newestChange(source: string): number {
    const changed = statSync(source);
    if (!changed.isDirectory()) {
        return changed.mtimeMs;
    }
    const inside = readdirSync(source).map((name) => newestChange(path.join(source, name)));
    return Math.max(changed.mtimeMs, ...inside);
}
