import { defineRule } from '../define-rule.js';
import { frontLinesOf } from '../inspection/front-line.js';
import { neighboursIn } from '../inspection/neighbours.js';
import { sharedWood } from '../inspection/shared-wood.js';
import { speakerFor } from '../inspection/speaker.js';

const direction = { x: 'across the width', y: 'in the depth', z: 'in the height' } as const;

export const partsOverlap = defineRule({
    code: 'PLC-003',
    name: 'parts-overlap',
    severity: 'error',
    phase: 'sizes',
    title: 'Two parts claim the same wood',
    what: 'Two parts of one case lie partly in the same place, by more than touching. A dado, a tenon, a rabbet or a groove that is made for the other part is no overlap, and neither is a layer that stops short to let the other in.',
    why: 'Only one of the two can be there. Cut to these sizes, one of them does not go in.',
    mend: 'Move one of the two, or write first the one that is to run through: what is written later stops where it meets it. If the one is let into the other, say so with a joint (`dado 1/4in`) or an edge (`edge back rabbet 1/2in deep for back`).',
    source: {
        kind: 'physics',
        citation: 'Two solids cannot fill one space',
        value: 'more than 0.01 mm in all three directions: what no shop tool can see is touching',
    },
    fix: 'none',
    follows: ['PLC-002', 'PLC-004'],
    examples: {
        bad: [
            {
                note: 'The upper shelf is given its place by its upper face, 1/4in above the lower one.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Lower at 12in
    shelf »Upper« at 12 1/4in
    join every shelf to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Lower at 12in
    shelf Upper at 24in
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const lines = frontLinesOf(casework);
        for (const { earlier, later } of neighboursIn(casework)) {
            const shared = sharedWood(casework, lines, earlier, later);
            if (!shared) continue;
            const depth = speaker.millimetres(shared.depth);
            report({
                span: later.nameSpan,
                part: later.path,
                message: `\`${later.name}\` and \`${earlier.name}\` claim the same wood: they overlap by ${depth} ${direction[shared.axis]}`,
                hint: `move one of them by ${depth}, or let one into the other with a joint, a rabbet or a groove made for it`,
                found: depth,
                needed: 'no overlap',
                related: [{ span: earlier.nameSpan, message: `\`${earlier.name}\`, written before it` }],
            });
        }
    },
});
