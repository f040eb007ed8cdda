/** What the screws or nails of one step of a joint may carry together. */
import type { Axis, Casework, JointStep, Part, Thing } from '../../casework/index.js';
import type { Fastener, Passage } from '../../joinery/index.js';
import { dimension, real } from '../../quantity/index.js';
import { isSolidWood, measureProperty } from '../thing-values.js';
import { fastenerGravity, testedGravity } from './gravity.js';
import type { Hold, KnownHold, Member, UnpublishedHold } from './hold.js';
import type { Meeting } from './meeting.js';
import { breakingFromParticleboard, breakingWithdrawal, type DrivenForm, designWithdrawal, endGrainShare } from './withdrawal.js';
import {
    bearingStrength,
    bendingYield,
    designFactors,
    grainCounts,
    penetration,
    penetrationFactor,
    reductionTerm,
    testedLateral,
    weakestMode,
    yieldModes,
} from './yield.js';

const names: Readonly<Record<string, string>> = {
    screw: 'screw',
    pocket: 'pocket screw',
    panelScrew: 'panel screw',
    nail: 'nail',
    pin: 'pin',
};

/** The holds of one step; none for a step that drives nothing. */
export function driven(
    casework: Casework,
    { way, duration = designFactors.permanent }: Where,
    step: JointStep,
    fasteners: readonly Fastener[],
): readonly Hold[] {
    const name = names[step.does];
    // what lies on its support is not carried by what keeps it there
    if (name === undefined || way === 'on') return [];
    const what = `${fasteners.length} ${name}${fasteners.length === 1 ? '' : 's'}${step.size === undefined ? '' : ` ${step.size}`}`;
    const one = oneOf(casework, { way, duration }, step, fasteners);
    if (typeof one === 'string') return [{ is: 'unpublished', what, because: one }];
    return ['because' in one ? { is: 'unpublished', what, ...one } : { is: 'known', what, ...one }];
}

type Found = Pick<KnownHold, 'capacity' | 'by'> | Pick<UnpublishedHold, 'because' | 'tested'>;
/** How a board meets its support, and the factor for how long the load lasts: years where nothing is said. */
type Where = Pick<Meeting, 'way'> & { readonly duration?: number };

/** What they may carry, or why nothing is known of it. */
function oneOf(casework: Casework, where: Required<Where>, step: JointStep, fasteners: readonly Fastener[]): Found | string {
    const [fastener] = fasteners;
    if (step.does === 'pocket') return 'no design value is published for screws in slanted pockets';
    if (step.does === 'panelScrew') return 'no design value is published for thick screws in panels';
    if (step.does === 'pin') return 'no design value is published for headless pins';
    if (!fastener) return 'they have no place, or nothing says how many';
    if (fastener.length === undefined) return 'nothing says how long they are';
    const form: DrivenForm = step.does === 'nail' ? 'nail' : 'wood screw';
    const { shank } = fastener;
    const root = form === 'nail' ? shank : fastener.rolledRoot;
    if (shank === undefined) return `nothing says how thick they are: \`nail 2.5mm x 40mm\`, or a \`fastener\` with its \`diameter\``;
    if (root === undefined) return 'nothing says the diameter between their threads: `rolledRoot` of a `fastener`';
    if (shank >= grainCounts)
        return 'a quarter of an inch thick and more, for which the direction of the grain counts; not worked out here';
    const [first, last] = [fastener.passes[0], fastener.passes.at(-1)];
    if (!first || !last || first === last) return 'they do not reach the second board';
    const boards = [casework.parts.get(first.part), casework.parts.get(last.part)] as const;
    const [through, into] = boards;
    if (!through || !into) return 'they do not reach the second board';
    const { duration } = where;
    const sizes: Sizes = { form, duration, shank, root, step, count: fasteners.length, first, last, through, into, fastener };
    return where.way === 'under' ? pulled(casework, sizes) : sheared(casework, sizes);
}

interface Sizes {
    readonly duration: number;
    readonly form: DrivenForm;
    readonly shank: number;
    readonly root: number;
    readonly step: JointStep;
    readonly count: number;
    readonly first: Passage;
    readonly last: Passage;
    readonly through: Part;
    readonly into: Part;
    readonly fastener: Fastener;
}

function sheared(casework: Casework, sizes: Sizes): Found | string {
    const { form, duration, shank, root, step, count, first, last, through, into, fastener } = sizes;
    const grain = grainOf(casework, into, last, fastener);
    if (grain === 'panel edge') return `none is published for them in the edge of ${materialAt(casework, into, last)?.name ?? into.name}`;
    const [side, main] = [memberOf(casework, through, first), memberOf(casework, into, last)];
    if (typeof side === 'string') return side;
    if (typeof main === 'string') return main;
    const yields = bendingYield(shank);
    if (yields === undefined) return 'thinner than the table of their bending strengths begins';
    const depth = main.length;
    const [shortened, endGrain] = [penetrationFactor(depth, shank), grain === 'end' ? designFactors.endGrain : 1];
    if (shortened === 0) return `they go in less than ${penetration.least} times their thickness, and count for nothing`;
    // NDS-2018 leaves open whether shank or root goes into the reduction: the shank gives the lower load
    const reduction = reductionTerm(shank);
    const { mode, load: yieldLoad } = weakestMode(yieldModes({ diameter: root, bendingYield: yields, reduction, side, main }));
    const each = yieldLoad * duration * shortened * endGrain;
    const wood = grain === 'end' ? undefined : testedGravity(casework, materialAt(casework, into, last));
    const tested = wood && testedLateral(form, wood, shank);
    return {
        capacity: each * count,
        by: {
            is: 'shear',
            step,
            form,
            count,
            duration,
            each,
            shank,
            depth,
            root,
            bendingYield: yields,
            reduction,
            side,
            main,
            mode,
            yieldLoad,
            penetration: shortened,
            endGrain,
            tested,
        },
    };
}

/** A thread is at least two thirds as long as its screw (ASME B18.6.1, from memory). */
const threadShare = 2 / 3;

function pulled(casework: Casework, { form, duration, shank, step, count, last, into, fastener }: Sizes): Found {
    const material = materialAt(casework, into, last);
    const grain = grainOf(casework, into, last, fastener);
    const depth = last.stretch.to - last.stretch.from;
    const thread = form === 'nail' ? depth : Math.min(depth, threadShare * (fastener.length ?? depth));
    const gravity = fastenerGravity(casework, material);
    const tested = testedGravity(casework, material);
    const breaking = tested && breakingWithdrawal(form, { gravity: tested.gravity, diameter: shank, length: thread });
    if (grain === 'end') {
        const because = 'they are pulled out of end grain, where no design value counts (NDS-2018, 12.2.2, from memory)';
        return { because, tested: breaking && breaking * endGrainShare };
    }
    if (!gravity || grain === 'panel edge') return pulledFromPanel(material, into, form, { edge: last.intoEdge, shank, thread });
    const each = designWithdrawal(form, { gravity: gravity.value, diameter: shank, length: thread }) * duration;
    const { value, source } = gravity;
    const by = { is: 'withdrawal', step, form, count, duration, each, shank, depth, thread, gravity: value, source, breaking } as const;
    return { capacity: each * count, by };
}

/** Of particleboard the pull that breaks a screw out in a test is published, and no design value. */
function pulledFromPanel(
    material: Thing | undefined,
    into: Part,
    form: DrivenForm,
    { edge, shank, thread }: { readonly edge: boolean; readonly shank: number; readonly thread: number },
): Found {
    const because = unpublishedIn(material, into);
    const density = measureProperty(material, 'density', dimension.density);
    if (form !== 'wood screw' || material?.family !== 'particleboard' || !density) return { because };
    const gravity = real.toNumber(density.quantity.value) / densityOfWater;
    return { because, tested: breakingFromParticleboard(edge ? 'edge' : 'face', { gravity, diameter: shank, length: thread }) };
}

/** Kilograms in a cubic millimetre. */
const densityOfWater = 1e-6;

function unpublishedIn(material: Thing | undefined, part: Part): string {
    const name = material?.name ?? part.name;
    return material && isSolidWood(material)
        ? `nothing says the specific gravity of ${name}`
        : `no design value is published for them in ${name}`;
}

function memberOf(casework: Casework, part: Part, passage: Passage): Member | string {
    const material = materialAt(casework, part, passage);
    const gravity = fastenerGravity(casework, material);
    if (!gravity) return unpublishedIn(material, part);
    const length = passage.stretch.to - passage.stretch.from;
    const { value, source } = gravity;
    return { name: part.name, length, gravity: value, bearing: bearingStrength(value), source };
}

/** The material of the layer in which a passage ends. */
function materialAt(casework: Casework, { layers }: Part, { layer }: Passage): Thing | undefined {
    const id = layers[layer ?? 0]?.material;
    return id === undefined ? undefined : casework.things.get(id);
}

/** Whether it goes along the grain of solid wood, into the edge of a panel, or into the side of the grain. */
function grainOf(casework: Casework, part: Part, passage: Passage, { direction }: Fastener): 'end' | 'side' | 'panel edge' {
    if (!passage.intoEdge) return 'side';
    const material = materialAt(casework, part, passage);
    if (!material || !isSolidWood(material)) return 'panel edge';
    const along = (['x', 'y', 'z'] as const).reduce<Axis>((a, b) => (Math.abs(direction[b]) > Math.abs(direction[a]) ? b : a), 'x');
    const grain = part.layers[passage.layer ?? 0]?.grain;
    const ofGrain = grain === 'length' ? part.directions.length : grain === 'width' ? part.directions.width : undefined;
    return ofGrain === along ? 'end' : 'side';
}
