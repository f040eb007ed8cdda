import { tolerance } from '../tolerance.js';

/** A stretch of a curve, between distances, and a curvature of it whose sign holds all along. */
export interface Bend {
    readonly from: number;
    readonly to: number;
    readonly curvature: number;
}

/** Where the sign of the curvature changes from bend to bend; straight stretches between two bends count to the later one. */
export function inflectionsBetween(bends: readonly Bend[]): readonly number[] {
    const found: number[] = [];
    let sign = 0;
    let end = 0;
    for (const bend of bends) {
        if (Math.abs(bend.curvature) <= tolerance.curvature) {
            continue;
        }
        if (Math.sign(bend.curvature) === -sign) {
            found.push(end);
        }
        sign = Math.sign(bend.curvature);
        end = bend.to;
    }
    return found;
}
