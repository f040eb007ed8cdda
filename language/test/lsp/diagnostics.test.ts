import { type LangiumDocument, TextDocument, URI } from 'langium';
import { describe, expect, test } from 'vitest';
import { type Diagnostic, DiagnosticTag } from 'vscode-languageserver';
import { WhileTyping } from '../../src/lsp/diagnostics/while-typing.js';
import { Editor } from './editor.js';
import { design, shop } from './sample.js';

/** The sample with one change. */
async function changed(words: string, by: string): Promise<Editor> {
    return Editor.open(design.replace(words, by), { 'shop.case': shop });
}

describe('diagnostics', () => {
    test('a sound design has none', async () => {
        const editor = await changed('', '');
        expect(editor.squiggles()).toBe('');
    });

    test('a syntax error stands at its words, once', async () => {
        const editor = await changed('width  36in', 'width = 36in');
        expect(editor.squiggles()).toMatchInlineSnapshot(`
          "    width = 36in
                    ^
          error TXT-001: a property has no \`=\` before its value: write \`width 36in\`"
        `);
    });

    test('of two statements on one line both are read: all else that is wrong in the file stays', async () => {
        const text = design.replace('    client "Mill Street Library"\n    build ', '    client "Mill Street Library"   build ');
        const editor = await Editor.open(text.replace('    back of Ply4\n', '    back of Ply4\n    shelf High at 99in\n'), {
            'shop.case': shop,
        });
        expect(editor.squiggles()).toMatchInlineSnapshot(`
          "    client "Mill Street Library"   build  2 Bookcase(tiers = 2)
                                             ^^^^^
          error TXT-002: \`build\` begins a new statement: put it on a line of its own, or write \`;\` before it

              shelf High at 99in
                    ^^^^
          error PLC-004: \`High\` stands 39in out of the top of \`Bookcase\`
          move it, or make the case larger"
        `);
    });

    test.each([
        ['a part that is said to be movable', 'shelf Floor at 4in', 'adjustable shelf Floor at 4in'],
        ['the material of a case as a property', 'depth  12in', 'depth  12in\n    material Ply'],
        ['half for the middle', 'shelf Floor at 4in', 'shelf Floor at half'],
        ['a comma before the sign of a comparison', 'Tier[1].clear >=', 'Tier[1].clear, >='],
    ])('%s is told once, with what mends it', async (_, words, by) => {
        const editor = await changed(words, by);
        expect(editor.squiggles()).toMatchSnapshot();
        expect(editor.diagnostics()).toHaveLength(1);
    });

    test('a material that is said already is said to be so', async () => {
        const editor = await Editor.open(
            design.replace('gap = 1/4in', 'gap = 1/4in\n    material Ply').replace('(tiers: Count = 2) {', '(tiers: Count = 2) of Ply {'),
            {
                'shop.case': shop,
            },
        );
        expect(editor.squiggles()).toMatchInlineSnapshot(`
          "    material Ply
              ^^^^^^^^
          error PRP-001: a case has no \`material\`: what it is made of is said by \`of Ply\` already
          take this out"
        `);
    });

    test('an unknown name is said once, although four statements speak of the part', async () => {
        const editor = await changed('shelf Floor at 4in', 'shelf Flor at 4in');
        expect(editor.squiggles()).toMatchInlineSnapshot(`
          "    shelf Tier[tiers] above Floor clear equal
                                      ^^^^^
          error NAM-001: nothing is called \`Floor\`; did you mean \`Flor\`?"
        `);
    });

    test('a warning has the code of its rule, and leads to the page', async () => {
        const editor = await changed('    back of Ply4\n', '    back of Ply4\n    let spare = 3in\n');
        expect(editor.squiggles()).toMatchInlineSnapshot(`
          "    let spare = 3in
                  ^^^^^
          warning NAM-006: \`spare\` is never used
          use it, or take it out"
        `);
        const [found] = editor.diagnostics();
        expect(found?.codeDescription?.href).toBe('casewright:/rules/NAM-006.md');
        expect(found?.data).toEqual({ code: 'NAM-006' });
        expect(found?.tags).toEqual([DiagnosticTag.Unnecessary]);
    });

    test('what an `allow` covers is not shown', async () => {
        const editor = await changed(
            '    back of Ply4\n',
            '    back of Ply4\n    let spare = 3in\n    allow unused-declaration because "for the next room"\n',
        );
        expect(editor.squiggles()).toBe('');
    });

    test('related places lead to other files', async () => {
        const editor = await changed('every shelf { of Ply ', 'every shelf { of Lipped ');
        const [found] = editor.diagnostics();
        expect(editor.squiggles()).toMatchInlineSnapshot(`
          "    every shelf { of Lipped   edge front Lipped }
                               ^^^^^^
          error NAM-007: \`Lipped\` is an edging; a part is made of a material or of a case
          name a material, such as \`of WalnutPly\`, or a case that is declared by itself"
        `);
        expect(found?.relatedInformation?.map(({ location }) => editor.words(location.range, location.uri))).toMatchInlineSnapshot(`
          [
            "Lipped",
          ]
        `);
    });

    test('an error of a used file is one line at its `use`, and goes with it', async () => {
        const editor = await Editor.open(design, { 'shop.case': shop.replace('thickness 3/4in ', 'thickness 3/4 ') });
        expect(editor.squiggles()).toMatchInlineSnapshot(`
          "use "shop.case"
          ^^^^^^^^^^^^^^^
          warning: there is an error in shop.case: what depends on it is not known here"
        `);
        await editor.write('shop.case', shop);
        expect(editor.squiggles()).toBe('');
    });

    test('a line that cannot be read does not spread: no error stands on another one', async () => {
        const editor = await Editor.open(design, { 'shop.case': shop });
        for (const line of design.split('\n').filter((one) => /^\s*[a-z]/.test(one))) {
            const number = design.split('\n').indexOf(line);
            for (const broken of [`${line} )`, line.replace(/^(\s*)(\S)/, '$1=$2'), line.replace(/^(\s*)\S+/, '$1sh')]) {
                await editor.type(design.replace(line, () => broken));
                const errors = editor.diagnostics().filter(({ severity }) => severity === 1);
                const elsewhere = errors
                    .filter(({ range }) => range.start.line !== number)
                    .map(({ range, message }) => `${range.start.line + 1}: ${message}`);
                expect({ broken, elsewhere }).toEqual({ broken, elsewhere: [] });
            }
        }
    });
});

describe('while a line is typed', () => {
    const first = 'shelf Low at 4in\njoin Low to Side\n';
    const diagnostic = (line: number, message: string): Diagnostic => ({
        range: { start: { line, character: 0 }, end: { line, character: 4 } },
        message,
    });
    const onFirst = diagnostic(0, 'about the line that is typed');
    const onSecond = diagnostic(1, 'about a finished line');

    function typing() {
        const published: Diagnostic[][] = [];
        const waiting = new Set<() => void>();
        const whileTyping = new WhileTyping(
            (run) => {
                waiting.add(run);
                return () => waiting.delete(run);
            },
            (_document, diagnostics) => published.push(diagnostics),
        );
        const show = (text: string, ...all: Diagnostic[]) => {
            const textDocument = TextDocument.create('memory:/a.case', 'casewright', 0, text);
            return whileTyping.nowOf({ uri: URI.parse('memory:/a.case'), textDocument } as LangiumDocument, all);
        };
        const rest = () => {
            for (const run of waiting) {
                run();
            }
        };
        return { published, waiting, show, rest };
    }

    test('what is new on another line waits for a pause', () => {
        const { published, show, rest } = typing();
        show(first);
        expect(show(first.replace('Low', 'Lo'), onFirst, onSecond)).toEqual([onFirst]);
        expect(published).toEqual([]);
        rest();
        expect(published).toEqual([[onFirst, onSecond]]);
    });

    test('what was shown before stays', () => {
        const { waiting, show } = typing();
        show(first, onSecond);
        expect(show(first.replace('Low', 'Lo'), onFirst, onSecond)).toEqual([onFirst, onSecond]);
        expect(waiting.size).toBe(0);
    });

    test('the next letter calls off what waits', () => {
        const { published, show, rest } = typing();
        show(first);
        show(first.replace('Low', 'Lo'), onSecond);
        show(first);
        rest();
        expect(published).toEqual([]);
    });

    test('what is pasted, and what another file changes, is shown at once', () => {
        const { show } = typing();
        show(first);
        expect(show(`${first}${first}${first}`, onSecond)).toEqual([onSecond]);
        expect(show(`${first}${first}${first}`, onFirst, onSecond)).toEqual([onFirst, onSecond]);
    });
});
