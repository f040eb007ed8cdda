import { wordsAt } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { amountOf, edgeStepsIn, letsIn } from '../inspection/edge-steps.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const rabbetTooDeep = defineRule({
    code: 'EDG-004',
    name: 'rabbet-too-deep',
    severity: 'error',
    phase: 'sizes',
    title: 'The rabbet or groove is as deep as the board is thick',
    what: 'A rabbet or a groove is cut at least as deep as its board is thick. What counts is the actual thickness.',
    why: 'Nothing is left of the edge: the rabbet cuts a strip off the board, and the groove saws it in two.',
    mend: 'Make it less deep, or the board thicker: a side of two layers takes a rabbet of 1/2in well.',
    source: { kind: 'physics', citation: 'A cut as deep as the board is thick goes through', value: 'the actual thickness of the board' },
    fix: 'none',
    examples: {
        bad: [
            {
                note: 'The board is called 3/4in and measures 0.720in.',
                text: `material Ply  : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
material Ply4 : plywood { thickness 1/4in   actual 0.205in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge back »rabbet 3/4in deep for back« }
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
    side Left, Right { edge back rabbet 3/8in deep for back }
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
            const depth = amountOf(step);
            const { thickness } = part.sizes.finished;
            if (!letsIn(step) || !step.amount || depth === undefined || !thickness) continue;
            if (depth < millimetresOf(thickness) - tolerance.fit) continue;
            const found = speaker.measure(step.amount);
            const board = speaker.measure(thickness);
            report({
                span: wordsAt(edge, step),
                part: part.path,
                ...(step.for === undefined ? {} : { concerns: [step.for] }),
                message: `a ${step.does} ${found} deep goes through \`${part.name}\`, which is ${board} thick`,
                hint: `cut it less than ${board} deep; half of the thickness is usual`,
                found,
                needed: `less than ${board}`,
                related: [{ span: part.nameSpan, message: `\`${part.name}\`` }],
            });
        }
    },
});
