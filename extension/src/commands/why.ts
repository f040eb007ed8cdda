import { type SizeToExplain, WHY, type WhyRequest, type WhyResult } from 'casewright-language/requests';
import { type TextDocument, Uri, ViewColumn, window, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** What keeps the command from asking which of several sizes is meant. */
interface Choice {
    /** Such as `PotteryCase.Tier[2].depth`. */
    readonly size?: string;
}

/** Says where the size under the cursor comes from, in a document beside the editor; of several it asks which. */
export async function why(design: TextDocument, client: BaseLanguageClient, { size }: Choice): Promise<Uri | undefined> {
    const editor = window.visibleTextEditors.find(({ document }) => document === design);
    if (!editor) {
        return undefined;
    }
    const request: WhyRequest = client.code2ProtocolConverter.asTextDocumentPositionParams(design, editor.selection.active);
    const { sizes } = await client.sendRequest<WhyResult>(WHY, request);
    const [first] = sizes;
    if (!first) {
        void window.showInformationMessage(
            'There is no size under the cursor: put it at a part, a case, an opening, a size or a name of one.',
        );
        return undefined;
    }
    const chosen = size === undefined ? await choose(sizes) : sizes.find(({ name }) => name === size);
    if (!chosen) {
        return undefined;
    }
    const explanation = await workspace.openTextDocument(Uri.parse(chosen.uri));
    await window.showTextDocument(explanation, { viewColumn: ViewColumn.Beside, preserveFocus: true, preview: true });
    return explanation.uri;
}

async function choose(sizes: readonly SizeToExplain[]): Promise<SizeToExplain | undefined> {
    if (sizes.length === 1) {
        return sizes[0];
    }
    const items = sizes.map((size) => ({ label: size.name, description: size.value, size }));
    const placeHolder = 'The size to explain';
    return (await window.showQuickPick(items, { placeHolder, matchOnDescription: true }))?.size;
}
