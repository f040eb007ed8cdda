// Which class answers which request of an editor. Knows services and their order of making: nothing of the language itself.
import type { SolidKernel } from 'casewright-shared/solids';
import type { Typeface } from 'casewright-shared/writers';
import { createCompletionParser, type LangiumCompletionParser, type LangiumDocument, type Module } from 'langium';
import type { LangiumServices, LangiumSharedServices, PartialLangiumServices, PartialLangiumSharedServices } from 'langium/lsp';
import type { Diagnostic } from 'vscode-languageserver';
import type { CasewrightAddedServices, CasewrightAddedSharedServices } from '../casewright-module.js';
import { CasewrightFormatter } from '../formatting/casewright-formatter.js';
import { CasewrightCodeActions } from './code-actions.js';
import { Projects } from './commands/projects.js';
import { SizesAt } from './commands/sizes-at.js';
import { CasewrightCompletion } from './completion/casewright-completion.js';
import { CasewrightValidator } from './diagnostics/casewright-validator.js';
import { ProjectDiagnostics } from './diagnostics/project-diagnostics.js';
import { type Later, WhileTyping } from './diagnostics/while-typing.js';
import { CasewrightFolding } from './folding.js';
import { CasewrightHover } from './hover/casewright-hover.js';
import { CasewrightLanguageServer } from './language-server.js';
import { CasewrightLinks } from './links.js';
import { CasewrightDefinitions, CasewrightHighlights, CasewrightReferences } from './navigation.js';
import { Occurrences } from './occurrences.js';
import { CasewrightNodeKinds, CasewrightOutline } from './outline.js';
import { CasewrightRename } from './renaming.js';
import { CasewrightSemanticTokens } from './semantic-tokens.js';
import { VirtualDocuments } from './virtual-documents.js';

/** Services of our own for an editor. */
export interface CasewrightEditorServices {
    readonly editor: {
        readonly Occurrences: Occurrences;
        readonly ProjectDiagnostics: ProjectDiagnostics;
        readonly Projects: Projects;
        readonly SizesAt: SizesAt;
        readonly TypefaceOfPdf: () => Typeface | undefined;
        readonly SolidKernel: (() => Promise<SolidKernel>) | undefined;
        readonly WhileTyping: WhileTyping | undefined;
    };
}

type Services = LangiumServices & CasewrightAddedServices & CasewrightEditorServices;
type SharedServices = LangiumSharedServices & CasewrightAddedSharedServices;

/** What the answers need of the machine that they are given on. */
export interface EditorContext {
    /** How to wait for a pause in typing; without it every diagnostic is shown at once. */
    readonly later?: Later;
    /** What a PDF is set in where it has letters that not every reader has, asked for each time; without it they lose their marks. */
    readonly typefaceOfPdf?: () => Typeface | undefined;
    /** Loads what computes with solids; without it documents are silent on what only solids tell, such as the weights of the model. */
    readonly solidKernel?: () => Promise<SolidKernel>;
}

/** The answers to an editor. */
export function casewrightEditorModule({
    later,
    typefaceOfPdf,
    solidKernel,
}: EditorContext): Module<Services, PartialLangiumServices & CasewrightEditorServices> {
    return {
        editor: {
            Occurrences: (services) => new Occurrences(services.references.VisibleNames, services.shared.workspace.LangiumDocuments),
            ProjectDiagnostics: ({ shared }) =>
                new ProjectDiagnostics(
                    () => shared.workspace.LangiumDocuments,
                    (document, diagnostics) => publish(document, diagnostics, shared),
                ),
            Projects: (services) =>
                new Projects(services.analysis.Analyses, usedFilesOf(services), services.shared.workspace.LangiumDocuments),
            SizesAt: (services) => new SizesAt(services.references.VisibleNames, services.editor.Occurrences),
            TypefaceOfPdf: () => typefaceOfPdf ?? (() => undefined),
            SolidKernel: () => solidKernel,
            WhileTyping: ({ shared }) => later && whileTyping(later, shared),
        },
        parser: {
            CompletionParser: (services) => whenAsked(() => createCompletionParser(services)),
        },
        validation: {
            DocumentValidator: (services) => new CasewrightValidator(services.analysis.Analyses, usedFilesOf(services), services.editor),
        },
        lsp: {
            CodeActionProvider: (services) => new CasewrightCodeActions(services.analysis.Analyses),
            CompletionProvider: (services) => new CasewrightCompletion(services),
            DefinitionProvider: (services) =>
                new CasewrightDefinitions(services.editor.Occurrences, usedFilesOf(services), services.shared.lsp.LanguageServer),
            DocumentHighlightProvider: (services) => new CasewrightHighlights(services.editor.Occurrences),
            DocumentLinkProvider: (services) => new CasewrightLinks(usedFilesOf(services)),
            DocumentSymbolProvider: (services) => new CasewrightOutline(services.references.VisibleNames),
            FoldingRangeProvider: () => new CasewrightFolding(),
            Formatter: (services) => new CasewrightFormatter(services),
            HoverProvider: (services) =>
                new CasewrightHover(services.analysis.Analyses, services.references.VisibleNames, services.editor.Occurrences),
            ReferencesProvider: (services) => new CasewrightReferences(services.editor.Occurrences),
            RenameProvider: (services) =>
                new CasewrightRename(services.editor.Occurrences, services.references.VisibleNames, services.parser.LangiumParser),
            SemanticTokenProvider: (services) => new CasewrightSemanticTokens(services),
        },
    };
}

export const CasewrightEditorSharedModule: Module<SharedServices, PartialLangiumSharedServices> = {
    lsp: {
        LanguageServer: (services) => new CasewrightLanguageServer(services),
        NodeKindProvider: () => new CasewrightNodeKinds(),
        TextDocumentContentProvider: (services) => new VirtualDocuments(services),
    },
};

/** A second parser, of half-written texts, that no editor needs before its user types. */
function whenAsked(make: () => LangiumCompletionParser): LangiumCompletionParser {
    let parser: LangiumCompletionParser | undefined;
    const parse: LangiumCompletionParser['parse'] = (text) => {
        parser ??= make();
        return parser.parse(text);
    };
    return { parse } as LangiumCompletionParser;
}

function usedFilesOf(services: Services): SharedServices['workspace']['UsedFiles'] {
    return (services.shared as SharedServices).workspace.UsedFiles;
}

function whileTyping(later: Later, shared: LangiumSharedServices): WhileTyping {
    const made = new WhileTyping(later, (document, diagnostics) => publish(document, diagnostics, shared));
    shared.workspace.TextDocuments.onDidClose(({ document }) => made.forget(document.uri));
    return made;
}

function publish(document: LangiumDocument, diagnostics: Diagnostic[], { lsp }: LangiumSharedServices): void {
    document.diagnostics = diagnostics;
    void lsp.Connection?.sendDiagnostics({ uri: document.uri.toString(), diagnostics });
}
