import { TextDocument } from 'langium';
import { describe, expect, test } from 'vitest';
import { type CodeAction, CodeActionKind, type WorkspaceEdit } from 'vscode-languageserver';
import { Editor } from './editor.js';
import { design, shop } from './sample.js';

/** The actions for the first diagnostic of a text. */
async function actionsFor(text: string, only?: string[]) {
    const editor = await Editor.open(text, { 'shop.case': shop });
    const diagnostics = [...editor.diagnostics()];
    const [first] = diagnostics;
    if (!first) throw new Error('nothing is found');
    const params = { textDocument: { uri: editor.uri() }, range: first.range, context: { diagnostics, ...(only ? { only } : {}) } };
    const actions = (await editor.lsp.CodeActionProvider?.getCodeActions(editor.document(), params)) as CodeAction[];
    return { editor, actions };
}

function applied(editor: Editor, edit: WorkspaceEdit | undefined): string {
    return TextDocument.applyEdits(editor.document().textDocument, edit?.changes?.[editor.uri()] ?? []);
}

describe('code actions', () => {
    test('a change to be looked at: the nearest name', async () => {
        const { editor, actions } = await actionsFor(design.replace('above Floor', 'above Flor'));
        const [action] = actions;
        expect(actions.map(({ title, kind, isPreferred }) => ({ title, kind, isPreferred }))).toEqual([
            { title: 'write `Floor`', kind: CodeActionKind.QuickFix, isPreferred: undefined },
        ]);
        expect(action?.diagnostics?.map(({ code }) => code)).toEqual(['NAM-001']);
        expect(applied(editor, action?.edit)).toBe(design);
    });

    test('a name of the library that is not used: the line that uses it, above the declaration and its comment', async () => {
        const text = '// the rack\n\n/// birch\nmaterial Ply like HardwoodPlywood { thickness 3/4in   actual 0.72in }\n';
        const { editor, actions } = await actionsFor(text);
        expect(actions.map(({ title, isPreferred }) => ({ title, isPreferred }))).toEqual([
            { title: 'add `use casewright.panels`', isPreferred: true },
        ]);
        const mended = applied(editor, actions[0]?.edit);
        expect(mended).toBe(text.replace('/// birch', 'use casewright.panels\n\n/// birch'));
        await editor.type(mended);
        expect(editor.diagnostics().filter(({ code }) => code === 'NAM-001')).toEqual([]);
    });

    test('a name that is nearly one of the library: one change writes it and the line that uses it', async () => {
        const text = 'material Ply like HardwodPlywood { thickness 3/4in   actual 0.72in }\n';
        const { editor, actions } = await actionsFor(text);
        expect(actions.map(({ title }) => title)).toEqual(['write `HardwoodPlywood`, and add `use casewright.panels`']);
        const mended = applied(editor, actions[0]?.edit);
        expect(mended).toBe(`use casewright.panels\n\n${text.replace('HardwodPlywood', 'HardwoodPlywood')}`);
        await editor.type(mended);
        expect(editor.diagnostics().filter(({ severity }) => severity === 1)).toEqual([]);
    });

    test.each([
        ['a second statement', 'gap = 1/4in\n\n    side', 'gap = 1/4in   side', 'gap = 1/4in\n    side'],
        ['a part that is said to be movable', 'shelf Floor at 4in', 'adjustable shelf Floor at 4in', 'shelf Floor at 4in'],
        ['the material as a property', 'depth  12in', 'depth  12in\n    material Ply', 'depth  12in\n    of Ply'],
        ['half for the middle', 'shelf Floor at 4in', 'shelf Floor at half', 'shelf Floor at middle'],
    ])('%s is mended', async (_, words, by, mended) => {
        const { editor, actions } = await actionsFor(design.replace(words, by));
        expect(applied(editor, actions[0]?.edit)).toBe(design.replace(words, mended));
    });

    test('a material that is said twice is taken out with its line', async () => {
        const once = design.replace('(tiers: Count = 2) {', '(tiers: Count = 2) of Ply {');
        const { editor, actions } = await actionsFor(once.replace('depth  12in\n', 'depth  12in\n    material Ply\n'));
        expect(applied(editor, actions[0]?.edit)).toBe(once);
    });

    test('a line that uses a further file follows the others, and the edition', async () => {
        for (const first of ['edition 1\nuse casewright.species', 'edition 1']) {
            const text = `${first}\n\nmaterial Ply like HardwoodPlywood { thickness 3/4in }\n`;
            const { editor, actions } = await actionsFor(text);
            expect(applied(editor, actions[0]?.edit)).toBe(text.replace(first, `${first}\nuse casewright.panels`));
        }
    });

    test('a safe change is preferred, and one of those that are made at once', async () => {
        const text = design.replace('at 2 * gap below top', 'at gap/1/4in * 1in below top');
        const { actions } = await actionsFor(text);
        expect(actions.map(({ title, isPreferred }) => ({ title, isPreferred }))).toContainEqual({
            title: 'write `gap / 1/4in`',
            isPreferred: true,
        });
        const { editor, actions: all } = await actionsFor(text, [CodeActionKind.SourceFixAll]);
        expect(all.map(({ title, kind }) => ({ title, kind }))).toEqual([
            { title: 'Make all safe changes', kind: 'source.fixAll.casewright' },
        ]);
        expect(applied(editor, all[0]?.edit)).toBe(text.replace('gap/1/4in', 'gap / 1/4in'));
    });

    test('a warning about parts can be allowed with a reason, in their case', async () => {
        const { editor, actions } = await actionsFor(
            design.replace('Ply {\n        edge front Lipped', 'Ply {\n        edge front Lipped\n        edge top Lipped'),
        );
        expect(editor.squiggles()).toMatchInlineSnapshot(`
          "        edge top Lipped
                  ^^^^^^^^^^^^^^^
          warning EDG-003: the top edge of \`Left\` is banded after its front edge, so the end of that band shows at the front
          write \`edge top\` before \`edge front\`: the front band then covers the end"
        `);
        const allow = actions.find(({ title }) => title.startsWith('Allow '));
        expect(allow?.title).toMatchInlineSnapshot(`"Allow end-grain-showing here, with a reason"`);
        expect(applied(editor, allow?.edit)).toContain('    allow end-grain-showing on Left, Right because ""\n}');
        await editor.type(applied(editor, allow?.edit).replace('because ""', 'because "for a trial"'));
        expect(editor.squiggles()).toBe('');
    });
});
