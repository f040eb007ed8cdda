import { defineRule } from '../define-rule.js';

export const misplacedStatement = defineRule({
    code: 'NAM-013',
    name: 'misplaced-statement',
    severity: 'error',
    phase: 'reading',
    title: 'The statement is good, but not in this place',
    what: 'A part stands outside every case, a `build` outside the project, a `join` at the top of a file.',
    why: 'A part takes its size from the room it is in. Outside a case there is no room.',
    mend: 'Move the line into the braces of what it belongs to; often a brace was closed too early.',
    source: { kind: 'language', citation: 'What stands where' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
»shelf« Low at 12in
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
