import { defineRule } from '../define-rule.js';

export const indexOutOfRange = defineRule({
    code: 'NAM-010',
    name: 'index-out-of-range',
    severity: 'error',
    phase: 'sizes',
    title: 'The group has no such member',
    what: 'The number in brackets is below 1 or above the count of the group.',
    why: 'Counting begins at 1, as on a drawing: `Tier[3]` is the third and last of `shelf Tier[3]`.',
    mend: 'Take a number from 1 to the count of the group, or raise the count where the group is declared.',
    source: { kind: 'language', citation: 'Groups are counted from 1' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Tier[2] clear equal
    join every shelf to every side with { glue }
    require Tier[»3«].clear >= 9in because "tall books"
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
    shelf Tier[2] clear equal
    join every shelf to every side with { glue }
    require Tier[2].clear >= 9in because "tall books"
}
`,
            },
        ],
    },
});
