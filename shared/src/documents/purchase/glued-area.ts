/** How much is glued: joints, bands and nosings, layers. Square millimetres over all that is built. */
import type { Casework, Measure, Piece } from '../../casework/index.js';
import { joineryOf } from '../../joinery/index.js';
import { real } from '../../quantity/index.js';
import { areaOf } from '../../strength/index.js';
import { onlyBuilt } from '../only-built.js';

export interface GluedArea {
    /** What is glued in words, with its area; nothing of an area of zero. */
    readonly surfaces: readonly { readonly what: string; readonly area: number }[];
    readonly area: number;
}

/**
 * Of joints with glue the face in which the parts meet, of bands and nosings the face towards the board, of a laminated board the faces
 * between its layers: one for each layer but the last.
 */
export function gluedArea(evaluated: Casework): GluedArea {
    const { pieces, parts } = onlyBuilt(evaluated);
    const surfaces = [
        { what: 'joints', area: jointArea(evaluated) },
        { what: 'bands and nosings', area: stripArea(pieces, parts) },
        { what: 'layers', area: layerArea(pieces) },
    ].filter(({ area }) => area > 0);
    return { surfaces, area: surfaces.reduce((sum, { area }) => sum + area, 0) };
}

function jointArea(casework: Casework): number {
    const built = onlyBuilt(casework).parts;
    let sum = 0;
    for (const { joint: index, enters, receives, face, along, across } of joineryOf(casework).contacts.values()) {
        const joint = casework.joints[index];
        const [one, other] = [built.get(enters), built.get(receives)];
        if (!one || !other || !joint?.steps.some(({ does }) => does === 'glue')) continue;
        const area = (face.most[along] - face.least[along]) * (face.most[across] - face.least[across]);
        sum += area * Math.max(one.quantity, other.quantity);
    }
    return sum;
}

/** A nosing that hangs below its board is glued as far as the board is thick. */
function stripArea(pieces: readonly Piece[], parts: Casework['parts']): number {
    return pieces.reduce((sum, { role, part, finished, quantity }) => {
        if (role !== 'band' && role !== 'nosing') return sum;
        const widths = [finished.width, parts.get(part)?.sizes.core.thickness].flatMap((one) => (one ? [inMillimetres(one)] : []));
        const length = finished.length ? inMillimetres(finished.length) : 0;
        return sum + length * (widths.length > 0 ? Math.min(...widths) : 0) * quantity;
    }, 0);
}

function inMillimetres({ quantity: of }: Measure): number {
    return real.toNumber(of.value);
}

function sumOfAreas(pieces: readonly Piece[]): number {
    return pieces.reduce((sum, piece) => sum + areaOfPiece(piece) * piece.quantity, 0);
}

/** Between two layers there is one face of glue: all layers of a board but its largest. */
function layerArea(pieces: readonly Piece[]): number {
    const byPart = new Map<string, Piece[]>();
    for (const piece of pieces) if (piece.role === 'layer') byPart.set(piece.part, [...(byPart.get(piece.part) ?? []), piece]);
    return [...byPart.values()].reduce((sum, layers) => {
        const largest = Math.max(...layers.map((layer) => areaOfPiece(layer) * layer.quantity));
        return sum + sumOfAreas(layers) - largest;
    }, 0);
}

function areaOfPiece({ rough }: Piece): number {
    const area = areaOf(rough);
    return area ? real.toNumber(area.value) : 0;
}
