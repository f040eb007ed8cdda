import { defineRule } from '../define-rule.js';

export const curveImpossible = defineRule({
    code: 'CRV-002',
    name: 'curve-impossible',
    severity: 'error',
    phase: 'sizes',
    title: 'No such curve can be drawn',
    what: 'Between the two ends that are given there is no curve of this kind: its rise is so great that it would fold back over itself, its radius is too small to reach, or both ends are at one place.',
    why: 'A side that follows it would have two depths at one height.',
    mend: 'Take less rise, or move the ends further apart. The message says what is the most.',
    source: { kind: 'physics', citation: 'Geometry of the circle; the elastica of a uniform strip for `bow`' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 16in at bottom
        to   12in at top
        »arc  out 24in«
    }
    side Left, Right
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 16in at bottom
        to   12in at top
        arc  out 1in
    }
    side Left, Right
}
`,
            },
        ],
    },
});
