/** How far forward there is wood: the real front of a part, where its box reaches to the deepest place of a curve. */
import type { Casework, Part, Path } from '../casework/index.js';
import { type Box, type Interval, ordinateRange } from '../geometry/index.js';
import { real } from '../quantity/index.js';
import { lengthOf, spanOf } from './axes.js';

/** The curves and cases of a casework by their paths. */
export interface FrontLines {
    readonly curves: ReadonlyMap<Path, Casework['curves'][number]>;
    readonly corners: ReadonlyMap<Path, Box | undefined>;
}

export function frontLinesOf({ curves, assemblies }: Casework): FrontLines {
    return {
        curves: new Map(curves.map((curve) => [curve.path, curve])),
        corners: new Map(assemblies.map(({ path, room }) => [path, room])),
    };
}

/** The least y to which a part reaches forward everywhere in a region, in millimetres. */
export function frontWithin(lines: FrontLines, part: Part, region: Box): number {
    const { front } = part;
    let limit = part.box.most.y;
    if (front) {
        const [low, high] = [front.low, front.high].map((measure) => part.box.least.y + real.toNumber(measure.quantity.value));
        const { thickness } = part.directions;
        // across the thickness the line is taken as straight between the two faces
        limit = Math.min(limit, ...ends(spanOf(region, thickness), spanOf(part.box, thickness), low ?? limit, high ?? limit));
    }
    const curve = alongCurve(lines, part, region);
    return curve === undefined ? limit : Math.min(limit, curve);
}

/** What a line from `low` to `high` over a whole span is at the ends of a part of it. */
function ends(part: Interval, whole: Interval, low: number, high: number): readonly [number, number] {
    const at = (place: number) => {
        const share = lengthOf(whole) > 0 ? Math.min(1, Math.max(0, (place - whole.from) / lengthOf(whole))) : 0;
        return low + share * (high - low);
    };
    return [at(part.from), at(part.to)];
}

/** The least depth of the line that a part's front follows along its edge. */
function alongCurve({ curves, corners }: FrontLines, part: Part, region: Box): number | undefined {
    const line = part.frontCurve === undefined ? undefined : curves.get(part.frontCurve);
    const corner = line && corners.get(line.assembly)?.least;
    if (!line?.curve || !corner || part.bent) return undefined;
    const axis = line.over === 'height' ? 'z' : 'x';
    const { span } = line.curve;
    const clamped = (place: number) => Math.min(span.to, Math.max(span.from, place - corner[axis]));
    const { from, to } = spanOf(region, axis);
    return corner.y + ordinateRange(line.curve, clamped(from), clamped(to)).least.y;
}
