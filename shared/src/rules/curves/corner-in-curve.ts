import { defineRule } from '../define-rule.js';
import { declaredCurvesIn, suddenChangesIn } from '../inspection/curve-pieces.js';
import { roundedPlace } from '../inspection/rounding.js';
import { speakerFor } from '../inspection/speaker.js';

/** In degrees: over a foot it is a 32nd of an inch. Common practice, no source. */
const leastSeen = 0.15;

export const cornerInCurve = defineRule({
    code: 'CRV-009',
    name: 'corner-in-curve',
    severity: 'warning',
    phase: 'sizes',
    title: 'Two pieces of a curve meet at a corner',
    what: 'Where one piece of a curve ends and the next begins, the line changes its direction at once. A turn of less than 0.15 degrees is left alone: over a foot it is a 32nd of an inch.',
    why: 'The eye sees it and the hand feels it. A band does not go round it in one piece, and a router leaves its own radius in it where it opens to the front.',
    mend: 'Let the next piece go on from the one before, `arc tangent`, or draw both as one line, `fair through` points. A corner that is meant is allowed with that reason.',
    source: { kind: 'shop practice', citation: 'common practice, no source' },
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
        to   16in at 12in
        »to   12in at top   arc out 2in«
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
        to   16in at 12in
        to   12in at top   arc tangent
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
            for (const { feature, span } of suddenChangesIn(line, 'corner')) {
                const degrees = (Math.abs(feature.turn ?? 0) * 180) / Math.PI;
                if (degrees < leastSeen) continue;
                const place = `at ${speaker.millimetres(roundedPlace(feature.point.x))} of the ${line.over}`;
                report({
                    span,
                    ...(line.parts[0] === undefined ? {} : { part: line.parts[0] }),
                    message: `\`${line.name}\` has a corner ${place}: it turns by ${degrees.toFixed(1)} degrees at once`,
                    hint: 'let this piece go on from the one before: `arc tangent`',
                    found: `${degrees.toFixed(1)} degrees`,
                    needed: 'one direction where two pieces meet',
                });
            }
        }
    },
});
