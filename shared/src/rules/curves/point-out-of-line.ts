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
    what: 'A batten that is free at its ends bends one way, or first one way and then the other. A line that turns twice or more, from belly to hollow and back, has a belly or hollow in between; where a single point makes that, against the points on both sides of it, and the line turns less often without it, the point is off. A bend that two or more points make together is taken as meant, and so is the one in the middle of points that are alike from both ends, such as those of a serpentine front, if it is off by a fiftieth or more of the way between its neighbours. A point that is off by 1/16in or less is left alone.',
    why: 'The batten has a bump there that nobody asked for. It is what a maker looks for with an eye along the batten: the pin that it does not want.',
    mend: 'Take the point out, or move it onto the line that the others make: the message says how far. Where the wave is meant, give that bend a second point, so that the batten is held to it.',
    source: {
        kind: 'shop practice',
        citation: 'common practice, no source',
        value: 'a batten is faired by taking out the pin that it strains against; a bend is held by two pins; pins are set to the sixteenth; a fiftieth of the way between its neighbours',
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
        to   12in at top
        fair through 16 3/8in at 12in, »15 15/16in at 24in«, 15 5/8in at 36in, 14 1/8in at 48in
    }
    side Left, Right
}
`,
            },
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 60in
    depth  Sweep
    curve Sweep of depth over height {
        from 15in at bottom
        to   11in at top
        fair through 14in at 10in, »15in at 20in«, 12in at 40in
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
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  48in
    height 34in
    depth  Front
    curve Front of depth over width {
        from 18in at left
        to   18in at right
        fair through 17in at 9in, 20in at 24in, 17in at 39in
    }
    side Left, Right
    bottom at 4in
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const line of declaredCurvesIn(casework)) {
            for (const { curve, span, points } of piecesOf(line)) {
                const stray = isFair(curve) ? strayPoint(curve) : undefined;
                if (!stray) continue;
                const off = speaker.millimetres(Math.round(Math.abs(stray.off) / sixtyFourth) * sixtyFourth || sixtyFourth);
                const side = stray.off > 0 ? 'before' : 'behind';
                const place = `${speaker.millimetres(stray.point.y)} at ${speaker.millimetres(stray.point.x)}`;
                report({
                    span: points[stray.index - 1] ?? span,
                    ...(line.parts[0] === undefined ? {} : { part: line.parts[0] }),
                    message: `the point ${place} of \`${line.name}\` is out of line: it lies ${off} ${side} the line that the others make, and turns it back and forth there`,
                    hint: `take it out, or move it by ${off}; where the wave is meant, give that bend a second point`,
                    found: `a point ${off} ${side} the line`,
                    needed: 'points that one fair line goes through',
                });
            }
        }
    },
});

const sixtyFourth = 25.4 / 64;

/** What rounding to the sixteenth makes of a point and of those around it: 1/32in each. Common practice, no source. */
const unseen = 25.4 / 16;

/** In points that are alike from both ends, a middle that is off by less than this share of the way between its neighbours is a dent. Common practice, no source. */
const dent = 0.02;

interface StrayPoint {
    /** Among the points of the curve, its ends counted. */
    readonly index: number;
    readonly point: Point;
    /** Above zero where it is before the line, towards the room. */
    readonly off: number;
}

/**
 * Of the points that bend the line against both their neighbours, the one without which it turns least often, and is fairest. A bend that
 * two points make together was asked for, and so was the one in the middle of points that are alike from both ends, if it is no mere dent.
 */
function strayPoint(curve: FairCurve): StrayPoint | undefined {
    const { points } = curve;
    const turns = curve.inflections().length;
    if (turns < 2) return undefined;
    const lone = lonePoints(points);
    const isSerpentine = lone.length === 1 && isAlikeFromBothEnds(points);
    let found: StrayPoint | undefined;
    let [fewest, fairest] = [turns, Number.POSITIVE_INFINITY];
    for (const index of lone) {
        const point = points[index] as Point;
        const without = fairThrough(points.filter((_, at) => at !== index));
        if (!without.ok) continue;
        const left = without.curve.inflections().length;
        const off = squareOff(point, without.curve);
        const { scaledCurvatureVariation: uneven } = fairnessOf(without.curve);
        if (left >= turns || left > fewest || (left === fewest && uneven >= fairest) || Math.abs(off) <= unseen) continue;
        if (isSerpentine && Math.abs(off) >= dent * distance(points[index - 1] as Point, points[index + 1] as Point)) continue;
        [found, fewest, fairest] = [{ index, point, off }, left, uneven];
    }
    return found;
}

/** Indices of the points at which the way from point to point turns against both its neighbours: a belly of one pin, or a hollow of one. */
function lonePoints(points: readonly Point[]): readonly number[] {
    const turns = points.map((at, index) => {
        const [before, after] = [points[index - 1], points[index + 1]];
        return before && after ? Math.sign((at.x - before.x) * (after.y - at.y) - (after.x - at.x) * (at.y - before.y)) : 0;
    });
    return turns.flatMap((turn, index) => (turn !== 0 && turns[index - 1] === -turn && turns[index + 1] === -turn ? [index] : []));
}

/** Whether the points are the same, counted from either end, over a chord that may slope. */
function isAlikeFromBothEnds(points: readonly Point[]): boolean {
    const [first, last] = [points[0] as Point, points.at(-1) as Point];
    const slope = (last.y - first.y) / (last.x - first.x);
    const rise = ({ x, y }: Point) => y - first.y - slope * (x - first.x);
    return points.every((point, index) => {
        const other = points[points.length - 1 - index] as Point;
        return Math.abs(point.x - first.x - (last.x - other.x)) <= unseen && Math.abs(rise(point) - rise(other)) <= unseen;
    });
}

function squareOff({ x, y }: Point, line: Curve): number {
    return (y - line.valueAt(x).value) * Math.cos(Math.atan(line.slopeAt(x)));
}
