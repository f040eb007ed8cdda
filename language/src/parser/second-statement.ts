// A second statement on the line of the first. Knows tokens and the words that begin statements: no grammar rules.
import { type IToken, MismatchedTokenException } from 'chevrotain';
import { isTyped } from './implied-token.js';
import { STATEMENT_WORDS } from './statement-lines.js';

/** Words that begin a statement, but after a part say something of it that was meant to stand in its block. */
const SAID_OF_A_PART = new Set(['edge', 'edging', 'material', 'finish', 'joint', 'layer']);

/** Two statements stand on one line without a sign between them. Both are read; the finding is at the first word of the second. */
export class SecondStatementException extends MismatchedTokenException {}

/**
 * Whether a token that cannot go on with the statement begins another one.
 * @param before the two tokens before it
 * @param next the token after it
 */
export function isSecondStatement(token: IToken, before: readonly (IToken | undefined)[], next: IToken): boolean {
    const isOnLine = (one: IToken | undefined): boolean => isTyped(one) && one.endLine === token.startLine && !/^[{};]$/.test(one.image);
    const begins = STATEMENT_WORDS.has(token.image) && !SAID_OF_A_PART.has(token.image);
    return (
        begins && before.every(isOnLine) && isTyped(next) && next.startLine === token.endLine && next.image !== ';' && next.image !== '}'
    );
}
