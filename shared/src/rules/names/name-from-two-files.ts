import { defineRule } from '../define-rule.js';

const ply = (actual: string) => `material Ply : plywood { thickness 3/4in   actual ${actual}   sheet 48in x 96in   grain length }\n`;

export const nameFromTwoFiles = defineRule({
    code: 'NAM-012',
    name: 'name-from-two-files',
    severity: 'error',
    phase: 'reading',
    title: 'Two files that are used both have this name',
    what: 'Two files bring a thing of the same name, and this file uses both.',
    why: 'Two sheets called `Ply` differ by a few hundredths of an inch in thickness, and so does every shelf that is cut to fit between them.',
    mend: 'Call one of the files by a name of its own, `use "other.case" as Other`, and say `Other.Ply`; or rename one of the two things.',
    source: { kind: 'language', citation: 'Files and libraries' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use "shop.case"
use »"supplier.case"«

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
                beside: { 'shop.case': ply('0.720in'), 'supplier.case': ply('0.703in') },
            },
        ],
        good: [
            {
                text: `use "shop.case"
use "supplier.case" as Supplier

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in of Supplier.Ply
    join Low to every side with { glue }
}
`,
                beside: { 'shop.case': ply('0.720in'), 'supplier.case': ply('0.703in') },
            },
        ],
    },
});
