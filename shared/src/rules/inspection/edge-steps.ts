/** The steps of a part's edges, in the order of work, each with what was done to its edge before. */
import type { Casework, Edge, EdgeStep, Part } from '../../casework/index.js';
import { dimension } from '../../quantity/index.js';
import { isSound, millimetresOf } from './sound-parts.js';

export interface StepOfEdge {
    readonly part: Part;
    readonly edge: Edge;
    readonly step: EdgeStep;
    /** The band or nosing that lies outermost on the edge when the step is done. */
    readonly over: EdgeStep | undefined;
}

/** Every step of every edge of every sound part. */
export function* edgeStepsIn(casework: Casework): Generator<StepOfEdge> {
    for (const part of casework.parts.values()) if (isSound(part)) yield* edgeStepsOf(part);
}

/** Found once for each part: several rules ask, and a part that an edit leaves alone is the same at the next keystroke. */
const known = new WeakMap<Part, readonly StepOfEdge[]>();

function edgeStepsOf(part: Part): readonly StepOfEdge[] {
    let found = known.get(part);
    if (!found) {
        found = findEdgeSteps(part);
        known.set(part, found);
    }
    return found;
}

function findEdgeSteps(part: Part): readonly StepOfEdge[] {
    const found: StepOfEdge[] = [];
    const outermost = new Map<Edge['name'], EdgeStep>();
    for (const edge of part.edges) {
        for (const step of edge.steps) {
            found.push({ part, edge, step, over: outermost.get(edge.name) });
            if (covers(step)) outermost.set(edge.name, step);
        }
    }
    return found;
}

/** Whether a step puts wood on the edge. */
export function covers({ does }: EdgeStep): boolean {
    return does === 'band' || does === 'nosing';
}

/** Whether a step cuts a place for another part. */
export function letsIn({ does }: EdgeStep): boolean {
    return does === 'rabbet' || does === 'groove';
}

/** How far a step goes, in mm; undefined where that is unknown. */
export function amountOf({ amount }: EdgeStep): number | undefined {
    return amount?.quantity.dimension === dimension.length ? millimetresOf(amount) : undefined;
}
