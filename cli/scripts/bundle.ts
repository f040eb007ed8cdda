/** Bundles the command line: one file, and beside it what only some commands load. */
import { copyFile, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import * as path from 'node:path';
import { build } from 'esbuild';

const folder = path.resolve(import.meta.dirname, '..');

await rm(path.join(folder, 'dist'), { recursive: true, force: true });
await build({
    absWorkingDir: folder,
    entryPoints: { casewright: 'src/main.ts' },
    outdir: 'dist',
    outExtension: { '.js': '.mjs' },
    chunkNames: 'parts/[name]-[hash]',
    bundle: true,
    splitting: true,
    // Half as much to read at a start; names stay, for the traces of errors.
    minifyWhitespace: true,
    minifySyntax: true,
    mainFields: ['module', 'main'],
    platform: 'node',
    format: 'esm',
    target: 'node22',
    sourcemap: 'linked',
    logLevel: 'warning',
    loader: { '.ttf': 'binary' },
    banner: {
        // Some of the bundled packages are CommonJS and ask for Node's own modules with `require`, which an ES module does not have;
        // others import `createRequire` under its own name, so that this is another.
        js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
    },
}).catch(() => process.exit(1)); // what is wrong has been printed

// The license of the typeface goes with it.
const license = createRequire(import.meta.url).resolve('@expo-google-fonts/noto-sans/LICENSE_FONT');
await copyFile(license, path.join(folder, 'dist/parts/NotoSans-LICENSE.txt'));
