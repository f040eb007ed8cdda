// Where a statement ends. Knows tokens, columns and the words that join: no grammar rules, no names, no property table.
//
//   A line break ends a statement, unless the line plainly goes on:
//   1. it ends in a sign or a word that something must follow, or
//   2. the next line begins with one that something must come before; for connectives that may also begin a phrase
//      of their own (`of Mdf` in a body) the next line must be indented deeper than the statement.
//   A line that begins like a statement is never swallowed by an unfinished line before it.
import type { IToken } from 'chevrotain';

const OPERATORS = [',', '.', '..', ':', '=', '!=', '<=', '>=', '<', '>', '+', '-', '*', '/', '±', '+/-'];

/** After one of these words something must follow. */
const OPEN_WORDS_AT_END = new Set([
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
const OPEN_SIGNS_AT_END = new Set(['{', '(', '[', ...OPERATORS]);

/** A line that begins with one of these goes on from the line before, however it is indented. */
const OPEN_AT_START = new Set([...['{', ')', ']', ...OPERATORS], ...['per', 'because', 'then', 'else', 'and', 'or', 'except']]);

/** A line that begins with one of these goes on from the line before if it is indented deeper. */
const OPEN_AT_START_IF_DEEPER = new Set([
    ...['at', 'of', 'to', 'with', 'on', 'in', 'for', 'over', 'as', 'like', 'above', 'below', 'before', 'behind', 'mirrored'],
]);

/** After a word that something must follow none of these can stand. */
const NO_TARGET = new Set([
    'of',
    'to',
    'from',
    'with',
    'on',
    'in',
    'for',
    'over',
    'as',
    'like',
    'at',
    'because',
    'per',
    'then',
    'else',
    'except',
]);

/** Words that begin a statement: followed by a name or a number they cannot be anything else. */
export const STATEMENT_WORDS: ReadonlySet<string> = new Set([
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
    ...['stile', 'kick', 'stretcher', 'filler', 'front', 'box', 'panel', 'layer', 'skirting', 'cornice', 'edge', 'join', 'hold', 'load'],
    ...['require', 'allow', 'build', 'leave', 'repeat'],
]);

/** What may follow a statement word that names no part: `back of Mdf`, `kick { ... }`. */
const PHRASE_WORDS = new Set(['{', 'of', 'at', 'in', 'with', 'like', 'as', 'above', 'below']);

/** Keywords are told by their kind: a name is compared only where a statement may begin with one. */
const beginsStatement = ({ tokenType, image }: IToken): boolean => STATEMENT_WORDS.has(tokenType.name === 'ID' ? image : tokenType.name);
const isWord = (token: IToken): boolean => /^[A-Za-z_\u00c0-\u024f]/.test(token.image);
const isValue = (token: IToken): boolean => /^[0-9"#]/.test(token.image);
const isPlainWord = (token: IToken): boolean => token.tokenType.name === 'ID';
const isName = (token: IToken): boolean =>
    isWord(token) && !OPEN_AT_START.has(token.tokenType.name) && !OPEN_AT_START_IF_DEEPER.has(token.tokenType.name);

/** Whether something must follow this token, so that no statement ends with it. */
export function isOpenAtEnd(token: IToken): boolean {
    return OPEN_WORDS_AT_END.has(token.tokenType.name) || OPEN_SIGNS_AT_END.has(token.tokenType.name);
}

/** Whether a line may begin with this token only if it goes on from the line before, or goes on when it is indented deeper. */
export function isOpenAtStart(token: IToken): boolean {
    return OPEN_AT_START.has(token.tokenType.name) || OPEN_AT_START_IF_DEEPER.has(token.tokenType.name);
}

/** The statement that is being read, token by token. */
export class OpenStatement {
    private first: IToken | undefined;
    private last: IToken | undefined;
    private hasTo = false;
    /** How many ( and [ are open: inside them a line break means nothing. */
    private brackets = 0;

    get isEmpty(): boolean {
        return this.first === undefined;
    }

    /** Forgets what was read: the next token begins a statement. */
    end(): void {
        this.first = undefined;
        this.last = undefined;
        this.hasTo = false;
        this.brackets = 0;
    }

    read(token: IToken): void {
        if (token.tokenType.name === '{') {
            this.end();
            return;
        }
        this.first ??= token;
        this.last = token;
        switch (token.tokenType.name) {
            case 'to':
                this.hasTo = true;
                break;
            case '(':
            case '[':
                this.brackets++;
                break;
            case ')':
            case ']':
                this.brackets = Math.max(0, this.brackets - 1);
                break;
        }
    }

    /**
     * Whether the line that begins with `token` continues this statement.
     * @param next the token after `token`
     */
    goesOnWith(token: IToken, next: IToken | undefined): boolean {
        const { first, last } = this;
        if (first === undefined || last === undefined || this.isInterruptedBy(last, token, next)) {
            return false;
        }
        if (OPEN_AT_START.has(token.tokenType.name)) {
            return true;
        }
        const deeper = token.startColumn! > first.startColumn!;
        if (!deeper && looksLikeStatement(token, next)) {
            return token.image === 'to' && first.image === 'join' && !this.hasTo;
        }
        return this.brackets > 0 || isOpenAtEnd(last) || (deeper && OPEN_AT_START_IF_DEEPER.has(token.tokenType.name));
    }

    /** Whether the line begins a statement for sure, though the one before it may not be finished. */
    private isInterruptedBy(last: IToken, token: IToken, next: IToken | undefined): boolean {
        if (OPEN_WORDS_AT_END.has(last.tokenType.name) && NO_TARGET.has(token.tokenType.name)) {
            return true;
        }
        if (next === undefined || next.startLine !== token.endLine) {
            return false;
        }
        if (beginsStatement(token)) {
            return isName(next) || isValue(next) || (this.isInValue(last) && PHRASE_WORDS.has(next.tokenType.name));
        }
        // No value has a name and then a number in it, or two names: these are properties.
        return isPlainWord(token) && (isValue(next) || (this.isInValue(last) && isPlainWord(next)));
    }

    private isInValue(last: IToken): boolean {
        return this.brackets > 0 || (last.image !== ',' && OPEN_SIGNS_AT_END.has(last.tokenType.name));
    }
}

/** A word and then a word, a value or a block: a property or a declaration, were it not for what stands before it. */
function looksLikeStatement(token: IToken, next: IToken | undefined): boolean {
    if (!isWord(token)) {
        return token.image === '}';
    }
    if (next === undefined || next.startLine !== token.endLine) {
        return beginsStatement(token);
    }
    const begins = token.image === 'every' || beginsStatement(token);
    return isName(next) || isValue(next) || next.image === '{' || (begins && PHRASE_WORDS.has(next.tokenType.name));
}
