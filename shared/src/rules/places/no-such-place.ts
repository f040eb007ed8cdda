import { defineRule } from '../define-rule.js';

export const noSuchPlace = defineRule({
    code: 'PLC-010',
    name: 'no-such-place',
    severity: 'error',
    phase: 'sizes',
    title: 'One cannot measure from there',
    what: 'What a place is measured from is no face, no edge, no part and no room; or it is a face that is turned another way than the distance runs.',
    why: 'Above and below are measured from faces that lie flat, left and right from faces that stand to the side, before and behind from fronts and backs.',
    mend: 'Name a part (its face that is turned this way counts), a face (`Floor.upper`), or a face of the room (`top`, `bottom`, `left`, `right`, `front`, `back`).',
    source: { kind: 'language', citation: 'Places: a distance, a way, a face' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at »12in above Left.inner«
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
    shelf Low at 12in above bottom
    join Low to every side with { glue }
}
`,
            },
        ],
    },
});
