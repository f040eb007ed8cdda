/** What is to be cut to length, and from which boards. All lengths of a job are whole numbers of one unit. */

/** Pieces of one length. */
export interface LengthPiece {
    readonly id: string;
    readonly length: number;
    readonly count: number;
}

/** Boards of one length, with what is trimmed off their ends already taken off. */
export interface LengthStock {
    readonly id: string;
    readonly length: number;
    /** Of one board, in any unit; what is on hand may cost nothing. */
    readonly cost: number;
    /** How many there are; without it as many as are needed. */
    readonly count?: number;
}

export interface LengthJob {
    readonly pieces: readonly LengthPiece[];
    readonly stock: readonly LengthStock[];
    /** What the saw takes away between two pieces. */
    readonly kerf: number;
}

/** Boards that are cut alike. */
export interface CutBoard {
    /** Which of the stock of the job. */
    readonly stock: number;
    /** How many boards are cut so. */
    readonly times: number;
    /** What is cut from one of them: which of the pieces of the job and how often, the longest first. */
    readonly cuts: readonly { readonly piece: number; readonly times: number }[];
    /** What is left of one of them after the last cut. */
    readonly left: number;
}

export interface LengthLayout {
    readonly boards: readonly CutBoard[];
    /** Of all boards. */
    readonly cost: number;
    /** How many of each piece found no place, in the order of the job. */
    readonly unplaced: readonly number[];
    /** No layout of all pieces that fit a board costs less. */
    readonly leastCost: number;
}

/** A way to cut one board: how often each kind of piece comes from it, by index. */
export interface Pattern {
    readonly stock: number;
    readonly kinds: readonly number[];
    readonly times: readonly number[];
}

/** A job with the kerf added to every piece and every board, which makes the saw's share exact; kinds by falling length. */
export interface LengthProblem {
    /** By kind. */
    readonly lengths: readonly number[];
    readonly stocks: readonly { readonly length: number; readonly cost: number; readonly count: number }[];
}
