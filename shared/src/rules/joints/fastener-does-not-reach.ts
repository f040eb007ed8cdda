import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { drivenFasteners } from '../inspection/driven-fasteners.js';
import { speakerFor } from '../inspection/speaker.js';

export const fastenerDoesNotReach = defineRule({
    code: 'JNT-005',
    name: 'fastener-does-not-reach',
    severity: 'warning',
    phase: 'sizes',
    title: 'A screw does not reach the second part',
    what: 'A screw, a nail or a pin of a joint ends in the part that it is driven through first: it holds nothing.',
    why: 'The joint looks made, and comes apart at the first load.',
    mend: 'Take a longer one. How far it should go into the second part hangs on the wood and on the load.',
    source: {
        kind: 'physics',
        citation: 'What ends in the first part does not hold the second; the seat of a pocket screw by common practice, no source',
        value: 'the way along the fastener from its head to the second part',
    },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    »join Low to every side with { screw #8 x 3/4in count 3 inset 2in   glue }«
}
`,
                note: 'A screw of 3/4in through a side of 0.72in has less than a thread in the shelf.',
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { screw #8 x 2in count 3 inset 2in   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { joint, step, fastener, length, first, enters, receives } of drivenFasteners(casework)) {
            const reach = length - first.leaves;
            if (reach > tolerance.fit && reach >= (fastener.shank ?? 0)) continue;
            const [through, into] = first.part === enters.path ? [enters, receives] : [receives, enters];
            report({
                span: joint.span,
                part: through.path,
                message:
                    reach > tolerance.fit
                        ? `a ${fastener.kind} ${speaker.millimetres(length)} long goes only ${speaker.millimetres(reach)} into \`${into.name}\`, less than it is thick`
                        : `a ${fastener.kind} ${speaker.millimetres(length)} long ends in \`${through.name}\` and does not reach \`${into.name}\``,
                hint: `the way through \`${through.name}\` alone is ${speaker.millimetres(first.leaves)}: take a longer one`,
                found: speaker.millimetres(length),
                needed: `more than ${speaker.millimetres(first.leaves)}`,
                related: [{ span: step.span, message: 'how long it is' }],
            });
        }
    },
});
