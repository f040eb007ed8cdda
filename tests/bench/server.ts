/** The language server as an editor sees it: from cold to the first diagnostics, and from a keystroke to the next. */
import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import * as path from 'node:path';
import { createMessageConnection, type MessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node';
import { languageServerCommand } from '../protocol/language-server.ts';
import { untilPrepared } from '../protocol/prepared/prepare.ts';
import { halfwayEdits, oneLargeFile } from './generated-projects.ts';
import type { Report } from './report.ts';
import { leastOf } from './timing.ts';

export async function benchServer(report: Report): Promise<void> {
    report.title('language server over stdio');
    const cache = path.resolve('tests/out/bench-start');
    rmSync(cache, { recursive: true, force: true });
    process.env.CASEWRIGHT_CACHE = 'off';
    report.note(`started the plain way, as the first time on a machine: ${(await fromCold()).toFixed(0)} ms`);
    process.env.CASEWRIGHT_CACHE = cache;
    const first = await openSession(60);
    await untilPrepared(cache);
    await first.close();
    const cold = await fromCold();
    report.goal({ what: 'from cold to the first diagnostics of a 60-line file', found: cold, unit: 'ms', atMost: 500 });
    const session = await openSession(450);
    const keystroke = await leastOf(30, () => session.type());
    await session.close();
    report.goal({ what: 'from a keystroke to diagnostics in a 450-line file', found: keystroke, unit: 'ms', atMost: 50 });
}

function fromCold(): Promise<number> {
    return leastOf(5, async () => {
        const session = await openSession(60);
        await session.close();
        return session.toFirstDiagnostics;
    });
}

interface Session {
    readonly toFirstDiagnostics: number;
    /** Changes a size and waits for its diagnostics: the milliseconds that took. */
    type(): Promise<number>;
    close(): Promise<void>;
}

async function openSession(lines: number): Promise<Session> {
    const [shop, file] = oneLargeFile(lines) as [{ uri: string; text: string }, { uri: string; text: string }];
    // the server reads used files from disk; here everything is in one file
    const text = `${shop.text}${file.text.replace(/^edition 1\nuse "shop.case"\n/, '')}`;
    const uri = 'file:///casewright-bench/large.case';
    const started = performance.now();
    const [program, ...args] = languageServerCommand();
    const server = spawn(program, args, { stdio: ['pipe', 'pipe', 'inherit'] });
    const connection = createMessageConnection(new StreamMessageReader(server.stdout), new StreamMessageWriter(server.stdin));
    connection.onRequest('client/registerCapability', () => null);
    connection.onRequest('workspace/configuration', ({ items }: { items: readonly unknown[] }) => items.map(() => null));
    const next = diagnosticsOf(connection, uri);
    connection.listen();
    await connection.sendRequest('initialize', {
        processId: process.pid,
        rootUri: null,
        workspaceFolders: null,
        capabilities: { textDocument: { publishDiagnostics: { versionSupport: true } } },
    });
    await connection.sendNotification('initialized', {});
    const first = next();
    await connection.sendNotification('textDocument/didOpen', { textDocument: { uri, languageId: 'casewright', version: 1, text } });
    await first;
    const toFirstDiagnostics = performance.now() - started;
    const texts = halfwayEdits(text);
    let version = 1;
    return {
        toFirstDiagnostics,
        async type() {
            version += 1;
            const typed = performance.now();
            const answer = next();
            await connection.sendNotification('textDocument/didChange', {
                textDocument: { uri, version },
                contentChanges: [{ text: texts[version % texts.length] ?? '' }],
            });
            await answer;
            return performance.now() - typed;
        },
        async close() {
            await connection.sendRequest('shutdown');
            await connection.sendNotification('exit');
            await new Promise((resolve) => server.once('exit', resolve));
            connection.dispose();
        },
    };
}

/** Each call waits for the next diagnostics of the file. */
function diagnosticsOf(connection: MessageConnection, uri: string): () => Promise<void> {
    let arrived = () => {};
    connection.onNotification('textDocument/publishDiagnostics', (params: { uri: string }) => {
        if (params.uri === uri) arrived();
    });
    return () =>
        new Promise((resolve) => {
            arrived = resolve;
        });
}
