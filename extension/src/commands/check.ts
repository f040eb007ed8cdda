import { CHECK, type CheckResult } from 'casewright-language/requests';
import { commands, type TextDocument, window } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** Checks the project of a file: all findings stand in the Problems view afterwards, and a message says how many. */
export async function check(design: TextDocument, client: BaseLanguageClient): Promise<CheckResult> {
    const result = await client.sendRequest<CheckResult>(CHECK, { textDocument: { uri: client.code2ProtocolConverter.asUri(design.uri) } });
    void tell(result);
    return result;
}

async function tell({ summary, error, warning, note }: CheckResult): Promise<void> {
    const message = `${summary}`;
    if (error + warning + note === 0) {
        await window.showInformationMessage(message);
        return;
    }
    const show = 'Show Problems';
    const chosen = error > 0 ? window.showErrorMessage(message, show) : window.showWarningMessage(message, show);
    if ((await chosen) === show) {
        await showProblems();
    }
}

/** Opens the view in which the findings stand. */
export async function showProblems(): Promise<void> {
    await commands.executeCommand('workbench.actions.view.problems');
}
