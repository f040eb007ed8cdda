/** One piece that is cut for a part, with what all pieces of the part have in common. */
import type { Edge, Grain, Hand, Layer, Piece, Size, Words } from '../model/casework.js';
import type { Construction } from './construction.js';
import { asWritten } from './piece-words.js';
import type { PlacedPart } from './placed-part.js';

export interface PieceContext {
    readonly construction: Construction;
    readonly part: PlacedPart;
    readonly layers: readonly Layer[];
    readonly edges: readonly Edge[];
    readonly quantity: number;
    readonly hand: Hand | undefined;
}

type Own = Omit<Piece, 'part' | 'quantity' | 'alike' | 'hand' | 'edges'>;

/** A piece with what all pieces of a part have in common. Its words are only needed on paper, and put together when they are asked for. */
export class PartPiece implements Piece {
    readonly id: string;
    readonly part: string;
    readonly role: Piece['role'];
    readonly name: string;
    readonly material: string | undefined;
    readonly quantity: number;
    readonly hand?: Hand;
    readonly grain: Grain;
    readonly finished: Size;
    readonly core: Size;
    readonly rough: Size;
    readonly notes: readonly Words[];
    readonly #frontLine: string;
    readonly #edgesInWords: () => readonly string[];
    #key: string | undefined;

    constructor({ part, hand, quantity }: PieceContext, own: Own, edgesInWords: () => readonly string[]) {
        this.id = own.id;
        this.part = part.path;
        this.role = own.role;
        this.name = own.name;
        this.material = own.material;
        this.quantity = quantity;
        this.grain = own.grain;
        this.finished = own.finished;
        this.core = own.core;
        this.rough = own.rough;
        this.notes = own.notes;
        const isStrip = own.role === 'band' || own.role === 'nosing';
        if (hand !== undefined && !isStrip) this.hand = hand;
        this.#edgesInWords = edgesInWords;
        this.#frontLine = isStrip ? '' : shapeOf(part);
    }

    get edges(): readonly string[] {
        return this.#edgesInWords();
    }

    get alike(): string {
        this.#key ??= [
            this.role,
            this.material ?? '',
            this.grain,
            this.hand ?? '',
            this.#frontLine,
            ...sizeKey(this.finished),
            ...sizeKey(this.core),
            ...sizeKey(this.rough),
            ...this.edges,
            ...this.notes.map(asWritten),
        ].join('|');
        return this.#key;
    }
}

/** The line of its front, and how deep that is at both ends: of two shelves that are alike one may be the mirror image of the other. */
function shapeOf(part: PlacedPart): string {
    const line = part.frontLaw;
    const ends = line && part.ends;
    if (!line?.curve || !ends) return '';
    const along = ends[line.axis];
    const depths = [along.lo, along.hi].map((place) => (line.curve?.valueAt(place).value ?? 0) - ends.y.lo);
    return [line.name, ...depths.map((depth) => depth.toFixed(6))].join(' ');
}

/** Sizes exactly; approximate ones to a millionth of a millimetre, beyond which only the arithmetic differs. */
function sizeKey(size: Size): readonly string[] {
    return [size.length, size.width, size.thickness].map((measure) => {
        if (!measure) return '?';
        const { value } = measure.quantity;
        return typeof value === 'number' ? value.toFixed(6) : value.toString();
    });
}
