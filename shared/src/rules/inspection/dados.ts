/** The slots that joints cut into the boards that receive. */
import type { Casework, Joint, JointStep, Measure, Part } from '../../casework/index.js';
import { dimension } from '../../quantity/index.js';
import { isSomething, millimetresOf } from './sound-parts.js';

export interface Dado {
    readonly joint: Joint;
    readonly step: JointStep;
    readonly amount: Measure;
    /** In mm. */
    readonly depth: number;
    readonly board: Part;
    readonly thickness: Measure;
}

const cuts: ReadonlySet<string> = new Set(['dado', 'groove', 'rabbet']);

export function* dadosIn(casework: Casework): Generator<Dado> {
    for (const joint of casework.joints) {
        const board = casework.parts.get(joint.receives);
        const thickness = board?.sizes.finished.thickness;
        if (!board || !isSomething(thickness)) continue;
        for (const step of joint.steps) {
            const { amount } = step;
            if (!cuts.has(step.does) || amount?.quantity.dimension !== dimension.length) continue;
            yield { joint, step, amount, depth: millimetresOf(amount), board, thickness };
        }
    }
}
