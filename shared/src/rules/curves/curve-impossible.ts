import { defineRule } from '../define-rule.js';

export const curveImpossible = defineRule({
    code: 'CRV-002',
    name: 'curve-impossible',
    severity: 'error',
    phase: 'sizes',
    title: 'No such curve can be drawn',
    what: 'There is no curve of this kind between the ends, or through the points, that are given: its rise is so great that it would fold back over itself, its radius is too small to reach, both ends of a piece are at one place, points or pieces are not in the order in which they lie, no batten goes through the points, or a line parallel to it would have a sharp point.',
    why: 'A side that follows it would have two depths at one height.',
    mend: 'Take less rise, move the ends or points further apart, or write them in their order. The message says what is the most, or which point is wrong.',
    source: {
        kind: 'physics',
        citation:
            'Geometry of the circle; the elastica of a uniform strip for `bow`; Euler spirals with one curvature where they meet for `fair`',
    },
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
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 16in at bottom
        to   12in at top
        fair through 17in at 24in, »16in at 12in«
    }
    side Left, Right
}
`,
            },
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 16in at bottom
        to   17in at 12in
        »to   12in at 6in«
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
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 16in at bottom
        to   12in at top     fair through 16 1/2in at 12in, 15 1/4in at 24in
    }
    side Left, Right
}
`,
            },
        ],
    },
});
