import { defineRule } from '../define-rule.js';

export const noSuchEdge = defineRule({
    code: 'EDG-005',
    name: 'no-such-edge',
    severity: 'error',
    phase: 'sizes',
    title: 'The part has no edge of this name',
    what: 'Boards that lie flat have front, back, left and right edges; boards that stand between back and front have front, back, top and bottom edges; boards that face the room have top, bottom, left and right edges.',
    why: 'The top of a shelf is a face and no edge: a band on it makes no sense, and another edge was meant.',
    mend: 'Name one of the four edges that the part has; the message lists them.',
    source: { kind: 'language', citation: 'Edges and faces' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Walnut }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in { edge »top« Lipped }
    join Low to every side with { glue }
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
    side Left, Right
    shelf Low at 12in { edge front Lipped }
    join Low to every side with { glue }
}
`,
            },
        ],
    },
});
