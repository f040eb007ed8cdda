import { defineRule } from '../define-rule.js';

export const missingUnit = defineRule({
    code: 'UNI-001',
    name: 'missing-unit',
    severity: 'error',
    phase: 'reading',
    title: 'The number has no unit',
    what: 'A bare number stands where a length, a mass, a load or another measure is needed. A bare number is a count, a ratio or a share.',
    why: 'Shops mix inches and millimetres, often in one design. 40 of the one is not 40 of the other.',
    mend: 'Write the unit at the number: `40in`, `40mm`, `1 1/4in`, `5\'10 1/2"`.',
    source: { kind: 'language', citation: 'Every measure carries a unit' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width »30«   height 36in   depth 11in
    side Left, Right
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
}
`,
            },
        ],
    },
});
