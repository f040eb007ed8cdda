/** Every example is a project that a reader can copy: it checks without a finding, is formatted, and builds. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const examples = readdirSync(path.join(root, 'examples'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);

let folder: string;
beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'casewright-examples-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it('there are examples', () => {
    expect(examples).toContain('kiln-lane');
});

describe.each(examples)('%s', (example) => {
    const design = path.join(root, 'examples', example, `${example}.case`);

    it('checks without a finding', () => {
        const { status, stdout, stderr } = casewright('check', design, '--format', 'json');
        expect(status, stderr).toBe(0);
        expect(JSON.parse(stdout).findings).toEqual([]);
    });

    it('is formatted', () => {
        const files = readdirSync(path.dirname(design)).filter((name) => name.endsWith('.case'));
        const { status, stdout, stderr } = casewright('format', '--check', ...files.map((name) => path.join(path.dirname(design), name)));
        expect(status, stdout + stderr).toBe(0);
    });

    it('builds the cut list, the materials and the model, twice to the same bytes', () => {
        const [first, second] = ['first', 'second'].map((name) => {
            const out = path.join(folder, example, name);
            const { status, stderr } = casewright('build', design, '--out', out);
            expect(status, stderr).toBe(0);
            return new Map(readdirSync(out).map((file) => [file, readFileSync(path.join(out, file), 'latin1')]));
        });
        expect([...(first?.keys() ?? [])]).toEqual(expect.arrayContaining(['cut-list.csv', 'materials.csv', 'model.json']));
        expect(second).toEqual(first);
    });
});

function casewright(...args: string[]) {
    return spawnSync(process.execPath, [path.join(root, 'cli/dist/casewright.mjs'), ...args], { encoding: 'utf8' });
}
