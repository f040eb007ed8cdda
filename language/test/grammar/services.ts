// Makes the parser alone: tests of the text need no names, no types and no files.
import { createDefaultCoreModule, createDefaultSharedCoreModule, EmptyFileSystem, inject, type LangiumCoreServices } from 'langium';
import type { File } from '../../src/generated/ast.js';
import { CasewrightGeneratedModule, CasewrightGeneratedSharedModule } from '../../src/generated/module.js';
import { CasewrightParserModule } from '../../src/parser/parser-module.js';

export function createParserServices(): LangiumCoreServices {
    const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), CasewrightGeneratedSharedModule);
    return inject(createDefaultCoreModule({ shared }), CasewrightGeneratedModule, CasewrightParserModule);
}

export interface SyntaxProblem {
    /** Zero-based. */
    line: number;
    /** Zero-based. */
    column: number;
    length: number;
    message: string;
}

export interface Parsed {
    file: File;
    problems: SyntaxProblem[];
}

/** Parses a text and lists its problems in the order of the text, as a person sees them. */
export function parseWith(services: LangiumCoreServices, text: string): Parsed {
    const result = services.parser.LangiumParser.parse<File>(text);
    const problems = [
        ...[...result.lexerErrors, ...(result.lexerReport?.diagnostics ?? [])].map(({ line, column, length, message }) => ({
            line: line! - 1,
            column: column! - 1,
            length,
            message,
        })),
        ...result.parserErrors.map(({ token, message }) => ({
            line: token.startLine! - 1,
            column: token.startColumn! - 1,
            length: token.image.length,
            message,
        })),
    ];
    return { file: result.value, problems: problems.sort((a, b) => a.line - b.line || a.column - b.column) };
}
