/** How far forward a part with a curved front reaches at some height or width; its box only tells how far it reaches anywhere. */
import type { Casework, CurveModel, Part, Path } from '../../casework/index.js';
import { type Box, type Curve, ordinateRange, parallelCurve, type SpaceAxis } from '../../geometry/index.js';
import { real } from '../../quantity/index.js';

const abscissa: Readonly<Record<CurveModel['over'], SpaceAxis>> = { height: 'z', width: 'x' };

interface FrontLine {
    readonly curve: Curve;
    readonly axis: SpaceAxis;
    /** Where the curve's abscissa begins, in the frame of the boxes. */
    readonly origin: number;
}

/** The front lines that parts follow, by their paths. */
export type FrontLines = ReadonlyMap<Path, FrontLine>;

export function frontLinesOf(casework: Casework): FrontLines {
    const rooms = new Map(casework.assemblies.map(({ path, room }) => [path, room]));
    const lines = new Map<Path, FrontLine>();
    for (const { path, curve, over, assembly } of casework.curves) {
        const axis = abscissa[over];
        if (curve) lines.set(path, { curve, axis, origin: rooms.get(assembly)?.least[axis] ?? 0 });
    }
    return lines;
}

/** The back of a board that is bent to a line. */
function backOf({ sizes }: Part, front: Curve): Curve | undefined {
    const { thickness } = sizes.finished;
    const outcome = thickness && parallelCurve(front, real.toNumber(thickness.quantity.value));
    return outcome?.ok ? outcome.curve : undefined;
}

/** The part's box, as deep as the part is alongside the other box, and of a bent one as far back; the box itself where its front is straight. */
export function boxAlongside(lines: FrontLines, part: Part, other: Box): Box {
    const line = part.frontCurve === undefined ? undefined : lines.get(part.frontCurve);
    if (!line) return part.box;
    const { least, most } = part.box;
    const from = Math.max(least[line.axis], other.least[line.axis]);
    const to = Math.min(most[line.axis], other.most[line.axis]);
    const over = (curve: Curve, low: number, high: number) => ordinateRange(curve, low - line.origin, high - line.origin);
    const ends = [from, Math.max(from, to)] as const;
    const short = over(line.curve, least[line.axis], most[line.axis]).greatest.y - over(line.curve, ...ends).greatest.y;
    const back = part.bent ? backOf(part, line.curve) : undefined;
    const further = back ? over(back, ...ends).least.y - over(back, least[line.axis], most[line.axis]).least.y : 0;
    return { least: { ...least, y: least.y + further }, most: { ...most, y: most.y - short } };
}
