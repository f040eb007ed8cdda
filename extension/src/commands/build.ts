import {
    BUILD,
    BUILDABLE,
    type Buildable,
    type BuildableDesign,
    type BuildableKind,
    type BuildRequest,
    type BuildResult,
    CHECK,
} from 'casewright-language/requests';
import { NotPut, putDocuments } from 'casewright-shared/output';
import { type CancellationToken, commands, type Progress, ProgressLocation, type TextDocument, Uri, window, workspace } from 'vscode';
import { type BaseLanguageClient, WorkDoneProgress } from 'vscode-languageclient';
import { showProblems } from './check.js';
import { contentOf, EditorFolder, folderFor, pathFrom } from './editor-folder.js';

/** What keeps the command from asking. */
interface Choice {
    /** Kinds of documents; all that the design has something of if it is `all`. */
    readonly kinds?: readonly string[] | 'all';
}

/** What was written, for whoever runs the command from a program. */
interface Written {
    readonly folder: Uri;
    readonly documents: readonly string[];
}

/** Writes the documents of the design in a file, or of one that uses it. Nothing is written if the design has errors. */
export async function build(file: TextDocument, client: BaseLanguageClient, { kinds }: Choice): Promise<Written | undefined> {
    if (!workspace.isTrusted) {
        void explainRestrictedMode();
        return undefined;
    }
    const offered = await client.sendRequest<Buildable>(BUILDABLE, {
        textDocument: { uri: client.code2ProtocolConverter.asUri(file.uri) },
    });
    const design = await chooseDesign(offered.designs, file);
    const only = design && (kinds ?? (await chooseKinds(offered.kinds)));
    if (!design || !only) {
        return undefined;
    }
    const uri = client.protocol2CodeConverter.asUri(design.uri);
    if (uri.scheme === 'untitled' || workspace.fs.isWritableFileSystem(uri.scheme) === false) {
        void window.showErrorMessage(
            `\`${design.name}\` is in no folder that can be written to: save it first, its documents go beside it.`,
        );
        return undefined;
    }
    await saveDesigns(file.languageId);
    const request: BuildRequest = { textDocument: { uri: design.uri }, ...(only === 'all' ? {} : { only }) };
    const options = { location: ProgressLocation.Notification, title: `Documents of ${design.name}`, cancellable: true };
    return await window.withProgress(options, async (progress, token) => {
        const result = await make(request, client, { progress, token });
        return result && (await write(result, { design, uri, client }));
    });
}

async function explainRestrictedMode(): Promise<void> {
    const manage = 'Manage Workspace Trust';
    const message = 'Casewright writes no files in Restricted Mode: a folder that is not trusted must not decide what is written where.';
    if ((await window.showWarningMessage(message, manage)) === manage) {
        await commands.executeCommand('workbench.trust.manage');
    }
}

async function chooseDesign(designs: readonly BuildableDesign[], file: TextDocument): Promise<BuildableDesign | undefined> {
    if (designs.length === 0) {
        const name = file.uri.path.split('/').at(-1);
        void window.showInformationMessage(`\`${name}\` builds nothing, and no design that does uses it. A design has a \`case\`.`);
    }
    if (designs.length < 2) {
        return designs[0];
    }
    const items = designs.map((design) => ({ label: design.name, description: design.title ?? '', design }));
    return (await window.showQuickPick(items, { placeHolder: 'The design to write the documents of' }))?.design;
}

/** All kinds are ticked at first: whoever only wants the documents presses Enter. */
async function chooseKinds(kinds: readonly BuildableKind[]): Promise<readonly string[] | 'all' | undefined> {
    const items = kinds.map(({ kind, title, description }) => ({ label: title, detail: description, only: kind, picked: true }));
    const placeHolder = 'The documents to write';
    const picked = await window.showQuickPick(items, { placeHolder, canPickMany: true, matchOnDetail: true });
    if (!picked || picked.length === 0) {
        return undefined;
    }
    return picked.length === items.length ? 'all' : picked.map(({ only }) => only);
}

/** Documents are of what stands in the files, so that the command line makes the same ones of them. */
async function saveDesigns(language: string): Promise<void> {
    const changed = workspace.textDocuments.filter(
        ({ languageId, isDirty, isUntitled }) => languageId === language && isDirty && !isUntitled,
    );
    for (const document of changed) {
        await document.save();
    }
}

interface Running {
    readonly progress: Progress<{ message?: string; increment?: number }>;
    readonly token: CancellationToken;
}

let builds = 0;

/** Lets the server make the documents; undefined if the user calls it off. */
async function make(request: BuildRequest, client: BaseLanguageClient, { progress, token }: Running): Promise<BuildResult | undefined> {
    const workDoneToken = `casewright-build-${++builds}`;
    let shown = 0;
    const listening = client.onProgress(WorkDoneProgress.type, workDoneToken, (reported) => {
        if (reported.kind === 'report') {
            const percentage = reported.percentage ?? shown;
            progress.report({ increment: percentage - shown, ...(reported.message === undefined ? {} : { message: reported.message }) });
            shown = percentage;
        }
    });
    try {
        const result = await client.sendRequest<BuildResult>(BUILD, { ...request, workDoneToken }, token);
        return token.isCancellationRequested ? undefined : result;
    } catch (error) {
        if (token.isCancellationRequested) {
            return undefined;
        }
        throw error;
    } finally {
        listening.dispose();
    }
}

interface Destination {
    readonly design: BuildableDesign;
    readonly uri: Uri;
    readonly client: BaseLanguageClient;
}

async function write(result: BuildResult, { design, uri, client }: Destination): Promise<Written | undefined> {
    if (result.is === 'refused') {
        void refuse(result, client, design);
        return undefined;
    }
    if (result.is === 'nothing') {
        void window.showErrorMessage(`${[result.message, ...result.advice].join('; ')}`);
        return undefined;
    }
    const folder = folderFor(uri, design.name);
    const shown = workspace.asRelativePath(folder);
    const documents = result.documents.map((document) => ({ name: document.name, content: contentOf(document) }));
    try {
        const older = await putDocuments(documents, {
            folder: new EditorFolder(folder),
            shown,
            design: pathFrom(folder, uri),
            elsewhere: 'choose another folder with the setting `casewright.outputFolder`',
        });
        const names = documents.map(({ name }) => name);
        const left = older.length === 0 ? '' : `; left there from an earlier build, and not brought up to date: ${older.join(', ')}`;
        const found = result.found === undefined ? '' : `; ${result.found}`;
        const count = `${names.length} document${names.length === 1 ? '' : 's'}`;
        void offer(`${result.title ?? design.name}: ${count} written to ${shown}${left}${found}`, folder, names);
        return { folder, documents: names };
    } catch (error) {
        const reasons =
            error instanceof NotPut ? [error.message, ...error.advice] : [`the documents cannot be written to \`${shown}\``, String(error)];
        void window.showErrorMessage(`${reasons.join('; ')}`);
        return undefined;
    }
}

/** Says what keeps the documents from being written, and shows it. */
async function refuse(
    { summary, first }: Extract<BuildResult, { readonly is: 'refused' }>,
    client: BaseLanguageClient,
    { uri }: BuildableDesign,
): Promise<void> {
    await client.sendRequest(CHECK, { textDocument: { uri } });
    await showProblems();
    const goTo = 'Go to the First Error';
    if ((await window.showErrorMessage(`${summary}`, goTo)) === goTo) {
        const { uri: file, range } = client.protocol2CodeConverter.asLocation(first);
        await window.showTextDocument(file, { selection: range });
    }
}

async function offer(message: string, folder: Uri, names: readonly string[]): Promise<void> {
    const [first = ''] = names;
    const open = `Open ${first}`;
    const show = 'Show Folder';
    const chosen = await window.showInformationMessage(message, open, show);
    if (chosen === open) {
        await commands.executeCommand('vscode.open', Uri.joinPath(folder, first));
    } else if (chosen === show) {
        const isOpen = workspace.getWorkspaceFolder(folder) !== undefined;
        await commands.executeCommand(isOpen ? 'revealInExplorer' : 'revealFileInOS', Uri.joinPath(folder, first));
    }
}
