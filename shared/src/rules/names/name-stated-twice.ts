import { defineRule } from '../define-rule.js';

export const nameStatedTwice = defineRule({
    code: 'NAM-002',
    name: 'name-stated-twice',
    severity: 'error',
    phase: 'reading',
    title: 'Two things have one name',
    what: 'Two declarations of one file, or of one case, give the same name. The second is flagged; the first is named in the message.',
    why: 'A word that means two things would make one shelf do the work of another, and nobody would see it.',
    mend: 'Give one of them another name. If they are shelves of one kind, make them one group with a count: `shelf Tier[2]`.',
    source: { kind: 'language', citation: 'A name stands for one thing' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    shelf »Low« at 24in
    join every shelf to every side with { glue }
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
    shelf Low  at 12in
    shelf High at 24in
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
});
