// Formatting for callers without an editor or a workspace. Knows which services formatting needs: nothing of layout.
import { createDefaultCoreModule, createDefaultSharedCoreModule, EmptyFileSystem, inject } from 'langium';
import { CasewrightGeneratedModule, CasewrightGeneratedSharedModule } from '../generated/module.js';
import { CasewrightParserModule } from '../parser/parser-module.js';
import { ProductionModule } from '../production-module.js';
import { formatCase } from './format-case.js';

/** Makes a formatter of whole texts; it reads no files. One is enough for many texts. */
export function createTextFormatter(): (text: string) => string {
    const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), CasewrightGeneratedSharedModule);
    const services = inject(createDefaultCoreModule({ shared }), CasewrightGeneratedModule, ProductionModule, CasewrightParserModule);
    return (text) => formatCase(text, services);
}
