import { defineRule } from '../define-rule.js';

export const parallelCusps = defineRule({
    code: 'CRV-008',
    name: 'parallel-cusps',
    severity: 'error',
    phase: 'sizes',
    title: 'A line inside the curve would have a sharp point',
    what: 'The core of a curved part lies inside its finished line by the thickness of its bands, everywhere square to it; a part may also be said to stand so far behind a curve, or past it. Where the curve bends with a radius that is no greater than that distance, the parallel turns back over itself in a point: there is no such line.',
    why: 'There is nothing that the band could be glued to, and no template can be made.',
    mend: 'Take thinner bands, a lesser distance, or a gentler curve.',
    source: {
        kind: 'physics',
        citation:
            'The parallel of a curve has a cusp where its distance is the radius of curvature (differential geometry of plane curves)',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { planed 3/4in }

case Stand of Ply {
    width  30in
    height 5in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   14in at top
        arc  out 2in
    }
    side Left, Right { edge front { »nosing 3in of Walnut« } }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { planed 3/4in }

case Stand of Ply {
    width  30in
    height 5in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   14in at top
        arc  out 2in
    }
    side Left, Right { edge front { band 1/8in of Walnut } }
}
`,
            },
        ],
    },
});
