/** Requests of our own, as any editor may send them: what they answer is what the command line writes. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { pathToFileURL } from 'node:url';
import {
    BUILD,
    BUILDABLE,
    type Buildable,
    type BuildResult,
    CHECK,
    type CheckResult,
    WHY,
    type WhyResult,
} from 'casewright-language/requests';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { CancellationToken, CancellationTokenSource, ProgressType } from 'vscode-jsonrpc/node';
import { EXAMPLE, languageServerCommand } from './language-server.js';
import { type Session, startSession } from './session.js';

let folder: string;
let session: Session;
const uriOf = (file: string) => pathToFileURL(path.join(folder, file)).href;
const textOf = (file: string) => readFileSync(path.join(folder, file), 'utf8');
const about = (file: string) => ({ textDocument: { uri: uriOf(file) } });

beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'casewright-requests-'));
    const isWritten = (source: string) => path.basename(source) === 'out';
    cpSync(path.dirname(EXAMPLE), folder, { recursive: true, filter: (source) => !isWritten(source) });
    session = await startSession(pathToFileURL(folder).href);
});

afterAll(async () => {
    expect(await session.end()).toBe(0);
    rmSync(folder, { recursive: true, force: true });
});

/** Runs the command line in the folder. */
function casewright(...args: string[]): string {
    const [program, ...before] = languageServerCommand();
    return spawnSync(program, [...before.slice(0, -2), ...args], { cwd: folder, encoding: 'utf8' }).stdout;
}

/** Changes the text of a file as an editor does that has it open. */
async function change(file: string, words: string, by: string): Promise<void> {
    const text = textOf(file);
    expect(text).toContain(words);
    await session.open(uriOf(file), text.replace(words, by));
}

const close = (file: string) => session.connection.sendNotification('textDocument/didClose', about(file));

describe('casewright/build', () => {
    const build = (request: object, token = CancellationToken.None) =>
        session.connection.sendRequest<BuildResult>(BUILD, { ...about('kiln-lane.case'), ...request }, token);

    test('makes the documents that the command line writes, to the byte, and tells how far it is', async () => {
        const reported: { kind: string; message?: string; percentage?: number }[] = [];
        const listening = session.connection.onProgress(new ProgressType<(typeof reported)[number]>(), 'whole', (one) => {
            reported.push(one);
        });
        const made = await build({ workDoneToken: 'whole' });
        listening.dispose();
        expect(made.is).toBe('made');
        casewright('build', 'kiln-lane.case');
        const written = path.join(folder, 'out/kiln-lane');
        const names = made.is === 'made' ? made.documents.map(({ name }) => name) : [];
        expect(names.toSorted()).toEqual(readdirSync(written).filter((name) => !name.startsWith('.')));
        for (const document of made.is === 'made' ? made.documents : []) {
            const bytes = 'text' in document ? Buffer.from(document.text) : Buffer.from(document.base64, 'base64');
            expect(bytes.equals(readFileSync(path.join(written, document.name))), document.name).toBe(true);
        }
        expect(reported.map(({ kind }) => kind)).toEqual(['begin', ...reported.slice(2).map(() => 'report'), 'end']);
        const percentages = reported.flatMap(({ percentage }) => percentage ?? []);
        expect(percentages).toEqual(percentages.toSorted((a, b) => a - b));
        expect(reported.map(({ message }) => message)).toContain('Templates');
    });

    test('makes some of them, and says what the design has nothing of, as `--only` does', async () => {
        const made = await build({ only: ['cut-list'] });
        expect(made.is === 'made' && made.documents.map(({ name }) => name)).toEqual(['cut-list.md', 'cut-list.csv', 'cut-list.json']);
        const unknown = await build({ only: ['cut-lost'] });
        expect(unknown).toMatchObject({ is: 'nothing', message: '`cut-lost` is not a document' });
    });

    test('gives no documents of a design with errors, and says which stop it', async () => {
        await change('kiln-lane.case', 'width  40in', 'width  40');
        const refused = await build({});
        expect(refused).toMatchObject({
            is: 'refused',
            summary: '1 error in `kiln-lane.case`: nothing is written',
            first: { uri: uriOf('kiln-lane.case') },
        });
        expect(refused).not.toHaveProperty('documents');
        await close('kiln-lane.case');
        await session.connection.sendNotification('workspace/didChangeWatchedFiles', {
            changes: [{ uri: uriOf('kiln-lane.case'), type: 2 }],
        });
        await expect.poll(async () => (await build({ only: ['model'] })).is, { timeout: 10_000 }).toBe('made');
    });

    test('can be called off', async () => {
        const calledOff = new CancellationTokenSource();
        const listening = session.connection.onProgress(new ProgressType<object>(), 'stopped', () => {
            calledOff.cancel();
        });
        const requestCancelled = -32800; // Language Server Protocol 3.17, section "LSPErrorCodes"
        await expect(build({ workDoneToken: 'stopped' }, calledOff.token)).rejects.toMatchObject({ code: requestCancelled });
        listening.dispose();
    });
});

describe('casewright/buildable', () => {
    const buildable = (file: string) => session.connection.sendRequest<Buildable>(BUILDABLE, about(file));

    test('a project is built itself; of a file that builds nothing the designs that use it are', async () => {
        const own = await buildable('kiln-lane.case');
        expect(own.designs.map(({ name }) => name)).toEqual(['kiln-lane']);
        expect(own.kinds.map(({ kind }) => kind)).toContain('cut-list');
        expect((await buildable('shop.case')).designs).toEqual(own.designs);
    });
});

describe('casewright/check', () => {
    const check = (file: string) => session.connection.sendRequest<CheckResult>(CHECK, about(file));

    test('finds nothing in the example, as the command line does', async () => {
        expect(casewright('check', 'kiln-lane.case')).toBe('nothing found in 1 file\n');
        expect(await check('shop.case')).toEqual({ error: 0, warning: 0, note: 0, summary: 'nothing found in shop.case' });
    });

    test('finds what is wrong in a design that uses the open file, and publishes it there', async () => {
        await change('kiln-lane.case', 'width  40in', 'width  40');
        expect(await check('shop.case')).toEqual({ error: 1, warning: 0, note: 0, summary: '1 error in kiln-lane.case' });
        await expect
            .poll(() => session.diagnosticsOf(uriOf('kiln-lane.case'))?.map(({ message }) => message), { timeout: 10_000 })
            .toHaveLength(1);
        await close('kiln-lane.case');
    });
});

describe('casewright/why', () => {
    /** The sizes offered at the first place where a file has these words. */
    const why = async (words: string, file = 'kiln-lane.case') => {
        const before = textOf(file).slice(0, textOf(file).indexOf(words)).split('\n');
        const position = { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
        return (await session.connection.sendRequest<WhyResult>(WHY, { ...about(file), position })).sizes;
    };
    const read = async (uri: string) =>
        (await session.connection.sendRequest<{ text: string }>('workspace/textDocumentContent', { uri })).text;

    beforeAll(async () => {
        await session.open(uriOf('kiln-lane.case'), textOf('kiln-lane.case'));
    });

    test('explains a size of a part with the words of the command line', async () => {
        const sizes = await why('Floor at 4in');
        expect(sizes.map(({ name }) => name)).toEqual(expect.arrayContaining(['PotteryCase.Floor.length', 'PotteryCase.Floor.depth']));
        const depth = sizes.find(({ name }) => name === 'PotteryCase.Floor.depth');
        const text = await read(depth?.uri ?? '');
        expect(text).toBe(casewright('why', 'kiln-lane.case', 'PotteryCase.Floor.depth'));
        expect(text.startsWith(`PotteryCase.Floor.depth = ${depth?.value}`)).toBe(true);
    });

    test('explains the sag of a part that carries something, after its sizes, with the words of the command line', async () => {
        const sags = (await why('Tier[3] above')).filter(({ name }) => name.endsWith('.sag'));
        expect(sags.map(({ name }) => name)).toEqual([1, 2, 3].map((tier) => `PotteryCase.Tier[${tier}].sag`));
        const [floor, ...others] = (await why('Floor at 4in')).toReversed();
        expect(floor?.name).toBe('PotteryCase.Floor.sag');
        expect(others.map(({ name }) => name)).toContain('PotteryCase.Floor.length');
        const text = await read(floor?.uri ?? '');
        expect(text).toBe(casewright('why', 'kiln-lane.case', 'PotteryCase.Floor.sag'));
        expect(text.startsWith(`PotteryCase.Floor.sag = ${floor?.value}\n`)).toBe(true);
        expect(text).toContain('Clear span between its supports: L = 37.12in');
    });

    test('offers no sag of a part that carries nothing, and says so of one that carries nothing any more', async () => {
        const offered = await why('Crown at 1/2in');
        expect(offered.map(({ name }) => name)).toContain('PotteryCase.Crown.length');
        expect(offered.filter(({ name }) => name.endsWith('.sag'))).toEqual([]);
        const [floor] = (await why('Floor at 4in')).toReversed();
        const unloaded = floor?.uri.replaceAll('Floor', 'Crown') ?? '';
        expect(await read(unloaded)).toBe('PotteryCase.Crown.sag is not known any more: the design has changed.\n');
    });

    test('explains a value that has no path, by its words', async () => {
        const [only, ...others] = await why('40in');
        expect(others).toEqual([]);
        expect(await read(only?.uri ?? '')).toMatch(/^40in = 40in \(1016mm\)/);
    });

    test('offers nothing where nothing has a size', async () => {
        expect(await why('edition')).toEqual([]);
    });

    test('a size that is gone says so', async () => {
        const [size] = await why('Floor at 4in');
        const gone = size?.uri.replaceAll('Floor', 'Flour') ?? '';
        expect(await read(gone)).toBe('PotteryCase.Flour.length is not known any more: the design has changed.\n');
    });
});

// The last one, since the design that it writes is one more that uses the shop's file.
describe('casewright/build of a design with letters that not every reader has', () => {
    test('sets its PDF in the typeface that the command line takes', async () => {
        const plain = textOf('kiln-lane.case');
        const named = plain.replace('"Kiln Lane display cases"', '"Gabloty dla Żółwia, Ősz és Жук"');
        expect(named).not.toBe(plain);
        writeFileSync(path.join(folder, 'zolw.case'), named);
        const made = await session.connection.sendRequest<BuildResult>(BUILD, { ...about('zolw.case'), only: ['templates'] });
        const pdf = made.is === 'made' ? made.documents.find(({ name }) => name === 'templates.pdf') : undefined;
        const bytes = Buffer.from(pdf && 'base64' in pdf ? pdf.base64 : '', 'base64');
        casewright('build', 'zolw.case', '--only', 'templates');
        expect(bytes.equals(readFileSync(path.join(folder, 'out/zolw/templates.pdf')))).toBe(true);
        // A typeface that is embedded as TrueType: ISO 32000-1, 9.9, Table 126
        expect(bytes.includes('/FontFile2')).toBe(true);
    });
});
