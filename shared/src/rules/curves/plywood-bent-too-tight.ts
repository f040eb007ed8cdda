import { leastRadiusOfPlywood } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { bentWoodIn, middleRadius } from '../inspection/bent-wood.js';
import { materialOf } from '../inspection/material.js';
import { roundedRadius } from '../inspection/rounding.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const plywoodBentTooTight = defineRule({
    code: 'CRV-005',
    name: 'plywood-bent-too-tight',
    severity: 'warning',
    phase: 'sizes',
    title: 'The plywood is too thick to be bent to the curve',
    what: 'A band or nosing of plywood, or a board of it that follows a plan, is bent to a smaller radius than the table of bend radii for aircraft plywood has for its thickness, dry and with the face grain round the bend. Between two rows the radius lies on a straight line; past the last row, 3/8in, its ratio of 144 is kept, and thicker plywood takes less than that.',
    why: 'The outer veneer breaks across, or the plies part. The table is for thin even plies without voids: plywood for cabinets is worse.',
    mend: 'Take thinner plywood in several layers, glued up on a form, or solid wood, or let the curve rise less. Plywood that is made to be bent, or soaked, takes less: allow it with the reason.',
    source: {
        kind: 'handbook',
        citation:
            'US Federal Aviation Administration, AC 43.13-1B, table of minimum recommended bend radii for aircraft plywood: 10 % moisture, bent cold, face grain around the bend (which angle of the table is which is our reading)',
        value: '1/8in: 12in; 1/4in: 31in; 3/8in: 54in',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply  : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Thin : plywood { thickness 1/4in   sheet 48in x 96in   grain length }
edging Faced { band 1/4in of Thin }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   14in at top
        arc  out 7in
    }
    side Left, Right { »edge front Faced« }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply  : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Thin : plywood { thickness 1/4in   sheet 48in x 96in   grain length }
edging Faced { band 1/4in of Thin }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   14in at top
        arc  out 2in
    }
    side Left, Right { edge front Faced }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { part, line, curve, called, thickness: measure, material, span } of bentWoodIn(casework)) {
            if (materialOf(casework, material)?.family !== 'plywood') continue;
            const thickness = millimetresOf(measure);
            const radius = middleRadius(curve, thickness);
            const least = leastRadiusOfPlywood(thickness, 'around');
            if (radius >= least.radius) continue;
            const found = `a radius of ${speaker.millimetres(roundedRadius(radius))}`;
            const needed = `a radius of at least ${speaker.millimetres(roundedRadius(least.radius))}`;
            report({
                span,
                part: part.path,
                message: `${called(speaker.measure(measure))} \`${part.name}\` is plywood bent to ${found}, and ${least.inTable ? 'the table for aircraft plywood has' : 'past the table for aircraft plywood it wants'} ${needed}`,
                hint: `take thinner plywood in layers, or let \`${line.name}\` rise less`,
                found,
                needed,
                related: [{ span: line.nameSpan, message: `\`${line.name}\`` }],
            });
        }
    },
});
