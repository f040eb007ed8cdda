/**
 * The four sizes of a part: opening, finished, core, rough. Each comes from the one before it by listed steps: what joints add or take,
 * what bands and nosings take off, what trimming and milling remove.
 */
import { parallelCurve } from '../../geometry/index.js';
import { dimension, quantity, Rational } from '../../quantity/index.js';
import type { Axis, Edge, FaceName, Size, Stage } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { edgesOf } from './edges.js';
import { facesOfAxis } from './kinds.js';
import { derived, minus, numberOf, plus, times, total } from './measures.js';
import type { PlacedPart } from './placed-part.js';

/** What is known of a part beyond its extents, computed once. */
export interface PartFacts {
    readonly edges: readonly Edge[];
    readonly adds: Partial<Record<FaceName, Measure>>;
}

const direction = { length: 'length', width: 'width' } as const;
const nothing: Size = { length: undefined, width: undefined, thickness: undefined };

export function sizeOfPart(part: PlacedPart, stage: Stage): Size {
    const kind = part.kindOf;
    if (!kind) return nothing;
    const size = (axis: Axis, name: string) => sizeAlong(part, axis, stage, name);
    return { length: size(kind.length, direction.length), width: size(kind.width, direction.width), thickness: part.thickness.value };
}

/** The size of a part along one axis at a stage. */
function sizeAlong(part: PlacedPart, axis: Axis, stage: Stage, name: string): Measure | undefined {
    const extent = part.extents.value?.[axis];
    if (!extent) return undefined;
    const says = (kind: Stage) => ({ kind: 'stage' as const, about: [kind, name, part.path], span: part.declaration.nameSpan });
    const between = { kind: 'between' as const, about: [extent.lo.bound.name, extent.hi.bound.name], span: part.declaration.nameSpan };
    const opening = minus(extent.hi.measure, extent.lo.measure, between);
    if (stage === 'opening' || !opening) return opening;
    const { lo, hi } = facesOfAxis[axis];
    const added = [part.facts.adds[lo], part.facts.adds[hi]].filter((one) => one !== undefined);
    const finished = added.length === 0 ? opening : plus(opening, total(added, { kind: 'joint', about: ['both ends'] }), says('finished'));
    if (stage === 'finished') return finished;
    const core = coreAlong(part, axis, finished, says('core'));
    if (stage === 'core') return core;
    return roughAlong(part, axis, core, says('rough'));
}

function coreAlong(part: PlacedPart, axis: Axis, finished: Measure | undefined, says: Parameters<typeof plus>[2]): Measure | undefined {
    const { lo, hi } = facesOfAxis[axis];
    const taken = part.facts.edges.filter((edge) => (edge.name === lo || edge.name === hi) && edge.takesOff !== undefined);
    if (taken.length === 0) return finished;
    const curved = axis === 'y' ? coreUnderCurve(part, taken, finished) : undefined;
    if (curved !== undefined && finished)
        return derived(quantity.inBaseUnits(curved, dimension.length, finished.quantity.unit), says, [
            finished,
            ...taken.map((edge) => edge.takesOff as Measure),
        ]);
    return minus(
        finished,
        total(
            taken.map((edge) => edge.takesOff),
            { kind: 'edge', about: ['bands and nosings', taken.map((edge) => edge.name).join(', ')] },
        ),
        says,
    );
}

/** The template is the parallel curve inside the finished line: where that slopes, a band takes more off than it is thick. */
function coreUnderCurve(part: PlacedPart, taken: readonly Edge[], finished: Measure | undefined): number | undefined {
    const extents = part.extents.value;
    const line = extents?.y.hi.line;
    const curve = line?.curve;
    const front = taken.filter((edge) => edge.name === 'front');
    if (!extents || !line || !curve || !finished || front.length === 0) return undefined;
    const band = front.reduce((sum, edge) => sum + numberOf(edge.takesOff), 0);
    const parallel = parallelCurve(curve, band);
    if (!parallel.ok) return undefined;
    const along = extents[line.axis];
    const [from, to] = [numberOf(along.lo.measure), numberOf(along.hi.measure)];
    const deepest = deepestOf(parallel.curve, from, to);
    const back = taken.filter((edge) => edge.name === 'back').reduce((sum, edge) => sum + numberOf(edge.takesOff), 0);
    return deepest - numberOf(extents.y.lo.measure) - back;
}

function deepestOf(
    curve: {
        valueAt(x: number): { readonly value: number };
        sample(within: number): readonly { readonly x: number; readonly y: number }[];
    },
    from: number,
    to: number,
): number {
    const inside = curve.sample(0.01).filter((point) => point.x >= from && point.x <= to);
    return Math.max(curve.valueAt(from).value, curve.valueAt(to).value, ...inside.map((point) => point.y));
}

/** Laminated blanks and edges that follow a template are cut big and trimmed. */
function roughAlong(part: PlacedPart, axis: Axis, core: Measure | undefined, says: Parameters<typeof plus>[2]): Measure | undefined {
    const { oversize } = part.shop;
    const isLaminated = (part.layers.value?.length ?? 0) > 1;
    const isCurved = axis === 'y' && part.extents.value?.y.hi.line !== undefined;
    if (isLaminated) return plus(core, times(oversize, Rational.of(2), { kind: 'operation', about: ['both ends'] }), says);
    return isCurved ? plus(core, oversize, says) : core;
}

/** Edges and joint allowances of a part. */
export function factsOfPart(construction: Construction, part: PlacedPart): PartFacts {
    const adds: Partial<Record<FaceName, Measure>> = {};
    for (const joint of part.build.outermost.joints) {
        if (joint.enters !== part || !joint.at || !joint.adds) continue;
        adds[facesOfAxis[joint.at.axis][joint.at.end]] = joint.adds;
    }
    return { edges: edgesOf(construction, part), adds };
}
