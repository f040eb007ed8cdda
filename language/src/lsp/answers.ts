// The answers to requests of our own. Knows the connection, and which service answers what.

import { documentKinds } from 'casewright-shared/documents';
import { countInWords } from 'casewright-shared/rules';
import { DocumentState, interruptAndCheck, type LangiumDocument, URI, UriUtils } from 'langium';
import { createRequestHandler, type LangiumServices, type LangiumSharedServices } from 'langium/lsp';
import { type CancellationToken, type Connection, LSPErrorCodes, ResponseError, WorkDoneProgress } from 'vscode-languageserver';
import type { CasewrightAddedServices } from '../casewright-module.js';
import { sagToExplain, toExplain } from './commands/explanations.js';
import type { FoundInProject } from './commands/projects.js';
import type { CasewrightEditorServices } from './lsp-module.js';
import {
    BUILD,
    BUILDABLE,
    type Buildable,
    type BuildRequest,
    type BuildResult,
    CHECK,
    type CheckResult,
    type DesignRequest,
    WHY,
    type WhyRequest,
    type WhyResult,
} from './requests.js';

type Services = LangiumServices & CasewrightAddedServices & CasewrightEditorServices;

/** Answers the requests of our own over the connection of the services. */
export function answerRequests(shared: LangiumSharedServices): void {
    const connection = shared.lsp.Connection;
    if (!connection) {
        return;
    }
    const answer = <Request extends DesignRequest>(
        method: string,
        give: (services: Services, document: LangiumDocument, request: Request, token: CancellationToken) => Promise<object> | object,
    ): void => {
        const handle = createRequestHandler<Request, object>(async (services, document, request, token) => {
            await readWhole(document, shared);
            return await give(services as unknown as Services, document, request, token);
        }, shared);
        connection.onRequest(method, async (request: Request, token: CancellationToken) => {
            const result = await handle(request, token);
            // Langium gives nothing where its own work is called off.
            return result ?? new ResponseError(LSPErrorCodes.RequestCancelled, 'the request was called off');
        });
    };
    answer(CHECK, check);
    answer(BUILDABLE, buildable);
    answer(BUILD, (services, document, request: BuildRequest, token) => build(services, document, request, { token, connection }));
    answer(WHY, why);
}

/** A file that no editor has open may not have been looked at yet. */
async function readWhole(document: LangiumDocument, { workspace }: LangiumSharedServices): Promise<void> {
    if (document.state < DocumentState.Linked) {
        await workspace.DocumentBuilder.build([document], { validation: false });
    }
}

function check({ editor }: Services, document: LangiumDocument): CheckResult {
    const found = editor.Projects.check(document);
    editor.ProjectDiagnostics.show(found);
    const all = [...found.values()].flat();
    const of = (severity: number): number => all.filter((one) => one.severity === severity).length;
    const count = { error: of(1), warning: of(2), note: of(3) };
    return { ...count, summary: `${countInWords(count)} in ${filesInWords(found, document)}` };
}

/** The files in which something is found; the one that was asked about if it is none. */
function filesInWords(found: FoundInProject, document: LangiumDocument): string {
    const uris = [...found].filter(([, diagnostics]) => diagnostics.length > 0).map(([uri]) => uri);
    const names = (uris.length > 0 ? uris : [document.uri.toString()]).map((uri) => UriUtils.basename(URI.parse(uri)));
    const [last = ''] = names.slice(-1);
    return names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${last}` : last;
}

function buildable({ analysis, editor }: Services, document: LangiumDocument): Buildable {
    return {
        designs: editor.Projects.buildable(document).map((one) => ({
            uri: one.uri.toString(),
            name: UriUtils.basename(one.uri).replace(/\.case$/, ''),
            title: analysis.Analyses.of(one).casework.project?.title,
        })),
        kinds: documentKinds.map(({ kind, title, description }) => ({ kind, title, description })),
    };
}

interface BuildClient {
    readonly token: CancellationToken;
    readonly connection: Connection;
}

async function build(
    { analysis, editor }: Services,
    document: LangiumDocument,
    request: BuildRequest,
    client: BuildClient,
): Promise<BuildResult> {
    const { buildDocuments } = await import('./commands/build.js');
    const { workDoneToken: at, only } = request;
    const typeface = editor.TypefaceOfPdf();
    const solidKernel = editor.SolidKernel;
    const style = { ...(typeface ? { typeface } : {}), ...(solidKernel ? { solidKernel } : {}) };
    const report = async (progress: object): Promise<void> => {
        if (at !== undefined) {
            await client.connection.sendProgress(WorkDoneProgress.type, at, progress as never);
        }
    };
    await report({ kind: 'begin', title: UriUtils.basename(document.uri), percentage: 0, cancellable: true });
    try {
        return await buildDocuments(analysis.Analyses.of(document), only, style, async (message, percentage) => {
            await report({ kind: 'report', message, percentage });
            await interruptAndCheck(client.token);
        });
    } finally {
        await report({ kind: 'end' });
    }
}

function why({ analysis, editor }: Services, document: LangiumDocument, { position }: WhyRequest): WhyResult {
    const found = analysis.Analyses.of(document);
    const sizes = editor.SizesAt.of(document, position, found);
    const sags = editor.SizesAt.partsOf(document, position, found).flatMap((part) => sagToExplain(part, document, found) ?? []);
    return { sizes: [...sizes.map((size) => toExplain(size, document, found, position)), ...sags] };
}
