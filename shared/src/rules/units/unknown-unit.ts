import { defineRule } from '../define-rule.js';

export const unknownUnit = defineRule({
    code: 'UNI-002',
    name: 'unknown-unit',
    severity: 'error',
    phase: 'reading',
    title: 'There is no such unit',
    what: 'Letters touch a number, and they are no unit of the language.',
    why: 'What the number measures is not known.',
    mend: 'Lengths are `in`, `ft`, `mm`, `cm`, `m`, or the marks `"` and `\'`; masses `lb`, `oz`, `kg`, `g`; loads `lb/ft2`, `kg/m`. A by-sign needs a space on both sides: `48in x 96in`.',
    source: { kind: 'language', citation: 'Units' },
    fix: 'unsafe',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30»inch«   height 36in   depth 11in
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
