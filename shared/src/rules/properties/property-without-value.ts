import { defineRule } from '../define-rule.js';

export const propertyWithoutValue = defineRule({
    code: 'PRP-002',
    name: 'property-without-value',
    severity: 'error',
    phase: 'reading',
    title: 'The property or step says nothing',
    what: 'The name of a property, or a step of work, stands there without the value that it needs.',
    why: 'It is a line half written. What it was to say is not known.',
    mend: 'Write the value after the name; the message shows one as an example.',
    source: { kind: 'language', citation: 'The table of properties' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { »band« of Walnut }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Walnut }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
    },
});
