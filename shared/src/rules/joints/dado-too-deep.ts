import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { dadosIn } from '../inspection/dados.js';
import { nominalThicknessOf } from '../inspection/material.js';
import { measuredDown, writtenAnew } from '../inspection/mended-lengths.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

/** Of the nominal thickness: a rabbet at the corner of a case is cut to a half, and all else to a third. */
const shares = { rabbet: { share: 1 / 2, word: 'half' }, other: { share: 1 / 3, word: 'a third' } } as const;

export const dadoTooDeep = defineRule({
    code: 'JNT-003',
    name: 'dado-too-deep',
    severity: 'warning',
    phase: 'sizes',
    title: 'The dado or groove is deeper than a third of the board',
    what: 'A joint cuts a dado or a groove deeper than a third of what its board is called: 1/4in in a 3/4in board is just right. A rabbet at the end of a board may take half of it.',
    why: 'A side bends and breaks where it is cut deepest. A deeper dado does not hold a shelf better: its bearing is the depth it has, and 1/4in carries any shelf.',
    mend: 'Cut it less deep: a quarter to a third of the board.',
    source: {
        kind: 'shop practice',
        citation: 'common practice, no source',
        value: 'a quarter to a third of the nominal thickness; half of it for a rabbet',
    },
    fix: 'unsafe',
    follows: ['PLC-003', 'PLC-008'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    »join Low to every side with { dado 1/2in deep   glue }«
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
            const nominal = nominalThicknessOf(casework, board);
            // What goes through is the error of another rule.
            if (nominal === undefined || depth >= millimetresOf(thickness) - tolerance.fit) continue;
            const { share, word } = step.does === 'rabbet' ? shares.rabbet : shares.other;
            const deepest = nominal * share;
            if (depth <= deepest + tolerance.fit) continue;
            const found = speaker.measure(amount);
            report({
                span: joint.span,
                part: board.path,
                message: `a ${step.does} ${found} deep is more than ${word} of \`${board.name}\`, which is ${speaker.measure(thickness)} thick`,
                hint: `cut it at most ${speaker.millimetres(deepest)} deep`,
                found,
                needed: `at most ${speaker.millimetres(deepest)}`,
                related: [{ span: board.nameSpan, message: `\`${board.name}\`` }],
                ...writtenAnew(casework, amount, measuredDown(casework, deepest, amount)),
            });
        }
    },
});
