import { defineRule } from '../define-rule.js';

export const unknownMember = defineRule({
    code: 'NAM-009',
    name: 'unknown-member',
    severity: 'error',
    phase: 'reading',
    title: 'The thing has nothing of this name',
    what: 'After the dot stands a word that the thing before the dot does not have: no size, no edge, no face, no part or opening of that name.',
    why: 'A shelf has front, back, left and right edges and an upper and a lower face; a side has top and bottom edges, an inner and an outer face. A word that does not fit is nearly always meant for another part.',
    mend: 'The message lists what the thing has. Sizes are `length`, `width`, `thickness` and, of an opening, `width`, `height`, `depth`; other stages are `core.width`, `rough.length`.',
    source: { kind: 'language', citation: 'What a thing has' },
    fix: 'unsafe',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    shelf High at 12in above Low.»uper«
    join every shelf to every side with { glue }
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
    shelf Low at 12in
    shelf High at 12in above Low.upper
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
});
