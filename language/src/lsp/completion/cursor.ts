// What stands before the cursor: the open blocks, the words of the statement so far, and the word that is being typed.
// Knows tokens: half a line has no syntax tree to rely on.
import type { IToken } from 'chevrotain';
import type { Lexer } from 'langium';

export interface Cursor {
    /** The open blocks, outermost first: for each the words before its brace. */
    readonly blocks: readonly OpenBlock[];
    /** The words of the statement before the one that is being typed. */
    readonly words: readonly string[];
    readonly tokens: readonly IToken[];
    /** The word that is being typed; empty if the cursor stands behind a blank or a sign. */
    readonly typed: string;
    /** A number right before the cursor, with the letters of its unit so far. */
    readonly number: { readonly unit: string } | undefined;
    /** A text that is not closed yet. */
    readonly openText: string | undefined;
}

export interface OpenBlock {
    readonly head: readonly string[];
    /** Where its brace is. */
    readonly offset: number;
}

const word = /[0-9A-Za-z_À-ÖØ-öø-ɏ]*$/;

/** Reads the text before a cursor; undefined in a comment, where nothing can be completed. */
export function readCursor(before: string, lexer: Lexer): Cursor | undefined {
    const { tokens: all, hidden } = lexer.tokenize(before, { mode: 'partial' });
    const comment = hidden.findLast(({ image }) => image.startsWith('//'));
    if (comment && !before.slice(comment.startOffset).includes('\n')) {
        return undefined;
    }
    const last = all.findLast((token) => token.image !== '');
    const touches = last !== undefined && last.endOffset! + 1 === before.length;
    const isNumber = touches && last.tokenType.name === 'QUANTITY';
    const isText = touches && last.tokenType.name === 'OPEN_STRING';
    const typed = isNumber || isText ? '' : (word.exec(before)?.[0] ?? '');
    const open = openStatement(
        typed === '' && !isText
            ? all
            : all.filter((token) => token.startOffset < before.length - typed.length && !(isText && token === last)),
    );
    return {
        ...open,
        words: open.tokens.map(({ image }) => image),
        typed,
        number: isNumber ? { unit: /[A-Za-z]*$/.exec(last.image)?.[0] ?? '' } : undefined,
        openText: isText ? last.image.slice(1) : undefined,
    };
}

function openStatement(all: readonly IToken[]): Pick<Cursor, 'blocks' | 'tokens'> {
    const blocks: OpenBlock[] = [];
    let tokens: IToken[] = [];
    for (const token of all) {
        if (token.image === '{') {
            blocks.push({ head: tokens.map(({ image }) => image), offset: token.startOffset });
            tokens = [];
        } else if (token.image === '}') {
            blocks.pop();
            tokens = [];
        } else if (token.tokenType.name === 'EOL') {
            tokens = [];
        } else {
            tokens.push(token);
        }
    }
    return { blocks, tokens };
}
