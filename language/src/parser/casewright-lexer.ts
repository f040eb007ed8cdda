// From text to tokens with statement ends and paired braces. Knows the steps and their order: not the grammar.
import type { ILexingError, IToken } from 'chevrotain';
import { DefaultLexer, type LexerResult, type LexingDiagnostic, type LexingReport, type TokenizeOptions } from 'langium';
import { mendBraces } from './brace-mending.js';
import { limitNesting } from './nesting-limits.js';
import { markStatementEnds } from './statement-ends.js';
import { isOpenAtEnd } from './statement-lines.js';
import { findTextProblems, withBlanks } from './text-problems.js';

/** What is wrong with braces; on a line with another error it may be left out. */
export interface BraceReport extends LexingReport {
    readonly isBalanced: boolean;
}

export class CasewrightLexer extends DefaultLexer {
    override tokenize(text: string, options?: TokenizeOptions): LexerResult {
        const endOfStatement = this.tokenTypes.EOL!;
        if (options?.mode === 'partial') {
            const result = super.tokenize(text, options);
            // Completion reads only what stands before the cursor: its last line is finished only if the cursor is on a later one.
            const last = result.tokens.at(-1);
            const finished = last !== undefined && !isOpenAtEnd(last) && text.slice(last.endOffset! + 1).includes('\n');
            return { ...result, tokens: markStatementEnds(result.tokens, endOfStatement, finished) };
        }
        const { result, errors } = this.tokenizeTexts(text, options);
        const mended = mendBraces(result.tokens, this.tokenTypes['{']!, this.tokenTypes['}']!, lastOf(result.tokens, result.hidden));
        const limited = limitNesting(markStatementEnds(mended.tokens, endOfStatement, true));
        return {
            ...result,
            tokens: limited.tokens,
            errors: [...errors, ...limited.problems.map(({ at, message }) => asDiagnostic(at, at.image.length, message))],
            report: {
                diagnostics: mended.problems.map(({ at, message }) => asDiagnostic(at, at.image.length, message)),
                isBalanced: mended.problems.length === 0,
            } as BraceReport,
        };
    }

    /** Whether a statement ends before an offset, at which a line begins. Two tokens after it tell. */
    endsStatementAt(text: string, offset: number): boolean {
        const marked = markStatementEnds(super.tokenize(text).tokens, this.tokenTypes.EOL!, true);
        const next = marked.findIndex(({ startOffset, image }) => startOffset >= offset && image !== '');
        return next <= 0 || marked[next - 1]!.tokenType === this.tokenTypes.EOL;
    }

    /** Reads a second time what a stray inch mark made unreadable. */
    private tokenizeTexts(text: string, options: TokenizeOptions | undefined): { result: LexerResult; errors: ILexingError[] } {
        const result = super.tokenize(text, options);
        const problems = findTextProblems(result.tokens);
        const errors = [...result.errors, ...problems.map(({ at, length, message }) => asDiagnostic(at, length, message))];
        const readable = withBlanks(text, problems);
        return { result: readable === text ? result : super.tokenize(readable, options), errors };
    }
}

/** The last thing that is written in a file: what is missing at its end is missing after that. */
function lastOf(tokens: readonly IToken[], comments: readonly IToken[]): IToken | undefined {
    const token = tokens.at(-1);
    const comment = comments.at(-1);
    return token && comment && comment.startOffset > token.startOffset ? comment : token;
}

function asDiagnostic(at: IToken, length: number, message: string): LexingDiagnostic & { line: number; column: number } {
    return {
        message,
        offset: at.startOffset,
        length,
        line: at.startLine!,
        column: at.startColumn!,
        severity: 'error',
    };
}
