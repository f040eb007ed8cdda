import type { EdgeName, EdgeStep, Part } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { boundsOf, type Feature, spanOf } from '../../joinery/index.js';
import { dimension } from '../../quantity/index.js';
import { defineRule } from '../define-rule.js';
import { amountOf } from '../inspection/edge-steps.js';
import { axisOf, calledOf, distanceFrom, inspectJoints, isFaceOf, type QuietJoints, stockOf } from '../inspection/joint-work.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

const quiet: QuietJoints = new WeakSet();

export const fastenerUnderRounding = defineRule({
    code: 'JNT-014',
    name: 'fastener-under-rounding',
    severity: 'warning',
    phase: 'sizes',
    title: 'A screw or a slot lies where an edge is rounded, chamfered or bevelled',
    what: 'A hole, a slot or the head of a screw in a face of a board reaches into what the round, the chamfer or the bevel of an edge takes off.',
    why: 'The bit of the router meets the head of the screw, or the round lays the slot bare. Steel on carbide at full speed breaks both, and throws the pieces.',
    mend: 'Set the fasteners farther in, take a smaller round, or round the edge over only where there are none. Work the edge before the joint is screwed: a head in its way is then seen, and not met.',
    source: { kind: 'physics', citation: 'Geometry of the cut', value: 'the radius of the round, the width of the chamfer' },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008', 'EDG-007', 'JNT-008'],
    examples: {
        bad: [
            {
                note: 'The screws stand 3/8in from the ends of the top, and the round takes 1/4in off.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width 30in   height 20in   depth 11in
    top { edge left, right round 1/4in }
    side Left, Right
    »join top to every side with { screw #10 x 2in count 3 inset 2in head 3/8in   glue }«
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width 30in   height 20in   depth 11in
    top { edge left, right round 1/8in }
    side Left, Right
    join top to every side with { screw #10 x 2in count 3 inset 2in head 3/8in   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        inspectJoints(casework, quiet, report, ({ joint, cuts }, report) => {
            for (const { feature, step, part } of cuts) {
                if (part.edges.length === 0 || !isOnFace(feature, part)) continue;
                const hit = hitBy(feature, part);
                if (!hit) continue;
                const { edge, work, takes, distance } = hit;
                report({
                    span: joint.span,
                    part: part.path,
                    message: `a ${feature.does} for a ${calledOf(step)} in \`${part.name}\` reaches within ${speaker.millimetres(Math.max(0, distance))} of the ${edge} edge, where a ${work.does} takes ${speaker.millimetres(takes)} off`,
                    hint: `set the fasteners farther from the ${edge} edge, or make the ${work.does} smaller`,
                    found: speaker.millimetres(Math.max(0, distance)),
                    needed: `at least ${speaker.millimetres(takes)}`,
                    related: [{ span: work.span, message: `the ${work.does}` }],
                });
            }
        });
    },
});

const bored: ReadonlySet<Feature['does']> = new Set([
    'biscuit slot',
    'dowel hole',
    'pin hole',
    'bolt hole',
    'clearance hole',
    'countersink',
    'pilot hole',
    'mortise',
    'pocket',
]);

/** Whether it opens in a face of the board: a slanted hole by its mouth. */
function isOnFace({ does, side }: Feature, part: Part): boolean {
    return bored.has(does) && isFaceOf(part, side);
}

interface Hit {
    readonly edge: EdgeName;
    readonly work: EdgeStep;
    readonly takes: number;
    readonly distance: number;
}

function hitBy({ solid }: Feature, part: Part): Hit | undefined {
    const bounds = boundsOf(solid);
    for (const { name: edge, steps } of part.edges) {
        const distance = distanceFrom(edge, part.box, spanOf(bounds, axisOf(edge)));
        for (const work of steps) {
            const takes = takenOffFace(work, part);
            if (takes !== undefined && distance < takes - tolerance.fit) return { edge, work, takes, distance };
        }
    }
    return undefined;
}

/** How much of the face a step takes off along its edge, in mm; of a bevel on the face that it leans away from. */
function takenOffFace(step: EdgeStep, part: Part): number | undefined {
    if (step.does === 'round' || step.does === 'chamfer') return amountOf(step);
    const { amount } = step;
    if (step.does !== 'bevel' || amount?.quantity.dimension !== dimension.angle) return undefined;
    return stockOf(part) * Math.tan((Math.abs(millimetresOf(amount)) * Math.PI) / 180);
}
