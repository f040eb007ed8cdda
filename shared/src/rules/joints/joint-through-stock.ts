import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { dadosIn } from '../inspection/dados.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const jointThroughStock = defineRule({
    code: 'JNT-001',
    name: 'joint-through-stock',
    severity: 'error',
    phase: 'sizes',
    title: 'The dado or groove goes through the board',
    what: 'A joint cuts a dado, a groove or a rabbet into a board at least as deep as the board is thick.',
    why: 'The board is sawn in two, and the end of the shelf shows on the outside of the case.',
    mend: 'Cut it less deep: a quarter to a third of the board is usual.',
    source: { kind: 'physics', citation: 'A cut as deep as the board is thick goes through', value: 'the actual thickness of the board' },
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
    »join Low to every side with { dado 3/4in deep   glue }«
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { dado 1/4in deep   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { joint, step, amount, depth, board, thickness } of dadosIn(casework)) {
            if (depth < millimetresOf(thickness) - tolerance.fit) continue;
            const found = speaker.measure(amount);
            const thick = speaker.measure(thickness);
            report({
                span: joint.span,
                part: board.path,
                concerns: [joint.enters],
                message: `a ${step.does} ${found} deep goes through \`${board.name}\`, which is ${thick} thick`,
                hint: `cut it less deep: a quarter to a third of the thickness is usual`,
                found,
                needed: `less than ${thick}`,
                related: [{ span: board.nameSpan, message: `\`${board.name}\`` }],
            });
        }
    },
});
