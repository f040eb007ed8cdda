// Which brace is missing or too many. Knows tokens and columns: no grammar rules.
// Only for files whose braces do not balance: there the indentation is believed.
import type { IToken, TokenType } from 'chevrotain';
import { impliedTokenAfter } from './implied-token.js';
import { lineGoesOn, type OpenStatement } from './statement-lines.js';

export interface BraceProblem {
    at: IToken;
    message: string;
}

interface Block {
    /** The brace, or the word after which one is missing. */
    at: IToken;
    /** Column of the statement that has the block. */
    column: number;
}

/** Puts in the braces that are missing and leaves out those that close nothing, each with a report. */
export function mendBraces(tokens: IToken[], open: TokenType, close: TokenType): { tokens: IToken[]; problems: BraceProblem[] } {
    return isBalanced(tokens) ? { tokens, problems: [] } : new BraceMender(tokens, open, close).mend();
}

function isBalanced(tokens: readonly IToken[]): boolean {
    let depth = 0;
    for (const { image } of tokens) {
        if (image === '{') {
            depth++;
        } else if (image === '}' && --depth < 0) {
            return false;
        }
    }
    return depth === 0;
}

class BraceMender {
    private readonly mended: IToken[] = [];
    private readonly problems: BraceProblem[] = [];
    private readonly blocks: Block[] = [];
    private statement: OpenStatement = { first: undefined, hasTo: false };
    /** Column of the statement that the line before belongs to. */
    private column = 0;

    constructor(
        private readonly tokens: readonly IToken[],
        private readonly open: TokenType,
        private readonly close: TokenType,
    ) {}

    mend(): { tokens: IToken[]; problems: BraceProblem[] } {
        for (let index = 0; index < this.tokens.length; index++) {
            const token = this.tokens[index]!;
            const previous = this.tokens[index - 1];
            const newLine = previous === undefined || token.startLine! > previous.endLine!;
            if (newLine) {
                this.beginLine(previous, token, this.tokens[index + 1]);
            }
            if (token.image === '{') {
                this.blocks.push({ at: token, column: this.column });
            } else if (token.image === '}' && !this.closeBlock(token, this.tokens[index + 1], newLine)) {
                continue;
            }
            this.mended.push(token);
            this.statement =
                token.image === '{' ? { first: undefined, hasTo: false } : { first: this.statement.first ?? token, hasTo: false };
        }
        while (this.blocks.length > 0) {
            this.closeMissing();
        }
        return { tokens: this.mended, problems: this.problems };
    }

    private beginLine(previous: IToken | undefined, token: IToken, next: IToken | undefined): void {
        const column = token.startColumn!;
        if (previous === undefined) {
            this.column = column;
            return;
        }
        if (token.image === '}') {
            while ((this.blocks.at(-1)?.column ?? 0) > column) {
                this.closeMissing();
            }
            this.column = column;
            return;
        }
        const afterOpen = previous.image === '{';
        const newStatement = afterOpen || !lineGoesOn(this.statement, previous, token, next, 0);
        if (!newStatement) {
            return;
        }
        while (column <= (this.blocks.at(-1)?.column ?? 0)) {
            this.closeMissing();
        }
        if (!afterOpen && previous.image !== '}' && column > this.column && this.column > (this.blocks.at(-1)?.column ?? 0)) {
            this.openMissing(previous);
        }
        this.column = column;
        this.statement = { first: undefined, hasTo: false };
    }

    private openMissing(after: IToken): void {
        this.mended.push(impliedTokenAfter(after, this.open, '{'));
        this.blocks.push({ at: after, column: this.column });
        this.problems.push({ at: after, message: `a \`{\` is missing after \`${after.image}\`: the lines below are indented deeper` });
    }

    private closeMissing(): void {
        const block = this.blocks.pop()!;
        this.mended.push(impliedTokenAfter(this.mended.at(-1)!, this.close, '}'));
        if (block.at.image === '{') {
            this.problems.push({ at: block.at, message: 'this `{` is never closed: a `}` is missing' });
        }
    }

    /** Whether the brace closes a block; if not, it is reported. */
    private closeBlock(brace: IToken, next: IToken | undefined, beginsLine: boolean): boolean {
        const block = this.blocks.at(-1);
        const closes =
            block !== undefined &&
            (block.at.startLine === brace.startLine ||
                (beginsLine
                    ? block.column === brace.startColumn
                    : next === undefined || next.image === '}' || next.startColumn! <= block.column));
        if (closes) {
            this.blocks.pop();
        } else {
            this.problems.push({ at: brace, message: 'this `}` closes nothing' });
        }
        return closes;
    }
}
