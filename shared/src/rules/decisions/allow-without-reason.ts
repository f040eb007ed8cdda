import { defineRule } from '../define-rule.js';

const boards = `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Walnut }
`;

export const allowWithoutReason = defineRule({
    code: 'DES-003',
    name: 'allow-without-reason',
    severity: 'error',
    phase: 'sizes',
    title: 'A warning is allowed, and it is not said why',
    what: 'An `allow` has no `because`.',
    why: 'In a year nobody knows whether it was looked at, or only in the way.',
    mend: 'Say why: `allow end-grain-showing on Left because "the top end is under the cap"`. The reason is printed with the documents.',
    source: { kind: 'language', citation: 'Decisions give reasons' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `${boards}
case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right {
        edge front Lipped
        edge top Lipped
    }
    »allow end-grain-showing on Left, Right«
}
`,
            },
        ],
        good: [
            {
                text: `${boards}
case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right {
        edge front Lipped
        edge top Lipped
    }
    allow end-grain-showing on Left, Right because "it stands above eye level"
}
`,
            },
        ],
    },
});
