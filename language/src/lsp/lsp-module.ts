// Which class answers which request of an editor. Knows services and their order of making: nothing of the language itself.
import type { Module } from 'langium';
import type { LangiumServices, LangiumSharedServices, PartialLangiumServices, PartialLangiumSharedServices } from 'langium/lsp';
import type { CasewrightAddedServices, CasewrightAddedSharedServices } from '../casewright-module.js';
import { CasewrightCompletion } from './completion/casewright-completion.js';
import { CasewrightValidator } from './diagnostics/casewright-validator.js';
import { CasewrightHover } from './hover/casewright-hover.js';
import { VirtualDocuments } from './virtual-documents.js';

type Services = LangiumServices & CasewrightAddedServices;
type SharedServices = LangiumSharedServices & CasewrightAddedSharedServices;

export const CasewrightEditorModule: Module<Services, PartialLangiumServices> = {
    validation: {
        DocumentValidator: (services) => new CasewrightValidator(services.analysis.Analyses, usedFilesOf(services)),
    },
    lsp: {
        CompletionProvider: (services) => {
            const completion = new CasewrightCompletion(
                services.parser.Lexer,
                services.references.VisibleNames,
                services.shared.workspace.LangiumDocuments,
            );
            services.shared.lsp.LanguageServer.onInitialize((params) => completion.initialize(params));
            return completion;
        },
        HoverProvider: (services) => new CasewrightHover(services.analysis.Analyses, services.references.VisibleNames),
    },
};

export const CasewrightEditorSharedModule: Module<SharedServices, PartialLangiumSharedServices> = {
    lsp: {
        TextDocumentContentProvider: () => new VirtualDocuments(),
    },
};

function usedFilesOf(services: Services): SharedServices['workspace']['UsedFiles'] {
    return (services.shared as SharedServices).workspace.UsedFiles;
}
