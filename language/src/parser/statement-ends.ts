// Puts the ends of statements between the tokens. Knows the order of tokens: what ends a statement is in statement-lines.
import type { IToken, TokenType } from 'chevrotain';
import { impliedTokenAfter } from './implied-token.js';
import { OpenStatement } from './statement-lines.js';

/**
 * Puts in the ends of statements: at the ends of their lines, before `}` and at the end of the file.
 * @param finish whether the last line is finished; false when only the text before a cursor is read
 */
export function markStatementEnds(tokens: readonly IToken[], endOfStatement: TokenType, finish: boolean): IToken[] {
    const marked: IToken[] = [];
    const statement = new OpenStatement();
    for (let index = 0; index < tokens.length; index++) {
        const token = tokens[index]!;
        const previous = tokens[index - 1];
        if (previous && !statement.isEmpty) {
            const newLine = token.startLine! > previous.endLine!;
            if (token.image === '}' || (newLine && !statement.goesOnWith(token, tokens[index + 1]))) {
                marked.push(impliedTokenAfter(previous, endOfStatement, ''));
                statement.end();
            }
        }
        marked.push(token);
        if (token.tokenType === endOfStatement) {
            statement.end();
        } else {
            statement.read(token);
        }
    }
    const last = tokens.at(-1);
    if (last && finish) {
        marked.push(impliedTokenAfter(last, endOfStatement, ''));
    }
    return marked;
}
