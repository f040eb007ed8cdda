import { TextDocument } from 'langium';
import { describe, expect, test } from 'vitest';
import { type CompletionItem, type CompletionList, type InitializeParams, InsertTextFormat, type TextEdit } from 'vscode-languageserver';
import { Editor } from './editor.js';
import { shop } from './sample.js';

async function complete(text: string): Promise<{ readonly editor: Editor; readonly items: readonly CompletionItem[] }> {
    const editor = await Editor.open(text, { 'shop.case': shop });
    const list = (await editor.lsp.CompletionProvider?.getCompletion(editor.document(), editor.atCursor)) as CompletionList | undefined;
    return { editor, items: list?.items ?? [] };
}

/** What is offered, the best first. */
async function offered(text: string): Promise<string[]> {
    const { items } = await complete(text);
    return items.toSorted((a, b) => Number(a.sortText) - Number(b.sortText)).map(({ label }) => label);
}

/** A case with a line to be completed. */
const inCase = (line: string): string => `use "shop.case"
goods Cup { size 3in wide 3in deep 4in high }
let gap = 1/8in
case Rack(rows: Count = 3) {
    width 40in   height 60in   depth 12in
    side Left, Right of Ply
    shelf Floor at 4in
    divider Post at middle as Near, Far
    shelf Tier[rows] above Floor clear equal
    curve Sweep of depth over height { from 12in at bottom   to 10in at top }
    ${line}
}
case Wall {
    width 3m   height 2m   depth 1ft
    case Unit[2] of Rack(rows = 2) width equal
}
`;
const parts = ['Sweep', 'Tier', 'Post', 'Floor', 'Left', 'Right', 'Near', 'Far'];
const kinds = ['side', 'divider', 'top', 'bottom', 'shelf', 'back', 'kick', 'rail', 'stretcher', 'filler', 'panel'];

describe('at the begin of a line', () => {
    test('of a file: things, cases, sentences', async () => {
        const labels = await offered('<|>');
        expect(labels).toEqual(expect.arrayContaining(['material', 'edging', 'joint', 'case', 'project', 'use', 'let', 'every']));
        expect(labels).not.toContain('shelf');
    });

    test('of a case: parts, sentences, what was not said yet of the case', async () => {
        const labels = await offered(inCase('<|>'));
        expect(labels).toEqual(expect.arrayContaining([...kinds, 'join', 'hold', 'require', 'curve', 'clear', 'note']));
        expect(labels).not.toEqual(expect.arrayContaining(['material']));
        expect(labels).not.toContain('door'); // read, and not built in this edition
    });

    test('of a part: its properties and edges, no parts', async () => {
        const labels = await offered(inCase('shelf Low at 9in {\n        <|>\n    }'));
        expect(labels).toEqual(expect.arrayContaining(['grain', 'layers', 'thickness', 'edge']));
        expect(labels).not.toContain('shelf');
    });

    test.each([
        ['a material', 'use "shop.case"\nmaterial New : plywood { <|> }', ['thickness', 'actual', 'sheet', 'grain', 'price']],
        ['goods', 'goods Cup { <|> }', ['size', 'mass', 'stack']],
        ['a curve', inCase('curve Other of depth over width { <|> }'), ['from', 'to', 'bow', 'arc']],
        ['an edging', 'edging New { <|> }', ['band', 'nosing', 'round', 'rabbet']],
        ['a joint', 'joint New { <|> }', ['screw', 'dowel', 'biscuit', 'glue']],
        ['a joint in place', inCase('join Floor to Left with { <|> }'), ['screw', 'dowel', 'biscuit', 'glue']],
        ['an edging in place', inCase('shelf Low at 9in { edge front { <|> } }'), ['band', 'nosing', 'round']],
        ['the options of a step', 'edging New { nosing 3/4in { <|> } }', ['high', 'proud']],
        ['a property with braces', 'project "A" { route { <|> } }', ['doorway', 'ceiling', 'stair']],
        ['a project', 'project "A" { <|> }', ['client', 'revision', 'units', 'build']],
        ['every shelf', inCase('every shelf { <|> }'), ['grain', 'edge', 'of']],
    ])('in the braces of %s', async (_, text, expected) => {
        expect(await offered(text)).toEqual(expect.arrayContaining(expected));
    });

    test('what is said already is not offered again', async () => {
        const labels = await offered('shop { kerf 1/8in <|> }');
        expect(labels).toContain('trim');
        expect(labels).not.toContain('kerf');
    });
});

describe('names that fit', () => {
    test.each([
        ['materials and designs, of which a part is made', inCase('shelf Low at 9in of <|>'), ['Oak', 'Ply4', 'Ply', 'Wall', 'rows']],
        ['materials alone in a step', inCase('shelf Low at 9in { edge front band 1/8in of <|> }'), ['Oak', 'Ply4', 'Ply']],
        ['goods', inCase('hold <|>'), ['Cup']],
        ['designs', 'case A { }\nproject "B" { build 2 <|>', ['A']],
        ['things of the same kind', inCase('').replace('let gap', 'material New like <|>\nlet gap'), ['Oak', 'Ply4', 'Ply']],
        ['a species', 'use casewright.species\nmaterial A : lumber { species Black<|> }', ['BlackWalnut', 'WhiteOak']],
        ['openings, and parts with room in them', inCase('in <|>'), ['Near', 'Far']],
        ['goods after a number', inCase('hold 3 <|>'), ['Cup']],
        [
            'what a file offers that is used by a name',
            'use "shop.case" as ours\ncase A of ours.<|>',
            ['Ply', 'Ply4', 'Oak', 'Lipped', 'Fixed', 'BackFix'],
        ],
        ['parameters of a design', 'case A(n: Count = 2) { }\ncase B { case C of A(<|>) }', ['n']],
    ])('%s', async (_, text, expected) => {
        expect(await offered(text)).toEqual(expect.arrayContaining(expected));
    });

    test('joints and their steps after `with`, edgings and their steps after an edge', async () => {
        const joints = await offered(inCase('join Floor to Left with <|>'));
        expect(joints).toEqual(expect.arrayContaining(['Fixed', 'BackFix', 'screw', 'glue']));
        expect(joints).not.toContain('Lipped');
        const edgings = await offered(inCase('shelf Low at 9in { edge front <|> }'));
        expect(edgings).toEqual(expect.arrayContaining(['Lipped', 'band', 'round']));
        expect(edgings).not.toContain('Fixed');
    });

    test('the edges that the part has', async () => {
        expect(await offered(inCase('shelf Low at 9in { edge <|> }'))).toEqual(['front', 'back', 'left', 'right']);
        expect(await offered(inCase('side Third { edge <|> }'))).toEqual(['front', 'back', 'top', 'bottom']);
        expect(await offered(inCase('every kick { edge front, <|> }'))).toEqual(['top', 'bottom', 'left', 'right']);
    });

    test.each([
        ['a curve', '<|>', ['to', 'arc', 'bow', 'fair', 'radius', 'batten']],
        ['a fair line', 'fair <|>', ['through']],
        ['an arc', 'arc <|>', ['out', 'in', 'through', 'tangent']],
        ['a bow', 'bow <|>', ['out', 'in']],
    ])('the words of %s', async (_, words, expected) => {
        const labels = await offered(
            inCase(`curve Other of depth over width {\n        from 9in at left\n        to 9in at right\n        ${words}\n    }`),
        );
        expect(labels).toEqual(expect.arrayContaining(expected));
    });

    test('curves after a sum, how a front meets them, and what a shop draws and presses with', async () => {
        expect(await offered(inCase('').replace('depth 12in', 'depth Sweep + <|>'))).toContain('Sweep');
        expect(await offered(inCase('shelf Low at 9in { edge front <|> }'))).toEqual(expect.arrayContaining(['square', 'bevelled']));
        expect(await offered('shop { <|> }')).toEqual(expect.arrayContaining(['batten', 'caul', 'tilt']));
        expect(await offered('shop { batten { <|> } }')).toEqual(expect.arrayContaining(['thickness', 'width', 'length', 'species']));
        expect(await offered('shop { caul { <|> } }')).toEqual(expect.arrayContaining(['height', 'width', 'species', 'spacing', 'force']));
    });

    test('parts to be joined and loaded', async () => {
        for (const line of ['join <|>', 'join Floor to <|>', 'join Floor to Left, <|>', 'hold Cup on <|>', 'load 5 lb/ft2 on <|>']) {
            const labels = await offered(inCase(line));
            expect(labels).toEqual(expect.arrayContaining(['Floor', 'Tier', 'Left', 'Right', 'Post', 'every']));
            expect(labels).not.toContain('Ply');
        }
    });

    test('kinds and groups after `every`', async () => {
        expect(await offered(inCase('join every <|>'))).toEqual(expect.arrayContaining(['Tier', 'shelf', 'side']));
    });

    test('a thing is not offered in its own head, nor a case in itself', async () => {
        expect(await offered(inCase('case Part of <|>'))).not.toContain('Rack');
        expect(await offered(inCase('shelf Low at <|>'))).not.toContain('Low');
    });

    test('after a dot: sizes, faces and stages of a part; parts of a case; sizes of a stage', async () => {
        expect(await offered(inCase('require Tier[1].<|>'))).toEqual(
            expect.arrayContaining(['clear', 'width', 'mass', 'upper', 'front', 'core']),
        );
        expect(await offered(inCase('require Tier[1].core.<|>'))).toEqual(['length', 'width', 'thickness']);
        expect(await offered(inCase('').replace('width equal\n', 'width equal\n    require Unit[1].<|>\n'))).toEqual(
            expect.arrayContaining(['Floor', 'Tier', 'Post', 'width']),
        );
        expect(await offered(inCase('shelf Low at Sweep.<|>'))).toEqual(['at']);
    });
});

describe('places, values and units', () => {
    test('faces, words of places, parts after `at`', async () => {
        const labels = await offered(inCase('shelf Low at <|>'));
        expect(labels).toEqual(expect.arrayContaining(['top', 'bottom', 'middle', 'gap', ...parts]));
    });

    test('ways after a distance', async () => {
        expect(await offered(inCase('shelf Low at 4in <|>'))).toEqual(
            expect.arrayContaining(['above', 'below', 'left of', 'past', 'grain']),
        );
    });

    test('what can be computed with', async () => {
        expect(await offered(inCase('let more = <|>'))).toEqual(expect.arrayContaining(['gap', 'rows', 'Tier', 'min', 'ceil', 'width']));
    });

    test.each([
        ['words of a choice', inCase('shelf Low at 9in grain <|>'), ['length', 'width', 'none']],
        ['shares', inCase('shelf Low[2] clear <|>'), ['equal', 'rest']],
        ['the way of a bow', inCase('curve Other of depth over width { bow <|> }'), ['out', 'in']],
        ['families', 'material A : <|>', ['plywood', 'lumber', 'fibreboard']],
        ['types', 'let a: <|>', ['Length', 'Count', 'Material']],
        ['over what a curve runs', inCase('curve Other of depth over <|>'), ['height', 'width']],
        ['rules that can be allowed', inCase('allow <|>'), ['shelf-order', 'end-grain-showing']],
    ])('%s', async (_, text, expected) => {
        expect(await offered(text)).toEqual(expect.arrayContaining(expected));
    });

    test('no rule that is an error can be allowed', async () => {
        expect(await offered(inCase('allow <|>'))).not.toContain('unknown-name');
    });

    test('units of the dimension that is needed, right behind the number', async () => {
        expect((await offered(inCase('shelf Low at 9<|>'))).slice(0, 2)).toEqual(['in', 'mm']);
        expect(await offered(inCase('load 25<|>'))).toEqual(expect.arrayContaining(['lb/ft2', 'kg/m2', 'lb/ft']));
        expect(await offered('goods Cup { mass 2<|> }')).toEqual(['lb', 'kg', 'oz', 'g']);
        expect(await offered(inCase('side Third layers 2<|>'))).toEqual([]);
    });

    test('a unit that is begun is completed', async () => {
        const { editor, items } = await complete(inCase('load 25 l<|>'));
        expect(items.map(({ label }) => label)).not.toContain('lb'); // a word of its own: the number has ended
        const { items: tight } = await complete(inCase('shelf Low at 9m<|>'));
        const edit = tight.find(({ label }) => label === 'mm')?.textEdit as TextEdit;
        expect(edit.newText).toBe('mm');
        expect(edit.range.end.character - edit.range.start.character).toBe(1);
        expect(editor.text).toContain('load 25 l');
    });

    test('libraries and files after `use`', async () => {
        const editor = await Editor.open('use <|>');
        await editor.write('shop.case', shop);
        const labels = async (): Promise<string[]> => {
            const list = (await editor.lsp.CompletionProvider?.getCompletion(editor.document(), editor.atCursor)) as CompletionList;
            return list.items.map(({ label }) => label);
        };
        expect(await labels()).toEqual(expect.arrayContaining(['casewright.species', 'casewright.panels', '"shop.case"']));
        await editor.type('use "<|>');
        expect((await labels())[0]).toBe('shop.case');
    });

    test('nothing in comments, in texts, and where a name is made', async () => {
        expect(await offered(inCase('// sh<|>'))).toEqual([]);
        expect(await offered(inCase('require Floor.clear > 1in because "a<|>'))).toEqual([]);
    });
});

describe('what is put in', () => {
    const initialize = (snippetSupport: boolean): InitializeParams => ({
        processId: null,
        rootUri: null,
        capabilities: { textDocument: { completion: { completionItem: { snippetSupport } } } },
    });

    test('the word that is typed is replaced', async () => {
        const { editor, items } = await complete(inCase('shelf Low at 9in of Pl<|>'));
        const edit = items.find(({ label }) => label === 'Ply4')?.textEdit as TextEdit;
        expect(TextDocument.applyEdits(editor.document().textDocument, [edit])).toBe(inCase('shelf Low at 9in of Ply4'));
    });

    test('a name of the library that is not used: with the line that uses it, after all others', async () => {
        const text = 'use casewright.panels\n\nmaterial Solid : lumber { planed 3/4in   species Cher<|> }\n';
        const { editor, items } = await complete(text);
        const cherry = items.find(({ label }) => label === 'Cherry');
        expect(cherry).toMatchObject({ detail: 'a species of casewright.species', sortText: '4' });
        const edits = [cherry?.textEdit as TextEdit, ...(cherry?.additionalTextEdits ?? [])];
        const mended = TextDocument.applyEdits(editor.document().textDocument, edits);
        expect(mended).toBe('use casewright.panels\nuse casewright.species\n\nmaterial Solid : lumber { planed 3/4in   species Cherry }\n');
        const used = await complete(mended.replace('species Cherry }', 'species Cher<|> }'));
        const [again, ...others] = used.items.filter(({ label }) => label === 'Cherry');
        expect(again?.additionalTextEdits).toBeUndefined();
        expect(others).toEqual([]);
    });

    test('each item says what it means, and how it is written', async () => {
        const { items } = await complete(inCase('shelf Low at 9in { gr<|> }'));
        expect(items.find(({ label }) => label === 'grain')?.documentation).toEqual({
            kind: 'markdown',
            value: '**grain**\n\nWhich way the grain of the part runs.\n\n```casewright\ngrain length\n```',
        });
        expect((await complete(inCase('hold <|>'))).items.find(({ label }) => label === 'Cup')?.detail).toBe('goods');
    });

    test('whole statements: with places to fill in, or plain for an editor without snippets', async () => {
        const { editor, items: plain } = await complete(inCase('<|>'));
        const shelf = plain.find(({ label }) => label === 'shelf');
        expect([shelf?.insertTextFormat, shelf?.textEdit?.newText]).toEqual([InsertTextFormat.PlainText, 'shelf Name at 12in']);
        await editor.services.shared.lsp.LanguageServer.initialize(initialize(true));
        const { items } = await complete(inCase('<|>'));
        const snippet = items.find(({ label }) => label === 'shelf');
        const stop = (number: number, text: string): string => `$\{${number}:${text}}`;
        const newText = `shelf ${stop(1, 'Name')} at ${stop(2, '12in')}`;
        expect([snippet?.insertTextFormat, snippet?.textEdit?.newText]).toEqual([InsertTextFormat.Snippet, newText]);
    });
});

test('every example in the words of statements can be read', async () => {
    const { sentenceWords, joiningWords } = await import('../../src/lsp/statement-words.js');
    const { services } = await Editor.open('');
    for (const [word, { example }] of [...sentenceWords, ...joiningWords]) {
        const surroundings = [
            `${example}\n`,
            `case A {\n    ${example}\n}\n`,
            `case A {\n    let a = ${example}\n}\n`,
            `curve A of depth over height {\n    ${example}\n}\n`,
            `case A {\n    join a to b ${example}\n}\n`,
            `case A {\n    require a ${example}\n}\n`,
            `project "A" {\n    ${example}\n}\n`,
            `case A {\n    side B { ${example} }\n}\n`,
        ];
        const isRead = surroundings.some((text) => services.casewright.parser.LangiumParser.parse(text).parserErrors.length === 0);
        expect({ word, example, isRead }).toEqual({ word, example, isRead: true });
    }
});
