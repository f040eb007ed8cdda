import { defineRule } from '../define-rule.js';

export const reservedOrUnitName = defineRule({
    code: 'NAM-008',
    name: 'reserved-or-unit-name',
    severity: 'error',
    phase: 'reading',
    title: 'The word cannot be a name',
    what: 'A thing is given a name that already means something else: a unit (`mm`, `lb`), or, for an edging or a joint, a step of work (`round`, `glue`).',
    why: '`3mm` would be three millimetres in one line and three times something in the next.',
    mend: 'Take another name. A word that describes, such as `width` or `grain`, may be a name; units, steps of work and words that join (`of`, `at`, `to`, `with`) may not.',
    source: { kind: 'language', citation: 'Words that are no names' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

let »mm« = 30in

case Bookcase of Ply {
    width mm   height 36in   depth 11in
    side Left, Right
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

let wide = 30in

case Bookcase of Ply {
    width wide   height 36in   depth 11in
    side Left, Right
}
`,
            },
        ],
    },
});
