import { defineRule } from '../define-rule.js';

export const fileNotFound = defineRule({
    code: 'NAM-003',
    name: 'file-not-found',
    severity: 'error',
    phase: 'reading',
    title: 'A file or library that is used does not exist',
    what: '`use` names a file that is not there, that cannot be read, or a library that does not come with the tool.',
    why: 'Everything declared in that file is unknown: materials, joints, edgings. Their names are not flagged again one by one.',
    mend: 'A file is named from the folder of the file that uses it: `use "shop.case"`, `use "../shop.case"`. A library is named without quotes: `use casewright.species`.',
    source: { kind: 'language', citation: 'Files and libraries' },
    fix: 'none',
    examples: {
        bad: [
            {
                note: 'Only `shop.case` stands beside this file.',
                text: `use »"shoop.case"«

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
                beside: { 'shop.case': 'material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }\n' },
            },
        ],
        good: [
            {
                text: `use "shop.case"

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
                beside: { 'shop.case': 'material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }\n' },
            },
        ],
    },
});
