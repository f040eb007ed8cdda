import { defineRule } from '../define-rule.js';

export const divisionByZero = defineRule({
    code: 'UNI-004',
    name: 'division-by-zero',
    severity: 'error',
    phase: 'sizes',
    title: 'Something is divided by nothing',
    what: 'What stands after the `/` comes out as zero.',
    why: 'There is no such number, so every size that hangs on it is unknown.',
    mend: 'Look at what makes the divisor zero: often it is a count less one, and the count is 1.',
    source: { kind: 'physics', citation: 'Arithmetic' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

let tiers = 1

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 24in / (»tiers - 1«)
    join Low to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

let tiers = 1

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 24in / (tiers + 1)
    join Low to every side with { glue }
}
`,
            },
        ],
    },
});
