import { defineRule } from '../define-rule.js';

export const materialWithoutThickness = defineRule({
    code: 'MAT-005',
    name: 'material-without-thickness',
    severity: 'error',
    phase: 'sizes',
    title: 'The material does not say how thick it is',
    what: 'A part is made of a material that states neither `actual`, nor `planed`, nor `thickness`.',
    why: 'Every size of a case hangs on how thick its boards really are.',
    mend: 'State the thickness the dealer gives, `thickness 3/4in`, and what a caliper reads, `actual 0.720in`. Sizes are computed from the second.',
    source: { kind: 'language', citation: 'Sizes come from actual thicknesses' },
    fix: 'none',
    fromAbsence: true,
    examples: {
        bad: [
            {
                text: `material »Ply« : plywood { sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
            },
        ],
    },
});
