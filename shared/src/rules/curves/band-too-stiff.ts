import type { Casework } from '../../casework/index.js';
import { dryBend, type Wood } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { bentWoodIn, insideRadius } from '../inspection/bent-wood.js';
import { materialOf, speciesOf } from '../inspection/material.js';
import { roundedDown, roundedRadius } from '../inspection/rounding.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const bandTooStiff = defineRule({
    code: 'CRV-003',
    name: 'band-too-stiff',
    severity: 'warning',
    phase: 'sizes',
    title: 'The band is too thick to be bent to the curve',
    what: 'A band or nosing on a curved edge, or a board that is bent to a plan, is thicker than a hundredth of the least radius of the curve (hardwoods), or a hundred and twenty-fifth (softwoods). A strip of thickness t bent to a radius R is stretched by t/2R on its outside: 0.5 % for the hardwoods, 0.4 % for the softwoods. The rule of the standard counts southern pine with the hardwoods; here it is counted with the softwoods.',
    why: 'A dry strip that is bent tighter may crack, now or in the first dry winter, and it pulls at its glue line for good.',
    mend: 'Take a thinner band, glue it up of two, or let the curve rise less. Steamed or soaked stock bends tighter, and is then an allowance with its reason.',
    source: {
        kind: 'standard',
        citation:
            'National Design Specification for Wood Construction, ANSI/AWC NDS-2018, section 5.3.8, curved laminations (from memory; the same ratios stand in the Wood Handbook)',
        value: 't/R at most 1/100 for hardwoods, 1/125 for softwoods; R to the inside face',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `species BlackWalnut : hardwood { source "this example" }
material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { species BlackWalnut   rough 4/4   planed 3/4in }
edging Heavy { band 3/4in of Walnut }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   14in at top
        arc  out 3in
    }
    side Left, Right { »edge front Heavy« }
}
`,
            },
        ],
        good: [
            {
                text: `species BlackWalnut : hardwood { source "this example" }
material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { species BlackWalnut   rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Walnut }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   14in at top
        arc  out 3in
    }
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { part, line, curve, called, thickness: measure, material, span } of bentWoodIn(casework)) {
            const wood = woodOf(casework, material);
            if (!wood) continue;
            const thickness = millimetresOf(measure);
            const radius = insideRadius(curve, thickness);
            const least = thickness * dryBend[wood];
            if (radius >= least) continue;
            const strain = ((thickness / (2 * radius)) * 100).toFixed(2);
            const limit = 100 / (2 * dryBend[wood]);
            const found = `a radius of ${speaker.millimetres(roundedRadius(radius))}`;
            report({
                span,
                part: part.path,
                message: `${called(speaker.measure(measure))} \`${part.name}\` is bent to ${found}: that stretches it by ${strain} %, and dry ${wood} takes ${limit} %`,
                hint: `take one of at most ${speaker.millimetres(roundedDown(radius / dryBend[wood]))}, or let \`${line.name}\` rise less`,
                found,
                needed: `a radius of at least ${speaker.millimetres(roundedRadius(least))}`,
                related: [{ span: line.nameSpan, message: `\`${line.name}\`` }],
            });
        }
    },
});

/** Only solid wood has a limit here; what is not known to be wood has none. */
function woodOf(casework: Casework, material: string | undefined): Wood | undefined {
    const thing = materialOf(casework, material);
    if (!thing || !(thing.family === 'lumber' || thing.family === 'solid' || thing.family === 'veneer')) return undefined;
    const family = speciesOf(casework, thing)?.family;
    return family === 'hardwood' || family === 'softwood' ? family : undefined;
}
