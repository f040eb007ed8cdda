/** Bundles the command line: one file, and beside it what only some commands load. */
import { copyFile, rm } from 'node:fs/promises';
import * as path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build } from 'esbuild';

const folder = path.resolve(import.meta.dirname, '..');

await rm(path.join(folder, 'dist'), { recursive: true, force: true });
const common: BuildOptions = {
    absWorkingDir: folder,
    bundle: true,
    // Half as much to read at a start; names stay, for the traces of errors.
    minifyWhitespace: true,
    minifySyntax: true,
    mainFields: ['module', 'main'],
    platform: 'node',
    target: 'node22',
    sourcemap: 'linked',
    logLevel: 'warning',
};
await build({
    ...common,
    entryPoints: { casewright: 'src/main.ts' },
    outdir: 'dist',
    outExtension: { '.js': '.mjs' },
    chunkNames: 'parts/[name]-[hash]',
    splitting: true,
    format: 'esm',
    banner: {
        // Some of the bundled packages are CommonJS and ask for Node's own modules with `require`, which an ES module does not have;
        // others import `createRequire` under its own name, so that this is another.
        js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
    },
}).catch(() => process.exit(1)); // what is wrong has been printed

// A snapshot of the memory is made of one script, and not of modules.
await build({
    ...common,
    entryPoints: [fileURLToPath(import.meta.resolve('casewright-language/node-prepared'))],
    outfile: 'dist/parts/prepared-server.cjs',
    format: 'cjs',
    define: { 'import.meta.url': 'moduleUrl' },
    // there is `require` in a snapshot, for the modules of Node, and no import
    supported: { 'dynamic-import': false },
    banner: { js: "const moduleUrl = require('node:url').pathToFileURL(__filename).href;" },
}).catch(() => process.exit(1));

// A typeface (SIL Open Font License 1.1) for the letters that the reader of a PDF has not by itself; its license goes with it.
const typeface = fileURLToPath(import.meta.resolve('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf'));
const license = fileURLToPath(import.meta.resolve('@expo-google-fonts/noto-sans/LICENSE_FONT'));
await copyFile(typeface, path.join(folder, 'dist/parts/NotoSans_400Regular.ttf'));
await copyFile(license, path.join(folder, 'dist/parts/NotoSans-LICENSE.txt'));

// The kernel of solids (Apache License 2.0), as it is fetched by the part of the program that loads it.
const kernel = path.dirname(fileURLToPath(import.meta.resolve('manifold-3d/manifold.wasm')));
await copyFile(path.join(kernel, 'manifold.wasm'), path.join(folder, 'dist/parts/manifold.wasm'));
await copyFile(path.join(kernel, 'LICENSE'), path.join(folder, 'dist/parts/manifold-LICENSE.txt'));
