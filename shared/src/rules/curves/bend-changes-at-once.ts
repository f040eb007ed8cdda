import { defineRule } from '../define-rule.js';
import { declaredCurvesIn, suddenChangesIn } from '../inspection/curve-pieces.js';
import { roundedPlace, roundedRadius } from '../inspection/rounding.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';

export const bendChangesAtOnce = defineRule({
    code: 'CRV-010',
    name: 'bend-changes-at-once',
    severity: 'note',
    phase: 'sizes',
    title: 'The bend of a curve changes at once',
    what: 'Two pieces of a curve meet in one direction, but one is bent more than the other: the radius jumps from one to the other, such as from a straight line to an arc. A change of less than a twentieth of the greatest bend of the curve is left alone.',
    why: 'The hand feels nothing. In a polished front the reflection of a window breaks there, and a batten drawn over the joint strays from both pieces.',
    mend: 'Nothing, on a front that is painted or broken there by an edge. Where it would show, draw both pieces as one line, `fair through` points: its bend changes evenly.',
    source: {
        kind: 'handbook',
        citation:
            'Moreton and Sequin, Functional optimization for fair surface design, SIGGRAPH 1992 (from memory): a fair line is one whose curvature varies least',
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
        to   16in at 12in
        »to   12in at top   arc tangent«
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
        fair through 15 3/4in at 12in, 14 1/2in at 24in
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
            for (const { feature, span } of suddenChangesIn(line, 'jump')) {
                const place = `at ${speaker.millimetres(roundedPlace(feature.point.x))} of the ${line.over}`;
                const [before, after] = [sayRadius(feature.radius, speaker), sayRadius(feature.radiusAfter ?? feature.radius, speaker)];
                const side = feature.turnsBack ? ' to the other side' : '';
                report({
                    span,
                    ...(line.parts[0] === undefined ? {} : { part: line.parts[0] }),
                    message: `the bend of \`${line.name}\` changes at once ${place}: from ${before} to ${after}${side}`,
                    hint: 'where it would show, draw both pieces as one line, `fair through` points',
                    found: `from ${before} to ${after}${side}`,
                    needed: 'one bend where two pieces meet',
                });
            }
        }
    },
});

/** Past this, 100 m, it is as good as straight. */
const straightFrom = 1e5;

function sayRadius(radius: number, speaker: Speaker): string {
    return radius > straightFrom ? 'straight' : `a radius of ${speaker.millimetres(roundedRadius(radius))}`;
}
