import type { Batten, Casework, CurveModel } from '../../casework/index.js';
import { type Curve, isJoined } from '../../geometry/index.js';
import { dryStrain, outerStrain, thickestFor, type WoodStrength, woodStrength } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { roundedDown, roundedRadius } from '../inspection/rounding.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const battenBreaks = defineRule({
    code: 'CRV-004',
    name: 'batten-breaks',
    severity: 'warning',
    phase: 'sizes',
    title: 'The batten is too thick to be bent to the curve',
    what: 'The strip that a bow or a fair line is drawn with is strained more than dry wood takes: thickness over twice the least radius of the line, against 0.5 % for hardwoods and 0.4 % for softwoods. Past the modulus of rupture of its species over its modulus of elasticity it breaks for certain. Arcs are drawn with a trammel, and are left alone.',
    why: 'A bow bends more in its middle than the arc of the same rise: its least radius is four fifths of the radius of that arc. A strip that stands the arc may break in the bow, in the hands that hold it.',
    mend: 'Take a thinner batten, or let the curve rise less.',
    source: {
        kind: 'standard',
        citation:
            'National Design Specification for Wood Construction, ANSI/AWC NDS-2018, section 5.3.8, curved laminations (from memory); strengths of the species: Wood Handbook FPL-GTR-282, Table 5-3b; least radius of the bow: Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., section 2.7',
        value: 'strain t/2R at most 0.5 % for hardwoods, 0.4 % for softwoods; it breaks at modulus of rupture over modulus of elasticity, 0.6 % to 0.9 %',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.species
material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   14in at top
        bow  out 4in
        »batten { thickness 1/2in   width 1in   species WhiteAsh }«
    }
    side Left, Right
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.species
material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   14in at top
        bow  out 4in
        batten { thickness 3/16in   width 1in   species WhiteAsh }
    }
    side Left, Right
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const line of casework.curves) {
            const { batten, curve } = line;
            const wood = batten && woodOf(batten, casework);
            if (!curve || !batten?.thickness || !wood?.wood || line.parts.length === 0) continue;
            const thickness = millimetresOf(batten.thickness);
            const radius = Math.min(...sprungIn(curve).map((piece) => piece.leastRadius().radius));
            const strain = outerStrain(thickness, radius);
            const limit = dryStrain(wood.wood);
            if (strain <= limit) continue;
            const { ruptureStrain } = wood;
            const breaks = ruptureStrain !== undefined && strain >= ruptureStrain;
            const found = `a strain of ${percent(strain)}`;
            const [span, other] = isOwn(line, batten) ? [batten.span, line.nameSpan] : [line.nameSpan, batten.span];
            report({
                span,
                ...(line.parts[0] === undefined ? {} : { part: line.parts[0] }),
                message: `the batten of ${speaker.measure(batten.thickness)} ${breaks ? 'breaks' : 'may break'} before it lies on \`${line.name}\`: ${found} at a radius of ${speaker.millimetres(roundedRadius(radius))}, and ${breaks ? `\`${wood.name}\` breaks at ${percent(ruptureStrain)}` : `dry ${wood.wood} takes ${percent(limit)}`}`,
                hint: `take one of at most ${speaker.millimetres(roundedDown(thickestFor(limit, radius)))}, or let \`${line.name}\` rise less`,
                found,
                needed: `a strain of at most ${percent(limit)}`,
                related: [{ span: other, message: isOwn(line, batten) ? `\`${line.name}\`` : 'the batten' }],
            });
        }
    },
});

/** The pieces that a batten is bent to. */
function sprungIn(curve: Curve): readonly Curve[] {
    const pieces = isJoined(curve) ? curve.pieces : [curve];
    return pieces.filter(({ kind }) => kind === 'bow' || kind === 'fair');
}

function woodOf({ species }: Batten, casework: Casework): WoodStrength | undefined {
    const thing = species === undefined ? undefined : casework.things.get(species);
    return thing && woodStrength(thing);
}

/** Whether the curve says its batten itself. */
function isOwn({ span }: CurveModel, batten: Batten): boolean {
    return batten.span.file === span.file && batten.span.start >= span.start && batten.span.end <= span.end;
}

function percent(share: number): string {
    return `${(share * 100).toFixed(2)} %`;
}
