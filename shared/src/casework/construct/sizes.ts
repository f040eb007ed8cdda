/**
 * The four sizes of a part: opening, finished, core, rough. Each comes from the one before it by listed steps: what joints add or take,
 * what bands and nosings take off, what trimming and milling remove.
 */
import { dimension, Rational } from '../../quantity/index.js';
import type { Axis, Edge, EdgeStep, FaceName, Size, Stage } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import type { CurveLaw } from './curve-law.js';
import { edgesOf } from './edges.js';
import { isBent } from './front.js';
import { facesOfAxis } from './kinds.js';
import { derived, larger, minus, negative, numberOf, plus, type Says, times, total } from './measures.js';
import type { PlacedPart } from './placed-part.js';

/** What is known of a part beyond its extents, computed once. */
export interface PartFacts {
    readonly edges: readonly Edge[];
    /** What joints add at its ends. */
    readonly adds: Partial<Record<FaceName, Measure>>;
    /** Ends at which a joint adds what could not be computed. */
    readonly unknownAt: ReadonlySet<FaceName>;
}

type Direction = 'length' | 'width';

const nothing: Size = { length: undefined, width: undefined, thickness: undefined };

/** The size of a part at a stage, computed once: pieces, layers and later stages ask again and again. */
export function sizeOfPart(part: PlacedPart, stage: Stage): Size {
    const { sizes } = part.known;
    let size = sizes[stage];
    if (!size) {
        const kind = part.kindOf;
        size = kind
            ? {
                  length: sizeAlong(part, kind.length, 'length', stage),
                  width: sizeAlong(part, kind.width, 'width', stage),
                  thickness: part.thickness.value,
              }
            : nothing;
        sizes[stage] = size;
    }
    return size;
}

function sizeAlong(part: PlacedPart, axis: Axis, direction: Direction, stage: Stage): Measure | undefined {
    const says: Says = { kind: 'stage', about: [stage, direction, part.path], span: part.declaration.nameSpan };
    switch (stage) {
        case 'opening':
            return openingAlong(part, axis);
        case 'finished':
            return finishedAlong(part, axis, sizeOfPart(part, 'opening')[direction], says);
        case 'core':
            return coreAlong(part, axis, sizeOfPart(part, 'finished')[direction], says);
        case 'rough':
            return roughAlong(part, axis, sizeOfPart(part, 'core')[direction], says);
    }
}

function openingAlong(part: PlacedPart, axis: Axis): Measure | undefined {
    const extent = part.extents.value?.[axis];
    if (!extent) return undefined;
    const about = [extent.lo.bound.name, extent.hi.bound.name];
    return minus(extent.hi.measure, extent.lo.measure, { kind: 'between', about, span: part.declaration.nameSpan });
}

function finishedAlong(part: PlacedPart, axis: Axis, opening: Measure | undefined, says: Says): Measure | undefined {
    const { lo, hi } = facesOfAxis[axis];
    if (part.facts.unknownAt.has(lo) || part.facts.unknownAt.has(hi)) return undefined;
    const along = axis === 'x' && isBent(part) ? roundFront(part, opening, says) : withinStrips(part, axis, opening, says);
    const added = [part.facts.adds[lo], part.facts.adds[hi]].filter((one) => one !== undefined);
    return added.length === 0 ? along : plus(along, total(added, { kind: 'joint', about: ['both ends'] }), says);
}

/** A depth is measured over what covers the front edge: that leaves it as it is, and is told of with it. */
function withinStrips({ facts }: PlacedPart, axis: Axis, opening: Measure | undefined, says: Says): Measure | undefined {
    if (axis !== 'y' || !opening) return opening;
    const strips = facts.edges.flatMap(({ name, takesOff }) => (name === 'front' && takesOff ? [takesOff] : []));
    if (strips.length === 0) return opening;
    const names = strips.flatMap(({ why }) => (why.about[0] === undefined ? [] : [why.about[0]]));
    const about = [`measured over the ${names.join(' and ')}`, 'its front'];
    return derived(opening.quantity, { kind: 'edge', about, span: says.span }, [opening, ...strips]);
}

/** A bent board is as long as the way round its front face. */
function roundFront(part: PlacedPart, straight: Measure | undefined, says: Says): Measure | undefined {
    const { x } = part.extents.value ?? {};
    const line = part.frontLaw;
    const way = x && line && wayAlong(line, numberOf(x.lo.measure), numberOf(x.hi.measure));
    if (!line || way === undefined || !straight) return undefined;
    return derived(
        { ...straight.quantity, value: way },
        { kind: 'measured', about: ['the way round its front', line.name, line.name], span: says.span },
        [straight],
    );
}

/** The way along a line from one abscissa to another, straight on past its ends. */
export function wayAlong({ curve }: CurveLaw, from: number, to: number): number | undefined {
    if (!curve) return undefined;
    const past = Math.max(0, curve.span.from - from) + Math.max(0, to - curve.span.to);
    return curve.distanceAt(to) - curve.distanceAt(from) + past;
}

function coreAlong(part: PlacedPart, axis: Axis, finished: Measure | undefined, says: Says): Measure | undefined {
    const { lo, hi } = facesOfAxis[axis];
    const taken = part.facts.edges.filter((edge) => (edge.name === lo || edge.name === hi) && hasStrip(edge));
    if (taken.length === 0 || !finished) return finished;
    // a strip whose thickness is not known leaves a core that is not known
    if (taken.some((edge) => !edge.takesOff)) return undefined;
    const strips = taken.map((edge) => edge.takesOff);
    const curved = axis === 'y' ? coreUnderCurve(part, taken) : undefined;
    if (curved !== undefined) {
        const inputs = [finished, ...strips].filter((one) => one !== undefined);
        return derived({ ...finished.quantity, value: curved, dimension: dimension.length }, says, inputs);
    }
    const about = ['bands and nosings', taken.map((edge) => edge.name).join(', ')];
    return minus(finished, total(strips, { kind: 'edge', about }), says);
}

export function isStrip({ does }: EdgeStep): boolean {
    return does === 'band' || does === 'nosing';
}
function hasStrip({ steps }: Edge): boolean {
    return steps.some(isStrip);
}

/** The template is the parallel curve inside the finished line: where that slopes, a band takes more off than it is thick. */
function coreUnderCurve(part: PlacedPart, taken: readonly Edge[]): number | undefined {
    const extents = part.extents.value;
    const line = part.frontLaw;
    const takenAt = (name: FaceName) =>
        total(
            taken.filter((edge) => edge.name === name).map((edge) => edge.takesOff),
            { kind: 'edge', about: ['bands and nosings', name] },
        );
    const front = takenAt('front');
    if (!extents || !line || !front) return undefined;
    const inside = line.parallel(negative(front));
    const along = extents[line.axis];
    const range = inside.range(numberOf(along.lo.measure), numberOf(along.hi.measure));
    const back = takenAt('back');
    return range && range.most - numberOf(extents.y.lo.measure) - (back ? numberOf(back) : 0);
}

/** Laminated blanks and edges that follow a template are cut big and trimmed. */
function roughAlong(part: PlacedPart, axis: Axis, core: Measure | undefined, says: Says): Measure | undefined {
    const { oversize, bentLong } = part.shop;
    const bothEnds: Says = { kind: 'operation', about: ['both ends'] };
    if (axis === 'x' && isBent(part)) return plus(core, times(bentLong, Rational.of(2), bothEnds), says);
    const isLaminated = (part.layers.value?.length ?? 0) > 1;
    const isCurved = axis === 'y' && part.frontLaw !== undefined;
    if (isLaminated) return plus(core, times(oversize, Rational.of(2), bothEnds), says);
    return isCurved ? plus(core, oversize, says) : core;
}

/** Edges and joint allowances of a part. */
export function factsOfPart(construction: Construction, part: PlacedPart): PartFacts {
    const adds: Partial<Record<FaceName, Measure>> = {};
    const unknownAt = new Set<FaceName>();
    for (const { at, adds: added } of part.build.outermost.joints.of(part)) {
        if (!at) continue;
        const face = facesOfAxis[at.axis][at.end];
        // where an end enters two parts, it is as long as the deeper of the two needs
        if (added.is === 'length') adds[face] = larger(adds[face] ?? added.measure, added.measure) ?? added.measure;
        else if (added.is === 'unknown') unknownAt.add(face);
    }
    return { edges: edgesOf(construction, part), adds, unknownAt };
}
