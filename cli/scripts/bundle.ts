/** Bundles the command line: one file, and beside it what only some commands load. */
import { copyFile, rm } from 'node:fs/promises';
import * as path from 'node:path';
import { fileURLToPath } from 'node:url';
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
    banner: {
        // Some of the bundled packages are CommonJS and ask for Node's own modules with `require`, which an ES module does not have;
        // others import `createRequire` under its own name, so that this is another.
        js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
    },
}).catch(() => process.exit(1)); // what is wrong has been printed

// A typeface (SIL Open Font License 1.1) for the letters that the reader of a PDF has not by itself; its license goes with it.
const typeface = fileURLToPath(import.meta.resolve('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf'));
const license = fileURLToPath(import.meta.resolve('@expo-google-fonts/noto-sans/LICENSE_FONT'));
await copyFile(typeface, path.join(folder, 'dist/parts/NotoSans_400Regular.ttf'));
await copyFile(license, path.join(folder, 'dist/parts/NotoSans-LICENSE.txt'));
