/** What is to be cut from sheets, and from which. All lengths of a job are in one unit. */

/** Rectangular blanks of one size. */
export interface Blank {
    readonly id: string;
    /** Across the grain of the sheet. */
    readonly width: number;
    /** Along the grain of the sheet. */
    readonly height: number;
    readonly count: number;
    /** Whether it may lie across the grain: not where the grain shows. */
    readonly mayTurn: boolean;
}

/** Sheets of one size, with their trimmed edges already taken off. */
export interface StockSize {
    readonly id: string;
    readonly width: number;
    readonly height: number;
    /** Of one sheet, in any unit; an offcut on hand may cost nothing. */
    readonly cost: number;
    /** How many there are; without it as many as are needed. */
    readonly count?: number;
}

export interface SheetJob {
    readonly blanks: readonly Blank[];
    readonly stock: readonly StockSize[];
    /** What the saw takes away between two pieces. */
    readonly kerf: number;
    /** How many times a piece may be turned by a quarter between cuts, not counting a last trim; without it as often as needed. */
    readonly stages?: number;
}

/** A piece of a sheet: a blank, an offcut, or what further cuts divide. Measures are without the kerf. */
export type Piece = Region & (BlankPiece | OffcutPiece | CutPiece);

/** Where a piece lies, from the corner of the sheet. */
export interface Region {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
}

export interface BlankPiece {
    readonly kind: 'blank';
    /** Which of the blanks of the job. */
    readonly blank: number;
    readonly turned: boolean;
}

export interface OffcutPiece {
    readonly kind: 'offcut';
}

/** Cuts from edge to edge, all in one direction, that part a piece into others. */
export interface CutPiece {
    readonly kind: 'cut';
    /** `width`: the pieces lie side by side, so that the cuts run along the height. */
    readonly along: 'width' | 'height';
    readonly pieces: readonly Piece[];
}

export interface LaidOutSheet {
    /** Which of the stock sizes of the job. */
    readonly stock: number;
    readonly whole: Piece;
}

export interface SheetLayout {
    readonly sheets: readonly LaidOutSheet[];
    /** Of all sheets. */
    readonly cost: number;
    /** How many of each blank found no place, in the order of the job. */
    readonly unplaced: readonly number[];
    /** No layout of the whole job costs less. */
    readonly leastCost: number;
}
