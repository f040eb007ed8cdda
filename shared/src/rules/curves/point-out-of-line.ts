import { type Curve, distance, type FairCurve, fairnessOf, fairThrough, isFair, type Point } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { declaredCurvesIn, piecesOf } from '../inspection/curve-pieces.js';
import { speakerFor } from '../inspection/speaker.js';

export const pointOutOfLine = defineRule({
    code: 'CRV-011',
    name: 'point-out-of-line',
    severity: 'warning',
    phase: 'sizes',
    title: 'A point makes the fair line turn back and forth',
    what: 'With one of the points of a fair line the line turns from belly to hollow and back; without it, it does not, and it passes the point at less than a fiftieth of the way between its neighbours. So it is the point that is off, not the line that is meant to wave. A line that waves by more than that, or with several points, is left alone.',
    why: 'The batten has a bump there that nobody asked for. It is what a maker looks for with an eye along the batten: the pin that it does not want.',
    mend: 'Take the point out, or move it onto the line that the others make: the message says how far. Where the wave is meant, allow it with that reason.',
    source: {
        kind: 'shop practice',
        citation: 'common practice, no source',
        value: 'a batten is faired by taking out the pin that it strains against; a fiftieth of the way between its neighbours',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 60in
    depth  Sweep
    curve Sweep of depth over height {
        from 16in at bottom
        »to   12in at top
        fair through 16 3/8in at 12in, 15 15/16in at 24in, 15 5/8in at 36in, 14 1/8in at 48in«
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
    height 60in
    depth  Sweep
    curve Sweep of depth over height {
        from 16in at bottom
        to   12in at top
        fair through 16 3/8in at 12in, 16 1/4in at 24in, 15 5/8in at 36in, 14 1/8in at 48in
    }
    side Left, Right
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const line of declaredCurvesIn(casework)) {
            for (const { curve, span } of piecesOf(line)) {
                const stray = isFair(curve) ? strayPoint(curve) : undefined;
                if (!stray) continue;
                const off = speaker.millimetres(Math.round(Math.abs(stray.off) / sixtyFourth) * sixtyFourth || sixtyFourth);
                const side = stray.off > 0 ? 'before' : 'behind';
                const place = `${speaker.millimetres(stray.point.y)} at ${speaker.millimetres(stray.point.x)}`;
                report({
                    span,
                    ...(line.parts[0] === undefined ? {} : { part: line.parts[0] }),
                    message: `the point ${place} of \`${line.name}\` is out of line: it lies ${off} ${side} the line that the others make, and turns it back and forth there`,
                    hint: `take it out, or move it by ${off}`,
                    found: `a point ${off} ${side} the line`,
                    needed: 'points that one fair line goes through',
                });
            }
        }
    },
});

const sixtyFourth = 25.4 / 64;

/** Off by more than this share of the way between its neighbours, a point is taken for meant. Common practice, no source. */
const mostOff = 0.02;

interface StrayPoint {
    readonly point: Point;
    /** Above zero where it is before the line, towards the room. */
    readonly off: number;
}

/**
 * The inner point whose leaving out takes two turns from belly to hollow away; the one without which the line
 * is fairest, where there are several.
 */
function strayPoint(curve: FairCurve): StrayPoint | undefined {
    const { points } = curve;
    const turns = curve.inflections().length;
    if (turns < 2 || points.length < 4) return undefined;
    let found: StrayPoint | undefined;
    let fairest = Number.POSITIVE_INFINITY;
    for (let index = 1; index + 1 < points.length; index++) {
        const point = points[index] as Point;
        const without = fairThrough(points.filter((_, at) => at !== index));
        if (!without.ok || without.curve.inflections().length > turns - 2) continue;
        const off = squareOff(point, without.curve);
        const apart = distance(points[index - 1] as Point, points[index + 1] as Point);
        const { scaledCurvatureVariation: uneven } = fairnessOf(without.curve);
        if (Math.abs(off) >= mostOff * apart || uneven >= fairest) continue;
        found = { point, off };
        fairest = uneven;
    }
    return found;
}

function squareOff({ x, y }: Point, line: Curve): number {
    return (y - line.valueAt(x).value) * Math.cos(Math.atan(line.slopeAt(x)));
}
