/** Every example is a project that a reader can copy: it checks without a finding, is formatted, and builds. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { validateBytes } from 'gltf-validator';
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

    it('has a scene that is valid by the validator of the Khronos Group, with each part of the model by its name', async () => {
        const bytes = readFileSync(path.join(folder, example, 'first', 'model.glb'));
        const { issues } = await validateBytes(new Uint8Array(bytes));
        expect(issues.messages).toEqual([]);
        const { nodes } = JSON.parse(bytes.toString('utf8', 20, 20 + bytes.readUInt32LE(12)));
        const names = (nodes as readonly { name: string; mesh?: number }[])
            .filter(({ mesh }) => mesh !== undefined)
            .map(({ name }) => name);
        const { parts } = JSON.parse(readFileSync(path.join(folder, example, 'first', 'model.json'), 'utf8'));
        expect(names.sort()).toEqual((parts as readonly { id: string }[]).map(({ id }) => id).sort());
    });

    it('has a model that keeps to its schema, with the weight of every part and case', () => {
        const model = JSON.parse(readFileSync(path.join(folder, example, 'first', 'model.json'), 'utf8'));
        const schema = JSON.parse(readFileSync(path.join(root, 'shared/schema/model.schema.json'), 'utf8'));
        const validate = new Ajv2020({ strict: true, strictTypes: false, allErrors: true }).compile(schema);
        expect(validate(model), JSON.stringify(validate.errors)).toBe(true);
        for (const { id, solid } of model.parts) expect(solid.weight.mass, id).toBeGreaterThan(0);
        for (const { id, weight } of model.cases) expect(weight.mass, id).toBeGreaterThan(0);
    });

    it('has templates on whose sheets every word, as poppler finds it, lies where the printer reaches and is not cut off', () => {
        const file = path.join(folder, example, 'first', 'templates.pdf');
        if (!existsSync(file)) return; // nothing in it is curved
        const { stdout } = spawnSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8', maxBuffer: 1e8 });
        const pages = stdout.split('<page ').slice(1);
        expect(pages.length).toBeGreaterThan(1);
        for (const page of pages) {
            const [width, height] = numbersIn(/width="([\d.]+)" height="([\d.]+)"/, page);
            // 8 mm at the edges of a page, which printers do not reach, in points; what is at full size ends as far from its frame
            const margin = (8 / 25.4) * 72 - 1;
            const words = page.match(/<word [^>]*>[^<]*/g) ?? [];
            expect(words.length).toBeGreaterThan(5);
            for (const word of words) {
                const [left, top, right, bottom] = numbersIn(/xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)"/, word);
                expect(Math.min(left!, top!, width! - right!, height! - bottom!), word).toBeGreaterThan(margin);
            }
        }
    });
});

function numbersIn(pattern: RegExp, text: string): readonly number[] {
    return (pattern.exec(text) ?? []).slice(1).map(Number);
}

function casewright(...args: string[]) {
    return spawnSync(process.execPath, [path.join(root, 'cli/dist/casewright.mjs'), ...args], { encoding: 'utf8' });
}
