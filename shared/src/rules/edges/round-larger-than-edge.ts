import { wordsAt } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { amountOf, edgeStepsIn, type StepOfEdge } from '../inspection/edge-steps.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';
import type { Found } from '../rule.js';

export const roundLargerThanEdge = defineRule({
    code: 'EDG-007',
    name: 'round-larger-than-edge',
    severity: 'error',
    phase: 'sizes',
    title: 'The round or chamfer is larger than the edge it is cut on',
    what: 'A round or a chamfer goes deeper than the band or nosing that lies on the edge; or, on both arrises, it takes more than the whole thickness of the edge.',
    why: 'A round through the band lays the core bare beside it. Two rounds of more than half the thickness leave a point where the edge was.',
    mend: 'Take a smaller radius or a thicker band: a round as large as the band is thick just meets the glue line.',
    source: { kind: 'physics', citation: 'Geometry of the cut', value: 'the thickness of the band; half the thickness of the edge' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Walnut   »round 1/4in« }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Walnut   round 1/8in }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const work of edgeStepsIn(casework)) {
            if (work.step.does !== 'round' && work.step.does !== 'chamfer') continue;
            const found = throughBand(work, speaker) ?? overHalf(work, speaker);
            if (found) report(found);
        }
    },
});

function throughBand({ part, edge, step, over }: StepOfEdge, speaker: Speaker): Found | undefined {
    const size = amountOf(step);
    const thickness = over && amountOf(over);
    if (!over?.amount || !step.amount || size === undefined || thickness === undefined || size <= thickness + tolerance.fit)
        return undefined;
    const found = speaker.measure(step.amount);
    const band = speaker.measure(over.amount);
    return {
        // Where both stand in one edging, it is the edging that is wrong, whichever edge has it.
        span: edge.steps.includes(over) ? step.span : wordsAt(edge, step),
        part: part.path,
        message: `a ${step.does} of ${found} goes through the ${over.does} of ${band}: what is under it shows`,
        hint: `take at most ${band}, or a thicker ${over.does}`,
        found,
        needed: `at most ${band}`,
        related: [{ span: over.span, message: `the ${over.does}` }],
    };
}

function overHalf({ part, edge, step, over }: StepOfEdge, speaker: Speaker): Found | undefined {
    const size = amountOf(step);
    const height = over?.width ?? part.sizes.finished.thickness;
    if (!step.amount || size === undefined || !height || 2 * size <= millimetresOf(height) + tolerance.fit) return undefined;
    const found = speaker.measure(step.amount);
    const needed = speaker.millimetres(millimetresOf(height) / 2);
    return {
        span: wordsAt(edge, step),
        part: part.path,
        message: `a ${step.does} of ${found} on both arrises takes more than the ${edge.name} edge of \`${part.name}\` has: it is ${speaker.measure(height)} thick`,
        hint: `take at most ${needed}`,
        found,
        needed: `at most ${needed}`,
    };
}
