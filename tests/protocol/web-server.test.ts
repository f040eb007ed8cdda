/** The language server for browsers, in a worker as a browser starts it: what it makes is what the command line writes. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { FIND_FILE, type FileRequest, LIST_FOLDER, READ_FILE } from 'casewright-language/client-files';
import { BUILD, type BuildResult, type InitializationOptions } from 'casewright-language/requests';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createMessageConnection, type DataCallback, Emitter, type Message, type MessageConnection } from 'vscode-jsonrpc/node';
import { EXAMPLE, languageServerCommand } from './language-server.js';

const delivered = path.resolve(import.meta.dirname, '../../extension/dist/server');

/** What a worker of a browser finds around it, made of what one of Node has. */
const surroundings = `
const { parentPort } = require('node:worker_threads');
globalThis.self = globalThis;
self.postMessage = (message) => parentPort.postMessage(message);
self.addEventListener = () => {};
parentPort.on('message', (data) => self.onmessage({ data }));
`;

let folder: string;
let files: Server;
let design: string;

beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'casewright-web-'));
    const isWritten = (source: string) => path.basename(source) === 'out';
    cpSync(path.dirname(EXAMPLE), folder, { recursive: true, filter: (source) => !isWritten(source) });
    design = path.join(folder, 'zolw.case');
    const named = readFileSync(EXAMPLE, 'utf8').replace('"Kiln Lane display cases"', '"Gabloty dla Żółwia"');
    expect(named).toContain('Żółwia');
    writeFileSync(design, named);
    files = createServer((request, response) => response.end(readFileSync(path.join(delivered, path.basename(request.url ?? '')))));
    await new Promise<void>((resolve) => files.listen(0, '127.0.0.1', resolve));
});

afterAll(() => {
    files.close();
    rmSync(folder, { recursive: true, force: true });
});

/** A client of a new worker that has the files of the folder, as an extension host has them. */
async function start(initializationOptions: InitializationOptions): Promise<MessageConnection> {
    const worker = new Worker(surroundings + readFileSync(path.join(delivered, 'web.js'), 'utf8'), { eval: true });
    const never = new Emitter<never>().event;
    const connection = createMessageConnection(
        {
            listen: (receive: DataCallback) => {
                worker.on('message', receive);
                return { dispose: () => void worker.terminate() };
            },
            onError: never,
            onClose: never,
            onPartialMessage: never,
            dispose: () => {},
        },
        {
            write: async (message: Message) => worker.postMessage(message),
            end: () => {},
            onError: never,
            onClose: never,
            dispose: () => {},
        },
    );
    connection.onRequest('client/registerCapability', () => null);
    connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => null));
    connection.onRequest(READ_FILE, ({ uri }: FileRequest) => readFileSync(fileURLToPath(uri), 'utf8'));
    connection.onRequest(FIND_FILE, ({ uri }: FileRequest) => entryOf(uri));
    connection.onRequest(LIST_FOLDER, ({ uri }: FileRequest) => readdirSync(fileURLToPath(uri)).map((name) => entryOf(`${uri}/${name}`)));
    connection.listen();
    const root = pathToFileURL(folder).href;
    await connection.sendRequest('initialize', {
        processId: null,
        rootUri: root,
        workspaceFolders: [{ uri: root, name: 'designs' }],
        capabilities: {},
        initializationOptions,
    });
    await connection.sendNotification('initialized', {});
    return connection;
}

function entryOf(uri: string) {
    return { uri, kind: uri.endsWith('.case') ? 'file' : 'directory' };
}

/** The templates as PDF. */
async function templates(connection: MessageConnection): Promise<Buffer> {
    const made = await connection.sendRequest<BuildResult>(BUILD, {
        textDocument: { uri: pathToFileURL(design).href },
        only: ['templates'],
    });
    connection.dispose();
    const pdf = made.is === 'made' ? made.documents.find(({ name }) => name === 'templates.pdf') : undefined;
    return Buffer.from(pdf && 'base64' in pdf ? pdf.base64 : '', 'base64');
}

describe('a PDF with letters that not every reader has', () => {
    test('is set in the typeface whose address the client says, to the byte as the command line writes it', async () => {
        const { port } = files.address() as AddressInfo;
        const made = await templates(await start({ typeface: `http://127.0.0.1:${port}/NotoSans_400Regular.ttf` }));
        const [program, ...before] = languageServerCommand();
        spawnSync(program, [...before.slice(0, -2), 'build', 'zolw.case', '--only', 'templates'], { cwd: folder });
        expect(made.equals(readFileSync(path.join(folder, 'out/zolw/templates.pdf')))).toBe(true);
    });

    test('has those letters without their marks where the client says no typeface', async () => {
        const made = await templates(await start({}));
        expect(made.subarray(0, 5).toString()).toBe('%PDF-');
        expect(made.includes('/FontFile2')).toBe(false);
    });
});
