import { defineRule } from '../define-rule.js';

export const sharesDoNotFit = defineRule({
    code: 'PLC-006',
    name: 'shares-do-not-fit',
    severity: 'error',
    phase: 'sizes',
    title: 'The openings asked for do not fit into what is divided',
    what: 'A list divides a height or a width: its lengths, with the boards between them, come to more than there is; or they come to less, and nothing in the list takes the rest; or the list has another number of members than the parts make openings.',
    why: 'The list and the room cannot both be right.',
    mend: 'Make one of the members a share (`1`, `rest`): shares take what the lengths leave. Three shelves above a floor make four openings when the last lies under a top.',
    source: { kind: 'language', citation: 'Shares: one list wherever a length is divided' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Tier[2] »clear 14in, 14in, 14in«
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
    shelf Tier[2] clear 14in, 1, 1
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
});
