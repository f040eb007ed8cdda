// A text as statements and blocks, from its tokens alone. Knows ends of statements and braces: no grammar, no layout.
import type { IToken } from 'chevrotain';
import { commentPieces, type Piece, pieceOf } from './text-pieces.js';

/** What follows one another in a block. */
export type Item = Statement | CommentLine;

/** A comment that has a line of its own between statements. */
export interface CommentLine {
    kind: 'comment';
    comment: Piece;
}

export interface Statement {
    kind: 'statement';
    parts: Part[];
}

/** A statement is a row of pieces, some of them comments, and blocks. */
export type Part = Piece | Block;

export interface Block {
    kind: 'block';
    open: Piece;
    close: Piece;
    items: Item[];
}

export function isBlock(part: Part): part is Block {
    return 'kind' in part;
}

/**
 * Reads the tree of a text whose braces balance.
 * @param tokens with the ends of statements in them
 */
export function readStatements(tokens: readonly IToken[], comments: readonly IToken[]): Item[] {
    return new TreeReader(tokens, comments.flatMap(commentPieces)).readItems();
}

class TreeReader {
    private next = 0;
    private nextComment = 0;

    constructor(
        private readonly tokens: readonly IToken[],
        private readonly comments: readonly Piece[],
    ) {}

    /** Reads up to the brace that closes the block, or to the end of the text. */
    readItems(): Item[] {
        const items: Item[] = [];
        for (;;) {
            const token = this.tokens[this.next];
            const comment = this.commentBefore(token);
            if (comment) {
                items.push({ kind: 'comment', comment });
            } else if (token === undefined || token.image === '}') {
                return items;
            } else if (token.tokenType.name === 'EOL') {
                this.next++;
            } else {
                items.push(this.readStatement());
            }
        }
    }

    private readStatement(): Statement {
        const parts: Part[] = [];
        for (;;) {
            const token = this.tokens[this.next];
            if (token === undefined || token.tokenType.name === 'EOL' || token.image === '}') {
                this.takeTrailingComment(parts);
                this.next += token?.tokenType.name === 'EOL' ? 1 : 0;
                return { kind: 'statement', parts };
            }
            const comment = this.commentBefore(token);
            if (comment) {
                parts.push(comment);
            } else if (token.image === '{') {
                parts.push(this.readBlock(token));
            } else {
                parts.push(pieceOf(token));
                this.next++;
            }
        }
    }

    private readBlock(open: IToken): Block {
        this.next++;
        const items = this.readItems();
        const close = pieceOf(this.tokens[this.next]!);
        this.next++;
        return { kind: 'block', open: pieceOf(open), close, items };
    }

    /** A comment on the line on which the statement ends belongs to it. */
    private takeTrailingComment(parts: Part[]): void {
        const last = parts.at(-1);
        const comment = this.comments[this.nextComment];
        const end = last && isBlock(last) ? last.close : last;
        if (end && comment && comment.line === end.line && !end.isComment && !this.standsBefore(comment)) {
            parts.push(comment);
            this.nextComment++;
        }
    }

    /** Whether another token stands on the line of the comment, before it: then it is that token's comment. */
    private standsBefore(comment: Piece): boolean {
        let at = this.next;
        while (this.tokens[at]?.tokenType.name === 'EOL') {
            at++;
        }
        const token = this.tokens[at];
        return token !== undefined && token.startOffset < comment.offset;
    }

    private commentBefore(token: IToken | undefined): Piece | undefined {
        const comment = this.comments[this.nextComment];
        if (comment === undefined || (token !== undefined && token.startOffset < comment.offset)) {
            return undefined;
        }
        this.nextComment++;
        return comment;
    }
}
