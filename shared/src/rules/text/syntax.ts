import { defineRule } from '../define-rule.js';

export const syntax = defineRule({
    code: 'TXT-001',
    name: 'syntax',
    severity: 'error',
    phase: 'reading',
    title: 'A word or a sign stands where it does not belong',
    what: 'The line cannot be read: something is missing, something stands in the wrong place, or a bracket, a brace or a quote is not closed. The first such place of a line is flagged. The lines around it are read all the same.',
    why: 'What the line says is not known, so nothing can be computed from it.',
    mend: 'Three forms make up every design: a thing (`shelf Floor at 4in`), a property (`width 40in`), a sentence (`join Floor to every side with Fixed`). A property has no sign between its name and its value. A statement ends with its line, or with `;`.',
    source: { kind: 'language', citation: 'The forms of a statement' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width »=« 30in
    height 36in
    depth  11in
    side Left, Right
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width  30in
    height 36in
    depth  11in
    side Left, Right
}
`,
            },
        ],
    },
});
