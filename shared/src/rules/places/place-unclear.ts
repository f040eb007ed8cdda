import { defineRule } from '../define-rule.js';

export const placeUnclear = defineRule({
    code: 'PLC-001',
    name: 'place-unclear',
    severity: 'error',
    phase: 'sizes',
    title: 'It is not said where the part goes',
    what: 'The part has no place and its kind has no usual one, or the place can be read in more than one way. A side, a top, a bottom and a back go to their own face of the room by themselves; a shelf or a divider does not.',
    why: 'A part without a place has no size.',
    mend: 'Give it a place, `at 12in`, `at 1/2in below top`, `at middle`; or let a list divide the room, `clear 1, 1`, `clear equal`.',
    source: { kind: 'language', citation: 'Places: a distance, a way, a face' },
    fix: 'none',
    fromAbsence: true,
    follows: ['PLC-003'],
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
        ],
    },
});
