// The parser of .case texts: the generated rules, recovery by lines, one report a line.
// Knows rules by name only where a statement ends.
import type { ILookaheadStrategy, IRecognitionException, IToken } from 'chevrotain';
import {
    type AstNode,
    createParser,
    type GrammarAST,
    type LangiumCoreServices,
    LangiumParser,
    type ParseResult,
    type ParserOptions,
} from 'langium';
import { reservedWords, wordsOfRule } from './grammar-words.js';
import { isTyped } from './implied-token.js';
import { LateLookahead } from './late-lookahead.js';
import { LineRecovery, originalToken } from './line-recovery.js';
import { SecondStatementException } from './second-statement.js';
import { explainSyntaxError } from './syntax-explanations.js';

/** Makes the parser, ready for use. */
export function createCasewrightParser(services: LangiumCoreServices): CasewrightParser {
    const parser = createParser(services.Grammar, new CasewrightParser(services), services.parser.Lexer.definition);
    parser.finalize();
    return parser;
}

type RuleArguments = Parameters<LangiumParser['rule']>;
type SubruleArguments = Parameters<LangiumParser['subrule']>;
type Rule = SubruleArguments[1];

export class CasewrightParser extends LangiumParser {
    private readonly recovery: LineRecovery;
    private readonly statementEnds = new Set<Rule>();
    private readonly grammar: GrammarAST.Grammar;
    /** Whether the last text was read to its end; one that nests too deep is not. */
    isRead = true;
    private knownWords: { readonly reserved: ReadonlySet<string>; readonly partKinds: ReadonlySet<string> } | undefined;

    constructor(services: LangiumCoreServices) {
        super(services);
        const decisions = this.wrapper as unknown as { lookaheadStrategy: ILookaheadStrategy };
        decisions.lookaheadStrategy = new LateLookahead(decisions.lookaheadStrategy);
        this.grammar = services.Grammar;
        const { EOL, BROKEN } = services.parser.Lexer.definition;
        this.recovery = new LineRecovery(
            this.wrapper,
            { endOfStatement: EOL!, broken: BROKEN! },
            services.parser.ParserErrorMessageProvider,
        );
    }

    /** The parser's own recovery is off meanwhile: it would make sets of tokens for all rules, which ours does without. */
    override finalize(): void {
        const recovering = this.wrapper as unknown as { recoveryEnabled: boolean };
        recovering.recoveryEnabled = false;
        super.finalize();
        recovering.recoveryEnabled = true;
    }

    override rule(rule: RuleArguments[0], implementation: RuleArguments[1]): Rule {
        const method = super.rule(rule, implementation);
        if (rule.name.endsWith('LineEnd')) {
            this.statementEnds.add(method);
        }
        return method;
    }

    override subrule(index: number, rule: Rule, fragment: boolean, feature: SubruleArguments[3], args: SubruleArguments[4]): void {
        if (fragment && this.statementEnds.has(rule) && !this.isRecording()) {
            this.recovery.skipToStatementEnd();
        }
        super.subrule(index, rule, fragment, feature, args);
    }

    /** Parses a whole text. Of several errors on one line the first is reported: the others follow from it. */
    override parse<T extends AstNode = AstNode>(input: string, options?: ParserOptions): ParseResult<T> {
        const result = this.parseUnlessTooDeep<T>(input, options);
        const reportedLines = new Set<number | undefined>();
        const isFirstOfLine = (line: number | undefined): boolean => {
            const first = !reportedLines.has(line);
            reportedLines.add(line);
            return first;
        };
        const lexerErrors = result.lexerErrors.filter(({ line }) => isFirstOfLine(line));
        this.explain(result.parserErrors);
        const parserErrors = result.parserErrors.filter(({ token }) => isFirstOfLine(token.startLine));
        // A brace that is missing matters least: where it belongs is only guessed from the indentation.
        const diagnostics = (result.lexerReport?.diagnostics ?? []).filter(({ line }) => isFirstOfLine(line));
        return { ...result, lexerErrors, parserErrors, lexerReport: { ...result.lexerReport, diagnostics } };
    }

    /**
     * How much room the stack has is not known here, so a text may be too deep though it keeps the limits. A parser that is
     * interrupted like that keeps what it was making, fails at every later text, and hides the first error behind others.
     */
    private parseUnlessTooDeep<T extends AstNode>(input: string, options: ParserOptions | undefined): ParseResult<T> {
        this.isRead = true;
        try {
            return super.parse<T>(input, options);
        } catch {
            this.isRead = false;
            (this as unknown as { stack: unknown[] }).stack = [];
            const message = 'this text could not be read to its end: it nests too deep';
            return { ...super.parse<T>('', options), lexerErrors: [{ offset: 0, length: 1, line: 1, column: 1, message }] };
        }
    }

    /** Puts sentences in place of what is needed, and points at words that stand in the text. */
    private explain(errors: readonly IRecognitionException[]): void {
        if (errors.length === 0) {
            return;
        }
        this.knownWords ??= { reserved: new Set(reservedWords(this.grammar)), partKinds: wordsOfRule(this.grammar, 'PartKind') };
        const { reserved, partKinds } = this.knownWords;
        const tokens = this.wrapper.input.map(originalToken);
        const indexes = new Map(tokens.map((token, index) => [token, index]));
        for (const error of errors) {
            const index = indexes.get(error.token) ?? tokens.length;
            const { message, at } = explainSyntaxError({
                token: error.token,
                needed: error.message,
                // The first of two statements on a line ends with a token that nobody typed.
                before: statementBefore(tokens, error instanceof SecondStatementException ? index - 1 : index),
                next: nextOnLine(tokens, index),
                isReserved: (word) => reserved.has(word.image),
                isPartKind: (word) => partKinds.has(word.image),
            });
            error.message = message;
            error.token = at;
        }
    }
}

const STATEMENT_BORDERS = new Set(['EOL', '{', '}']);

/** The tokens between the begin of the statement and the token, the nearest first; across its border only the nearest. */
function statementBefore(tokens: readonly IToken[], index: number): IToken[] {
    const before: IToken[] = [];
    for (let at = index - 1; at >= 0 && !STATEMENT_BORDERS.has(tokens[at]!.tokenType.name); at--) {
        before.push(tokens[at]!);
    }
    return before;
}

function nextOnLine(tokens: readonly IToken[], index: number): IToken | undefined {
    const next = tokens[index + 1];
    return next !== undefined && isTyped(next) && next.startLine === tokens[index]?.endLine ? next : undefined;
}
