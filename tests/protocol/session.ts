/** A client of the language server that is not VS Code: plain JSON-RPC over standard input and output. */
import { spawn } from 'node:child_process';
import { createMessageConnection, type MessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node';
import type { InitializeResult, PublishDiagnosticsParams } from 'vscode-languageserver-protocol';
import { languageServerCommand } from './language-server.js';

/** A server that has been started and asked what it can do. */
export interface Session {
    readonly connection: MessageConnection;
    readonly processId: number | undefined;
    readonly capabilities: InitializeResult['capabilities'];
    /** What was last published of a file; undefined if nothing was. */
    diagnosticsOf(uri: string): PublishDiagnosticsParams['diagnostics'] | undefined;
    open(uri: string, text: string): Promise<void>;
    /** Asks the server to end; the code that it ends with. */
    end(): Promise<number | null>;
}

/** @param folder the URI of the folder that is open; none if it is not given */
export async function startSession(folder?: string): Promise<Session> {
    const [program, ...args] = languageServerCommand();
    const server = spawn(program, args);
    const published = new Map<string, PublishDiagnosticsParams['diagnostics']>();
    const connection = createMessageConnection(new StreamMessageReader(server.stdout), new StreamMessageWriter(server.stdin));
    connection.onNotification('textDocument/publishDiagnostics', ({ uri, diagnostics }: PublishDiagnosticsParams) => {
        published.set(uri, diagnostics);
    });
    connection.onRequest('client/registerCapability', () => null);
    connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => null));
    connection.listen();
    const { capabilities } = await connection.sendRequest<InitializeResult>('initialize', {
        processId: process.pid,
        rootUri: folder ?? null,
        workspaceFolders: folder === undefined ? null : [{ uri: folder, name: 'designs' }],
        capabilities: { textDocument: { hover: { contentFormat: ['markdown'] }, definition: { linkSupport: true } } },
    });
    await connection.sendNotification('initialized', {});
    return {
        connection,
        processId: server.pid,
        capabilities,
        diagnosticsOf: (uri) => published.get(uri),
        open: (uri, text) =>
            connection.sendNotification('textDocument/didOpen', { textDocument: { uri, languageId: 'casewright', version: 1, text } }),
        end: async () => {
            const ended = new Promise<number | null>((resolve) => server.once('exit', resolve));
            await connection.sendRequest('shutdown');
            await connection.sendNotification('exit');
            const code = await ended;
            connection.dispose();
            return code;
        },
    };
}
