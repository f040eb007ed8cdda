import { describe, expect, test } from 'vitest';
import { type DocumentSymbol, type FoldingRange, SymbolKind, type WorkspaceSymbol } from 'vscode-languageserver';
import { selectionRangeAt } from '../../src/lsp/selection-ranges.js';
import { Editor, withCursor } from './editor.js';
import { design, shop } from './sample.js';

const files = { 'shop.case': shop };

describe('the outline', () => {
    const outline = (symbols: readonly DocumentSymbol[], indent = ''): string =>
        symbols
            .map(
                ({ name, detail, kind, children }) =>
                    `${indent}${name} (${[detail, SymbolNames[kind]].filter(Boolean).join(', ')})\n${outline(children ?? [], `${indent}  `)}`,
            )
            .join('');
    const SymbolNames = Object.fromEntries(Object.entries(SymbolKind).map(([name, kind]) => [kind, name]));

    async function outlineOf(text: string): Promise<string> {
        const editor = await Editor.open(text, files);
        const params = { textDocument: { uri: editor.uri() } };
        return outline((await editor.lsp.DocumentSymbolProvider?.getSymbols(editor.document(), params)) as DocumentSymbol[]);
    }

    test('of the sample', async () => {
        expect(await outlineOf(design)).toMatchInlineSnapshot(`
          "Mill Street bookcases (project, Object)
          Atlas (goods, Object)
          Bookcase (case, Class)
            tiers (parameter, Variable)
            gap (let, Constant)
            Left (side, Struct)
            Right (side, Struct)
            Floor (shelf, Struct)
            Crown (shelf, Struct)
            Tier (shelf, Struct)
            back (Struct)
          "
        `);
    });

    test('of a shop file', async () => {
        expect(await outlineOf(shop)).toMatchInlineSnapshot(`
          "Ply (material, Object)
          Ply4 (material, Object)
          Oak (material : lumber, Object)
          Lipped (edging, Method)
          Fixed (joint, Method)
          BackFix (joint, Method)
          reveal (let, Constant)
          "
        `);
    });

    test('of openings, layers, curves and blocks', async () => {
        expect(
            await outlineOf(`case A {
    curve Sweep of depth over height { from 10in at bottom   to 8in at top }
    divider Post at middle as Near, Far
    side Left, Right { layer Outer; layer Inner }
    in Near { shelf Low at 4in }
    repeat i in 1..2 { shelf Row[2] at 3in }
}
`),
        ).toMatchInlineSnapshot(`
          "A (case, Class)
            Sweep (curve, Object)
            Post (divider, Struct)
            Near (opening, Field)
            Far (opening, Field)
            Left (side, Struct)
            Right (side, Struct)
            Outer (layer, Struct)
            Inner (layer, Struct)
            Low (shelf, Struct)
            Row (shelf, Struct)
          "
        `);
    });

    test('keeps every symbol within its own range, also while a line is half typed', async () => {
        const editor = await Editor.open(design.replace('shelf Crown at', 'shelf'), files);
        const params = { textDocument: { uri: editor.uri() } };
        const symbols = (await editor.lsp.DocumentSymbolProvider?.getSymbols(editor.document(), params)) as DocumentSymbol[];
        const check = ({ range, selectionRange, children }: DocumentSymbol): void => {
            const { textDocument } = editor.document();
            expect(textDocument.offsetAt(selectionRange.start)).toBeGreaterThanOrEqual(textDocument.offsetAt(range.start));
            expect(textDocument.offsetAt(selectionRange.end)).toBeLessThanOrEqual(textDocument.offsetAt(range.end));
            for (const child of children ?? []) check(child);
        };
        for (const symbol of symbols) check(symbol);
        expect(symbols.at(-1)?.children?.map(({ name }) => name)).toContain('Tier');
    });
});

test('symbols of all files, by name', async () => {
    const editor = await Editor.open(design, files);
    const found = (await editor.services.shared.lsp.WorkspaceSymbolProvider?.getSymbols({ query: 'Bookcas' })) as WorkspaceSymbol[];
    const own = found.filter(({ location }) => location.uri === editor.uri());
    expect(own.map(({ name, kind }) => ({ name, kind }))).toEqual([{ name: 'Bookcase', kind: SymbolKind.Class }]);
});

test('folding: braces, comments, files that are used', async () => {
    const text = design.replace('use "shop.case"\n', 'use "shop.case"\nuse casewright.species\n');
    const editor = await Editor.open(text, files);
    const found = (await editor.lsp.FoldingRangeProvider?.getFoldingRanges(editor.document(), {
        textDocument: { uri: editor.uri() },
    })) as FoldingRange[];
    const lines = text.split('\n');
    expect(
        found.map(({ startLine, endLine, kind }) => `${kind ?? 'block'}: ${lines[startLine]} ... ${lines[endLine]?.trim()}`),
    ).toMatchInlineSnapshot(`
      [
        "imports: use "shop.case" ... use casewright.species",
        "block: project "Mill Street bookcases" { ... build  2 Bookcase(tiers = 2)",
        "comment: // How wide, for whom. ... // Two lines, so that they fold.",
        "block: case Bookcase(tiers: Count = 2) { ... require Tier[1].clear >= 15in because "an atlas"",
        "block:     side Left, Right of Ply { ... edge back  rabbet 3/8in deep for back",
      ]
    `);
});

test('a selection grows from the word to its value, its statement, its case', async () => {
    const editor = await Editor.open(withCursor(design, '2 * g<|>ap below top'), files);
    const words: string[] = [];
    for (
        let at: ReturnType<typeof selectionRangeAt> | undefined = selectionRangeAt(editor.document(), editor.atCursor.position);
        at;
        at = at.parent
    ) {
        words.push(editor.words(at.range).split('\n')[0] ?? '');
    }
    expect(words).toMatchInlineSnapshot(`
      [
        "gap",
        "2 * gap",
        "2 * gap below top",
        "at 2 * gap below top",
        "shelf Crown at 2 * gap below top",
        "{",
        "case Bookcase(tiers: Count = 2) {",
        "edition 1",
      ]
    `);
});
