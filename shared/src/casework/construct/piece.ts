/** One piece that is cut for a part, with what all pieces of the part have in common. */
import type { Edge, Grain, Hand, Layer, Piece, Size } from '../model/casework.js';
import type { Construction } from './construction.js';
import type { PlacedPart } from './placed-part.js';

export interface PieceContext {
    readonly construction: Construction;
    readonly part: PlacedPart;
    readonly layers: readonly Layer[];
    readonly edges: readonly Edge[];
    readonly quantity: number;
    readonly hand: Hand | undefined;
}

/** A piece with what all pieces of a part have in common, and the key of those that are truly identical. */
export function piece(context: PieceContext, own: Omit<Piece, 'part' | 'quantity' | 'alike' | 'hand'> & { readonly grain: Grain }): Piece {
    const { part, hand, quantity } = context;
    const isHanded = hand !== undefined && own.role !== 'band' && own.role !== 'nosing';
    const line = part.extents.value?.y.hi.line;
    const shape = own.role === 'layer' || own.role === 'core' || own.role === 'solid' ? (line?.name ?? '') : '';
    const key = [
        own.role,
        own.material ?? '',
        own.grain,
        isHanded ? hand : '',
        shape,
        ...sizeKey(own.finished),
        ...sizeKey(own.core),
        ...sizeKey(own.rough),
        ...own.edges,
        ...own.notes,
    ];
    return { ...own, part: part.path, quantity, alike: key.join('|'), ...(isHanded ? { hand } : {}) };
}

/** Sizes exactly; approximate ones to a millionth of a millimetre, beyond which only the arithmetic differs. */
function sizeKey(size: Size): readonly string[] {
    return [size.length, size.width, size.thickness].map((measure) => {
        if (!measure) return '?';
        const { value } = measure.quantity;
        return typeof value === 'number' ? value.toFixed(6) : value.toString();
    });
}
