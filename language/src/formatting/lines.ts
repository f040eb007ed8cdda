// The lines of a formatted text before their columns are aligned. Knows pieces and indentation: no roles, no tree.
import type { Piece } from './text-pieces.js';

export const INDENTATION = 4;
/** A line that is longer is broken where it may be. */
export const LINE_WIDTH = 100;

/** A piece with what stands before it on its line. */
export interface Placed {
    piece: Piece;
    text: string;
    gap: string;
}

export interface Line {
    /** The block whose direct line it is. */
    group: number;
    indent: number;
    blankBefore: boolean;
    pieces: Placed[];
    /** The comment at its end. */
    comment?: Piece | undefined;
    /** For a property or an edge alone on its line: the index of the piece at which its value begins, and which of the two it is. */
    value?: { index: number; of: 'property' | 'edge' } | undefined;
    /** Whether it is copied from the source: nothing in it is aligned. */
    isCopied: boolean;
}

/** Columns from the begin of the line to its end, without its comment. */
export function widthOf(line: Line): number {
    return line.pieces.reduce((width, { text, gap }) => width + gap.length + text.length, line.indent * INDENTATION);
}
