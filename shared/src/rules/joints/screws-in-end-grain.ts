import type { Casework, JointStep, Part } from '../../casework/index.js';
import { isSolidWood } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { type FastenerOfJoint, inspectJoints, type QuietJoints } from '../inspection/joint-work.js';
import { materialOf } from '../inspection/material.js';

const quiet: QuietJoints = new WeakSet();

export const screwsInEndGrain = defineRule({
    code: 'JNT-018',
    name: 'screws-in-end-grain',
    severity: 'note',
    phase: 'sizes',
    title: 'A joint hangs on screws in end grain alone',
    what: 'The screws or nails of a joint end in the end grain of a solid board, and nothing else holds the two: no dado, no dowels, no biscuits, no glue.',
    why: 'In end grain a screw holds about three quarters of what it holds across the grain, and unevenly; timber codes give it no strength against pulling out there (NDS-2018, 12.2, from memory). It must not be counted as one in side grain.',
    mend: 'Let the board into a dado, add dowels, biscuits or loose tenons, or screw from the other part into side grain. Where nothing pulls on the joint, allow it with that reason.',
    source: {
        kind: 'handbook',
        citation: 'USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-282, 2021), chapter 8, screws in end grain',
        value: 'about 75 % of the withdrawal in side grain',
    },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008', 'JNT-004', 'JNT-005'],
    examples: {
        bad: [
            {
                text: `use casewright.species

material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }

case Bench of Oak {
    width 30in   height 18in   depth 11in
    side Left, Right
    shelf Low at 6in
    »join Low to every side with { screw #8 x 2in count 2 inset 3in }«
    allow fastener-shows because "plugged"
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.species

material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }

case Bench of Oak {
    width 30in   height 18in   depth 11in
    side Left, Right
    shelf Low at 6in
    join Low to every side with { dado 1/4in deep   screw #8 x 2in count 2 inset 3in }
    allow fastener-shows because "plugged"
}
`,
            },
        ],
    },
    check(casework, report) {
        inspectJoints(casework, quiet, report, ({ joint, fasteners, enters, receives }, report) => {
            const inEnd = fasteners.flatMap((one) => endGrainOf(casework, one, enters, receives) ?? []);
            if (inEnd.length === 0 || inEnd.length < fasteners.length || joint.steps.some(holds)) return;
            const [{ step, part, kind }] = inEnd as [EndGrain, ...EndGrain[]];
            report({
                span: joint.span,
                part: part.path,
                message: `only ${kind}s in the end grain of \`${part.name}\` hold \`${enters.name}\` to \`${receives.name}\``,
                hint: 'let the board in, or add dowels or biscuits; where nothing pulls on it, allow it with that reason',
                found: 'about three quarters of what they hold in side grain, and by the codes nothing',
                related: [{ span: step.span, message: 'what is driven' }],
            });
        });
    },
});

interface EndGrain {
    readonly step: JointStep;
    readonly part: Part;
    readonly kind: string;
}

const driven: ReadonlySet<string> = new Set(['screw', 'panel screw', 'nail', 'pin']);
const driving: ReadonlySet<string> = new Set(['screw', 'panelScrew', 'nail', 'pin', 'loose', 'free', 'tight', 'gap', 'rest']);

/** Whether a step holds the two without what is driven. */
function holds({ does }: JointStep): boolean {
    return !driving.has(does);
}

/** The solid board in whose end a fastener ends; undefined where that is another wood or another way of the grain. */
function endGrainOf(casework: Casework, { fastener, step }: FastenerOfJoint, enters: Part, receives: Part): EndGrain | undefined {
    const { kind, direction, passes } = fastener;
    const last = passes.at(-1);
    if (!driven.has(kind) || passes.length < 2 || !last?.intoEdge) return undefined;
    const part = last.part === enters.path ? enters : receives;
    const [layer, ...others] = part.layers;
    const material = materialOf(casework, layer?.material);
    if (!layer || others.length > 0 || !material || !isSolidWood(material) || layer.grain === 'none') return undefined;
    const isAlong = Math.abs(direction[part.directions[layer.grain]]) > 1 / 2;
    return isAlong ? { step, part, kind } : undefined;
}
