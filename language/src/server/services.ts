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
import { CasewrightEditorModule, CasewrightEditorSharedModule } from '../lsp/lsp-module.js';

/**
 * All services of the language with what an editor asks of them.
 * @param context the connection to the editor, and how files are read
 */
export function createLanguageServerServices(context: DefaultSharedModuleContext): {
    shared: LangiumSharedServices & CasewrightAddedSharedServices;
    casewright: LangiumServices & CasewrightAddedServices;
} {
    const shared = inject(
        createDefaultSharedModule(context),
        CasewrightGeneratedSharedModule,
        casewrightSharedModule(context),
        CasewrightEditorSharedModule,
    );
    const casewright = inject(createDefaultModule({ shared }), CasewrightGeneratedModule, CasewrightModule, CasewrightEditorModule);
    shared.ServiceRegistry.register(casewright);
    return { shared, casewright };
}
