import { defineRule } from '../define-rule.js';

export const unknownProperty = defineRule({
    code: 'PRP-001',
    name: 'unknown-property',
    severity: 'error',
    phase: 'reading',
    title: 'The thing has no such property',
    what: 'A property is stated that this kind of thing does not have.',
    why: 'A misspelt `thicknes` would leave the thickness unsaid, and every size that hangs on it would be wrong or unknown.',
    mend: 'Look at the spelling. The reference lists what each kind of thing can say.',
    source: { kind: 'language', citation: 'The table of properties' },
    fix: 'unsafe',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { »thicknes« 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

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
