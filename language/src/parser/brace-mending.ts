// Which brace is missing or too many. Knows tokens and columns: no grammar rules.
// Only for files whose braces do not balance: there the indentation is believed.
import type { IToken, TokenType } from 'chevrotain';
import { impliedTokenAfter } from './implied-token.js';
import { isOpenAtStart, OpenStatement } from './statement-lines.js';

export interface BraceProblem {
    at: IToken;
    message: string;
}

/** The tokens with braces that balance, and a report for each that was put in or left out. */
export interface MendedBraces {
    tokens: IToken[];
    problems: BraceProblem[];
}

interface Block {
    /** The brace, or the word after which one is missing. */
    at: IToken;
    /** Column of the statement that has the block. */
    column: number;
}

/**
 * Puts in the braces that are missing and leaves out those that open or close nothing.
 * @param end the last thing in the file, which may be a comment
 */
export function mendBraces(tokens: IToken[], open: TokenType, close: TokenType, end: IToken | undefined): MendedBraces {
    return isBalanced(tokens) ? { tokens, problems: [] } : new BraceMender(tokens, open, close).mend(end);
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
    private readonly statement = new OpenStatement();
    /** Column of the statement that the current line belongs to. */
    private column = 0;

    constructor(
        private readonly tokens: readonly IToken[],
        private readonly open: TokenType,
        private readonly close: TokenType,
    ) {}

    mend(end: IToken | undefined): MendedBraces {
        for (let index = 0; index < this.tokens.length; index++) {
            const token = this.tokens[index]!;
            const previous = this.tokens[index - 1];
            const next = this.tokens[index + 1];
            const beginsLine = previous === undefined || token.startLine! > previous.endLine!;
            if (beginsLine) {
                this.beginLine(previous, token, index);
            }
            const keeps =
                token.image === '{' ? this.openBlock(token, next) : token.image !== '}' || this.closeBlock(token, next, beginsLine);
            if (keeps) {
                this.mended.push(token);
            }
            this.statement.read(token);
        }
        this.closeMissing(this.blocks.length, end);
        return { tokens: this.mended, problems: this.problems };
    }

    private beginLine(previous: IToken | undefined, token: IToken, index: number): void {
        const column = token.startColumn!;
        if (previous === undefined) {
            this.column = column;
        } else if (token.image === '}') {
            this.closeMissing(this.countBlocks((block) => block.column > column));
            this.column = column;
        } else if (!this.statement.goesOnWith(token, this.tokens[index + 1]) || this.beginsBody(token, index)) {
            this.closeMissing(this.countBlocks((block) => block.column >= column));
            if (previous.image !== '{' && previous.image !== '}' && column > this.column && this.column > this.blockColumn()) {
                this.openMissing(previous);
            }
            this.column = column;
            this.statement.end();
        }
    }

    /** A line that could go on from the line before begins a body if another line of its column is a statement. */
    private beginsBody(token: IToken, index: number): boolean {
        if (token.startColumn! <= this.column) {
            return false;
        }
        for (let ahead = index + 1; ahead < this.tokens.length; ahead++) {
            const later = this.tokens[ahead]!;
            if (later.startLine! > this.tokens[ahead - 1]!.endLine! && later.startColumn! <= token.startColumn!) {
                return later.startColumn === token.startColumn && !isOpenAtStart(later);
            }
        }
        return false;
    }

    private blockColumn(): number {
        return this.blocks.at(-1)?.column ?? 0;
    }

    /** How many of the innermost blocks fulfil the condition. */
    private countBlocks(condition: (block: Block) => boolean): number {
        return this.blocks.length - 1 - this.blocks.findLastIndex((block) => !condition(block));
    }

    private openMissing(after: IToken): void {
        this.mended.push(impliedTokenAfter(after, this.open, '{'));
        this.blocks.push({ at: after, column: this.column });
        this.problems.push({ at: after, message: `a \`{\` is missing after \`${after.image}\`: the lines below it are indented deeper` });
    }

    /** One report for all that are missing at one place: the place is where a person adds them. */
    private closeMissing(count: number, place = this.mended.at(-1)): void {
        const missing = this.blocks.splice(this.blocks.length - count).filter((block) => block.at.image === '{');
        const last = this.mended.at(-1);
        if (last === undefined || place === undefined) {
            return;
        }
        for (let closed = 0; closed < count; closed++) {
            this.mended.push(impliedTokenAfter(last, this.close, '}'));
        }
        const [outermost] = missing;
        if (outermost) {
            const braces = missing.length === 1 ? 'a `}` is' : `${missing.length} \`}\` are`;
            this.problems.push({
                at: place,
                message: `${braces} missing after this: the \`{\` in line ${outermost.at.startLine} is not closed`,
            });
        }
    }

    /** Whether the brace opens a block; if not, it is reported. */
    private openBlock(brace: IToken, next: IToken | undefined): boolean {
        const twice = this.mended.at(-1)?.image === '{';
        const opens =
            !twice && (next === undefined || next.startLine === brace.startLine || next.image === '}' || next.startColumn! > this.column);
        if (opens) {
            this.blocks.push({ at: brace, column: this.column });
        } else {
            this.problems.push({ at: brace, message: 'this `{` opens nothing: the lines below it are not indented deeper' });
        }
        return opens;
    }

    /** Whether the brace closes a block; if not, it is reported. */
    private closeBlock(brace: IToken, next: IToken | undefined, beginsLine: boolean): boolean {
        const block = this.blocks.at(-1);
        if (block !== undefined && this.closes(block, brace, next, beginsLine)) {
            this.blocks.pop();
            return true;
        }
        this.problems.push({ at: brace, message: 'this `}` closes nothing' });
        return false;
    }

    private closes(block: Block, brace: IToken, next: IToken | undefined, beginsLine: boolean): boolean {
        if (beginsLine) {
            return block.column === brace.startColumn;
        }
        const inOneLine = block.at.startLine === brace.startLine;
        if (next === undefined) {
            return true;
        }
        if (next.startLine === brace.startLine) {
            return inOneLine || next.image === '}';
        }
        if (next.image === '}') {
            // Of two braces for one block the one in the column of the block is meant.
            return inOneLine || next.startColumn !== block.column;
        }
        return next.startColumn! <= block.column;
    }
}
