import { defineRule } from '../define-rule.js';

export const placeUnclear = defineRule({
    code: 'PLC-001',
    name: 'place-unclear',
    severity: 'error',
    phase: 'sizes',
    title: 'It is not said where the part goes',
    what: 'The part has no place and its kind has no usual one, or the place can be read in more than one way. A side, a top, a bottom and a back go to their own face of the room by themselves; a shelf or a divider does not.',
    why: 'A part without a place has no size.',
    mend: 'Give it a place, `at 12in`, `at 1/2in below top`, `at middle`; or let a list divide the room, `clear 1, 1`, `clear equal`. Where another part stands in its way, say on which side of it, name an opening (`in Near`), or write the one that is to run through before the other.',
    source: { kind: 'language', citation: 'Places: a distance, a way, a face' },
    fix: 'none',
    fromAbsence: true,
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf »Low«
    join Low to every side with { glue }
}
`,
            },
            {
                note: 'The divider was written first and stands from bottom to top; the shelf was meant for the opening on its left.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 48in   height 36in   depth 11in
    side Left, Right
    divider Post at middle
    shelf »Low« at 12in
    join every shelf to every side with { glue }
}
`,
            },
            {
                note: 'The shelves run to the wall, so that the back could only stand between two of them. Written before them it closes the whole case.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Tier[2] clear equal
    »back«
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
    join Low to every side with { glue }
}
`,
            },
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 48in   height 36in   depth 11in
    side Left, Right
    divider Post at middle as Near, Far
    shelf Low in Near at 12in
    join Low to Left, Post with { glue }
}
`,
            },
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    back
    shelf Tier[2] clear equal
    join every shelf, back to every side with { glue }
    join back to every shelf with { glue }
}
`,
            },
        ],
    },
});
