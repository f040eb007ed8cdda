/** The tour of the language: every sample is built and checked, and what stands below it is what comes out. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { type Analysis, openWorkspace } from 'casewright-language';
import { type Casework, lookUp, type Measure, sayBoth } from 'casewright-shared/casework';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Claim, readSamples, type Sample } from './tour.js';

const root = path.resolve(import.meta.dirname, '../..');
const samples = readSamples(readFileSync(path.join(root, 'language/docs/tour.md'), 'utf8'));

let folder: string;
beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'casewright-tour-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('the tour has samples', () => {
    expect(samples.length).toBeGreaterThan(20);
});

describe.each(samples.map((sample) => [`line ${sample.line}, ${sample.heading}`, sample] as const))('%s', (_, sample) => {
    const commands = sample.claims.filter((claim) => claim.is === 'command');
    const sizes = sample.claims.filter((claim) => claim.is === 'size');
    const documents = sample.claims.filter((claim) => claim.is === 'document');
    const rows = sample.claims.filter((claim) => claim.is === 'row');

    if (!commands.some(({ words }) => words[0] === 'check')) {
        test('has no error and no warning', async () => {
            const { findings } = await analyse(sample);
            const isSeen = ({ severity, allowed }: (typeof findings)[number]) => severity !== 'note' && allowed === undefined;
            expect(findings.filter(isSeen).map(({ code, message }) => `${code} ${message}`)).toEqual([]);
        });
    }
    if (sizes.length > 0) {
        test('has these sizes', async () => {
            const { casework } = await analyse(sample);
            expect(sizes.map(({ path: of }) => [of, sizeAt(casework, of)])).toEqual(sizes.map(({ path: of, says }) => [of, says]));
        });
    }
    for (const { words, prints } of commands) {
        test(`$ casewright ${words.join(' ')}`, () => expect(casewright(sample, words)).toBe(prints));
    }
    for (const { line, name, text } of documents) {
        test(`${name} has these words`, () => {
            casewright(sample, commands.findLast((command) => command.line < line)?.words ?? []);
            expect(readFileSync(path.join(folderOf(sample), 'out', path.parse(sample.file).name, name), 'utf8')).toBe(text);
        });
    }
    if (rows.length > 0) {
        test('has these rows in its cut list', () => {
            casewright(sample, ['build', sample.file]);
            const list = readFileSync(path.join(folderOf(sample), 'out', path.parse(sample.file).name, 'cut-list.md'), 'utf8').split('\n');
            expect(rows.filter(({ text }) => !list.includes(text)).map(({ text }) => text)).toEqual([]);
        });
    }
});

async function analyse({ file, files }: Sample): Promise<Analysis> {
    const readFile = async (uri: string): Promise<string> => {
        const text = files.get(uri.replace('memory:/', ''));
        if (text === undefined) throw new Error(`${uri} does not exist`);
        return text;
    };
    return openWorkspace({ readFile }).analyse(`memory:/${file}`);
}

/** A size as a shop reads it; of a part its finished length, width and thickness. */
function sizeAt(casework: Casework, of: string): string {
    const system = casework.project?.units === 'mm' ? 'mm' : 'inch';
    const say = (measure: Measure) => sayBoth(measure.quantity, system).replace(/ \(.*/, '');
    const found = lookUp(casework, of);
    if (found.ok) return say(found.measure);
    const sides = ['length', 'width', 'thickness'].map((name) => lookUp(casework, `${of}.${name}`));
    return sides.map((side) => (side.ok ? say(side.measure) : 'not known')).join(' x ');
}

function folderOf({ line }: Sample): string {
    return path.join(folder, String(line));
}

/** What the command prints, in a folder that holds the files of the sample. */
function casewright(sample: Sample, words: Extract<Claim, { is: 'command' }>['words']): string {
    mkdirSync(folderOf(sample), { recursive: true });
    for (const [name, text] of sample.files) writeFileSync(path.join(folderOf(sample), name), text);
    const { stdout, stderr } = spawnSync(process.execPath, [path.join(root, 'cli/dist/casewright.mjs'), ...words], {
        cwd: folderOf(sample),
        encoding: 'utf8',
    });
    return (stdout + stderr).trimEnd();
}
