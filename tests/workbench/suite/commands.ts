/** The commands of the extension, run as a key binding or another extension runs them: the same in every extension host. */
import * as vscode from 'vscode';
import { assert, equal, errorsOf, place, replace, until } from './looking.js';
import { MemoryFiles } from './memory-files.js';

interface Written {
    readonly folder: vscode.Uri;
    readonly documents: readonly string[];
}

suite('Commands of Casewright', () => {
    let design: vscode.TextDocument;
    let shop: vscode.Uri;
    let output: vscode.Uri;

    suiteSetup(async () => {
        const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
        assert(folder, 'a folder is open');
        shop = vscode.Uri.joinPath(folder, 'kiln-lane/shop.case');
        output = vscode.Uri.joinPath(folder, 'kiln-lane/out/kiln-lane');
        design = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder, 'kiln-lane/kiln-lane.case'));
        await vscode.window.showTextDocument(design, vscode.ViewColumn.One);
    });

    test('check the project: all that is found stands among the problems, also in designs that use the file', async () => {
        await replace(design, 'width  40in', 'width  40');
        const found = await vscode.commands.executeCommand<{ error: number; summary: string }>('casewright.check', shop);
        equal(found.summary, '1 error in kiln-lane.case');
        await until('the error among the problems', () => errorsOf(design).length === 1);
    });

    test('write the shop documents: nothing is written while the design has errors', async () => {
        equal(await build(design.uri), undefined);
        assert(!(await exists(output)), 'there is no folder for the documents');
        await replace(design, 'width  40', 'width  40in');
        await until('no error among the problems', () => errorsOf(design).length === 0);
    });

    test('write the shop documents: into the folder of the command line, of a file that the design uses as well', async () => {
        const written = await build(shop);
        equal(written?.folder.path, output.path);
        const names = (await vscode.workspace.fs.readDirectory(output)).map(([name]) => name).sort();
        equal(names.join(), ['.casewright-build.json', ...(written?.documents ?? [])].sort().join());
        assert((await read(output, 'cut-list.md')).includes('PotteryCase'), 'the cut list names the case');
        equal((await read(output, 'templates.pdf')).slice(0, 5), '%PDF-');
        equal(JSON.parse(await read(output, '.casewright-build.json')).design, '../../kiln-lane.case');
    });

    test('write the shop documents: only some, and never over a file that somebody has changed', async () => {
        const some = await build(design.uri, ['cut-list']);
        equal(some?.documents.join(), 'cut-list.md,cut-list.csv,cut-list.json');
        const changed = vscode.Uri.joinPath(output, 'cut-list.md');
        await vscode.workspace.fs.writeFile(changed, new TextEncoder().encode('with a remark'));
        equal(await build(design.uri), undefined);
        equal(await read(output, 'cut-list.md'), 'with a remark');
        const names = (await vscode.workspace.fs.readDirectory(output)).map(([name]) => name);
        assert(!names.some((name) => name.endsWith('.part')), `nothing is left half written: ${names.join(', ')}`);
    });

    test('write the shop documents: of a design that lies on no disk', async () => {
        const files = vscode.workspace.registerFileSystemProvider('casewright-memory', new MemoryFiles());
        const at = (path: string) => vscode.Uri.from({ scheme: 'casewright-memory', path });
        for (const file of ['kiln-lane.case', 'shop.case']) {
            await vscode.workspace.fs.writeFile(at(`/${file}`), await vscode.workspace.fs.readFile(vscode.Uri.joinPath(shop, '..', file)));
        }
        const written = await build(at('/kiln-lane.case'));
        equal(written?.folder.toString(), at('/out/kiln-lane').toString());
        assert((await read(at('/out/kiln-lane'), 'cut-list.md')).includes('PotteryCase'), 'the cut list names the case');
        // Letters that not every reader has, so that the typeface that comes with the extension is embedded (ISO 32000-1, 9.9, Table 126).
        const named = (await read(at('/'), 'kiln-lane.case')).replace('"Kiln Lane display cases"', '"Gabloty dla Żółwia"');
        await vscode.workspace.fs.writeFile(at('/zolw.case'), new TextEncoder().encode(named));
        await build(at('/zolw.case'), ['templates']);
        assert((await read(at('/out/zolw'), 'templates.pdf')).includes('/FontFile2'), 'the typeface is embedded');
        files.dispose();
    });

    test('explain the size under the cursor: beside the editor, and again when the design has changed', async () => {
        const editor = await vscode.window.showTextDocument(design, vscode.ViewColumn.One);
        const { position } = place(design, 'Floor at 4in');
        editor.selection = new vscode.Selection(position, position);
        await vscode.commands.executeCommand('casewright.why', undefined, { size: 'PotteryCase.Floor.lower' });
        const shown = await until('the explanation', () =>
            vscode.window.visibleTextEditors.find(({ document }) => document.uri.path.startsWith('/why/')),
        );
        equal(shown.viewColumn, vscode.ViewColumn.Two);
        assert(shown.document.getText().startsWith('PotteryCase.Floor.lower = '), shown.document.getText());
        const before = shown.document.getText();
        await replace(design, 'Floor at 4in', 'Floor at 5in');
        await until('the explanation of the changed size', () => shown.document.getText() !== before);
        await replace(design, 'Floor at 5in', 'Floor at 4in');
        await until('the explanation as it was', () => shown.document.getText() === before);
    });
});

async function build(file: vscode.Uri, kinds: readonly string[] | 'all' = 'all'): Promise<Written | undefined> {
    return await vscode.commands.executeCommand<Written | undefined>('casewright.build', file, { kinds });
}

async function read(folder: vscode.Uri, name: string): Promise<string> {
    return new TextDecoder().decode(await vscode.workspace.fs.readFile(vscode.Uri.joinPath(folder, name)));
}

async function exists(uri: vscode.Uri): Promise<boolean> {
    try {
        await vscode.workspace.fs.stat(uri);
        return true;
    } catch {
        return false;
    }
}
