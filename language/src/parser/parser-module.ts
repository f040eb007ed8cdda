// The services that make a syntax tree from a text. Knows which class does what: nothing of names or of the rest of the language.
import type { LangiumCoreServices, Module, PartialLangiumCoreServices } from 'langium';
import { CasewrightLexer } from './casewright-lexer.js';
import { createCasewrightParser } from './casewright-parser.js';
import { NeededWords } from './needed-words.js';
import { CharacterMessages } from './text-problems.js';
import { CasewrightTokenBuilder } from './token-builder.js';
import { CasewrightWordValues } from './word-values.js';

export const CasewrightParserModule: Module<LangiumCoreServices, PartialLangiumCoreServices> = {
    parser: {
        TokenBuilder: () => new CasewrightTokenBuilder(),
        Lexer: (services) => new CasewrightLexer(services),
        LangiumParser: createCasewrightParser,
        LexerErrorMessageProvider: () => new CharacterMessages(),
        ParserErrorMessageProvider: () => new NeededWords(),
        ValueConverter: () => new CasewrightWordValues(),
    },
};
