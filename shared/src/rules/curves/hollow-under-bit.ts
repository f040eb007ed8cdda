import type { Casework, CurveModel, Measure } from '../../casework/index.js';
import { type Curve, innerCorners, leftInCorner, type Point, tightestHollow } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { curvedFrontsIn } from '../inspection/curved-fronts.js';
import { roundedPlace } from '../inspection/rounding.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const hollowUnderBit = defineRule({
    code: 'CRV-006',
    name: 'hollow-under-bit',
    severity: 'warning',
    phase: 'sizes',
    title: 'No flush bit of the shop gets into the hollow',
    what: 'The line that is cut along a template has a hollow whose radius is less than that of the smallest flush bit of the shop, or a corner that opens to the front, in which the bit leaves more than a tenth of a millimetre. The line is the core line, inside the bands, where a hollow is wider than on the finished line.',
    why: 'The bearing rides across the hollow and leaves wood in it, and the band will not lie on it.',
    mend: 'Let the hollow be wider, take a smaller bit, or cut the hollow by hand after the router: then allow it with that reason.',
    source: { kind: 'physics', citation: 'A round cutter leaves a hollow of its own radius at least' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
shop { bits { flush 1/2in } }

case Stand of Ply {
    width  30in
    height 16in
    depth  Sweep
    curve »Sweep« of depth over height {
        from 14in at bottom
        to   14in at 1/4in
        arc  in 1/8in
    }
    side Left, Right
    allow curve-too-short on Left because "straight above the finger groove at its foot"
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
shop { bits { flush 1/2in } }

case Stand of Ply {
    width  30in
    height 16in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   14in at top
        arc  in 2in
    }
    side Left, Right
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const smallest = smallestFlushBit(casework);
        if (!smallest) return;
        const bit = millimetresOf(smallest) / 2;
        const told = new Set<CurveModel>();
        const seen = new Set<string>();
        for (const { part, line, curve, takesOff } of curvedFrontsIn(casework)) {
            const cut = `${line.path} ${takesOff}`;
            if (told.has(line) || seen.has(cut)) continue;
            seen.add(cut);
            const tight = tightPlace(curve, takesOff, bit);
            if (!tight) continue;
            told.add(line);
            const at = `at ${speaker.millimetres(roundedPlace(tight.point.x))} of the ${line.over}`;
            const found = tight.radius === 0 ? `an inner corner ${at}` : `a hollow of radius ${speaker.millimetres(tight.radius)} ${at}`;
            report({
                span: line.nameSpan,
                part: part.path,
                message: `\`${line.name}\` has ${found}, and the smallest flush bit, of ${speaker.measure(smallest)}, has a radius of ${speaker.millimetres(bit)}`,
                hint:
                    tight.radius === 0
                        ? 'finish the corner by hand, or round it'
                        : `take a bit of at most ${speaker.millimetres(2 * tight.radius)}, or widen the hollow`,
                found,
                needed: `a radius of at least ${speaker.millimetres(bit)}`,
            });
        }
    },
});

/** Less than this in a corner is sanded away, in mm. Common practice, no source. */
const leastLeft = 0.1;

/** The first corner in which the bit leaves wood, or the hollow that is tighter than it. */
function tightPlace(curve: Curve, takesOff: number, bit: number): { readonly radius: number; readonly point: Point } | undefined {
    const corner = innerCorners(curve).find(({ turn }) => leftInCorner(turn ?? 0, bit) > leastLeft);
    if (corner) return { radius: 0, point: corner.point };
    const hollow = tightestHollow(curve);
    // inside the band a hollow is wider
    const radius = hollow && hollow.radius + takesOff;
    return hollow && radius !== undefined && radius < bit ? { radius, point: hollow.point } : undefined;
}

/** By its diameter; undefined where the shop names none. */
function smallestFlushBit({ shop }: Casework): Measure | undefined {
    const bits = shop.thing?.properties.get('bits');
    const flush = bits?.is === 'block' ? bits.properties.get('flush') : undefined;
    const all = flush?.is === 'measure' ? [flush.measure] : flush?.is === 'measures' ? flush.measures : [];
    return all.reduce<Measure | undefined>((least, bit) => (least && millimetresOf(least) <= millimetresOf(bit) ? least : bit), undefined);
}
