import { wordsAt } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { amountOf, edgeStepsIn, letsIn } from '../inspection/edge-steps.js';
import { nominalThicknessOf } from '../inspection/material.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

/** What must stay of the board. */
const share = 1 / 3;

export const rabbetLeavesLittle = defineRule({
    code: 'EDG-008',
    name: 'rabbet-leaves-little',
    severity: 'warning',
    phase: 'sizes',
    title: 'The rabbet or groove leaves little of the board',
    what: 'A rabbet or a groove is deeper than two thirds of what its board is called: 1/2in in a 3/4in board is just right, 5/8in is too much.',
    why: 'The lip that is left breaks out when the back is screwed or pinned to it, and in plywood it is only two or three veneers.',
    mend: 'Cut it less deep. Half of the thickness is usual.',
    source: { kind: 'shop practice', citation: 'common practice, no source', value: 'at least a third of the nominal thickness stays' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply  : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
material Ply4 : plywood { thickness 1/4in   actual 0.205in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge back »rabbet 5/8in deep for back« }
    back of Ply4
    join back to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply  : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
material Ply4 : plywood { thickness 1/4in   actual 0.205in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge back rabbet 1/2in deep for back }
    back of Ply4
    join back to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { part, edge, step } of edgeStepsIn(casework)) {
            if (!letsIn(step)) continue;
            const depth = amountOf(step);
            const { thickness } = part.sizes.finished;
            const nominal = nominalThicknessOf(casework, part);
            if (!step.amount || depth === undefined || !thickness || nominal === undefined) continue;
            const left = millimetresOf(thickness) - depth;
            const deepest = nominal * (1 - share);
            // What goes through is the error of another rule.
            if (depth <= deepest + tolerance.fit || left <= tolerance.fit) continue;
            const found = speaker.measure(step.amount);
            report({
                span: wordsAt(edge, step),
                part: part.path,
                message: `a ${step.does} ${found} deep leaves only ${speaker.millimetres(left)} of \`${part.name}\``,
                hint: `cut it at most ${speaker.millimetres(deepest)} deep; half of the thickness is usual`,
                found,
                needed: `at most ${speaker.millimetres(deepest)}`,
                related: [{ span: part.nameSpan, message: `\`${part.name}\`` }],
            });
        }
    },
});
