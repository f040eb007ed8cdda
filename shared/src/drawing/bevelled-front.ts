/** A part whose front is bevelled has a line at each of its faces: which of them its template and its offsets are of. */
import type { Part } from '../casework/index.js';
import { real } from '../quantity/index.js';

export interface BevelledFront {
    /** The face that reaches further forward: its line is drawn. `inner`, `lower` */
    readonly deeper: string;
    readonly shallower: string;
    /** How far the line of the shallower face lies behind the other, in millimetres; the same all along. */
    readonly behind: number;
}

/** The two faces of a part with a bevelled front; undefined where it is square, or has one depth at both faces. */
export function bevelledFront({ front, directions, hand }: Part): BevelledFront | undefined {
    if (front?.form !== 'bevelled') return undefined;
    const difference = real.toNumber(front.high.quantity.value) - real.toNumber(front.low.quantity.value);
    if (difference === 0) return undefined;
    const [low, high] = directions.thickness === 'z' ? ['lower', 'upper'] : uprightFaces[hand ?? 'none'];
    const [deeper, shallower] = difference > 0 ? [high, low] : [low, high];
    return { deeper, shallower, behind: Math.abs(difference) };
}

/** From the left to the right. */
const uprightFaces = { left: ['outer', 'inner'], right: ['inner', 'outer'], none: ['left', 'right'] } as const;
