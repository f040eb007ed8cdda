import { defineRule } from '../define-rule.js';

export const tooManyParts = defineRule({
    code: 'PLC-009',
    name: 'too-many-parts',
    severity: 'error',
    phase: 'sizes',
    title: 'More parts than any case has',
    what: 'A count or a `repeat` asks for more parts than the tool makes. The rest of the design is built as if it were not there.',
    why: 'A design with so many parts is a slip of the pen, and building it would keep the editor busy for minutes.',
    mend: 'Look at the count, and at what it is computed from.',
    source: { kind: 'language', citation: 'Limits' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Tier[»1000000000«] clear equal
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
    shelf Tier[3] clear equal
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
});
