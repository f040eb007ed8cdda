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

it('the bundle for the desktop, for comparison, does ask for modules of Node', () => {
    const server = path.join(ROOT, 'extension/dist/server');
    const scripts = [
        path.join(server, 'desktop.mjs'),
        ...readdirSync(path.join(server, 'parts')).map((part) => path.join(server, 'parts', part)),
    ];
    expect(scripts.flatMap((script) => nodeModulesIn(readFileSync(script, 'utf8')))).toContain('child_process');
});
