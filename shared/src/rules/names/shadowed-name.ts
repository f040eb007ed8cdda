import { defineRule } from '../define-rule.js';

export const shadowedName = defineRule({
    code: 'NAM-011',
    name: 'shadowed-name',
    severity: 'error',
    phase: 'reading',
    title: 'The name already means something out here',
    what: 'Inside a case a thing is given a name that can be seen from outside it: of the file, or of a file that it uses.',
    why: 'From that line on the word means something else than a few lines above. Who reads the design on paper does not notice.',
    mend: 'Give the inner thing a name of its own.',
    source: { kind: 'language', citation: 'A name stands for one thing' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

let low = 12in

case Bookcase of Ply {
    width 30in   height 36in   depth low
    let »low« = 14in
    side Left, Right
    shelf Low at low
    join Low to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

let deep = 12in

case Bookcase of Ply {
    width 30in   height 36in   depth deep
    let low = 14in
    side Left, Right
    shelf Low at low
    join Low to every side with { glue }
}
`,
            },
        ],
    },
});
