// The language as it is delivered. Knows that the grammar has been checked: its tests look for what a start need not look for.
import type { LangiumCoreServices, Module, PartialLangiumCoreServices } from 'langium';
import { CasewrightLanguageMetaData } from './generated/module.js';

/** Leaves out the checks of the grammar itself, which take longer than all else at a start. */
export const ProductionModule: Module<LangiumCoreServices, PartialLangiumCoreServices> = {
    LanguageMetaData: () => ({ ...CasewrightLanguageMetaData, mode: 'production' }),
};
