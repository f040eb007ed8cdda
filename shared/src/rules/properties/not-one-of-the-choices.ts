import { defineRule } from '../define-rule.js';

export const notOneOfTheChoices = defineRule({
    code: 'PRP-005',
    name: 'not-one-of-the-choices',
    severity: 'error',
    phase: 'reading',
    title: 'The property takes one of a few words, and this is none of them',
    what: 'Some properties take one word of a list, such as the `grain` of a sheet: `length`, `width` or `none`.',
    why: 'What another word means here is not known.',
    mend: 'Take one of the words that the message lists.',
    source: { kind: 'language', citation: 'The table of properties' },
    fix: 'unsafe',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain »lenght« }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
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
