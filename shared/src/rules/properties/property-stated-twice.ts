import { defineRule } from '../define-rule.js';

export const propertyStatedTwice = defineRule({
    code: 'PRP-003',
    name: 'property-stated-twice',
    severity: 'error',
    phase: 'reading',
    title: 'The same thing is said twice',
    what: 'One thing states one property twice. The second is flagged; the message says where the first is. A value that an `every`, a `like` or the shop file brings is not meant: the nearer one takes its place.',
    why: 'When the two differ, which of them is cut? When they agree, one of them is changed some day and the other is not.',
    mend: 'Take one of them out.',
    source: { kind: 'language', citation: 'A thing is said once' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width  30in
    height 36in
    depth  11in
    »width« 32in
    side Left, Right
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width  32in
    height 36in
    depth  11in
    side Left, Right
}
`,
            },
        ],
    },
});
