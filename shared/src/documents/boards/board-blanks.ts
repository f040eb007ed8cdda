/** How each piece of solid wood is got out of boards: which way it lies in the board, from how many strips, how often the strip is resawn. */
import type { Piece } from '../../casework/index.js';
import { inMillimetres } from '../sheets/sheet-jobs.js';
import type { Milling } from './milling.js';

/** A blank as it is ripped and crosscut, in millimetres, and what is made of it. */
export interface BoardBlank {
    /** Pieces that are truly alike. */
    readonly pieces: readonly Piece[];
    /** How many blanks are cut, for all of them. */
    readonly count: number;
    readonly length: number;
    /** Across the board. */
    readonly width: number;
    /** What the blank, or each strip resawn from it, is planed or sanded to. */
    readonly planedTo: number;
    readonly way: BoardWay;
}

export type BoardWay =
    /** Its width lies across the board. */
    | { readonly is: 'flat' }
    /** Ripped from the edge of the board: its thickness lies across the board, its width through it. */
    | { readonly is: 'onEdge' }
    /** Ripped flat, and sawn through its thickness into so many strips. */
    | { readonly is: 'resawn'; readonly strips: number; readonly sawnTo: number }
    /** So many strips are glued edge to edge to one blank. */
    | { readonly is: 'gluedUp'; readonly strips: number }
    /** So many boards are glued face to face. */
    | { readonly is: 'laminated'; readonly layers: number };

/** The boards that blanks are taken from, in millimetres. */
export interface BoardStock {
    /** As it is bought. */
    readonly roughThickness: number;
    /** Flat on both faces. */
    readonly surfaced: number;
    /** What every board has across, once its edges are straight, and what the widest have. */
    readonly leastWidth: number;
    readonly greatestWidth: number;
}

const enough = 1e-6;

/** Undefined where the size of the pieces is not known. */
export function boardBlank(pieces: readonly Piece[], stock: BoardStock, milling: Milling, kerf: number): BoardBlank | undefined {
    const [{ rough, role }] = pieces as readonly [Piece, ...Piece[]];
    if (!rough.length || !rough.width || !rough.thickness) return undefined;
    const [length, width, thickness] = [inMillimetres(rough.length), inMillimetres(rough.width), inMillimetres(rough.thickness)];
    const number = pieces.reduce((sum, piece) => sum + piece.quantity, 0);
    const of = { pieces, planedTo: thickness };
    if (role === 'band' && width <= stock.surfaced + enough) {
        return { ...of, count: number, length, width: thickness + milling.face, way: { is: 'onEdge' } };
    }
    if (role === 'band' || role === 'nosing') {
        const sawnTo = thickness + milling.face;
        const strips = Math.floor((stock.surfaced + kerf + enough) / (sawnTo + kerf));
        const across = width + milling.face;
        if (strips >= 2) return { ...of, count: Math.ceil(number / strips), length, width: across, way: { is: 'resawn', strips, sawnTo } };
        if (thickness <= stock.surfaced + enough) return { ...of, count: number, length, width: across, way: { is: 'flat' } };
    }
    const layers = Math.ceil((thickness - enough) / stock.surfaced);
    const whole = width + milling.wide;
    const long = length + milling.long;
    const strips = whole <= stock.greatestWidth + enough ? 1 : Math.ceil(width / Math.max(enough, stock.leastWidth - milling.wide));
    const way: BoardWay = layers > 1 ? { is: 'laminated', layers } : strips > 1 ? { is: 'gluedUp', strips } : { is: 'flat' };
    return { ...of, count: number * layers * strips, length: long, width: width / strips + milling.wide, way };
}
