import { wordsAt } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { edgeStepsIn, letsIn } from '../inspection/edge-steps.js';
import { isSound, millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const rabbetNarrowerThanBack = defineRule({
    code: 'EDG-006',
    name: 'rabbet-narrower-than-back',
    severity: 'error',
    phase: 'sizes',
    title: 'The rabbet or groove is narrower than what goes into it',
    what: 'A rabbet or a groove that is made for a part is less wide than that part is actually thick.',
    why: 'The back stands out behind the case, and the case does not go to the wall; or the panel does not go into its groove at all.',
    mend: 'Leave the width out, `rabbet 3/8in deep for back`: it is then made as wide as the back turns out to be. Or make it wider.',
    source: { kind: 'physics', citation: 'A part goes where there is room for its thickness', value: 'the actual thickness of the part' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply  : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
material Ply4 : plywood { thickness 1/4in   actual 0.205in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge back »rabbet 3/16in wide 3/8in deep for back« }
    back of Ply4
    join back to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply  : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
material Ply4 : plywood { thickness 1/4in   actual 0.205in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge back rabbet 3/8in deep for back }
    back of Ply4
    join back to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { part, edge, step } of edgeStepsIn(casework)) {
            const guest = step.for === undefined ? undefined : casework.parts.get(step.for);
            const thickness = guest?.sizes.finished.thickness;
            if (!letsIn(step) || !step.width || !guest || !thickness || !isSound(guest)) continue;
            const short = millimetresOf(thickness) - millimetresOf(step.width);
            if (short <= tolerance.fit) continue;
            const found = speaker.measure(step.width);
            const needed = speaker.measure(thickness);
            report({
                span: wordsAt(edge, step),
                part: part.path,
                concerns: [guest.path],
                message: `the ${step.does} in \`${part.name}\` is ${found} wide, and \`${guest.name}\` is ${needed} thick`,
                hint: `leave the width out and it follows \`${guest.name}\`, or make it at least ${needed} wide`,
                found,
                needed: `at least ${needed}`,
                related: [{ span: guest.nameSpan, message: `\`${guest.name}\`` }],
            });
        }
    },
});
