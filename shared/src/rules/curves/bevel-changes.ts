import { defineRule } from '../define-rule.js';
import { roundedPlace } from '../inspection/rounding.js';
import { isSound } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

/** Degrees. Over 3/4in of thickness it is 1/64in, what a plane or a scraper takes off. Common practice, no source. */
const oneSetting = 1;

export const bevelChanges = defineRule({
    code: 'CRV-013',
    name: 'bevel-changes',
    severity: 'note',
    phase: 'sizes',
    title: 'The bevel of a front changes along its edge',
    what: 'A front that is curved both ways has an edge which is bevelled to one curve and runs along the other. Where it runs aslant, the bevel square to the edge is less than where it runs straight across. Between its steepest and its flattest place it changes by more than one degree.',
    why: 'A saw or a router with one setting cuts one bevel: over a board of 3/4in each degree is 1/64in that one of the faces stands off the line.',
    mend: 'Cut at the least of the two bevels, proud of the line, and plane or spokeshave to the lines on both faces; or let the front stay `square`. Allow it with the way in which it is done.',
    source: {
        kind: 'shop practice',
        citation: 'common practice, no source',
        value: 'one degree, 1/64in over a board of 3/4in',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 24in
    depth  Sweep + Bow
    curve Sweep of depth over height {
        from 16in at bottom
        to   8in at top
    }
    curve Bow of depth over width {
        from 0in at left
        to   0in at right
        arc  out 5in
    }
    side Left, Right { edge front square }
    shelf »Low« at 6in { edge front bevelled }
    allow touching-without-joint on Low because "this example is about its front"
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 24in
    depth  Sweep + Bow
    curve Sweep of depth over height {
        from 16in at bottom
        to   8in at top
    }
    curve Bow of depth over width {
        from 0in at left
        to   0in at right
        arc  out 1in
    }
    side Left, Right { edge front square }
    shelf Low at 6in { edge front bevelled }
    allow touching-without-joint on Low because "this example is about its front"
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const part of casework.parts.values()) {
            const { form, along } = part.front ?? {};
            if (form !== 'bevelled' || !along || !isSound(part)) continue;
            const { least, greatest } = along;
            const change = greatest.degrees - least.degrees;
            if (change <= oneSetting) continue;
            const end = part.directions.thickness === 'z' ? 'left' : 'lower';
            const place = (at: number) => speaker.millimetres(roundedPlace(at));
            const found = `from ${least.degrees.toFixed(1)} to ${greatest.degrees.toFixed(1)} degrees`;
            report({
                span: part.nameSpan,
                part: part.path,
                message: `the bevel on the front of \`${part.name}\` changes along it, square to the edge, ${found}: it is least at ${place(least.at)} from the ${end} end and greatest at ${place(greatest.at)}`,
                hint: `saw it at ${least.degrees.toFixed(1)} degrees, and plane it to the lines on both faces`,
                found,
                needed: `a change of at most ${oneSetting} degree`,
            });
        }
    },
});
