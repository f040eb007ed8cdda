// From statements to lines: what shares a line, how deep it stands, where a long line breaks.
// Knows the tree of statements and the roles of pieces: columns are aligned elsewhere.

import { INDENTATION, LINE_WIDTH, type Line, type Placed } from './lines.js';
import type { Roles } from './roles.js';
import { BETWEEN_MEMBERS, Spacing } from './spacing.js';
import { spell } from './spelling.js';
import { type Block, type Item, isBlock, type Part, type Statement } from './statement-tree.js';
import type { Piece } from './text-pieces.js';

/** What the layout needs of a text besides its statements. */
export interface SourceText {
    text: string;
    roles: Roles;
    /** Offsets of syntax errors: a statement with one in it stays as it is. */
    errors: readonly number[];
}

/** The lines of the formatted text, not yet aligned. */
export function layOut(items: readonly Item[], source: SourceText): Line[] {
    const layout = new Layout(source);
    layout.items(items, 0, 0, undefined);
    return layout.lines;
}

/** A row of pieces that share a line if it is not too long. */
interface Row {
    pieces: RowPiece[];
    indent: number;
}

interface RowPiece extends Placed {
    /** Whether a line may begin with it: one did so in the source, or it is a reason. */
    mayBreak: boolean;
    /** Whether a line must begin with it: a comment stands before it. */
    mustBreak: boolean;
    /** The comment at the end of its line. */
    comment?: Piece;
}

class Layout {
    readonly lines: Line[] = [];
    private lastGroup = 0;

    constructor(private readonly source: SourceText) {}

    /** @param before the piece before the first item, if a blank line may stand between them */
    items(items: readonly Item[], indent: number, group: number, before: Piece | undefined): void {
        let last = before;
        for (const item of items) {
            const first = item.kind === 'comment' ? item.comment : firstPiece(item);
            const blankBefore = last !== undefined && first.line - endLine(last) > 1;
            if (item.kind === 'comment') {
                this.lines.push({ group, indent, blankBefore, pieces: [plain(item.comment)], isCopied: false });
            } else {
                this.statement(item, indent, group, blankBefore);
            }
            last = lastPiece(item);
        }
    }

    private statement(statement: Statement, indent: number, group: number, blankBefore: boolean): void {
        const isCopied = this.hasErrorOutsideBlocks(statement);
        const start = this.lines.length;
        const writer = new RowWriter(this.source, statement, indent, isCopied);
        for (const part of statement.parts) {
            if (!isBlock(part)) {
                writer.add(part);
            } else if (isOnOneLine(part)) {
                writer.addBlockOnOneLine(part);
            } else {
                writer.add(part.open);
                const items = this.endRow(writer, group, part);
                this.items(items, indent + 1, ++this.lastGroup, undefined);
                writer.startAfterBlock(part.close);
            }
        }
        this.lines.push(...writer.finish(group));
        const [first] = this.lines.slice(start);
        if (first) {
            first.blankBefore = blankBefore;
        }
        if (this.lines.length === start + 1 && !isCopied) {
            first!.value = this.valueOf(statement, first!);
        }
    }

    /** Ends the row with its brace and the comment beside it; answers with the items that remain. */
    private endRow(writer: RowWriter, group: number, block: Block): readonly Item[] {
        const [comment, ...rest] = block.items;
        const isBeside = comment?.kind === 'comment' && comment.comment.line === block.open.line;
        if (isBeside) {
            writer.add(comment.comment);
        }
        this.lines.push(...writer.finish(group));
        return isBeside ? rest : block.items;
    }

    private valueOf(statement: Statement, line: Line): Line['value'] {
        const { roles } = this.source;
        const first = firstPiece(statement);
        const value = roles.values.get(first.offset);
        if (
            value === undefined ||
            line.pieces
                .slice(1)
                .some(
                    ({ piece, gap }) =>
                        gap === BETWEEN_MEMBERS && roles.memberStarts.has(piece.offset) && !this.isInBlock(statement, piece),
                )
        ) {
            return undefined;
        }
        const index = line.pieces.findIndex(({ piece }) => piece.offset === value);
        return index < 1 ? undefined : { index, of: first.text === 'edge' ? 'edge' : 'property' };
    }

    private isInBlock(statement: Statement, piece: Piece): boolean {
        return statement.parts.some((part) => isBlock(part) && part.open.offset < piece.offset && piece.offset < part.close.offset);
    }

    private hasErrorOutsideBlocks(statement: Statement): boolean {
        const first = firstPiece(statement);
        const last = lastPiece(statement);
        const inner = statement.parts.filter((part) => isBlock(part)).filter((block) => !isOnOneLine(block));
        return this.source.errors.some(
            (offset) =>
                first.offset <= offset &&
                offset <= last.end &&
                !inner.some(({ open, close }) => open.offset < offset && offset < close.offset),
        );
    }
}

/** Collects a row and breaks it into lines. */
class RowWriter {
    private row: Row;
    private spacing: Spacing;
    private previous: Piece | undefined;
    private mustBreak = false;

    constructor(
        private readonly source: SourceText,
        statement: Statement,
        private readonly indent: number,
        private readonly isCopied: boolean,
    ) {
        const [first, second] = statement.parts;
        this.row = { pieces: [], indent };
        this.spacing = new Spacing(source.roles, textOf(first), textOf(second));
    }

    add(piece: Piece, gap?: string): void {
        const { previous } = this;
        if (piece.isComment && !this.isCopied) {
            this.addComment(piece);
            return;
        }
        this.row.pieces.push({
            piece,
            text: this.isCopied ? piece.text : spell(piece),
            gap:
                previous === undefined
                    ? ''
                    : this.isCopied
                      ? this.copiedGap(previous, piece)
                      : (gap ?? this.spacing.between(previous, piece)),
            mayBreak: previous !== undefined && (piece.line > endLine(previous) || piece.text === 'because'),
            mustBreak: this.mustBreak,
        });
        this.mustBreak = false;
        this.previous = piece;
    }

    addBlockOnOneLine(block: Block): void {
        this.add(block.open);
        block.items.forEach((item, index) => {
            if (item.kind === 'statement') {
                this.addStatementOnOneLine(item, index === 0 ? ' ' : '; ');
            }
        });
        this.add(block.close, ' ');
    }

    /** Ends the row: what follows stands on another line. */
    finish(group: number): Line[] {
        const lines: Line[] = [];
        const { pieces, indent } = this.row;
        const isLong = pieces.reduce((width, { text, gap }) => width + gap.length + text.length, indent * INDENTATION) > LINE_WIDTH;
        for (const placed of pieces) {
            const last = lines.at(-1);
            const breaks = !this.isCopied && (placed.mustBreak || (isLong && placed.mayBreak));
            if (last && !breaks) {
                last.pieces.push(placed);
                last.comment = placed.comment;
            } else {
                lines.push({
                    group,
                    indent: last ? indent + 1 : indent,
                    blankBefore: false,
                    pieces: [last ? { ...placed, gap: '' } : placed],
                    comment: placed.comment,
                    isCopied: this.isCopied,
                });
            }
        }
        this.row = { pieces: [], indent };
        return lines;
    }

    /** Goes on after a block whose brace begins a line. */
    startAfterBlock(close: Piece): void {
        this.previous = undefined;
        this.add(close);
    }

    private addStatementOnOneLine(statement: Statement, gapBefore: string): void {
        const outer = this.spacing;
        const [first, second] = statement.parts;
        this.spacing = new Spacing(this.source.roles, textOf(first), textOf(second));
        statement.parts.forEach((part, index) => {
            if (isBlock(part)) {
                this.addBlockOnOneLine(part);
            } else {
                this.add(part, index === 0 ? gapBefore : undefined);
            }
        });
        this.spacing = outer;
    }

    private addComment(comment: Piece): void {
        const last = this.row.pieces.at(-1);
        if (last && this.previous && comment.line === endLine(this.previous) && !last.comment && !last.piece.isComment) {
            last.comment = comment;
        } else {
            this.row.pieces.push({ ...plain(comment), mayBreak: false, mustBreak: true });
        }
        this.mustBreak = true;
    }

    /** What stands between two pieces in the source; further lines move with the first. */
    private copiedGap(previous: Piece, piece: Piece): string {
        const gap = this.source.text.slice(previous.end, piece.offset);
        const first = this.row.pieces[0]?.piece ?? piece;
        const shift = this.indent * INDENTATION - first.column;
        return gap.replace(
            /\n([ \t]*)(?=[^\s]|$)/g,
            (_, indentation: string) => `\n${' '.repeat(Math.max(0, indentation.length + shift))}`,
        );
    }
}

/** A block that the user wrote on one line stays on one line. */
function isOnOneLine(block: Block): boolean {
    return block.open.line === block.close.line && block.items.every((item) => item.kind === 'statement');
}

function plain(piece: Piece): Placed {
    return { piece, text: piece.text, gap: '' };
}

function textOf(part: Part | undefined): string {
    return part === undefined || isBlock(part) ? '' : part.text;
}

function firstPiece(statement: Statement): Piece {
    const [first] = statement.parts;
    return first === undefined || isBlock(first) ? first!.open : first;
}

function lastPiece(item: Item): Piece {
    if (item.kind === 'comment') {
        return item.comment;
    }
    const last = item.parts.at(-1)!;
    return isBlock(last) ? last.close : last;
}

function endLine(piece: Piece): number {
    return piece.line;
}
