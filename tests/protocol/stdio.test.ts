/** The language server under a client that is not VS Code: plain JSON-RPC over standard input and output. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createMessageConnection, type MessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node';
import type { InitializeResult, PublishDiagnosticsParams } from 'vscode-languageserver-protocol';
import { languageServerCommand } from './language-server.js';

const uri = 'file:///not-there/trial.case';
const published: PublishDiagnosticsParams[] = [];
let server: ChildProcessWithoutNullStreams;
let connection: MessageConnection;

beforeAll(async () => {
    const [program, ...args] = languageServerCommand();
    server = spawn(program, args);
    connection = createMessageConnection(new StreamMessageReader(server.stdout), new StreamMessageWriter(server.stdin));
    connection.onNotification('textDocument/publishDiagnostics', (parameters: PublishDiagnosticsParams) => {
        published.push(parameters);
    });
    connection.onRequest('client/registerCapability', () => null);
    connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => null));
    connection.listen();
    const { capabilities } = await connection.sendRequest<InitializeResult>('initialize', {
        processId: process.pid,
        rootUri: null,
        workspaceFolders: null,
        capabilities: { textDocument: { hover: { contentFormat: ['markdown'] } } },
    });
    expect(capabilities).toMatchObject({ hoverProvider: true, definitionProvider: true, documentSymbolProvider: true });
    await connection.sendNotification('initialized', {});
});

afterAll(async () => {
    const ended = new Promise((resolve) => server.once('exit', resolve));
    await connection.sendRequest('shutdown');
    await connection.sendNotification('exit');
    expect(await ended).toBe(0);
    connection.dispose();
});

test('a mistake is reported at its words, and goes when it is mended', async () => {
    const text = (line: string) => `case Trial {\n    ${line}\n    height 30in\n}\n`;
    await connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId: 'casewright', version: 1, text: text('width = 40in') },
    });
    await expect
        .poll(() => latestDiagnostics()?.map(({ range }) => range.start), { timeout: 10_000 })
        .toEqual([{ line: 1, character: 10 }]);

    await connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version: 2 },
        contentChanges: [{ text: text('width 40in') }],
    });
    await expect.poll(() => latestDiagnostics(), { timeout: 10_000 }).toEqual([]);
});

function latestDiagnostics(): PublishDiagnosticsParams['diagnostics'] | undefined {
    return published.findLast((parameters) => parameters.uri === uri)?.diagnostics;
}
