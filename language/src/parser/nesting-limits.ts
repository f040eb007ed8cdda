// How deep a text may nest. Knows brackets, braces and operators: no grammar.
//
// The parser and all that walks its tree call themselves for each level: a text that nests too deep would exhaust the stack.
// A hundred brackets do; no design needs more than a few.
import type { IToken } from 'chevrotain';

const MOST_BRACKETS = 16;
const MOST_BLOCKS = 32;
/** In one statement, outside of its blocks: `a + a + ...` nests as deep as it is long. */
const MOST_OPERATORS = 400;

const OPERATORS = new Set(['+', '-', '*', '/', '±', '+/-', '.', 'and', 'or', 'not', '(', '[']);
/** As many operators as one alternative of a condition. */
const ALTERNATIVE = 8;

/** A place at which a text nests too deep. */
export interface NestingProblem {
    at: IToken;
    message: string;
}

/** What one statement has so far. */
interface Depth {
    brackets: number;
    operators: number;
}

/**
 * Leaves out what nests too deep, with a report for each place.
 * @param tokens with the ends of statements in them, and with braces that balance
 */
export function limitNesting(tokens: IToken[]): { tokens: IToken[]; problems: NestingProblem[] } {
    const problems: NestingProblem[] = [];
    const levels: Depth[] = [{ brackets: 0, operators: 0 }];
    let kept: IToken[] = [];
    let start = 0;
    for (let index = 0; index < tokens.length; index++) {
        const token = tokens[index]!;
        const message = count(token.tokenType.name, levels);
        if (message !== undefined) {
            problems.push({ at: token, message });
            kept = kept.concat(tokens.slice(start, index));
            if (token.image === '{') {
                levels.pop();
                index = endOfBlock(tokens, index);
            } else {
                index = endOfStatement(tokens, index) - 1;
            }
            start = index + 1;
        }
    }
    return { tokens: start === 0 ? tokens : kept.concat(tokens.slice(start)), problems };
}

/** Counts the token; answers with what is wrong if it is one too many. */
function count(kind: string, levels: Depth[]): string | undefined {
    const depth = levels.at(-1)!;
    switch (kind) {
        case 'ID':
        case 'QUANTITY':
            return undefined;
        case 'EOL':
            depth.brackets = 0;
            depth.operators = 0;
            return undefined;
        case '{':
            levels.push({ brackets: 0, operators: 0 });
            return levels.length - 1 > MOST_BLOCKS ? `blocks nest ${MOST_BLOCKS} deep at most; this one is not read` : undefined;
        case '}':
            levels.pop();
            return undefined;
        case '(':
        case '[':
            depth.brackets++;
            break;
        case ')':
        case ']':
            depth.brackets--;
            break;
        case 'else':
            depth.operators += ALTERNATIVE;
            break;
    }
    depth.operators += OPERATORS.has(kind) ? 1 : 0;
    if (depth.brackets > MOST_BRACKETS) {
        return `brackets nest ${MOST_BRACKETS} deep at most; give a part of this a name with \`let\``;
    }
    return depth.operators > MOST_OPERATORS
        ? `a statement has ${MOST_OPERATORS} operators or ${MOST_OPERATORS / ALTERNATIVE} alternatives at most; give a part of this a name with \`let\``
        : undefined;
}

/** Index of the brace that closes the block which begins at the index. */
function endOfBlock(tokens: readonly IToken[], start: number): number {
    let depth = 0;
    for (let index = start; index < tokens.length; index++) {
        depth += tokens[index]!.image === '{' ? 1 : tokens[index]!.image === '}' ? -1 : 0;
        if (depth === 0) {
            return index;
        }
    }
    return tokens.length - 1;
}

/** Index of the end of the statement that the index is in, after its blocks. */
function endOfStatement(tokens: readonly IToken[], start: number): number {
    let index = start;
    while (index < tokens.length && tokens[index]!.tokenType.name !== 'EOL') {
        index = tokens[index]!.image === '{' ? endOfBlock(tokens, index) + 1 : index + 1;
    }
    return index;
}
