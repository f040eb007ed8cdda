import { defineRule } from '../define-rule.js';

export const twoStatementsOnALine = defineRule({
    code: 'TXT-002',
    name: 'two-statements-on-a-line',
    severity: 'error',
    phase: 'reading',
    title: 'A second statement begins on the line',
    what: 'A statement is complete, and on the same line a word follows that begins another one, with no sign between the two.',
    why: 'A statement ends with its line. Where two stand on one, a word that was forgotten between them would go unseen. Both are read all the same.',
    mend: 'Put the second on a line of its own, or write `;` between the two.',
    source: { kind: 'language', citation: 'The forms of a statement' },
    fix: 'safe',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

project "Hall" {
    client "Ann Lee"   »build« Bookcase
}

case Bookcase of Ply {
    width  30in
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

project "Hall" {
    client "Ann Lee"
    build  Bookcase
}

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
