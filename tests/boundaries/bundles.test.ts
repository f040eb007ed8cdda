import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import * as path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from './imports.js';

/** Names of Node's modules that a script asks for, by `require` or by their `node:` name. */
function nodeModulesIn(script: string): string[] {
    const asked = [...script.matchAll(/\brequire\(\s*["'`]([^"'`]+)["'`]\s*\)|["'`](node:[a-z_/]+)["'`]/g)].map(
        ([, name, prefixed]) => name ?? prefixed ?? '',
    );
    return asked.filter((name) => name.startsWith('node:') || builtinModules.includes(name));
}

describe.each(['extension/dist/extension/web.js', 'extension/dist/server/web.js'])('%s', (file) => {
    it('asks for no module of Node, so that it runs in a browser', () => {
        expect(existsSync(path.join(ROOT, file)), `${file} is missing: run \`npm run build\` first`).toBe(true);
        const advice =
            'the entry for the web, or something that it imports, reaches a module of Node: import it from the desktop entry alone';
        expect(nodeModulesIn(readFileSync(path.join(ROOT, file), 'utf8')), advice).toEqual([]);
    });
});

it('the server for the desktop starts without the writers of PDF and DXF', () => {
    const server = path.join(ROOT, 'extension/dist/server');
    const started = new Set<string>();
    const follow = (file: string): void => {
        if (!started.has(file)) {
            started.add(file);
            const script = readFileSync(path.join(server, file), 'utf8');
            for (const [, part = ''] of script.matchAll(/(?:\bfrom|\bimport)\s*"(\.[^"]+)"/g)) {
                follow(path.join(path.dirname(file), part));
            }
        }
    };
    follow('desktop.mjs');
    // What a PDF file begins with (ISO 32000-1, 7.5.2), and a variable of the header of a DXF file.
    const writers = (files: Iterable<string>) =>
        [...files].filter((file) => /%PDF-|\$ACADVER/.test(readFileSync(path.join(server, file), 'utf8')));
    expect(started.size, 'parts that the start needs are found').toBeGreaterThan(1);
    expect(writers(started), 'something imports a writer where it is not awaited: use `import()` there').toEqual([]);
    const parts = readdirSync(path.join(server, 'parts')).map((part) => path.join('parts', part));
    expect(writers(parts), 'the writers are among the parts').not.toEqual([]);
});

it('the bundle for the desktop, for comparison, does ask for modules of Node', () => {
    const server = path.join(ROOT, 'extension/dist/server');
    const scripts = [
        path.join(server, 'desktop.mjs'),
        ...readdirSync(path.join(server, 'parts')).map((part) => path.join(server, 'parts', part)),
    ];
    expect(scripts.flatMap((script) => nodeModulesIn(readFileSync(script, 'utf8')))).toContain('node:fs');
});
