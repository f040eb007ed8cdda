/** What is driven through one part into another: screws, nails and pins, the first of each kind and length at a joint sentence. */
import type { Casework, Joint, JointStep, Part } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import type { Fastener, FastenerKind, Passage } from '../../joinery/index.js';
import { type JointWork, jointWorkIn } from './joint-work.js';
import { systemOf } from './speaker.js';

export interface DrivenFastener {
    readonly joint: Joint;
    readonly step: JointStep;
    readonly fastener: Fastener;
    readonly length: number;
    /** How much wood is before its point: the way from its head to where it would come out, and what the setting of a pocket's stop can add. */
    readonly wood: number;
    /** In the part that it is driven through, and in the one that it ends in; the same where it is in one only. */
    readonly first: Passage;
    readonly last: Passage;
    readonly enters: Part;
    readonly receives: Part;
}

/** Where the text does not say the `seat` of a pocket screw, the stop on the bit may be set so much further back: 1/8 in. Common practice, no source. */
const freedomOfStop = 25.4 / 8;

/** A bolt goes through on purpose, and what is glued in has no point. */
const driven: ReadonlySet<FastenerKind> = new Set(['screw', 'pocket screw', 'panel screw', 'nail', 'pin']);

const known = new WeakMap<Casework, readonly DrivenFastener[]>();
/** Kept by the work of the joint, which an edit that leaves the joint alone keeps too. */
const ofJoint = new WeakMap<JointWork, ReadonlyMap<string, DrivenFastener>>();

/** One for each joint sentence, step and way through the wood: a sentence that joins many parts alike is told of once. */
export function drivenFasteners(casework: Casework): readonly DrivenFastener[] {
    let found = known.get(casework);
    if (!found) {
        found = findDriven(casework);
        known.set(casework, found);
    }
    return found;
}

function findDriven(casework: Casework): readonly DrivenFastener[] {
    const bySentence = new Map<string, DrivenFastener>();
    for (const work of jointWorkIn(casework)) {
        const { file, start } = work.joint.span;
        for (const [way, fastener] of drivenIn(work)) {
            const key = `${file} ${start} ${way}`;
            if (!bySentence.has(key)) bySentence.set(key, fastener);
        }
    }
    return [...bySentence.values()];
}

function drivenIn(work: JointWork): ReadonlyMap<string, DrivenFastener> {
    let found = ofJoint.get(work);
    if (!found) {
        found = drivenWith(work);
        ofJoint.set(work, found);
    }
    return found;
}

/** By step, way through the wood and length, the first of each. */
function drivenWith({ joint, enters, receives, fasteners }: JointWork): ReadonlyMap<string, DrivenFastener> {
    const found = new Map<string, DrivenFastener>();
    for (const { fastener, step } of fasteners) {
        const { cause, length, passes, kind } = fastener;
        const [first, last] = [passes[0], passes.at(-1)];
        if (cause.is !== 'joint' || !driven.has(kind) || length === undefined || !first || !last) continue;
        const key = `${cause.step} ${first.leaves.toFixed(1)} ${last.leaves.toFixed(1)} ${length.toFixed(2)}`;
        if (found.has(key)) continue;
        const freedom = kind === 'pocket screw' && !step.lengths?.seat ? freedomOfStop : 0;
        found.set(key, { joint, step, fastener, length, wood: last.leaves + freedom, first, last, enters, receives });
    }
    return found;
}

/** The longest length in stock that stays in the wood: by eighths of an inch, or by 5 mm. Common practice, no source. */
export function longestThatFits(way: number, casework: Casework): number {
    const step = systemOf(casework) === 'mm' ? 5 : 25.4 / 8;
    return Math.max(0, Math.ceil((way - tolerance.fit) / step) - 1) * step;
}
