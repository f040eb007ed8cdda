import { defineRule } from '../define-rule.js';

export const wrongKindOfThing = defineRule({
    code: 'NAM-007',
    name: 'wrong-kind-of-thing',
    severity: 'error',
    phase: 'reading',
    title: 'The name is that of another kind of thing',
    what: 'The name is known, but what it stands for cannot be used here: an edging where a material is needed, a shelf where a number is needed.',
    why: 'Each place of the language asks for one kind of thing; the message says which one it found and which one it needs.',
    mend: 'Name a thing of the kind that is needed. A group of parts is no single part: name one of them (`Tier[2]`), or a size of one (`Tier[2].clear`).',
    source: { kind: 'language', citation: 'Things and their kinds' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
edging Lipped { band 1/8in of Ply }

case Bookcase of »Lipped« {
    width 30in   height 36in   depth 11in
    side Left, Right of Ply { edge front Lipped }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
edging Lipped { band 1/8in of Ply }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
    },
});
