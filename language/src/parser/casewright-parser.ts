// The parser of .case texts: the generated rules, recovery by lines, one report a line. Knows no rule by name.
import type { IRecognitionException, IToken } from 'chevrotain';
import { type AstNode, createParser, type LangiumCoreServices, LangiumParser, type ParseResult, type ParserOptions } from 'langium';
import { isTyped } from './implied-token.js';
import { recoverByLines } from './line-recovery.js';

/** Makes the parser, ready for use. */
export function createCasewrightParser(services: LangiumCoreServices): CasewrightParser {
    const parser = createParser(services.Grammar, new CasewrightParser(services), services.parser.Lexer.definition);
    parser.finalize();
    return parser;
}

export class CasewrightParser extends LangiumParser {
    constructor(services: LangiumCoreServices) {
        super(services);
        recoverByLines(this.wrapper);
    }

    /** Parses a whole text. Of several errors on one line the first is reported: the others follow from it. */
    override parse<T extends AstNode = AstNode>(input: string, options?: ParserOptions): ParseResult<T> {
        const result = super.parse<T>(input, options);
        const reportedLines = new Set<number | undefined>();
        for (const { line } of [...result.lexerErrors, ...(result.lexerReport?.diagnostics ?? [])]) {
            reportedLines.add(line);
        }
        const parserErrors: IRecognitionException[] = [];
        for (const error of result.parserErrors) {
            pointAtTypedToken(error);
            const line = error.token.startLine;
            if (!reportedLines.has(line)) {
                reportedLines.add(line);
                parserErrors.push(error);
            }
        }
        return { ...result, parserErrors };
    }
}

/** What is missing at the end of a line is reported at the last word that stands there. */
function pointAtTypedToken(error: IRecognitionException & { previousToken?: IToken }): void {
    if (!isTyped(error.token) && isTyped(error.previousToken)) {
        error.token = error.previousToken;
    }
}
