// Documents that are no files: the built-in library, the pages of the rules, explanations of sizes. Knows their URIs and who has their texts.
import { DocumentState, URI } from 'langium';
import type { LangiumServices, LangiumSharedServices, TextDocumentContentProvider } from 'langium/lsp';
import { type TextDocumentContentParams, TextDocumentContentRefreshRequest, type TextDocumentContentResult } from 'vscode-languageserver';
import type { CasewrightAddedServices } from '../casewright-module.js';
import { libraryText } from '../workspace/library.js';
import { explainedBy, explanationText } from './commands/explanations.js';
import type { CasewrightEditorServices } from './lsp-module.js';
import { rulePageText } from './rule-pages.js';

const scheme = 'casewright';

/** More explanations than these nobody has open at once. */
const mostFollowed = 16;

export class VirtualDocuments implements TextDocumentContentProvider {
    readonly schemes = [scheme];
    /** Explanations that were asked for: after a change of the design they are asked for again. */
    private readonly followed = new Set<string>();

    constructor(private readonly services: LangiumSharedServices) {
        let isRefreshed = false;
        services.lsp.LanguageServer.onInitialize(({ capabilities }) => {
            isRefreshed = capabilities.workspace?.textDocumentContent !== undefined;
        });
        services.workspace.DocumentBuilder.onBuildPhase(DocumentState.Linked, () => {
            for (const uri of isRefreshed ? this.followed : []) {
                void services.lsp.Connection?.sendRequest(TextDocumentContentRefreshRequest.type, { uri });
            }
        });
    }

    async provideTextDocumentContent({ uri }: TextDocumentContentParams): Promise<TextDocumentContentResult | undefined> {
        const text = await this.textOf(URI.parse(uri));
        return text === undefined ? undefined : { text };
    }

    /** The text of a document that is no file; undefined where there is none. */
    private async textOf(uri: URI): Promise<string | undefined> {
        if (uri.scheme !== scheme) {
            return undefined;
        }
        return rulePageText(uri) ?? libraryText(uri) ?? (await this.explanation(uri));
    }

    private async explanation(uri: URI): Promise<string | undefined> {
        const explained = explainedBy(uri);
        if (!explained) {
            return undefined;
        }
        this.follow(uri.toString());
        const design = URI.parse(explained.design);
        const { workspace, ServiceRegistry } = this.services;
        const document = await workspace.LangiumDocuments.getOrCreateDocument(design).catch(() => undefined);
        if (!document) {
            return `${explained.size} is not known any more: ${design.path} is not there.\n`;
        }
        if (document.state < DocumentState.Linked) {
            await workspace.DocumentBuilder.build([document], { validation: false });
        }
        const { analysis, editor } = ServiceRegistry.getServices(design) as LangiumServices &
            CasewrightAddedServices &
            CasewrightEditorServices;
        const found = analysis.Analyses.of(document);
        const { at } = explained;
        return explanationText(explained, found, () => (at ? editor.SizesAt.of(document, at, found)[0]?.measure : undefined));
    }

    private follow(uri: string): void {
        this.followed.delete(uri);
        this.followed.add(uri);
        const [oldest] = this.followed;
        if (oldest !== undefined && this.followed.size > mostFollowed) {
            this.followed.delete(oldest);
        }
    }
}
