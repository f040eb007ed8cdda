import type { Axis, Casework, FaceName, Part } from '../../casework/index.js';
import { defineRule } from '../define-rule.js';
import { isSound } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const onlyAStripLeft = defineRule({
    code: 'PLC-012',
    name: 'only-a-strip-left',
    severity: 'warning',
    phase: 'sizes',
    title: 'Only a strip is left of a part that was to lie over the case',
    what: 'A lying part stands past the case on one side, and is stopped on the other by a part that is written before it and runs through: it covers less than a quarter of the case.',
    why: 'A top that was to lie over the sides comes out as a strip in front of them, and so it stands in the cut list.',
    mend: 'Write it before the parts that it is to lie on: what is written first runs through. Where a strip is meant, allow it.',
    source: { kind: 'shop practice', citation: 'common practice, no source', value: 'a quarter of the case' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter

case Chest of Mdf {
    width 36in   height 30in   depth 18in
    side Left, Right
    »top« { edge left, right, front at 1in past case }
    join top to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter

case Chest of Mdf {
    width 36in   height 30in   depth 18in
    top { edge left, right, front at 1in past case }
    side Left, Right
    join top to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const part of casework.parts.values()) {
            const squeezed = squeezeOf(casework, part);
            if (!squeezed) continue;
            const { axis, by } = squeezed;
            const size = speaker.millimetres(part.box.most[axis] - part.box.least[axis]);
            report({
                span: part.nameSpan,
                part: part.path,
                message: `\`${part.name}\` is only ${size} ${axis === 'x' ? 'wide' : 'deep'}: \`${by.name}\` is written before it and runs through`,
                hint: `write \`${part.name}\` before \`${by.name}\` if it is to lie over it`,
                found: size,
                needed: 'a part that lies over the case',
                related: [{ span: by.nameSpan, message: `\`${by.name}\`, written before it` }],
            });
        }
    },
});

const facesAlong: readonly (readonly [Axis, FaceName, FaceName])[] = [
    ['y', 'back', 'front'],
    ['x', 'left', 'right'],
];
const smallShare = 1 / 4;

/** Along which axis an earlier part takes nearly all of the room of a part that stands past the case at the other end. */
function squeezeOf(casework: Casework, part: Part): { readonly axis: Axis; readonly by: Part } | undefined {
    if (part.directions.thickness !== 'z' || part.past.length === 0 || !isSound(part)) return undefined;
    const room = casework.assemblies.find(({ path }) => path === part.assembly)?.room;
    if (!room) return undefined;
    for (const [axis, low, high] of facesAlong) {
        const covered = Math.min(part.box.most[axis], room.most[axis]) - Math.max(part.box.least[axis], room.least[axis]);
        if (covered >= smallShare * (room.most[axis] - room.least[axis])) continue;
        for (const [stopped, past] of [
            [low, high],
            [high, low],
        ] as const) {
            const bound = part.bounds[stopped];
            const by = bound?.stopped && part.past.includes(past) && bound.part !== undefined ? casework.parts.get(bound.part) : undefined;
            if (by) return { axis, by };
        }
    }
    return undefined;
}
