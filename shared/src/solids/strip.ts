/** Bands and nosings as they lie on the edges of a part. */
import type { Casework, Edge, EdgeName, EdgeStep, Measure, Part } from '../casework/index.js';
import { type Interval, tolerance } from '../geometry/index.js';
import { real } from '../quantity/index.js';
import { frameOf } from './board-frame.js';

export interface GluedStrip {
    readonly edge: EdgeName;
    readonly does: 'band' | 'nosing';
    /** Declaration id. */
    readonly material: string | undefined;
    /** What it takes off the core at its edge, square to the edge or, on a front that is bevelled, fore and aft. */
    readonly takes: number;
    /** Where it lies on the way through the board. */
    readonly over: Interval;
    /** At which ends it stops before those of its board, and by how much: where the board enters another part and it cannot. */
    readonly stopsShort: ReadonlyMap<EdgeName, number>;
}

/** The strips of a part in the order in which they are glued on; undefined where a size of one is not known. */
export function gluedStrips(casework: Casework, part: Part): readonly GluedStrip[] | undefined {
    const entering = enteringDepths(casework, part);
    const strips: GluedStrip[] = [];
    for (const edge of part.edges) {
        const steps = edge.steps.filter(isStrip);
        const thicknesses = steps.map(({ amount }) => millimetres(amount));
        const whole = thicknesses.reduce<number>((sum, one) => sum + (one ?? Number.NaN), 0);
        const takenOff = steps.length === 0 ? 0 : millimetres(edge.takesOff);
        if (takenOff === undefined || Number.isNaN(whole)) return undefined;
        for (const [index, step] of steps.entries()) {
            const over = heightOf(part, step);
            if (!over) return undefined;
            const takes = (thicknesses[index]! * takenOff) / whole;
            const stopsShort = step.does === 'nosing' ? entering : new Map<EdgeName, number>();
            strips.push({ edge: edge.name, does: step.does, material: step.material, takes, over, stopsShort });
        }
    }
    return strips;
}

function isStrip(step: Edge['steps'][number]): step is EdgeStep & { readonly does: 'band' | 'nosing' } {
    return step.does === 'band' || step.does === 'nosing';
}

/** A strip that is as wide as its edge covers it. A nosing is held to the upper face of what lies, and else to the middle. */
function heightOf(part: Part, { does, width, proud }: EdgeStep): Interval | undefined {
    const { through } = frameOf(part);
    const [low, high] = [part.box.least[through], part.box.most[through]];
    const height = millimetres(width);
    const over = proud ? millimetres(proud) : 0;
    if (height === undefined || over === undefined) return undefined;
    if (does === 'nosing' && through === 'z') return { from: high + over - height, to: high + over };
    const spare = (high - low - height) / 2;
    return Math.abs(spare) <= tolerance.fit ? { from: low - over, to: high + over } : { from: low + spare, to: high - spare };
}

/** How deep the ends of a part go into others. */
function enteringDepths(casework: Casework, part: Part): ReadonlyMap<EdgeName, number> {
    const depths = new Map<EdgeName, number>();
    for (const index of part.joints) {
        const joint = casework.joints[index];
        const depth = millimetres(joint?.adds);
        const other = joint?.enters === part.path ? casework.parts.get(joint.receives)?.box : undefined;
        if (depth === undefined || !(depth > 0) || !other) continue;
        for (const [name, axis, end, far] of ends) {
            const shared = end === 'least' ? other[far][axis] - part.box[end][axis] : part.box[end][axis] - other[far][axis];
            if (Math.abs(shared - depth) <= tolerance.fit) depths.set(name, Math.max(depth, depths.get(name) ?? 0));
        }
    }
    return depths;
}

const ends = [
    ['left', 'x', 'least', 'most'],
    ['right', 'x', 'most', 'least'],
    ['bottom', 'z', 'least', 'most'],
    ['top', 'z', 'most', 'least'],
    ['back', 'y', 'least', 'most'],
    ['front', 'y', 'most', 'least'],
] as const;

export function millimetres(measure: Measure | undefined): number | undefined {
    return measure && real.toNumber(measure.quantity.value);
}
