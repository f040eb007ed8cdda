// The file or library in a `use`, as a link. Knows `use` statements.
import { GrammarUtils, type LangiumDocument } from 'langium';
import type { DocumentLinkProvider } from 'langium/lsp';
import type { DocumentLink } from 'vscode-languageserver';
import type { UsedFiles } from '../workspace/used-files.js';

export class CasewrightLinks implements DocumentLinkProvider {
    constructor(private readonly usedFiles: UsedFiles) {}

    getDocumentLinks(document: LangiumDocument): DocumentLink[] {
        return this.usedFiles.usedBy(document).flatMap(({ use, uri }) => {
            const range = GrammarUtils.findNodeForProperty(use.$cstNode, use.module === undefined ? 'path' : 'module')?.range;
            return uri && range ? [{ range, target: uri.toString() }] : [];
        });
    }
}
