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
} from 'langium';
import { CasewrightGeneratedModule, CasewrightGeneratedSharedModule } from './generated/module.js';
import { CasewrightLexer } from './parser/casewright-lexer.js';
import { createCasewrightParser } from './parser/casewright-parser.js';
import { CasewrightSyntaxMessages } from './parser/syntax-messages.js';
import { CasewrightWordValues } from './parser/word-values.js';

/** Services of our own, grouped by concern. */
export type CasewrightAddedServices = Record<never, never>;

export type CasewrightServices = LangiumCoreServices & CasewrightAddedServices;

export const CasewrightModule: Module<CasewrightServices, PartialLangiumCoreServices & CasewrightAddedServices> = {
    parser: {
        Lexer: (services) => new CasewrightLexer(services),
        LangiumParser: createCasewrightParser,
        ParserErrorMessageProvider: () => new CasewrightSyntaxMessages(),
        ValueConverter: () => new CasewrightWordValues(),
    },
};

/**
 * All services of the language without an editor.
 * @param context says how files are read
 */
export function createCasewrightServices(context: DefaultSharedCoreModuleContext): {
    shared: LangiumSharedCoreServices;
    casewright: CasewrightServices;
} {
    const shared = inject(createDefaultSharedCoreModule(context), CasewrightGeneratedSharedModule);
    const casewright = inject(createDefaultCoreModule({ shared }), CasewrightGeneratedModule, CasewrightModule);
    shared.ServiceRegistry.register(casewright);
    return { shared, casewright };
}
