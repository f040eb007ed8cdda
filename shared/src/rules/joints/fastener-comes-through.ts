import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { drivenFasteners, longestThatFits } from '../inspection/driven-fasteners.js';
import { writtenAnew } from '../inspection/mended-lengths.js';
import { speakerFor } from '../inspection/speaker.js';

export const fastenerComesThrough = defineRule({
    code: 'JNT-004',
    name: 'fastener-comes-through',
    severity: 'warning',
    phase: 'sizes',
    title: 'A screw comes out on the far side',
    what: 'A screw, a nail or a pin of a joint is longer than the wood that it is driven into: its point stands out of the second part. A pocket screw counts from where its head lies in the pocket, with 1/8in for the setting of the stop where the text does not say its `seat`.',
    why: 'The point shows in the finished face, splits the veneer round it and scratches whoever carries the case. Nobody sees it until it is driven.',
    mend: 'Take a shorter one, or make the part that it ends in thicker: a side of two layers takes a 2in pocket screw that a single one of 3/4in does not.',
    source: {
        kind: 'physics',
        citation: 'What is longer than the wood before it comes out behind it; the seat of a pocket screw by common practice, no source',
        value: 'the way along the fastener from its head to the far face',
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
    »join Low to every side with { pocket #8 x 2in count 3 inset 2in   glue }«
}
`,
            },
        ],
        good: [
            {
                note: 'A side of two layers is thick enough.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right layers 2
    shelf Low at 12in
    join Low to every side with { pocket #8 x 2in count 3 inset 2in   glue }
}
`,
            },
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { pocket #8 x 1 1/4in count 3 inset 2in   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { joint, step, fastener, length, wood, first, last, enters, receives } of drivenFasteners(casework)) {
            const out = length - wood;
            if (out <= tolerance.fit) continue;
            const part = last.part === receives.path ? receives : enters;
            const longest = longestThatFits(wood, casework);
            report({
                span: joint.span,
                part: part.path,
                message: `a ${fastener.kind} ${speaker.millimetres(length)} long comes out of \`${part.name}\` by ${speaker.millimetres(out)}`,
                hint:
                    longest > 0
                        ? `take one of at most ${speaker.millimetres(longest)}, or a thicker \`${part.name}\``
                        : `\`${part.name}\` is too thin for one here`,
                found: speaker.millimetres(length),
                needed: `less than ${speaker.millimetres(wood)}, which is the wood before it`,
                related: [{ span: step.span, message: 'how long it is' }],
                // a shorter one must still reach the second part
                ...(longest > first.leaves + (fastener.shank ?? 0) ? writtenAnew(casework, step.amount, longest) : {}),
            });
        }
    },
});
