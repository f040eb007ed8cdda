/**
 * Every cut in figures, for programs: where it is on the side of its part from which it is cut.
 *
 * Two edges of the side are the axes, each from its datum: `u` along the part and `v` across it, in millimetres, and `in` square into the
 * wood. Left and right parts have equal figures; `turns` says whether, looking at the side, u turns to v against the clock or with it.
 */
import type { Axis, Casework, FaceName, Part } from '../../casework/index.js';
import type { SpacePoint } from '../../geometry/index.js';
import { datums, type Feature, type FeatureSolid, joineryOf } from '../../joinery/index.js';
import type { JsonObject, JsonValue } from '../json-value.js';

/** The cuts of a casework, in the order of the text. */
export function featureData(casework: Casework): readonly JsonObject[] {
    return joineryOf(casework).features.flatMap((feature) => {
        const part = casework.parts.get(feature.part);
        return part ? [dataOf(casework, feature, part)] : [];
    });
}

function dataOf(casework: Casework, feature: Feature, part: Part): JsonObject {
    const { does, side, depth, cause, solid } = feature;
    const frame = frameOf(part, side);
    const joint = cause.is === 'joint' ? casework.joints[cause.joint] : undefined;
    const met = joint && (joint.enters === part.path ? joint.receives : joint.enters);
    return {
        part: part.path,
        hand: part.hand ?? null,
        side,
        does,
        meets: met ?? null,
        joint: joint ? (joint.recipe === '' ? null : joint.recipe) : null,
        depth,
        frame: { u: datums[frame.u], v: datums[frame.v], turns: frame.isAgainstClock ? 'against the clock' : 'with the clock' },
        shape: shapeOf(solid, frame),
    };
}

interface Frame {
    readonly part: Part;
    readonly u: Axis;
    readonly v: Axis;
    /** The axis into the wood, and which way it runs. */
    readonly into: Axis;
    readonly way: 1 | -1;
    readonly surface: number;
    readonly isAgainstClock: boolean;
}

const cyclic: readonly Axis[] = ['x', 'y', 'z'];

/** The longer direction of the part is u: its length, or its width where the side is an end. */
function frameOf(part: Part, side: FaceName): Frame {
    const { length, width, thickness } = part.directions;
    const into = cyclic.find((axis) => sideIsAcross(side, axis))!;
    const [u, v] = [length, width, thickness].filter((axis) => axis !== into) as [Axis, Axis];
    const isLow = datums[into] === side;
    // u x v looks up its axis where the three are in cyclic order; it has to look out of the wood
    const isCyclic = (cyclic.indexOf(u) + 1) % 3 === cyclic.indexOf(v);
    const surface = isLow ? part.box.least[into] : part.box.most[into];
    return { part, u, v, into, way: isLow ? 1 : -1, surface, isAgainstClock: isCyclic !== isLow };
}

function sideIsAcross(side: FaceName, axis: Axis): boolean {
    const sides = { x: ['left', 'right'], y: ['back', 'front'], z: ['bottom', 'top'] } as const;
    return sides[axis].some((one) => one === side);
}

function shapeOf(solid: FeatureSolid, frame: Frame): JsonObject {
    switch (solid.is) {
        case 'box': {
            const [one, other] = [placeIn(solid.box.least, frame), placeIn(solid.box.most, frame)];
            const each = (pick: (a: number, b: number) => number) => one.map((value, index) => pick(value, other[index]!));
            return { is: 'block', from: each(Math.min), to: each(Math.max) };
        }
        case 'cylinder': {
            const { start, direction, diameter, length, endDiameter } = solid;
            const round = { is: 'hole', start: placeIn(start, frame), direction: directionIn(direction, frame), diameter, length };
            return endDiameter === undefined ? round : { ...round, endDiameter };
        }
        case 'segment': {
            const { middle, along, into, radius, depth, thickness } = solid;
            return {
                is: 'disc slot',
                middle: placeIn(middle, frame),
                along: directionIn(along, frame),
                direction: directionIn(into, frame),
                radius,
                depth,
                thickness,
            };
        }
        case 'prism': {
            const at = cyclic.indexOf(solid.along);
            const [first, second] = [cyclic[(at + 1) % 3]!, cyclic[(at + 2) % 3]!];
            const end = (place: number): JsonValue =>
                solid.section.map(({ x, y }) => {
                    const corner = { x: 0, y: 0, z: 0, [solid.along]: place, [first]: x, [second]: y };
                    return placeIn(corner, frame);
                });
            return { is: 'prism', ends: [end(solid.over.from), end(solid.over.to)] };
        }
    }
}

/** As u, v, in. */
function placeIn(place: SpacePoint, { part: { box }, u, v, into, way, surface }: Frame): readonly number[] {
    return [place[u] - box.least[u], place[v] - box.least[v], way * (place[into] - surface)];
}

function directionIn(direction: SpacePoint, { u, v, into, way }: Frame): readonly number[] {
    return [direction[u], direction[v], way * direction[into]];
}
