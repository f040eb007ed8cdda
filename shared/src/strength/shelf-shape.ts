/** What a lying part weighs, and how deep it is at each place along it. */
import type { Casework, CurveModel, Part } from '../casework/index.js';
import { real } from '../quantity/index.js';
import { standardGravity } from './loads.js';
import { massOfPart } from './mass.js';

/** In newtons; 0 where no density is known. */
export function weightOf(casework: Casework, part: Part): number {
    const mass = massOfPart(casework, part);
    return mass ? real.toNumber(mass.value) * standardGravity : 0;
}

/** Of the core, front to back, where no curve says otherwise; not a number where it is not known. */
function coreDepth(part: Part): number {
    return part.sizes.core.width ? real.toNumber(part.sizes.core.width.quantity.value) : Number.NaN;
}

/** What bands and nosings add to the depth of the core. */
export function edgeDepth(part: Part): number {
    return part.box.most.y - part.box.least.y - coreDepth(part);
}

/** The depth of the core at a place from left to right in the frame of the boxes: as its front line over the width says, less what bands and nosings take off there. */
export function depthOf(casework: Casework, part: Part): (x: number) => number {
    const [core, edges] = [coreDepth(part), edgeDepth(part)];
    const model = part.frontCurve === undefined ? undefined : casework.curves.find(({ path }) => path === part.frontCurve);
    const line = model && frontOver(casework, model);
    if (!line) return () => core;
    return (x) => Math.max(1, line(x) - part.box.least.y - edges);
}

/** The depth of a line over the width, at a place from left to right in the frame of the boxes. */
function frontOver(casework: Casework, { curve, over, assembly }: CurveModel): ((x: number) => number) | undefined {
    const room = casework.assemblies.find(({ path }) => path === assembly)?.room;
    if (!curve || !room || over !== 'width') return undefined;
    return (x) => room.least.y + curve.valueAt(x - room.least.x).value;
}
