import type { Casework, Part } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { type Fastener, spanOf } from '../../joinery/index.js';
import { isSolidWood } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { jointWorkIn, stockOf } from '../inspection/joint-work.js';
import { materialOf } from '../inspection/material.js';
import { speakerFor } from '../inspection/speaker.js';

export const nailSplitsBoard = defineRule({
    code: 'JNT-011',
    name: 'nail-splits-board',
    severity: 'note',
    phase: 'sizes',
    title: 'A nail is driven near the end or the edge of a solid board',
    what: 'A nail goes through a board of solid wood nearer to the end of its grain than the board is thick, or nearer to its edge than half of that.',
    why: 'It splits the board along the grain, most of all dry hardwood. The split often opens weeks later.',
    mend: 'Bore for those nails, set them farther in, or take a screw in a bored hole there. `allow nail-splits-board because "bored"` says that it is seen to.',
    source: {
        kind: 'handbook',
        citation: 'USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-282, 2021), chapter 8, nails',
        value: 'the thickness of the board from its end, half of it from its edge',
    },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008', 'JNT-004'],
    examples: {
        bad: [
            {
                text: `use casewright.species

material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }

case Crate of Oak {
    width 24in   height 12in   depth 10in
    top
    side Left, Right
    »join top to every side with { nail 2in count 3 inset 1 1/2in   glue }«
}
`,
            },
        ],
        good: [
            {
                note: 'Screws stand in bored holes.',
                text: `use casewright.species

material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }

case Crate of Oak {
    width 24in   height 12in   depth 10in
    top
    side Left, Right
    join top to every side with { screw #8 x 1 1/2in count 3 inset 1 1/2in   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { joint, fasteners, enters, receives } of jointWorkIn(casework)) {
            for (const { fastener, step } of fasteners) {
                if (fastener.kind !== 'nail') continue;
                const board = fastener.passes[0]?.part === receives.path ? receives : enters;
                const near = isSolidBoard(casework, board) ? nearEdge(board, fastener) : undefined;
                if (!near) continue;
                report({
                    span: joint.span,
                    part: board.path,
                    message: `a nail goes through \`${board.name}\` ${speaker.millimetres(near.distance)} from ${near.isEnd ? 'the end of its grain' : 'its edge'}: solid wood splits there`,
                    hint: near.isEnd
                        ? `bore for it, or set it at least as far in as \`${board.name}\` is thick`
                        : `bore for it, or set it at least half as far in as \`${board.name}\` is thick`,
                    found: speaker.millimetres(near.distance),
                    needed: `at least ${speaker.millimetres(near.least)}, or a bored hole`,
                    related: [{ span: step.span, message: 'the nails' }],
                });
            }
        }
    },
});

function isSolidBoard(casework: Casework, { layers }: Part): boolean {
    const [layer, ...others] = layers;
    const material = materialOf(casework, layer?.material);
    return others.length === 0 && material !== undefined && isSolidWood(material);
}

interface NearEdge {
    readonly isEnd: boolean;
    readonly distance: number;
    readonly least: number;
}

/** Where a nail is too near to an end or an edge of the board that it is driven through; undefined where it is not driven through a face. */
function nearEdge(board: Part, { head, direction }: Fastener): NearEdge | undefined {
    const { thickness, length, width } = board.directions;
    if (Math.abs(direction[thickness]) < 1 - tolerance.angle) return undefined;
    const stock = stockOf(board);
    const grain = board.layers[0]?.grain === 'width' ? width : length;
    const ways = [
        { axis: grain, isEnd: true, least: stock },
        { axis: grain === length ? width : length, isEnd: false, least: stock / 2 },
    ];
    for (const { axis, isEnd, least } of ways) {
        const { from, to } = spanOf(board.box, axis);
        const distance = Math.min(head[axis] - from, to - head[axis]);
        if (distance < least - tolerance.fit) return { isEnd, distance, least };
    }
    return undefined;
}
