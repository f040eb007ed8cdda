/**
 * Writes the pages that come from the language itself: `docs/rules` from the rules, `docs/reference` from the vocabulary.
 * `--check` writes nothing and fails when a page is not as it would be written, or when there is a page that nothing makes any more.
 */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import startKernel from 'manifold-3d/manifold.js';
import type * as Docs from './docs/all-pages.ts';

const docs = path.resolve(import.meta.dirname, '../docs');
const { folders, allPages } = await bundledPages();
// it looks for its code beside its script, so it is not bundled with the pages
const kernel = await startKernel();
kernel.setup();
const pages = await allPages(async () => kernel);
const stale = [...pages].filter(([name, text]) => textOf(name) !== text).map(([name]) => name);
const leftOver = folders.flatMap(pagesIn).filter((name) => !pages.has(name));

if (!process.argv.includes('--check')) {
    for (const name of stale) {
        mkdirSync(path.dirname(path.join(docs, name)), { recursive: true });
        writeFileSync(path.join(docs, name), pages.get(name) ?? '');
        console.log(`wrote language/docs/${name}`);
    }
} else if (stale.length > 0) {
    console.error(`${stale.map((name) => `language/docs/${name}`).join(', ')}: out of date, run \`npm run docs\``);
    process.exitCode = 1;
}
if (leftOver.length > 0) {
    console.error(`${leftOver.map((name) => `language/docs/${name}`).join(', ')}: nothing makes it any more, take it out`);
    process.exitCode = 1;
}

/** The sources say `.js` and use what only a compiler understands, so they are bundled before they are run. */
async function bundledPages(): Promise<typeof Docs> {
    const folder = mkdtempSync(path.join(tmpdir(), 'casewright-docs-'));
    const outfile = path.join(folder, 'docs.mjs');
    try {
        await build({
            entryPoints: [path.join(import.meta.dirname, 'docs/all-pages.ts')],
            outfile,
            bundle: true,
            platform: 'node',
            format: 'esm',
            target: 'node22',
            logLevel: 'warning',
            banner: { js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);" },
        });
        return await import(pathToFileURL(outfile).href);
    } finally {
        rmSync(folder, { recursive: true });
    }
}

function textOf(name: string): string | undefined {
    const file = path.join(docs, name);
    return existsSync(file) ? readFileSync(file, 'utf8') : undefined;
}

function pagesIn(folder: string): string[] {
    const inside = path.join(docs, folder);
    return existsSync(inside) ? readdirSync(inside).map((name) => `${folder}/${name}`) : [];
}
