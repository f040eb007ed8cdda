/** Boxes of parts in millimetres, from the corner of the outermost case. */
import { type Box, boxBetween } from '../../geometry/index.js';
import type { PlacedPart } from './placed-part.js';

/** The box of a part; undefined while an extent is unknown. */
export function boxOf(part: PlacedPart): Box | undefined {
    const { ends } = part;
    return ends && boxBetween({ x: ends.x.lo, y: ends.y.lo, z: ends.z.lo }, { x: ends.x.hi, y: ends.y.hi, z: ends.z.hi });
}
