import { defineRule } from '../define-rule.js';

export const caseWithoutSize = defineRule({
    code: 'PLC-011',
    name: 'case-without-size',
    severity: 'error',
    phase: 'sizes',
    title: 'The case does not say how large it is',
    what: 'A case that is built by itself states no width, no height or no depth. A case that is put inside another takes its size from its place.',
    why: 'The parts take their sizes from the room they stand in. Without a room there is nothing to cut.',
    mend: 'State `width`, `height` and `depth`; or make the size a parameter, and give it where the case is built.',
    source: { kind: 'language', citation: 'Rooms' },
    fix: 'none',
    fromAbsence: true,
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case »Bookcase« of Ply {
    width 30in   height 36in
    side Left, Right
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
}
`,
            },
        ],
    },
});
