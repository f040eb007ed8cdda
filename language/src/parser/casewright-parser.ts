// The parser of .case texts: the generated rules, recovery by lines, one report a line.
// Knows rules by name only where a statement ends.
import type { IRecognitionException, IToken } from 'chevrotain';
import { type AstNode, createParser, type LangiumCoreServices, LangiumParser, type ParseResult, type ParserOptions } from 'langium';
import { isTyped } from './implied-token.js';
import { LineRecovery } from './line-recovery.js';

/** Makes the parser, ready for use. */
export function createCasewrightParser(services: LangiumCoreServices): CasewrightParser {
    const parser = createParser(services.Grammar, new CasewrightParser(services), services.parser.Lexer.definition);
    parser.finalize();
    return parser;
}

type Rule = Parameters<LangiumParser['subrule']>[1];

export class CasewrightParser extends LangiumParser {
    private readonly recovery: LineRecovery;
    private readonly statementEnds = new Set<Rule>();

    constructor(services: LangiumCoreServices) {
        super(services);
        const { EOL, BROKEN } = services.parser.Lexer.definition;
        this.recovery = new LineRecovery(
            this.wrapper,
            { endOfStatement: EOL!, broken: BROKEN! },
            services.parser.ParserErrorMessageProvider,
        );
    }

    override rule(...[rule, implementation]: Parameters<LangiumParser['rule']>): Rule {
        const method = super.rule(rule, implementation);
        if (rule.name.endsWith('LineEnd')) {
            this.statementEnds.add(method);
        }
        return method;
    }

    override subrule(...[index, rule, fragment, feature, args]: Parameters<LangiumParser['subrule']>): void {
        if (this.statementEnds.has(rule) && !this.isRecording()) {
            this.recovery.skipToStatementEnd();
        }
        super.subrule(index, rule, fragment, feature, args);
    }

    /** Parses a whole text. Of several errors on one line the first is reported: the others follow from it. */
    override parse<T extends AstNode = AstNode>(input: string, options?: ParserOptions): ParseResult<T> {
        const result = super.parse<T>(input, options);
        const reportedLines = new Set(result.lexerErrors.map((error) => error.line));
        const parserErrors: IRecognitionException[] = [];
        for (const error of result.parserErrors) {
            pointAtTypedToken(error);
            if (!reportedLines.has(error.token.startLine)) {
                reportedLines.add(error.token.startLine);
                parserErrors.push(error);
            }
        }
        // A brace that is missing matters least: where it belongs is only guessed from the indentation.
        const diagnostics = (result.lexerReport?.diagnostics ?? []).filter(({ line }) => {
            const first = !reportedLines.has(line);
            reportedLines.add(line);
            return first;
        });
        return { ...result, parserErrors, lexerReport: { diagnostics } };
    }
}

/** What is missing at the end of a line is reported at the last word that stands there. */
function pointAtTypedToken(error: IRecognitionException & { previousToken?: IToken }): void {
    if (!isTyped(error.token) && isTyped(error.previousToken)) {
        error.token = error.previousToken;
    }
}
