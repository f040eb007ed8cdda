/** The front of a part: the line that it follows, in millimetres from the corner of its outermost case. */
import type { Casework, Part } from '../casework/index.js';
import { type Curve, type Interval, type Point, parallelCurve } from '../geometry/index.js';
import { real } from '../quantity/index.js';
import { frameOf } from './board-frame.js';

/** How near the polygon of a solid keeps to a curve, in millimetres: the fit tolerance, which no shop tool can see. */
const nearness = 0.01;

/** A front that is not square and straight. */
export interface PartFront {
    /** The points of its line over a stretch along the part, at its deeper face, behind the finished front by an inset. Undefined where the inset leaves none. */
    pointsOver(over: Interval, inset: number): readonly Point[] | undefined;
    /** How far the front goes forward on the way through the board, for each millimetre; 0 where it is square to the faces. */
    readonly lean: number;
    /** The face at which `pointsOver` holds. */
    readonly deeper: 'low' | 'high';
}

/**
 * The front of a part that follows a line along its edge or meets one across its thickness.
 * @returns undefined where it is straight and square; 'unknown' where its line could not be made, which has been reported
 */
export function frontOf(casework: Casework, part: Part): PartFront | undefined | 'unknown' {
    const { lean, deeper } = leanOf(part);
    if (part.frontCurve === undefined) {
        if (lean === 0) return undefined;
        const depth = part.box.most.y;
        return {
            lean,
            deeper,
            pointsOver: ({ from, to }, inset) => [
                { x: from, y: depth - inset },
                { x: to, y: depth - inset },
            ],
        };
    }
    const model = casework.curves.find(({ path }) => path === part.frontCurve);
    const corner = casework.assemblies.find(({ path }) => path === model?.assembly)?.room?.least;
    const curve = model?.curve;
    if (!model || !curve || !corner) return 'unknown';
    const start = corner[frameOf(part).along];
    const insets = new Map<number, Curve | undefined>();
    const insetBy = (inset: number): Curve | undefined => {
        if (inset === 0) return curve;
        if (!insets.has(inset)) {
            const outcome = parallelCurve(curve, inset);
            insets.set(inset, outcome.ok ? outcome.curve : undefined);
        }
        return insets.get(inset);
    };
    return {
        lean,
        deeper,
        pointsOver: ({ from, to }, inset) => {
            const line = insetBy(inset);
            return line && pointsOf(line, { from: from - start, to: to - start }).map(({ x, y }) => ({ x: x + start, y: y + corner.y }));
        },
    };
}

function leanOf({ front, box, directions }: Part): { readonly lean: number; readonly deeper: 'low' | 'high' } {
    if (front?.form !== 'bevelled') return { lean: 0, deeper: 'low' };
    const { thickness } = directions;
    const difference = real.toNumber(front.high.quantity.value) - real.toNumber(front.low.quantity.value);
    return { lean: difference / (box.most[thickness] - box.least[thickness]), deeper: difference > 0 ? 'high' : 'low' };
}

/** Points of a curve from one abscissa to another, as near to it as a solid keeps; straight on past its ends at their own depth. */
function pointsOf(curve: Curve, { from, to }: Interval): readonly Point[] {
    const least = (to - from) * 1e-6;
    const inside = curve.sample(nearness).filter(({ x }) => x > from + least && x < to - least);
    return [{ x: from, y: curve.valueAt(from).value }, ...inside, { x: to, y: curve.valueAt(to).value }];
}
