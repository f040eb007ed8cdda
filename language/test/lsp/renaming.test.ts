import { TextDocument } from 'langium';
import { describe, expect, test } from 'vitest';
import type { WorkspaceEdit } from 'vscode-languageserver';
import { Editor, withCursor } from './editor.js';
import { design, shop } from './sample.js';

/** Renames the thing at the cursor; gives the texts of the files that change, or why it is refused. */
async function rename(marked: string, newName: string, text = design, beside: Readonly<Record<string, string>> = { 'shop.case': shop }) {
    const editor = await Editor.open(withCursor(text, marked), beside);
    const provider = editor.lsp.RenameProvider!;
    try {
        const prepared = await provider.prepareRename(editor.document(), editor.atCursor);
        if (!prepared) return 'nothing to rename';
        const edit = (await provider.rename(editor.document(), { ...editor.atCursor, newName })) as WorkspaceEdit | undefined;
        return Object.entries(edit?.changes ?? {}).map(([uri, edits]) => ({
            file: uri.slice(uri.lastIndexOf('/') + 1),
            text: TextDocument.applyEdits(editor.document(uri).textDocument, edits),
        }));
    } catch (error) {
        return (error as Error).message;
    }
}

describe('renaming', () => {
    test('a part: the declaration and every use', async () => {
        expect(await rename('above Flo<|>or', 'Base')).toEqual([{ file: 'design.case', text: design.replaceAll('Floor', 'Base') }]);
    });

    test('a material: in all files', async () => {
        const changed = await rename('side Left, Right of P<|>ly', 'ShowPly');
        expect(changed).toEqual([
            { file: 'shop.case', text: shop.replace('material Ply like', 'material ShowPly like').replace('like Ply {', 'like ShowPly {') },
            { file: 'design.case', text: design.replaceAll('of Ply ', 'of ShowPly ') },
        ]);
    });

    test('a parameter: also where a build names it', async () => {
        expect(await rename('Tier[tie<|>rs]', 'rows')).toEqual([{ file: 'design.case', text: design.replaceAll('tiers', 'rows') }]);
    });

    test('the name of a used file: what stands before the dot', async () => {
        const text = 'use "shop.case" as ours\ncase Box of ours.Ply { side Left { edge front ours.Lipped } }\n';
        expect(await rename('as ou<|>rs', 'yard', text)).toEqual([{ file: 'design.case', text: text.replaceAll('ours', 'yard') }]);
    });

    test('a thing that is used through the name of a file: what stands behind the dot', async () => {
        const text = 'use "shop.case" as ours\ncase Box of ours.Ply { side Left { edge front ours.Lipped } }\n';
        const changed = await rename('front ours.Lip<|>ped', 'Banded', text);
        expect(changed).toContainEqual({ file: 'design.case', text: text.replace('Lipped', 'Banded') });
    });

    test('a part that each branch of an `if` declares: both', async () => {
        const text =
            'use "shop.case"\ncase Box(tall: Truth = yes) of Ply {\n    if tall { shelf Mid at 10in } else { shelf Mid at 5in }\n    load 2 lb/ft2 on Mid\n}\n';
        expect(await rename('on M<|>id', 'Half', text)).toEqual([{ file: 'design.case', text: text.replaceAll('Mid', 'Half') }]);
    });

    test.each([
        ['a unit', 'mm', '`mm` is a unit: after a number it would be read as one'],
        ['a reserved word', 'with', '`with` is a reserved word'],
        [
            'a word that stands for a value',
            'front',
            '`front` is a word of the language: where it stands for a value it would be read as that',
        ],
        [
            'more than a word',
            'Lower Floor',
            '`Lower Floor` is no name: a name is one word of letters, digits and `_` that does not begin with a digit',
        ],
        ['a name of the same case', 'Crown', '`Crown` is already the name of a shelf, declared in line 25'],
        ['a name of the file', 'Atlas', '`Atlas` is already the name of goods, declared in line 9'],
        ['a name of a used file', 'Lipped', '`Lipped` is already the name of an edging, declared in shop.case'],
    ])('refuses %s', async (_, newName, why) => {
        expect(await rename('above Flo<|>or', newName)).toBe(why);
    });

    test('refuses a name that is taken where another file uses the thing', async () => {
        const editor = await Editor.open(withCursor(shop, 'material P<|>ly like'));
        await editor.write('room.case', design.replace('shop.case', 'design.case'));
        const params = { ...editor.atCursor, newName: 'Atlas' };
        expect(() => editor.lsp.RenameProvider?.rename(editor.document(), params)).toThrow(
            '`Atlas` is already the name of goods, declared in line 9 as seen from room.case, line 19',
        );
    });

    test('refuses a step as the name of a recipe', async () => {
        expect(await rename('edging Lip<|>ped', 'band', shop, {})).toMatch(/^`band` is a word of the language/);
    });

    test('refuses parts without a name, and what the library declares', async () => {
        expect(await rename('join ba<|>ck to', 'Rear')).toBe(
            'this back has no name of its own: give it one where it is declared, such as `back Back`',
        );
        expect(await rename('like Hardwood<|>Plywood', 'Sheet', shop, {})).toBe(
            '`HardwoodPlywood` belongs to the library casewright.panels, which cannot be changed; declare one of your own `like HardwoodPlywood`',
        );
    });

    test('leaves words of the language alone', async () => {
        expect(await rename('clear eq<|>ual', 'alike')).toBe('nothing to rename');
    });
});
