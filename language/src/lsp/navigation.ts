// From a name to its declaration, and to all its uses. Knows requests of an editor: where names stand is found elsewhere.
import type { LangiumDocument } from 'langium';
import type { DefinitionProvider, DocumentHighlightProvider, LanguageServer, ReferencesProvider } from 'langium/lsp';
import {
    type DefinitionParams,
    type DocumentHighlight,
    DocumentHighlightKind,
    type DocumentHighlightParams,
    type Location,
    type LocationLink,
    type ReferenceParams,
} from 'vscode-languageserver';
import type * as Ast from '../generated/ast.js';
import type { UsedFiles } from '../workspace/used-files.js';
import { locationOfOccurrence, type Occurrence, type Occurrences } from './occurrences.js';
import { wordAt } from './word-at.js';

const startOfFile = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

export class CasewrightDefinitions implements DefinitionProvider {
    private takesLinks = false;

    constructor(
        private readonly occurrences: Occurrences,
        private readonly usedFiles: UsedFiles,
        languageServer: LanguageServer,
    ) {
        languageServer.onInitialize(({ capabilities }) => {
            this.takesLinks = capabilities.textDocument?.definition?.linkSupport === true;
        });
    }

    /** Links, or mere locations where the client did not say that it takes links; Langium's signature knows links only. */
    getDefinition(document: LangiumDocument, params: DefinitionParams): LocationLink[] | undefined {
        const links = this.linksAt(document, params);
        if (this.takesLinks || !links) {
            return links;
        }
        const locations: Location[] = links.map(({ targetUri, targetSelectionRange }) => ({ uri: targetUri, range: targetSelectionRange }));
        return locations as unknown as LocationLink[];
    }

    private linksAt(document: LangiumDocument, { position }: DefinitionParams): LocationLink[] | undefined {
        const word = wordAt(document, position);
        if (!word) {
            return undefined;
        }
        const isFile = word.node.$type === 'Use' && (word.feature === 'path' || word.feature === 'module');
        const file = isFile ? this.usedFiles.documentOf(word.node as Ast.Use, document) : undefined;
        if (file) {
            const targetUri = file.uri.toString();
            return [{ targetUri, targetRange: startOfFile, targetSelectionRange: startOfFile, originSelectionRange: word.range }];
        }
        const name = this.occurrences.declaredAt(word);
        const selection = name?.nameSegment?.range;
        if (!name || !selection) {
            return undefined;
        }
        return [
            {
                targetUri: name.documentUri.toString(),
                targetRange: name.selectionSegment?.range ?? selection,
                targetSelectionRange: selection,
                originSelectionRange: word.range,
            },
        ];
    }
}

export class CasewrightReferences implements ReferencesProvider {
    constructor(private readonly occurrences: Occurrences) {}

    findReferences(document: LangiumDocument, { position, context }: ReferenceParams): Location[] {
        const found = occurrencesAt(document, position, this.occurrences);
        return found.filter(({ isDeclaration }) => context.includeDeclaration || !isDeclaration).map(locationOfOccurrence);
    }
}

export class CasewrightHighlights implements DocumentHighlightProvider {
    constructor(private readonly occurrences: Occurrences) {}

    getDocumentHighlight(document: LangiumDocument, { position }: DocumentHighlightParams): DocumentHighlight[] {
        return occurrencesAt(document, position, this.occurrences)
            .filter((one) => one.document === document)
            .map(({ range, isDeclaration }) => ({ range, kind: isDeclaration ? DocumentHighlightKind.Write : DocumentHighlightKind.Read }));
    }
}

function occurrencesAt(document: LangiumDocument, position: DefinitionParams['position'], occurrences: Occurrences): readonly Occurrence[] {
    const word = wordAt(document, position);
    const name = word && occurrences.declaredAt(word);
    return name ? occurrences.of(name) : [];
}
