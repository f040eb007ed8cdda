import { defineRule } from '../define-rule.js';

export const wholeNumberNeeded = defineRule({
    code: 'UNI-006',
    name: 'whole-number-needed',
    severity: 'error',
    phase: 'sizes',
    title: 'A count must be a whole number',
    what: 'A number of parts, or an index, comes out as a fraction, or below what can be counted.',
    why: 'Two and a half shelves cannot be cut, and rounding them up or down is a decision of the maker.',
    mend: 'Round on purpose: `floor(height / 11in)`, `ceil(width / 600mm) - 1`.',
    source: { kind: 'language', citation: 'Counts' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Tier[»36in / 11in«] clear equal
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
    shelf Tier[floor(36in / 11in)] clear equal
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
});
