import { defineRule } from '../define-rule.js';
import { jointWorkIn } from '../inspection/joint-work.js';

export const pilotNotKnown = defineRule({
    code: 'JNT-017',
    name: 'pilot-not-known',
    severity: 'note',
    phase: 'sizes',
    title: 'A screw goes into the edge of a board, and nothing says its pilot hole',
    what: 'A screw goes into the edge of a panel, or into the edge or the end of a board, and the size of its pilot hole is not known: its size is none of the trade numbers whose roots are in the tables, and the text gives no `pilot`.',
    why: 'Plywood, fibreboard and particleboard split along their layers when a screw is driven or overtightened in their edge without a hole for it, and so does a board near its end. The drilling list cannot name a bit either.',
    mend: 'Say the diameter: `screw 4mm x 40mm pilot 2.5mm`. Shop practice is near 85 % of the root of the thread in soft wood and panels, all of it in hard wood; the Wood Handbook has 70 % and 90 %.',
    source: {
        kind: 'handbook',
        citation: 'USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-282, 2021), chapter 8, lead holes of wood screws',
        value: '70 % of the root in softwood, 90 % in hardwood',
    },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008', 'JNT-004', 'JNT-005', 'JNT-007'],
    examples: {
        bad: [
            {
                text: `material Mdf : fibreboard { thickness 18mm   sheet 1220mm x 2440mm }

case Shelving of Mdf {
    width 600mm   height 400mm   depth 300mm
    top
    side Left, Right
    »join top to every side with { screw 4mm x 50mm count 3 inset 50mm   glue }«
}
`,
            },
        ],
        good: [
            {
                text: `material Mdf : fibreboard { thickness 18mm   sheet 1220mm x 2440mm }

case Shelving of Mdf {
    width 600mm   height 400mm   depth 300mm
    top
    side Left, Right
    join top to every side with { screw 4mm x 50mm count 3 inset 50mm pilot 2.5mm   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        for (const { joint, fasteners, cuts, enters, receives } of jointWorkIn(casework)) {
            for (const { fastener, step } of fasteners) {
                if (fastener.kind !== 'screw' && fastener.kind !== 'panel screw') continue;
                const last = fastener.passes.at(-1);
                if (!last?.intoEdge || cuts.some(({ feature, step: of }) => of === step && feature.does === 'pilot hole')) continue;
                const part = last.part === enters.path ? enters : receives;
                report({
                    span: joint.span,
                    part: part.path,
                    message: `a ${fastener.kind} goes into the edge of \`${part.name}\`, and nothing says how wide a hole is bored for its thread`,
                    hint: 'say its `pilot`: the edge splits without one',
                    related: [{ span: step.span, message: 'the screw' }],
                });
                break;
            }
        }
    },
});
