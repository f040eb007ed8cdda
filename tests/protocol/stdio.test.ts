/** The language server under a client that is not VS Code: plain JSON-RPC over standard input and output. */
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { MessageConnection } from 'vscode-jsonrpc/node';
import type { CompletionList, Hover, LocationLink, Position, PublishDiagnosticsParams } from 'vscode-languageserver-protocol';
import { EXAMPLE } from './language-server.js';
import { type Session, startSession } from './session.js';

const uri = pathToFileURL(EXAMPLE).href;
const design = readFileSync(EXAMPLE, 'utf8');
const EXPECTED_CAPABILITIES = [
    'hoverProvider',
    'completionProvider',
    'definitionProvider',
    'referencesProvider',
    'renameProvider',
    'documentSymbolProvider',
    'foldingRangeProvider',
    'documentFormattingProvider',
    'semanticTokensProvider',
];
let session: Session;
let connection: MessageConnection;

beforeAll(async () => {
    session = await startSession();
    connection = session.connection;
    const offered = Object.entries(session.capabilities).flatMap(([name, value]) => (value ? [name] : []));
    expect(offered).toEqual(expect.arrayContaining(EXPECTED_CAPABILITIES));
});

afterAll(async () => {
    expect(await session.end()).toBe(0);
});

test('a mistake is reported once, at its words, with what mends it, and goes when it is mended', async () => {
    const mistaken = design.replace('width  40in', 'width  40');
    await connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId: 'casewright', version: 1, text: mistaken },
    });
    await expect.poll(latestDiagnostics, { timeout: 10_000 }).toHaveLength(1);
    const [mistake] = latestDiagnostics() ?? [];
    expect(mistake).toMatchObject({ severity: 1, message: expect.stringMatching(/`40in` or `40mm`/) });
    expect(mistake?.range.start).toEqual(positionOf('40in', 'width  '));
    expect(mistake?.range.end.character).toBe((mistake?.range.start.character ?? 0) + 2);

    await connection.sendNotification('textDocument/didChange', { textDocument: { uri, version: 2 }, contentChanges: [{ text: design }] });
    await expect.poll(latestDiagnostics, { timeout: 10_000 }).toEqual([]);
});

test('a shelf says its derived sizes in both unit systems', async () => {
    const { contents } = await ask<Hover>('textDocument/hover', positionOf('Tier[3]', 'shelf '));
    expect(contents).toMatchObject({ kind: 'markdown', value: expect.stringMatching(/Tier\[2\] .*\d+in.*\d+mm/) });
});

test('names of the library are offered with the line that uses it', async () => {
    const list = await ask<CompletionList>('textDocument/completion', positionOf('WalnutPly', 'Right of '));
    const panel = list.items.find(({ label }) => label === 'HardwoodPlywood');
    expect(panel?.additionalTextEdits).toMatchObject([{ newText: '\nuse casewright.panels' }]);
    expect(list.items.find(({ label }) => label === 'WalnutPly')?.additionalTextEdits).toBeUndefined();
});

test('a name leads to its declaration in the file that is used', async () => {
    const found = await ask<LocationLink[]>('textDocument/definition', positionOf('WalnutPly', 'Right of '));
    expect(found.map(({ targetUri }) => targetUri)).toEqual([new URL('shop.case', uri).href]);
});

test('a shelf that sags under what it carries says so, until it has a nosing on edge', async () => {
    const loaded = design.replace('hold Bowl on Tier[3]', 'load 40 lb/ft2 on Tier[3]');
    const edge = 'edge front Nosed';
    const sagging = () => latestDiagnostics()?.filter(({ code }) => code === 'STR-001');
    const change = (version: number, text: string) =>
        connection.sendNotification('textDocument/didChange', { textDocument: { uri, version }, contentChanges: [{ text }] });

    await change(3, loaded.replace(edge, ''));
    await expect.poll(sagging, { timeout: 10_000 }).toHaveLength(1);
    expect(sagging()?.[0]).toMatchObject({ severity: 2, message: expect.stringMatching(/^`Tier\[3\]` sags 0\.4\d*in under 40 lb\/ft2/) });

    await change(4, loaded.replace(edge, 'edge front nosing 3/4in of Walnut { high 1 1/2in }'));
    await expect.poll(sagging, { timeout: 10_000 }).toEqual([]);
    await change(5, design);
    await expect.poll(latestDiagnostics, { timeout: 10_000 }).toEqual([]);
});

function ask<Answer>(method: string, position: Position): Promise<Answer> {
    return connection.sendRequest<Answer>(method, { textDocument: { uri }, position });
}

/** Where the design has a word after these other words. */
function positionOf(word: string, after: string): Position {
    const before = design.slice(0, design.indexOf(after + word) + after.length).split('\n');
    return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

function latestDiagnostics(): PublishDiagnosticsParams['diagnostics'] | undefined {
    return session.diagnosticsOf(uri);
}
