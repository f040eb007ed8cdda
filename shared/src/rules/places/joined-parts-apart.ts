import { defineRule } from '../define-rule.js';

export const joinedPartsApart = defineRule({
    code: 'PLC-008',
    name: 'joined-parts-apart',
    severity: 'error',
    phase: 'sizes',
    title: 'Two parts are joined and do not meet',
    what: 'A `join` names two parts that do not touch. An `every` joins only what touches; a pair that is named must.',
    why: 'A screw cannot reach over a gap. Either a part is not where it was thought to be, or another one was meant.',
    mend: 'Move one of the two until they meet, or name the part that it does touch.',
    source: { kind: 'physics', citation: 'A joint needs a common face', value: 'nearer than 0.01 mm counts as touching' },
    fix: 'none',
    follows: ['PLC-002', 'PLC-003', 'PLC-004'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low  at 12in
    shelf High at 24in
    join every shelf to every side with { glue }
    join Low to »High« with { glue }
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
    shelf Low  at 12in
    shelf High at 24in
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
});
