// Documents that are no files: the built-in library and the pages of the rules. Knows their URIs and texts.
import { ruleNamed, rulePage } from 'casewright-shared/rules';
import { URI } from 'langium';
import type { TextDocumentContentProvider } from 'langium/lsp';
import type { TextDocumentContentParams, TextDocumentContentResult } from 'vscode-languageserver';
import { libraryText } from '../workspace/library.js';

const scheme = 'casewright';

/** `casewright:/rules/EDG-003.md`: works in every editor that can ask the server for texts, with or without a network. */
export function rulePageUri(code: string): string {
    return URI.from({ scheme, path: `/rules/${code}.md` }).toString();
}

/** The text of a document that is no file; undefined where there is none. */
function virtualText(uri: URI): string | undefined {
    if (uri.scheme !== scheme) {
        return undefined;
    }
    const rule = ruleNamed(/^\/rules\/(.+)\.md$/.exec(uri.path)?.[1] ?? '');
    return rule ? rulePage(rule) : libraryText(uri);
}

export class VirtualDocuments implements TextDocumentContentProvider {
    readonly schemes = [scheme];

    async provideTextDocumentContent({ uri }: TextDocumentContentParams): Promise<TextDocumentContentResult | undefined> {
        const text = virtualText(URI.parse(uri));
        return text === undefined ? undefined : { text };
    }
}
