import { defineRule } from '../define-rule.js';

export const unknownName = defineRule({
    code: 'NAM-001',
    name: 'unknown-name',
    severity: 'error',
    phase: 'reading',
    title: 'Nothing has this name',
    what: 'A word names a thing, but no thing of that name can be seen from where the word stands: not in the case, not in the file, and not in the files that it uses.',
    why: 'What the word stands for decides a size, a material or a joint. A guess would be cut in wood.',
    mend: 'Look at the spelling; capitals count. If the thing is declared in another file, name that file with `use`. If it is inside another case, it cannot be seen from here: move it to the top of the file.',
    source: { kind: 'language', citation: 'Where a name can be seen' },
    fix: 'unsafe',
    follows: ['NAM-003'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Floor at 4in of »Pli«
    join Floor to every side with { glue }
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
    shelf Floor at 4in of Ply
    join Floor to every side with { glue }
}
`,
            },
        ],
    },
});
