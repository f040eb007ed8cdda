import { defineRule } from '../define-rule.js';

export const privateName = defineRule({
    code: 'NAM-005',
    name: 'private-name',
    severity: 'error',
    phase: 'reading',
    title: 'The name is private to another file',
    what: 'The name is declared in a file that this one uses, but it is marked `private` there.',
    why: 'Whoever wrote that file keeps the right to change what is private without asking the designs that use the file.',
    mend: 'Use a public name of that file, or take `private` away where the thing is declared.',
    source: { kind: 'language', citation: 'Public and private names' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use "shop.case"

case Bookcase of »Ply« {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
                beside: { 'shop.case': 'private material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }\n' },
            },
        ],
        good: [
            {
                text: `use "shop.case"

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
                beside: { 'shop.case': 'material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }\n' },
            },
        ],
    },
});
