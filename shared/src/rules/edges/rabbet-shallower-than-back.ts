import { wordsAt } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { letsIn } from '../inspection/edge-steps.js';
import { jointWorkIn } from '../inspection/joint-work.js';
import { measuredOff, writtenAnew } from '../inspection/mended-lengths.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const rabbetShallowerThanBack = defineRule({
    code: 'EDG-009',
    name: 'rabbet-shallower-than-back',
    severity: 'warning',
    phase: 'sizes',
    title: 'The rabbet is too shallow for the screws of the back',
    what: 'A back is screwed, nailed or pinned into a rabbet that is less deep than the back is thick: what lies on the rabbet is so narrow that the fasteners stand nearer to the edge of the back than half of its thickness.',
    why: 'They break out of the edge of the back or of the lip of the rabbet, and the back is held by nothing there.',
    mend: 'Cut the rabbet deeper, as far as the board allows: half of its thickness is usual.',
    source: {
        kind: 'handbook',
        citation:
            'USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-282, 2021), chapter 8, nails: not nearer to the edge than half the thickness',
        value: 'a bearing as wide as the back is thick',
    },
    fix: 'unsafe',
    follows: ['PLC-003', 'PLC-008', 'EDG-004', 'EDG-006'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Thick : plywood { thickness 1/2in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge back »rabbet 1/4in deep for back« }
    top
    bottom
    back of Thick
    join top, bottom to every side with { biscuit #20 count 2 inset 2in   glue }
    join back to every side, top, bottom with { screw #6 x 1 1/4in spacing 6in }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Thick : plywood { thickness 1/2in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge back rabbet 1/2in deep for back }
    top
    bottom
    back of Thick
    join top, bottom to every side with { biscuit #20 count 2 inset 2in   glue }
    join back to every side, top, bottom with { screw #6 x 1 1/4in spacing 6in }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { joint, enters, receives, fasteners } of jointWorkIn(casework)) {
            if (fasteners.length === 0) continue;
            for (const [host, guest] of [
                [receives, enters],
                [enters, receives],
            ] as const) {
                const thickness = guest.sizes.finished.thickness;
                const edge = host.edges.find(({ steps }) => steps.some((step) => step.does === 'rabbet' && step.for === guest.path));
                const step = edge?.steps.find((one) => letsIn(one) && one.for === guest.path);
                if (!edge || !step?.amount || !thickness || !fasteners.some(({ fastener }) => driven.has(fastener.kind))) continue;
                const short = millimetresOf(thickness) - millimetresOf(step.amount);
                if (short <= tolerance.fit) continue;
                report({
                    span: wordsAt(edge, step),
                    part: host.path,
                    message: `the rabbet in \`${host.name}\` is ${speaker.measure(step.amount)} deep, and \`${guest.name}\`, ${speaker.measure(thickness)} thick, is fixed in it: its fasteners stand nearer to the edge than half of that`,
                    hint: `cut it at least ${speaker.measure(thickness)} deep`,
                    found: speaker.measure(step.amount),
                    needed: `at least ${speaker.measure(thickness)}`,
                    related: [{ span: joint.span, message: 'how it is fixed' }],
                    ...writtenAnew(casework, step.amount, measuredOff(casework, millimetresOf(thickness), step.amount)),
                });
            }
        }
    },
});

const driven: ReadonlySet<string> = new Set(['screw', 'panel screw', 'nail', 'pin']);
