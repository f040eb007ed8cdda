// Where a statement ends. Knows tokens, columns and the words that join: no grammar rules, no names, no property table.
//
//   A line break ends a statement, unless the line plainly goes on:
//   1. it ends in a sign or a word that something must follow, or
//   2. the next line begins with one that something must come before; for connectives that may also begin a phrase
//      of their own (`of Mdf` in a body) the next line must be indented deeper than the statement.
//   A line that begins like a statement is never swallowed by an unfinished line before it.
import type { IToken, TokenType } from 'chevrotain';
import { impliedTokenAfter } from './implied-token.js';

const OPERATORS = [',', '.', '..', ':', '=', '!=', '<=', '>=', '<', '>', '+', '-', '*', '/', '±', '+/-'];

/** After one of these something must follow. */
const OPEN_AT_END = new Set([
    ...['{', '(', '[', ...OPERATORS],
    ...[
        'at',
        'of',
        'to',
        'with',
        'on',
        'in',
        'for',
        'per',
        'every',
        'because',
        'if',
        'then',
        'else',
        'and',
        'or',
        'not',
        'over',
        'as',
        'like',
    ],
    ...['except', 'above', 'below', 'before', 'behind', 'past', 'short'],
]);

/** A line that begins with one of these goes on from the line before, however it is indented. */
const OPEN_AT_START = new Set([...['{', ')', ']', ...OPERATORS], ...['per', 'because', 'then', 'else', 'and', 'or', 'except']]);

/** A line that begins with one of these goes on from the line before if it is indented deeper. */
const OPEN_AT_START_IF_DEEPER = new Set([
    ...['at', 'of', 'to', 'with', 'on', 'in', 'for', 'over', 'as', 'like', 'above', 'below', 'before', 'behind', 'mirrored'],
]);

/** Words that begin a statement: followed by a name or a number they cannot be anything else. */
const STATEMENT_WORDS = new Set([
    ...['use', 'let', 'edition', 'private', 'public', 'material', 'species', 'goods', 'bought', 'shop', 'project', 'site', 'curve', 'plan'],
    ...[
        'edging',
        'joint',
        'finish',
        'case',
        'drawer',
        'door',
        'frame',
        'plinth',
        'side',
        'shelf',
        'back',
        'top',
        'bottom',
        'divider',
        'rail',
    ],
    ...[
        'stile',
        'kick',
        'stretcher',
        'filler',
        'panel',
        'layer',
        'skirting',
        'cornice',
        'edge',
        'every',
        'join',
        'hold',
        'load',
        'require',
    ],
    ...['allow', 'build', 'leave', 'repeat'],
]);

/** What may follow a statement word that names no part: `back of Mdf`, `kick { ... }`. */
const PHRASE_WORDS = new Set(['{', 'of', 'at', 'in', 'with', 'like', 'as', 'above', 'below']);

const isWord = (token: IToken): boolean => /^[A-Za-z_\u00c0-\u024f]/.test(token.image);
const isValueStart = (token: IToken): boolean => /^[0-9"#]/.test(token.image);

/** The statement that the tokens so far belong to. */
export interface OpenStatement {
    /** Its first token, or undefined at the begin of a file or a block. */
    first: IToken | undefined;
    /** Whether the word `to` has been seen in it. */
    hasTo: boolean;
}

/**
 * Whether the line that begins with `token` continues the statement that `previous` ends.
 * @param next the token after `token`
 * @param bracketDepth how many ( and [ of the statement are open: inside them a line break means nothing
 */
export function lineGoesOn(
    statement: OpenStatement,
    previous: IToken,
    token: IToken,
    next: IToken | undefined,
    bracketDepth: number,
): boolean {
    if (beginsStatementForSure(token, next)) {
        return false;
    }
    const deeper = statement.first === undefined || token.startColumn! > statement.first.startColumn!;
    if (OPEN_AT_START.has(token.image)) {
        return true;
    }
    if (!deeper && looksLikeStatement(token, next)) {
        return token.image === 'to' && statement.first?.image === 'join' && !statement.hasTo;
    }
    return bracketDepth > 0 || OPEN_AT_END.has(previous.image) || (deeper && OPEN_AT_START_IF_DEEPER.has(token.image));
}

function beginsStatementForSure(token: IToken, next: IToken | undefined): boolean {
    return STATEMENT_WORDS.has(token.image) && next !== undefined && isOnSameLine(token, next) && (isName(next) || isValueStart(next));
}

/** A word and then a word, a value or a block: a property or a declaration, were it not for what stands before it. */
function looksLikeStatement(token: IToken, next: IToken | undefined): boolean {
    if (!isWord(token)) {
        return token.image === '}';
    }
    if (next === undefined || !isOnSameLine(token, next)) {
        return STATEMENT_WORDS.has(token.image);
    }
    return isName(next) || isValueStart(next) || next.image === '{' || (STATEMENT_WORDS.has(token.image) && PHRASE_WORDS.has(next.image));
}

function isOnSameLine(token: IToken, next: IToken): boolean {
    return next.startLine === token.endLine;
}

function isName(token: IToken): boolean {
    return isWord(token) && !OPEN_AT_START.has(token.image) && !OPEN_AT_START_IF_DEEPER.has(token.image);
}

/**
 * Puts in the ends of statements: at the ends of their lines, before `}` and at the end of the file.
 * @param finish whether the last line is finished; false when only the text before a cursor is read
 */
export function markStatementEnds(tokens: readonly IToken[], endOfStatement: TokenType, finish: boolean): IToken[] {
    const marked: IToken[] = [];
    let statement: OpenStatement = { first: undefined, hasTo: false };
    let bracketDepth = 0;
    const endAfter = (token: IToken): void => {
        marked.push(impliedTokenAfter(token, endOfStatement, ''));
        statement = { first: undefined, hasTo: false };
        bracketDepth = 0;
    };
    for (let index = 0; index < tokens.length; index++) {
        const token = tokens[index]!;
        const previous = tokens[index - 1];
        if (previous && statement.first) {
            const closesBlock = token.image === '}';
            const newLine = token.startLine! > previous.endLine!;
            if (closesBlock || (newLine && !lineGoesOn(statement, previous, token, tokens[index + 1], bracketDepth))) {
                endAfter(previous);
            }
        }
        marked.push(token);
        if (token.image === '(' || token.image === '[') {
            bracketDepth++;
        } else if ((token.image === ')' || token.image === ']') && bracketDepth > 0) {
            bracketDepth--;
        }
        if (token.image === '{' || token.tokenType === endOfStatement) {
            statement = { first: undefined, hasTo: false };
            bracketDepth = 0;
        } else {
            statement.first ??= token;
            statement.hasTo ||= token.image === 'to';
        }
    }
    const last = tokens[tokens.length - 1];
    if (last && finish) {
        endAfter(last);
    }
    return marked;
}

/** Whether something must follow this token, so that the statement cannot end with it. */
export function isOpenAtEnd(token: IToken): boolean {
    return OPEN_AT_END.has(token.image);
}
