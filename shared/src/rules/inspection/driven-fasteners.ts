/** What is driven through one part into another: screws, nails and pins, the first of each kind and length at a joint sentence. */
import type { Casework, Joint, JointStep, Part } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { type Fastener, type FastenerKind, joineryOf, type Passage } from '../../joinery/index.js';
import { isSound } from './sound-parts.js';
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

/** One for each joint sentence, step and way through the wood: a sentence that joins many parts alike is told of once. */
export function* drivenFasteners(casework: Casework): Generator<DrivenFastener> {
    const seen = new Set<string>();
    for (const fastener of joineryOf(casework).fasteners) {
        const { cause, length, passes } = fastener;
        const [first, last] = [passes[0], passes.at(-1)];
        if (cause.is !== 'joint' || !driven.has(fastener.kind) || length === undefined || !first || !last) continue;
        const joint = casework.joints[cause.joint];
        const step = joint?.steps[cause.step];
        const [enters, receives] = joint ? [casework.parts.get(joint.enters), casework.parts.get(joint.receives)] : [];
        if (!joint || !step || !enters || !receives || !isSound(enters) || !isSound(receives)) continue;
        const { file, start } = joint.span;
        const key = `${file} ${start} ${cause.step} ${first.leaves.toFixed(1)} ${last.leaves.toFixed(1)} ${length.toFixed(2)}`;
        if (seen.has(key)) continue;
        seen.add(key);
        const freedom = fastener.kind === 'pocket screw' && !step.lengths?.seat ? freedomOfStop : 0;
        yield { joint, step, fastener, length, wood: last.leaves + freedom, first, last, enters, receives };
    }
}

/** The longest length in stock that stays in the wood: by eighths of an inch, or by 5 mm. Common practice, no source. */
export function longestThatFits(way: number, casework: Casework): number {
    const step = systemOf(casework) === 'mm' ? 5 : 25.4 / 8;
    return Math.max(0, Math.ceil((way - tolerance.fit) / step) - 1) * step;
}
