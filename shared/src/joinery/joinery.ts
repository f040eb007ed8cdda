/** All that joints and edges do to the parts of a casework. */
import type { Casework, Joint, Part, Path } from '../casework/index.js';
import type { Bench, StepMaker } from './bench.js';
import { contactOf } from './contact.js';
import { makeLap, makeMitre, makeSpline } from './corners.js';
import { drivenMaker, makeBolt } from './driven.js';
import { edgeCutsOf } from './edge-cuts.js';
import type { Contact, Fastener, Feature, Joinery, JointJoinery, PartJoinery, Unplaced } from './feature.js';
import { type FrontLines, frontLinesOf } from './front-limit.js';
import { makeBiscuits, makeDowels, makeLooseTenons } from './glued-in.js';
import { makeTenon, makeTongue, socketMaker } from './let-in.js';
import { makePockets } from './pocket-screws.js';
import { makeShelfPins } from './shelf-pins.js';
import { fastenersBySize } from './trade-sizes.js';

/** Steps that have a place; the others (glue, gap, loose, free, tight) say how the two are held. */
const makers: Readonly<Record<string, StepMaker>> = {
    dado: socketMaker('dado'),
    groove: socketMaker('groove'),
    rabbet: socketMaker('rabbet'),
    tongue: makeTongue,
    tenon: makeTenon,
    lap: makeLap,
    mitre: makeMitre,
    spline: makeSpline,
    looseTenon: makeLooseTenons,
    biscuit: makeBiscuits,
    dowel: makeDowels,
    pocket: makePockets,
    screw: drivenMaker('screw', 'screw'),
    panelScrew: drivenMaker('panel screw', 'screw'),
    nail: drivenMaker('nail', 'nail'),
    pin: drivenMaker('pin', 'pin'),
    bolt: makeBolt,
    rest: makeShelfPins,
};

const found = new WeakMap<Casework, Joinery>();

/** The features, fasteners and contacts of a casework, in the order of its joints and then of its edges. Computed once for each casework. */
export function joineryOf(casework: Casework): Joinery {
    let joinery = found.get(casework);
    if (!joinery) {
        joinery = computed(casework);
        found.set(casework, joinery);
    }
    return joinery;
}

function computed(casework: Casework): Joinery {
    const work: Work = {
        casework,
        lines: frontLinesOf(casework),
        fasteners: fastenersBySize(casework),
        made: { features: [], fasteners: [], contacts: new Map(), byJoint: new Map(), unplaced: [] },
    };
    for (const [index, joint] of casework.joints.entries()) makeJoint(work, index, joint);
    for (const part of casework.parts.values()) work.made.features.push(...knownEdgeCuts(casework, part));
    return { ...work.made, byPart: byPart(work.made) };
}

/** What was worked out for a joint, and where it stood among others: an edit leaves most joints alone, and they are the same objects then. */
interface MadeJoint extends JointJoinery {
    readonly index: number;
    readonly firstFastener: number;
    readonly unplaced: readonly Unplaced[];
}

const madeJoints = new WeakMap<Joint, MadeJoint>();
const edgeCuts = new WeakMap<Part, readonly Feature[]>();

function knownEdgeCuts(casework: Casework, part: Part): readonly Feature[] {
    let cuts = edgeCuts.get(part);
    if (!cuts) {
        cuts = edgeCutsOf(casework, part);
        edgeCuts.set(part, cuts);
    }
    return cuts;
}

interface Work {
    readonly casework: Casework;
    readonly lines: FrontLines;
    readonly fasteners: Bench['fasteners'];
    readonly made: Made;
}

interface Made {
    readonly features: Feature[];
    readonly fasteners: Fastener[];
    readonly contacts: Map<number, Contact>;
    readonly byJoint: Map<number, JointJoinery>;
    readonly unplaced: Unplaced[];
}

function makeJoint(work: Work, index: number, joint: Joint): void {
    const { casework, made } = work;
    const [enters, receives] = [casework.parts.get(joint.enters), casework.parts.get(joint.receives)];
    if (!enters || !receives) return;
    const firstFastener = made.fasteners.length;
    let done = madeJoints.get(joint);
    const isSame = done?.index === index && done.firstFastener === firstFastener && done.enters === enters && done.receives === receives;
    if (!done || !isSame) {
        done = { index, firstFastener, joint, enters, receives, ...madeOf(work, index, joint, { enters, receives, firstFastener }) };
        madeJoints.set(joint, done);
    }
    if (done.contact) made.contacts.set(index, done.contact);
    made.byJoint.set(index, done);
    made.features.push(...done.features);
    made.fasteners.push(...done.fasteners);
    made.unplaced.push(...done.unplaced);
}

function madeOf(
    { casework, lines, fasteners: bySize }: Work,
    index: number,
    joint: Joint,
    { enters, receives, firstFastener }: Pick<MadeJoint, 'enters' | 'receives' | 'firstFastener'>,
): Pick<MadeJoint, 'contact' | 'features' | 'fasteners' | 'unplaced'> {
    const [features, fasteners, unplaced]: [Feature[], Fastener[], Unplaced[]] = [[], [], []];
    const contact = contactOf(index, joint, enters, receives, lines);
    const made = { contact, features, fasteners, unplaced };
    if (!contact) return made;
    const bench: Bench = {
        joint,
        enters,
        receives,
        contact,
        fasteners: bySize,
        things: casework.things,
        cut: (feature) => features.push(feature),
        place: (fastener) => firstFastener + fasteners.push(fastener) - 1,
    };
    for (const [step, said] of joint.steps.entries()) {
        const make = makers[said.does];
        if (!make) continue;
        const because = isBent(enters, receives) ? bentBecause : make(bench, said, { is: 'joint', joint: index, step });
        if (because !== undefined) unplaced.push({ joint: index, step, because });
    }
    return made;
}

const bentBecause = 'meets a bent board, whose ends lie askew: take its place from the form';

function isBent(...parts: readonly Part[]): boolean {
    return parts.some(({ bent }) => bent);
}

function byPart({ features, fasteners, contacts }: Made): ReadonlyMap<Path, PartJoinery> {
    const parts = new Map<Path, { features: Feature[]; fasteners: Fastener[]; enters: Contact[]; receives: Contact[] }>();
    const of = (path: Path) => {
        let known = parts.get(path);
        if (!known) {
            known = { features: [], fasteners: [], enters: [], receives: [] };
            parts.set(path, known);
        }
        return known;
    };
    for (const contact of contacts.values()) {
        of(contact.enters).enters.push(contact);
        of(contact.receives).receives.push(contact);
    }
    for (const feature of features) of(feature.part).features.push(feature);
    for (const fastener of fasteners) for (const { part } of fastener.passes) of(part).fasteners.push(fastener);
    return parts;
}
