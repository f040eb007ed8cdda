/** Which parts a straight fastener is in, and how far in each. */
import type { Axis, FaceName, Part } from '../casework/index.js';
import type { Box, SpacePoint } from '../geometry/index.js';
import { tolerance } from '../geometry/index.js';
import { axes, displaced, sideAt } from './axes.js';
import type { Passage } from './feature.js';

export interface Ray {
    readonly head: SpacePoint;
    readonly direction: SpacePoint;
}

interface Through {
    readonly from: number;
    readonly to: number;
    readonly leavesBy: FaceName;
}

/**
 * The passages of a fastener through the two parts of a joint, in their order along it. Where the boxes of the two overlap there is the
 * wood of the entering part: the other is cut for it.
 */
export function passagesOf(ray: Ray, length: number, enters: Part, receives: Part): readonly Passage[] {
    const first = throughBox(ray, enters.box);
    const second = throughBox(ray, receives.box);
    const rest = first && second ? without(second, first, ray) : second;
    const found = [...(first ? [passage(ray, length, enters, first)] : []), ...(rest ? [passage(ray, length, receives, rest)] : [])];
    return found
        .filter(({ stretch: { from, to } }) => to - from > tolerance.fit)
        .sort((one, other) => one.stretch.from - other.stretch.from);
}

/** Where a ray runs in a box, from its head on; undefined where it misses. */
function throughBox({ head, direction }: Ray, { least, most }: Box): Through | undefined {
    let [from, to, leavesBy]: [number, number, FaceName] = [0, Number.POSITIVE_INFINITY, 'left'];
    for (const axis of axes) {
        const [place, slope] = [head[axis], direction[axis]];
        if (Math.abs(slope) < tolerance.angle) {
            if (place < least[axis] - tolerance.fit || place > most[axis] + tolerance.fit) return undefined;
            continue;
        }
        const [one, other] = [(least[axis] - place) / slope, (most[axis] - place) / slope];
        from = Math.max(from, Math.min(one, other));
        const leaves = Math.max(one, other);
        if (leaves < to) [to, leavesBy] = [leaves, sideAt(axis, slope)];
    }
    return to > from ? { from, to, leavesBy } : undefined;
}

/** What is left of a passage where another part takes its beginning or its end. */
function without(whole: Through, taken: Through, { direction }: Ray): Through | undefined {
    if (taken.from <= whole.from + tolerance.fit) {
        const from = Math.max(whole.from, taken.to);
        return from < whole.to ? { ...whole, from } : undefined;
    }
    if (taken.from >= whole.to) return whole;
    const axis = mainAxis(direction);
    return { from: whole.from, to: taken.from, leavesBy: sideAt(axis, direction[axis]) };
}

function mainAxis(direction: SpacePoint): Axis {
    return axes.reduce((best, axis) => (Math.abs(direction[axis]) > Math.abs(direction[best]) ? axis : best));
}

function passage(ray: Ray, length: number, part: Part, { from, to, leavesBy }: Through): Passage {
    const end = Math.min(to, length);
    const layer = layerAt(part, displaced(ray.head, ray.direction, end - tolerance.fit));
    return {
        part: part.path,
        stretch: { from, to: end },
        leaves: to,
        leavesBy,
        intoEdge: mainAxis(ray.direction) !== part.directions.thickness,
        ...(layer === undefined ? {} : { layer }),
    };
}

/** The layer in which a place lies; undefined in a board of one. */
function layerAt({ layers, directions: { thickness } }: Part, place: SpacePoint): number | undefined {
    if (layers.length < 2) return undefined;
    const index = layers.findIndex(
        ({ box }) =>
            box !== undefined &&
            place[thickness] >= box.least[thickness] - tolerance.fit &&
            place[thickness] <= box.most[thickness] + tolerance.fit,
    );
    return index < 0 ? undefined : index;
}
