// A text cut into pieces: words, signs and comments, with what stands between them. Knows tokens and offsets: no layout, no grammar.
import type { IToken } from 'chevrotain';

/** A word, a sign or one line of a comment. */
export interface Piece {
    text: string;
    offset: number;
    /** Offset after its last character. */
    end: number;
    /** Zero-based. */
    line: number;
    /** Zero-based. */
    column: number;
    isComment: boolean;
    isLiteral: boolean;
}

/** Makes a piece of a token that stands in the text. */
export function pieceOf(token: IToken): Piece {
    return {
        text: token.image,
        offset: token.startOffset,
        end: token.startOffset + token.image.length,
        line: token.startLine! - 1,
        column: token.startColumn! - 1,
        isComment: false,
        isLiteral: token.tokenType.name === 'QUANTITY',
    };
}

/** A comment of several lines is one token: each of its lines is a piece. */
export function commentPieces(token: IToken): Piece[] {
    const pieces: Piece[] = [];
    let offset = token.startOffset;
    token.image.split('\n').forEach((lineText, index) => {
        const text = lineText.trim();
        const indent = lineText.length - lineText.trimStart().length;
        const lineStart = index === 0 ? token.startColumn! - 1 : 0;
        const start = offset + indent;
        pieces.push({
            text,
            offset: start,
            end: start + text.length,
            line: token.startLine! - 1 + index,
            column: lineStart + indent,
            isComment: true,
            isLiteral: false,
        });
        offset += lineText.length + 1;
    });
    return pieces;
}
