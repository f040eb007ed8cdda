// How a literal or a sign is spelt. Knows measures: no layout.
import { readMeasure } from 'casewright-shared/quantity';
import type { Piece } from './text-pieces.js';

/** The one spelling of a piece; what cannot be read keeps the user's. */
export function spell(piece: Piece): string {
    if (piece.text === '+/-') {
        return '±';
    }
    if (!piece.isLiteral) {
        return piece.text;
    }
    const reading = readMeasure(piece.text);
    return reading.ok ? reading.written.canonical : piece.text;
}
