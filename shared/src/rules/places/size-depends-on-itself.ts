import { defineRule } from '../define-rule.js';

export const sizeDependsOnItself = defineRule({
    code: 'PLC-007',
    name: 'size-depends-on-itself',
    severity: 'error',
    phase: 'sizes',
    title: 'To know the size one would have to know it already',
    what: 'A size hangs on another, and that one, directly or through more, on the first. The message goes round once.',
    why: 'Sizes flow one way, from places to parts. In a circle nothing is known.',
    mend: 'Say one of the sizes outright.',
    source: { kind: 'language', citation: 'How a size comes about' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf »Low« at 10in below High
    shelf High at 10in above Low
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
    shelf Low at 12in
    shelf High at 10in above Low
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
});
