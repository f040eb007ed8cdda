// A token that nobody typed. Knows positions only: not why it is needed.
import { createTokenInstance, type IToken, type TokenType } from 'chevrotain';

/**
 * Makes a token without width right after the given one, such as the end of a statement at the end of its line.
 * It is marked as inserted, so the parser consumes it and leaves no leaf for it in the syntax tree.
 */
export function impliedTokenAfter(token: IToken, type: TokenType, image: string): IToken {
    const offset = token.endOffset! + 1;
    const column = token.endColumn! + 1;
    const implied = createTokenInstance(type, image, offset, offset - 1, token.endLine!, token.endLine!, column, column - 1);
    implied.isInsertedInRecovery = true;
    return implied;
}

/** Whether the token stands in the text; implied tokens and the end of the file do not. */
export function isTyped(token: IToken | undefined): token is IToken {
    return token !== undefined && !token.isInsertedInRecovery && token.startOffset >= 0;
}
