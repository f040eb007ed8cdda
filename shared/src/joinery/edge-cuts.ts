/** Rabbets and grooves along the edges of a part, as its edgings say them. */
import type { Casework, EdgeStep, FaceName, Part } from '../casework/index.js';
import { type Interval, tolerance } from '../geometry/index.js';
import { middleOf, oppositeSide, placeOfSide, sideAt, spanOf, wayOf, withSpan } from './axes.js';
import type { Feature } from './feature.js';
import { millimetres } from './layout.js';

export function edgeCutsOf({ parts }: Casework, part: Part): readonly Feature[] {
    if (part.bent) return [];
    return part.edges.flatMap(({ name, steps }, edge) =>
        steps.flatMap((step, index) => {
            if (step.does !== 'rabbet' && step.does !== 'groove') return [];
            const other = step.for === undefined ? undefined : parts.get(step.for);
            return cutAlong(part, name, step, other, { is: 'edge', edge, step: index }) ?? [];
        }),
    );
}

/** Undefined where its sizes are not known, or where nothing says in which face it is cut. */
function cutAlong(part: Part, edge: FaceName, step: EdgeStep, other: Part | undefined, cause: Feature['cause']): Feature | undefined {
    const [depth, width] = [millimetres(step.amount), millimetres(step.width)];
    const face = faceOfCut(part, other);
    if (depth === undefined || width === undefined || !face) return undefined;
    const { axis } = wayOf(edge);
    const { axis: thickness } = wayOf(face);
    const span = step.does === 'rabbet' ? fromSide(part, edge, width) : other && spanOf(other.box, axis);
    if (!span) return undefined;
    const box = withSpan(withSpan(part.box, thickness, fromSide(part, face, depth)), axis, span);
    return { does: step.does as 'rabbet' | 'groove', part: part.path, side: face, cause, solid: { is: 'box', box }, depth };
}

/** The face towards the part that it is cut for; of a side that names none, the inner one. */
function faceOfCut({ box, directions: { thickness }, hand }: Part, other: Part | undefined): FaceName | undefined {
    const offset = other ? middleOf(spanOf(other.box, thickness)) - middleOf(spanOf(box, thickness)) : 0;
    if (Math.abs(offset) > tolerance.fit) return sideAt(thickness, offset);
    return thickness === 'x' && hand ? oppositeSide(hand) : undefined;
}

function fromSide({ box }: Part, side: FaceName, deep: number): Interval {
    const at = placeOfSide(box, side);
    return wayOf(side).way < 0 ? { from: at, to: at + deep } : { from: at - deep, to: at };
}
