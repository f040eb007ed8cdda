import { inject } from 'langium';
import {
    createDefaultModule,
    createDefaultSharedModule,
    type DefaultSharedModuleContext,
    type LangiumServices,
    type LangiumSharedServices,
} from 'langium/lsp';
import {
    type CasewrightAddedServices,
    type CasewrightAddedSharedServices,
    CasewrightModule,
    casewrightSharedModule,
} from '../casewright-module.js';
import { CasewrightGeneratedModule, CasewrightGeneratedSharedModule } from '../generated/module.js';
import {
    type CasewrightEditorServices,
    CasewrightEditorSharedModule,
    casewrightEditorModule,
    type EditorContext,
} from '../lsp/lsp-module.js';
import { ProductionModule } from '../production-module.js';

/** What a server needs of the machine it runs on. */
export interface ServerContext extends DefaultSharedModuleContext, EditorContext {}

/**
 * All services of the language with what an editor asks of them.
 * @param context the connection to the editor, and how files are read
 */
export function createLanguageServerServices(context: ServerContext): {
    shared: LangiumSharedServices & CasewrightAddedSharedServices;
    casewright: LangiumServices & CasewrightAddedServices & CasewrightEditorServices;
} {
    const shared = inject(
        createDefaultSharedModule(context),
        CasewrightGeneratedSharedModule,
        casewrightSharedModule(context),
        CasewrightEditorSharedModule,
    );
    const casewright = inject(
        createDefaultModule({ shared }),
        CasewrightGeneratedModule,
        ProductionModule,
        CasewrightModule,
        casewrightEditorModule(context),
    );
    shared.ServiceRegistry.register(casewright);
    return { shared, casewright };
}
