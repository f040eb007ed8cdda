/** Pieces by what they are cut from. */
import type { Casework, Piece } from '../casework/index.js';
import { materialOrder } from './material-words.js';

/** The pieces of each material, materials in the order of the cut list, pieces in that in which they were built. */
export function piecesByMaterial(casework: Casework): readonly (readonly [material: string, pieces: readonly Piece[]])[] {
    const byMaterial = new Map<string, Piece[]>();
    for (const piece of casework.pieces) {
        if (piece.material === undefined) continue;
        const known = byMaterial.get(piece.material);
        if (known) known.push(piece);
        else byMaterial.set(piece.material, [piece]);
    }
    const order = materialOrder(casework);
    return [...byMaterial].sort(([one], [other]) => order(one, other));
}

/** Pieces that are truly identical together, in the order of the first of each. */
export function alikePieces(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
    const batches = new Map<string, Piece[]>();
    for (const piece of pieces) {
        const known = batches.get(piece.alike);
        if (known) known.push(piece);
        else batches.set(piece.alike, [piece]);
    }
    return [...batches.values()];
}
