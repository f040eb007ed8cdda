// The language server: what Langium answers, and what it has no hook for. Knows requests and capabilities.
import { DocumentState, type LangiumDocument } from 'langium';
import { createRequestHandler, DefaultLanguageServer, type LangiumSharedServices, startLanguageServer } from 'langium/lsp';
import {
    CodeActionKind,
    type InitializeParams,
    type InitializeResult,
    type SelectionRange,
    type SelectionRangeParams,
} from 'vscode-languageserver';
import { answerRequests } from './answers.js';
import { fixAll } from './code-actions.js';
import { selectionRangeAt } from './selection-ranges.js';

export class CasewrightLanguageServer extends DefaultLanguageServer {
    protected override buildInitializeResult(params: InitializeParams): InitializeResult {
        const { capabilities } = super.buildInitializeResult(params);
        return {
            capabilities: {
                ...capabilities,
                selectionRangeProvider: true,
                codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, fixAll] },
            },
            serverInfo: { name: 'Casewright' },
        };
    }
}

/** Serves over the connection of the services until the client leaves. */
export function serve(services: LangiumSharedServices): void {
    services.lsp.Connection?.onSelectionRanges(
        createRequestHandler(
            (_services, document: LangiumDocument, { positions }: SelectionRangeParams): SelectionRange[] =>
                positions.map((position) => selectionRangeAt(document, position)),
            services,
            DocumentState.Parsed,
        ),
    );
    answerRequests(services);
    startLanguageServer(services);
}
