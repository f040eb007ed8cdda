// Which class does what in the language, without an editor. Knows services and their order of making: nothing of the language itself.
import {
    createDefaultCoreModule,
    createDefaultSharedCoreModule,
    type DefaultSharedCoreModuleContext,
    inject,
    type LangiumCoreServices,
    type LangiumSharedCoreServices,
    type Module,
    type PartialLangiumCoreServices,
    type PartialLangiumSharedCoreServices,
} from 'langium';
import { Analyses } from './analysis/analyses.js';
import { CasewrightGeneratedModule, CasewrightGeneratedSharedModule } from './generated/module.js';
import { Lowering } from './lowering/lowering.js';
import { CasewrightParserModule } from './parser/parser-module.js';
import { ProductionModule } from './production-module.js';
import { CasewrightLinker } from './scoping/casewright-linker.js';
import { CasewrightNameProvider, CasewrightScopeComputation, CasewrightScopeProvider } from './scoping/casewright-scopes.js';
import { VisibleNames } from './scoping/visible-names.js';
import { CasewrightBuilder } from './workspace/casewright-builder.js';
import { CasewrightDocumentFactory } from './workspace/casewright-documents.js';
import { CasewrightIndex } from './workspace/casewright-index.js';
import { FileSystemWithLibrary } from './workspace/library.js';
import { UsedFiles } from './workspace/used-files.js';

/** Services of our own for one language, grouped by concern. */
export interface CasewrightAddedServices {
    readonly references: { readonly VisibleNames: VisibleNames };
    readonly lowering: { readonly Lowering: Lowering };
    readonly analysis: { readonly Analyses: Analyses };
}
export type CasewrightServices = LangiumCoreServices & CasewrightAddedServices;

/** Services of our own that all documents share. */
export interface CasewrightAddedSharedServices {
    readonly workspace: { readonly UsedFiles: UsedFiles };
}
export type CasewrightSharedServices = LangiumSharedCoreServices & CasewrightAddedSharedServices;

export const CasewrightModule: Module<CasewrightServices, PartialLangiumCoreServices & CasewrightAddedServices> = {
    ...CasewrightParserModule,
    references: {
        VisibleNames: (services) => new VisibleNames(usedFiles(services), services.workspace.AstNodeLocator),
        NameProvider: () => new CasewrightNameProvider(),
        ScopeComputation: (services) => new CasewrightScopeComputation(services.references.VisibleNames),
        ScopeProvider: (services) => new CasewrightScopeProvider(services.references.VisibleNames),
        Linker: (services) => new CasewrightLinker(services, services.references.VisibleNames),
    },
    lowering: {
        Lowering: (services) => new Lowering(services.references.VisibleNames, usedFiles(services)),
    },
    analysis: {
        Analyses: (services) => new Analyses(services.lowering.Lowering, usedFiles(services)),
    },
};

/**
 * What all documents share: the graph of used files, builds that load what is used, the library beside the file system.
 * @param context says how files are read
 */
export function casewrightSharedModule(
    context: DefaultSharedCoreModuleContext,
): Module<CasewrightSharedServices, PartialLangiumSharedCoreServices & CasewrightAddedSharedServices> {
    return {
        workspace: {
            UsedFiles: (services) => new UsedFiles(() => services.workspace.LangiumDocuments),
            IndexManager: (services) => new CasewrightIndex(services, services.workspace.UsedFiles),
            LangiumDocumentFactory: (services) => new CasewrightDocumentFactory(services),
            DocumentBuilder: (services) => new CasewrightBuilder(services, services.workspace.UsedFiles),
            FileSystemProvider: (services) => new FileSystemWithLibrary(context.fileSystemProvider(services)),
        },
    };
}

function usedFiles(services: CasewrightServices): UsedFiles {
    return (services.shared as CasewrightSharedServices).workspace.UsedFiles;
}

/**
 * All services of the language without an editor.
 * @param context says how files are read
 */
export function createCasewrightServices(context: DefaultSharedCoreModuleContext): {
    shared: CasewrightSharedServices;
    casewright: CasewrightServices;
} {
    const shared = inject(createDefaultSharedCoreModule(context), CasewrightGeneratedSharedModule, casewrightSharedModule(context));
    const casewright = inject(createDefaultCoreModule({ shared }), CasewrightGeneratedModule, ProductionModule, CasewrightModule);
    shared.ServiceRegistry.register(casewright);
    return { shared, casewright };
}
