import { defineRule } from '../define-rule.js';

export const errorCannotBeAllowed = defineRule({
    code: 'DES-006',
    name: 'error-cannot-be-allowed',
    severity: 'error',
    phase: 'sizes',
    title: 'An error cannot be allowed',
    what: 'An `allow` names a rule whose findings are errors. Warnings and notes can be allowed, with a reason; errors cannot.',
    why: 'An error says that the thing cannot be made as it is written. No reason changes that.',
    mend: 'Mend what the error is about, and take the `allow` out.',
    source: { kind: 'language', citation: 'Decisions give reasons' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { glue }
    allow »parts-overlap« on Low because "it will be made to fit"
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
