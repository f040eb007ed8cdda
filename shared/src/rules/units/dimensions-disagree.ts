import { defineRule } from '../define-rule.js';

export const dimensionsDisagree = defineRule({
    code: 'UNI-003',
    name: 'dimensions-disagree',
    severity: 'error',
    phase: 'sizes',
    title: 'These are measures of different things',
    what: 'A length is added to a mass, an area stands where a length is needed, an angle is compared with a length. The message says what was found and what is needed.',
    why: 'Such a sum has no meaning. Behind it is a sign or a bracket in the wrong place, or a name that stands for something else than was thought.',
    mend: 'Add and compare like with like. A length times a length is an area; a length divided by a length is a plain number.',
    source: { kind: 'physics', citation: 'Only quantities of one dimension can be added or compared (ISO 80000-1, from memory)' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at »30in * 1/3in«
    join Low to every side with { glue }
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
    shelf Low at 36in / 3
    join Low to every side with { glue }
}
`,
            },
        ],
    },
});
