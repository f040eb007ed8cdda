import { defineRule } from '../define-rule.js';

export const useCycle = defineRule({
    code: 'NAM-004',
    name: 'use-cycle',
    severity: 'error',
    phase: 'reading',
    title: 'Files use each other in a circle',
    what: 'A file uses a file that, directly or through others, uses the first one again. It is reported once, with the way round.',
    why: 'Neither of the two can be read before the other, so it is not clear which of two names counts.',
    mend: 'Put what both need into a third file that uses neither, such as the shop file, and let both use that one.',
    source: { kind: 'language', citation: 'Files and libraries' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use »"boards.case"«

let shelfDepth = 11in

case Bookcase of Ply {
    width 30in   height 36in   depth shelfDepth
    side Left, Right
}
`,
                beside: {
                    'boards.case': `use "design.case"

material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
`,
                },
            },
        ],
        good: [
            {
                text: `use "boards.case"

let shelfDepth = 11in

case Bookcase of Ply {
    width 30in   height 36in   depth shelfDepth
    side Left, Right
}
`,
                beside: { 'boards.case': 'material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }\n' },
            },
        ],
    },
});
