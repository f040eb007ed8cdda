import { defineRule } from '../define-rule.js';

export const notBuiltYet = defineRule({
    code: 'PRP-007',
    name: 'not-built-yet',
    severity: 'error',
    phase: 'reading',
    title: 'This is understood, but this edition does not build it',
    what: 'The word is one of the language, and what it says is read, but this edition of the tool makes no parts of it.',
    why: 'A cut list that leaves the doors out without a word is worse than none.',
    mend: 'Take it out of the design, or draw it by hand and leave room for it.',
    source: { kind: 'language', citation: 'What this edition builds' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Cupboard of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    »door« Near
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Cupboard of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
            },
        ],
    },
});
