import { defineRule } from '../define-rule.js';

export const partWithoutMaterial = defineRule({
    code: 'MAT-001',
    name: 'part-without-material',
    severity: 'error',
    phase: 'sizes',
    title: 'It is not said what the part is made of',
    what: 'Neither the part, nor an `every` that covers it, nor its case, nor the shop says what it is made of.',
    why: 'Its thickness is not known, and so neither is its place nor the size of anything that meets it.',
    mend: 'Say it at the part, `shelf Low at 12in of Ply`; for many parts at once, `every shelf { of Ply }`; or for the whole case, `case Bookcase of Ply`.',
    source: { kind: 'language', citation: 'What a part is made of' },
    fix: 'none',
    fromAbsence: true,
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase {
    width 30in   height 36in   depth 11in
    side Left, Right of Ply
    shelf »Low« at 12in
    join Low to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase {
    width 30in   height 36in   depth 11in
    side Left, Right of Ply
    shelf Low at 12in of Ply
    join Low to every side with { glue }
}
`,
            },
        ],
    },
});
