/** The tests of the extension through VS Code's own interface, on a copy of an example: the same in every extension host. */
import * as vscode from 'vscode';
import { ask, assert, equal, errorsOf, place, replace, until } from './looking.js';

/** Declared in the built-in library, used in the example's shop file. */
const LIBRARY_NAME = 'FibreboardThreeQuarter';

suite('Casewright in the editor', () => {
    let design: vscode.TextDocument;
    let shopUri: vscode.Uri;

    suiteSetup(async () => {
        const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
        assert(folder, 'a folder is open');
        shopUri = vscode.Uri.joinPath(folder, 'kiln-lane/shop.case');
        design = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder, 'kiln-lane/kiln-lane.case'));
        await vscode.window.showTextDocument(design);
    });

    test('a .case file is Casewright', () => {
        equal(design.languageId, 'casewright');
    });

    test('a mistake is reported once, at its words, and goes when it is mended', async () => {
        await replace(design, 'width  40in', 'width  40');
        const found = await until('a diagnostic', () => {
            const errors = errorsOf(design);
            return errors.length > 0 && errors;
        });
        equal(found.map(({ range }) => design.getText(range)).join(), '40');
        assert(found[0]?.message.includes('`40in`'), `the hint mends it: ${found[0]?.message}`);
        await replace(design, 'width  40', 'width  40in');
        await until('no diagnostic', () => errorsOf(design).length === 0);
    });

    test('a finding leads to the page of its rule, without a network', async () => {
        await replace(design, 'width  40in', 'width  40');
        const [found] = await until('a diagnostic', () => errorsOf(design).length > 0 && errorsOf(design));
        const code = found?.code;
        assert(typeof code === 'object', `the code is a link: ${JSON.stringify(code)}`);
        const page = await vscode.workspace.openTextDocument(code.target);
        assert(page.getText().startsWith(`# ${code.value}: `), page.getText().slice(0, 80));
        await replace(design, 'width  40', 'width  40in');
        await until('no diagnostic', () => errorsOf(design).length === 0);
    });

    test('a shelf that sags says so, until it has a nosing on edge', async () => {
        const sagging = () => vscode.languages.getDiagnostics(design.uri).filter(({ message }) => message.includes('sags'));
        await replace(design, 'hold Bowl on Tier[3]', 'load 40 lb/ft2 on Tier[3]');
        await replace(design, 'edge front Nosed }', '}');
        const [found] = await until('a warning', () => sagging().length > 0 && sagging());
        equal(found?.severity, vscode.DiagnosticSeverity.Warning);
        await replace(design, 'of Mdf   }', 'of Mdf   edge front nosing 3/4in of Walnut { high 1 1/2in } }');
        await until('no warning', () => sagging().length === 0);
        await replace(design, 'edge front nosing 3/4in of Walnut { high 1 1/2in } }', 'edge front Nosed }');
        await replace(design, 'load 40 lb/ft2 on Tier[3]', 'hold Bowl on Tier[3]');
        await until('no diagnostic', () => vscode.languages.getDiagnostics(design.uri).length === 0);
    });

    test('a part says its sizes under the pointer, in both unit systems', async () => {
        const hovers = await ask<vscode.Hover[]>('vscode.executeHoverProvider', place(design, 'Floor at 4in'));
        const text = hovers
            .flatMap(({ contents }) => contents.map((content) => (typeof content === 'string' ? content : content.value)))
            .join('\n');
        assert(/finished .*\d+in.*\d+mm/.test(text), text);
    });

    test('completion offers what fits', async () => {
        const { document, position } = place(design, 'WalnutPly layers');
        const { items } = await ask<vscode.CompletionList>('vscode.executeCompletionItemProvider', { document, position });
        const labels = items.map(({ label }) => (typeof label === 'string' ? label : label.label));
        assert(labels.includes('Mdf'), `a material is among ${labels.join(', ')}`);
        assert(!labels.includes('ShelfJoint'), 'a joint is no material');
    });

    test('a name leads to its declaration in another file', async () => {
        const [target] = await ask<(vscode.Location | vscode.LocationLink)[]>(
            'vscode.executeDefinitionProvider',
            place(design, 'WalnutPly layers'),
        );
        assert(target, 'a declaration is found');
        const location = 'uri' in target ? target : { uri: target.targetUri, range: target.targetSelectionRange ?? target.targetRange };
        equal(location.uri.path, shopUri.path);
        const shop = await vscode.workspace.openTextDocument(shopUri);
        equal(shop.getText(location.range), 'WalnutPly');
    });

    test('a name of the library leads to a document that can be read', async () => {
        const shop = await vscode.workspace.openTextDocument(shopUri);
        const [target] = await ask<vscode.LocationLink[]>('vscode.executeDefinitionProvider', place(shop, LIBRARY_NAME));
        assert(target, 'a declaration is found');
        const library = await vscode.workspace.openTextDocument(target.targetUri);
        equal(library.uri.scheme, 'casewright');
        equal(library.getText(target.targetSelectionRange), LIBRARY_NAME);
    });

    test('all uses of a name are found', async () => {
        const found = await ask<vscode.Location[]>('vscode.executeReferenceProvider', place(design, 'Floor at 4in'));
        const uses = design.getText().match(/^(?!\s*\/\/).*?\bFloor\b/gm)?.length;
        equal(found.filter(({ uri }) => uri.path === design.uri.path).length, uses);
    });

    test('renaming a part changes its declaration and every use', async () => {
        const edit = await ask<vscode.WorkspaceEdit>('vscode.executeDocumentRenameProvider', place(design, 'Crown at'), 'Lid');
        const edits = edit.get(design.uri);
        assert(edits.length > 0, 'there are edits');
        equal([...new Set(edits.map(({ range, newText }) => `${design.getText(range)} to ${newText}`))].join(), 'Crown to Lid');
    });

    test('the outline shows the case and its parts', async () => {
        const symbols = await vscode.commands.executeCommand<vscode.DocumentSymbol[]>('vscode.executeDocumentSymbolProvider', design.uri);
        const parts = symbols.find(({ name }) => name === 'PotteryCase')?.children.map(({ name }) => name) ?? [];
        for (const part of ['Sweep', 'Left', 'Right', 'Floor', 'Crown', 'Tier']) {
            assert(parts.includes(part), `${part} is among ${parts.join(', ')}`);
        }
    });

    test('formatting sets the words at their distances', async () => {
        const spread = await vscode.workspace.openTextDocument({ language: 'casewright', content: 'let Depth=12in+ 3/4in\n' });
        const edits = await vscode.commands.executeCommand<vscode.TextEdit[]>('vscode.executeFormatDocumentProvider', spread.uri, {
            tabSize: 4,
            insertSpaces: true,
        });
        const edit = new vscode.WorkspaceEdit();
        edit.set(spread.uri, edits);
        assert(await vscode.workspace.applyEdit(edit), 'the edits apply');
        equal(spread.getText(), 'let Depth = 12in + 3/4in\n');
    });

    test('a case folds', async () => {
        const ranges = await vscode.commands.executeCommand<vscode.FoldingRange[]>('vscode.executeFoldingRangeProvider', design.uri);
        const line = place(design, 'case PotteryCase').position.line;
        assert(
            ranges.some(({ start }) => start === line),
            `a range starts at line ${line}, among ${ranges.map(({ start }) => start).join(', ')}`,
        );
    });
});
