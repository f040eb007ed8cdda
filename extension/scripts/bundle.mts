/**
 * Bundles the extension: its desktop and web entries, and the language server that each of them starts.
 * `--watch` goes on bundling at each change, readable and with source maps.
 */
import { copyFile, mkdir, rm, writeFile } from 'node:fs/promises';
import * as path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build, context, type Plugin } from 'esbuild';
import { thirdPartyNotices } from './third-party-notices.mts';

const extension = path.resolve(import.meta.dirname, '..');
const watch = process.argv.includes('--watch');

const shared: BuildOptions = {
    absWorkingDir: extension,
    bundle: true,
    minify: !watch,
    sourcemap: watch ? 'linked' : false,
    target: 'es2023',
    metafile: true,
    logLevel: 'warning',
};
/** lodash-es (under the parser) looks whether Node's `util` is there, for speed alone; in the browser the answer is known. */
const withoutNodeUtil: Plugin = {
    name: 'without-node-util',
    setup: ({ onLoad }) => onLoad({ filter: /lodash-es[\\/]_nodeUtil\.js$/ }, () => ({ contents: 'export default undefined;' })),
};
const desktop: BuildOptions = { ...shared, platform: 'node', format: 'cjs', target: 'node22' };
const web: BuildOptions = {
    ...shared,
    platform: 'browser',
    mainFields: ['browser', 'module', 'main'],
    define: { global: 'globalThis' },
    plugins: [withoutNodeUtil],
};
/** Split, so that the writers of documents are read when documents are asked for; only ES modules can be. */
const desktopServer: BuildOptions = {
    ...desktop,
    format: 'esm',
    splitting: true,
    entryPoints: { desktop: '../language/src/server/main-node.ts' },
    outdir: 'dist/server',
    outExtension: { '.js': '.mjs' },
    chunkNames: 'parts/[name]-[hash]',
    banner: {
        // Some of the bundled packages are CommonJS and ask for Node's own modules with `require`, which an ES module does not have.
        js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
    },
};
const bundles: readonly BuildOptions[] = [
    { ...desktop, entryPoints: ['src/desktop.ts'], outfile: 'dist/extension/desktop.cjs', external: ['vscode'] },
    desktopServer,
    // The extension host of the web evaluates CommonJS; the server is a classic worker, which knows no modules at all.
    { ...web, format: 'cjs', entryPoints: ['src/web.ts'], outfile: 'dist/extension/web.js', external: ['vscode'] },
    { ...web, format: 'iife', entryPoints: ['../language/src/server/main-browser.ts'], outfile: 'dist/server/web.js' },
];

await rm(path.join(extension, 'dist'), { recursive: true, force: true });
// A typeface (SIL Open Font License 1.1) for the letters that the reader of a PDF has not by itself; its license goes with it.
await mkdir(path.join(extension, 'dist/server'), { recursive: true });
const typeface = fileURLToPath(import.meta.resolve('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf'));
const license = fileURLToPath(import.meta.resolve('@expo-google-fonts/noto-sans/LICENSE_FONT'));
await copyFile(typeface, path.join(extension, 'dist/server/NotoSans_400Regular.ttf'));
await copyFile(license, path.join(extension, 'dist/server/NotoSans-LICENSE.txt'));
// The kernel of solids (Apache License 2.0) reads its code for the machine from beside its script, which is one of the parts.
const kernel = path.dirname(fileURLToPath(import.meta.resolve('manifold-3d/manifold.wasm')));
await mkdir(path.join(extension, 'dist/server/parts'), { recursive: true });
await copyFile(path.join(kernel, 'manifold.wasm'), path.join(extension, 'dist/server/parts/manifold.wasm'));
await copyFile(path.join(kernel, 'LICENSE'), path.join(extension, 'dist/server/parts/manifold-LICENSE.txt'));

if (watch) {
    await Promise.all(bundles.map(async (options) => (await context({ ...options, logLevel: 'info' })).watch()));
} else {
    const built = await Promise.all(bundles.map((options) => build(options))).catch(() => process.exit(1)); // what is wrong has been printed
    const contents = built.map(({ metafile }) => metafile).filter((metafile) => metafile !== undefined);
    await writeFile(path.join(extension, 'dist/THIRD-PARTY-NOTICES.md'), await thirdPartyNotices(contents, extension));
}
