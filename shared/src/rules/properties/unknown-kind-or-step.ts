import { defineRule } from '../define-rule.js';

export const unknownKindOrStep = defineRule({
    code: 'PRP-006',
    name: 'unknown-kind-or-step',
    severity: 'error',
    phase: 'reading',
    title: 'There is no such kind of thing, family or step of work',
    what: 'The first word of a declaration names no kind of thing; or the word after its `:` no family of that kind; or a line of an edging or a joint begins with no step of work.',
    why: 'What is to be made, or done, is not known.',
    mend: 'Look at the spelling; the message names a word that is near. The reference lists the kinds, the families and the steps.',
    source: { kind: 'language', citation: 'Kinds of things and steps of work' },
    fix: 'unsafe',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

edging Lipped {
    »bnad« 1/8in of Ply
}

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

edging Lipped {
    band 1/8in of Ply
}

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
    },
});
