/** What the tests of the suite look with. */
import * as vscode from 'vscode';

export interface Place {
    readonly document: vscode.TextDocument;
    readonly position: vscode.Position;
}

/** The first place where a document has these words. */
export function place(document: vscode.TextDocument, words: string): Place {
    const offset = document.getText().indexOf(words);
    assert(offset >= 0, `\`${words}\` is in ${document.uri.path}`);
    return { document, position: document.positionAt(offset) };
}

export async function ask<Answer>(command: string, { document, position }: Place, ...rest: unknown[]): Promise<Answer> {
    return await vscode.commands.executeCommand<Answer>(command, document.uri, position, ...rest);
}

export async function replace(document: vscode.TextDocument, words: string, by: string): Promise<void> {
    const { position } = place(document, words);
    const edit = new vscode.WorkspaceEdit();
    edit.replace(document.uri, new vscode.Range(position, position.translate(0, words.length)), by);
    assert(await vscode.workspace.applyEdit(edit), `\`${words}\` can be replaced`);
}

export function errorsOf(document: vscode.TextDocument): vscode.Diagnostic[] {
    return vscode.languages.getDiagnostics(document.uri).filter(({ severity }) => severity === vscode.DiagnosticSeverity.Error);
}

export function assert(condition: unknown, message: string): asserts condition {
    if (!condition) {
        throw new Error(`not so: ${message}`);
    }
}

export function equal<Value>(found: Value, expected: Value): void {
    assert(found === expected, `${JSON.stringify(found)} is ${JSON.stringify(expected)}`);
}

export async function until<Value>(what: string, probe: () => Value | false | undefined, milliseconds = 30_000): Promise<Value> {
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
