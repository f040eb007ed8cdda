import type { Part } from '../../casework/index.js';
import { type SpaceAxis, tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { isSound, outermostCases } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const joinedPartsApart = defineRule({
    code: 'PLC-008',
    name: 'joined-parts-apart',
    severity: 'error',
    phase: 'sizes',
    title: 'Two parts are joined and do not meet',
    what: 'A `join` names two parts that do not touch. An `every` joins only what touches; a pair that is named must.',
    why: 'A screw cannot reach over a gap. Either a part is not where it was thought to be, or another one was meant.',
    mend: 'Move one of the two until they meet, or name the part that it does touch.',
    source: { kind: 'physics', citation: 'A joint needs a common face', value: 'nearer than 0.01 mm counts as touching' },
    fix: 'none',
    follows: ['PLC-002', 'PLC-003', 'PLC-004'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low  at 12in
    shelf High at 24in
    join every shelf to every side with { glue }
    »join Low to High with { glue }«
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low  at 12in
    shelf High at 24in
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const outermost = outermostCases(casework.assemblies);
        for (const joint of casework.joints) {
            const enters = casework.parts.get(joint.enters);
            const receives = casework.parts.get(joint.receives);
            if (joint.touching || !enters || !receives || !isSound(enters) || !isSound(receives)) continue;
            // Cases that are set up side by side have no common corner to measure from.
            if (outermost.get(enters.assembly) !== outermost.get(receives.assembly)) continue;
            const gap = widestGap(enters, receives);
            const apart = gap && speaker.millimetres(gap.by);
            report({
                span: joint.span,
                part: enters.path,
                message: `\`${enters.name}\` and \`${receives.name}\` are joined, but ${gap ? `stand ${apart} apart ${direction[gap.axis]}` : 'meet at no more than an edge'}`,
                hint: 'move one of them until they touch, or join it to the part that it does touch',
                ...(apart ? { found: `${apart} apart` } : {}),
                needed: 'touching',
                related: [
                    { span: enters.nameSpan, message: `\`${enters.name}\`` },
                    { span: receives.nameSpan, message: `\`${receives.name}\`` },
                ],
            });
        }
    },
});

const direction = { x: 'across the width', y: 'in the depth', z: 'in the height' } as const;

function widestGap(a: Part, b: Part): { readonly axis: SpaceAxis; readonly by: number } | undefined {
    const gaps = (['x', 'y', 'z'] as const).map((axis) => ({
        axis,
        by: Math.max(a.box.least[axis], b.box.least[axis]) - Math.min(a.box.most[axis], b.box.most[axis]),
    }));
    return gaps.filter(({ by }) => by > tolerance.fit).sort((one, other) => other.by - one.by)[0];
}
