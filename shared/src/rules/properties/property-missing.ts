import { defineRule } from '../define-rule.js';

export const propertyMissing = defineRule({
    code: 'PRP-004',
    name: 'property-missing',
    severity: 'error',
    phase: 'reading',
    title: 'The thing must say more about itself',
    what: 'A property that this kind of thing cannot do without is not stated: the size of goods, the ends of a curve, the source of a species.',
    why: 'Without it the thing cannot be used for what it is there for.',
    mend: 'State the property; the message shows one as an example.',
    source: { kind: 'language', citation: 'The table of properties' },
    fix: 'none',
    fromAbsence: true,
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
goods »Vase« { mass 2.5lb }

case Stand of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    top
    join top to every side with { glue }
    hold Vase on top
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
goods Vase { size 7in wide 7in deep 12in high   mass 2.5lb }

case Stand of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    top
    join top to every side with { glue }
    hold Vase on top
}
`,
            },
        ],
    },
});
