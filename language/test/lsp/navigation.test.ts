import { Cancellation } from 'langium';
import { describe, expect, test } from 'vitest';
import type { DocumentHighlight, DocumentLink, Location, LocationLink } from 'vscode-languageserver';
import { Editor, withCursor } from './editor.js';
import { design, shop } from './sample.js';

const files = { 'shop.case': shop };

async function open(marked: string, text = design, beside: Readonly<Record<string, string>> = files): Promise<Editor> {
    return Editor.open(withCursor(text, marked), beside);
}

/** Where a definition leads: the file, and the words there. */
async function definition(editor: Editor): Promise<string> {
    const found = (await definitionsAt(editor)) ?? [];
    const locations = found.map((one) => ('uri' in one ? one : { uri: one.targetUri, range: one.targetSelectionRange }));
    return locations.map((location) => place(editor, location)).join('\n') || 'nothing';
}

async function definitionsAt(editor: Editor): Promise<(Location | LocationLink)[] | undefined> {
    return editor.lsp.DefinitionProvider?.getDefinition(editor.document(), editor.atCursor) as Promise<
        (Location | LocationLink)[] | undefined
    >;
}

/** Every place, as the file, its line, and the words. */
async function references(editor: Editor): Promise<readonly string[]> {
    const params = { ...editor.atCursor, context: { includeDeclaration: true } };
    const found = (await editor.lsp.ReferencesProvider?.findReferences(editor.document(), params)) as Location[];
    return found.map((location) => place(editor, location));
}

function place(editor: Editor, { uri, range }: Location): string {
    const file = uri.startsWith('casewright:') ? uri : uri.slice(uri.lastIndexOf('/') + 1);
    return `${file}:${range.start.line + 1} ${editor.words(range, uri)}`.trim();
}

describe('the definition', () => {
    test.each([
        ['of a part', 'above Flo<|>or', 'design.case:24 Floor'],
        ['of one of a group', 'hold Atlas on Ti<|>er[1]', 'design.case:26 Tier'],
        ['of a part without a name', 'join ba<|>ck to', 'design.case:27 back'],
        ['of a value', '2 * g<|>ap', 'design.case:17 gap'],
        ['of a parameter', 'Tier[tie<|>rs]', 'design.case:13 tiers'],
        ['of a parameter, from the build', 'Bookcase(tie<|>rs = 2)', 'design.case:13 tiers'],
        ['of a case', '2 Book<|>case(', 'design.case:13 Bookcase'],
        ['of a material in another file', 'side Left, Right of P<|>ly', 'shop.case:6 Ply'],
        ['of an edging in another file', 'edge front Lip<|>ped\n        edge', 'shop.case:11 Lipped'],
        ['of a used file', 'use "sh<|>op.case"', 'shop.case:1'],
        ['of a name, where it is declared', 'shelf Flo<|>or', 'design.case:24 Floor'],
        ['of a word of the language', 'clear eq<|>ual', 'nothing'],
    ])('%s', async (_, marked, expected) => {
        expect(await definition(await open(marked))).toBe(expected);
    });

    test('is a location, or a link from the word where the editor says that it takes links', async () => {
        const editor = await open('above Flo<|>or');
        const keys = async () => Object.keys((await definitionsAt(editor))?.[0] ?? {}).sort();
        expect(await keys()).toEqual(['range', 'uri']);
        const capabilities = { textDocument: { definition: { linkSupport: true } } };
        await editor.services.shared.lsp.LanguageServer.initialize({ processId: null, rootUri: null, capabilities });
        expect(await keys()).toEqual(['originSelectionRange', 'targetRange', 'targetSelectionRange', 'targetUri']);
        expect(await definition(editor)).toBe('design.case:24 Floor');
    });

    test('of what the library declares: a document that the server has the text of', async () => {
        const editor = await open('like Hardwood<|>Plywood', shop, {});
        expect(await definition(editor)).toMatch(/^casewright:\/library\/panels\.case:\d+ HardwoodPlywood$/);
        const content = editor.services.shared.lsp.TextDocumentContentProvider;
        expect(content?.schemes).toEqual(['casewright']);
        const token = Cancellation.CancellationToken.None;
        const library = await content?.provideTextDocumentContent({ uri: 'casewright:/library/panels.case' }, token);
        expect(library?.text).toContain('material HardwoodPlywood : plywood {');
        const rule = await content?.provideTextDocumentContent({ uri: 'casewright:/rules/NAM-001.md' }, token);
        expect(rule?.text).toContain('# NAM-001: unknown-name');
        expect(await content?.provideTextDocumentContent({ uri: 'casewright:/rules/NAM-999.md' }, token)).toBeUndefined();
    });

    test('through the name of a file: the thing and the file, each from its own word', async () => {
        const text = 'use "shop.case" as ours\ncase Box of ours.Ply { side Left { edge front ours.Lipped } }\n';
        expect(await definition(await open('front ours.Lip<|>ped', text))).toBe('shop.case:11 Lipped');
        expect(await definition(await open('front ou<|>rs.Lipped', text))).toBe('design.case:1 ours');
        expect(await definition(await open('of ours.P<|>ly', text))).toBe('shop.case:6 Ply');
        expect(await definition(await open('of ou<|>rs.Ply', text))).toBe('design.case:1 ours');
    });
});

describe('references', () => {
    test('of a part, the declaration first', async () => {
        expect(await references(await open('above Flo<|>or'))).toEqual(['design.case:24 Floor', 'design.case:26 Floor']);
    });

    test('of a parameter, also where arguments name it', async () => {
        expect(await references(await open('Tier[tie<|>rs]'))).toEqual([
            'design.case:13 tiers',
            'design.case:6 tiers',
            'design.case:26 tiers',
        ]);
    });

    test('of a material, in all files that are open', async () => {
        const found = await references(await open('side Left, Right of P<|>ly'));
        expect(found).toEqual(['shop.case:6 Ply', 'design.case:19 Ply', 'design.case:23 Ply', 'shop.case:7 Ply']);
    });

    test('are none of a word of the language', async () => {
        expect(await references(await open('clear eq<|>ual'))).toEqual([]);
    });
});

test('highlights: the declaration as written, the uses as read, in this file alone', async () => {
    const editor = await open('edge front Lip<|>ped\n        edge');
    const found = (await editor.lsp.DocumentHighlightProvider?.getDocumentHighlight(
        editor.document(),
        editor.atCursor,
    )) as DocumentHighlight[];
    expect(found.map(({ range, kind }) => `${range.start.line + 1} ${editor.words(range)} ${kind}`)).toEqual([
        '20 Lipped 2',
        '23 Lipped 2',
    ]);
});

test('links: files and libraries that are used', async () => {
    const editor = await Editor.open('use "shop.case"\nuse casewright.species\nuse "gone.txt"\n', files);
    const token = { textDocument: { uri: editor.uri() } };
    const links = (await editor.lsp.DocumentLinkProvider?.getDocumentLinks(editor.document(), token)) as DocumentLink[];
    expect(links.map(({ range, target }) => `${editor.words(range)} ${target}`)).toEqual([
        `"shop.case" ${editor.uri('shop.case')}`,
        'casewright.species casewright:/library/species.case',
    ]);
});
