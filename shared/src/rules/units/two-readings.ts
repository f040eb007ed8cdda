import { defineRule } from '../define-rule.js';

export const twoReadings = defineRule({
    code: 'UNI-005',
    name: 'two-readings',
    severity: 'warning',
    phase: 'reading',
    title: 'Two people would read this differently',
    what: 'A sign stands so tight between numbers that it can be taken for part of a measure, or the other way round: `a/3/4in` is a divided by three quarters of an inch, and `5ft-10in` is a subtraction, though it looks like a length.',
    why: 'Both readings make a size, and only one of them is meant. The wrong one is found when the part does not fit.',
    mend: 'Put spaces around a sign that computes, `a / 3/4in`, `5ft - 10in`, and write a length in one piece: `5ft 10in`, `1 1/4in`.',
    source: { kind: 'language', citation: 'How measures are written' },
    fix: 'unsafe',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height »5ft-10in«   depth 11in
    side Left, Right
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 5ft 10in   depth 11in
    side Left, Right
}
`,
            },
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 5ft - 10in   depth 11in
    side Left, Right
}
`,
            },
        ],
    },
});
