/** The tests of the extension through VS Code's own interface: the same in every extension host. */
import * as vscode from 'vscode';

suite('Casewright in the editor', () => {
    let document: vscode.TextDocument;

    suiteSetup(async () => {
        const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
        assert(folder, 'a folder is open');
        document = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder, 'trial.case'));
        await vscode.window.showTextDocument(document);
    });

    test('a .case file is Casewright', () => {
        assert(document.languageId === 'casewright', document.languageId);
    });

    test('a mistake is reported once, at its words', async () => {
        const found = await until('a diagnostic', () => {
            const diagnostics = vscode.languages.getDiagnostics(document.uri);
            return diagnostics.length > 0 && diagnostics;
        });
        assert(found.length === 1, `one diagnostic, but got ${found.length}`);
        assert(document.getText(found[0]?.range) === '=', document.getText(found[0]?.range));
    });
});

function assert(condition: unknown, message: string): asserts condition {
    if (!condition) {
        throw new Error(message);
    }
}

async function until<Value>(what: string, probe: () => Value | false | undefined, milliseconds = 30_000): Promise<Value> {
    const deadline = Date.now() + milliseconds;
    for (;;) {
        const value = probe();
        if (value) {
            return value;
        }
        if (Date.now() > deadline) {
            throw new Error(`waited in vain for ${what}`);
        }
        await new Promise((resolve) => setTimeout(resolve, 50));
    }
}
