import type { Part } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { boundsOf, type Feature, frontLinesOf, frontWithin, joineryOf } from '../../joinery/index.js';
import { defineRule } from '../define-rule.js';
import { covers } from '../inspection/edge-steps.js';
import { isSound } from '../inspection/sound-parts.js';

export const dadoShows = defineRule({
    code: 'JNT-012',
    name: 'dado-shows',
    severity: 'note',
    phase: 'sizes',
    title: 'A dado or a groove runs out at a front edge that nothing covers',
    what: 'A dado or a groove goes on as far as the front edge of its board, and the edge has neither a band nor a nosing, and no part lies before it. Only in a case where other front edges are covered: where all are bare, that is the look of it. A shelf that is housed in a side is left out: its dado is closed by the shelf, and usual.',
    why: 'The end of the slot is seen from the front, with the end of the shelf in it and whatever gap there is between the two.',
    mend: 'Put a band or a nosing on the front edge, or let the shelf stand back a little: its dado then stops where the shelf does, and the corner of the shelf hides the round end of it. Where it is meant, allow it with the reason.',
    source: { kind: 'shop practice', citation: 'common practice, no source' },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008', 'JNT-001', 'EDG-004'],
    examples: {
        bad: [
            {
                text: `use casewright.species

material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
material Strip : solid { species BlackWalnut }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    top
    bottom
    divider Post clear equal { edge front band 1/4in of Strip }
    join top, bottom to every side with { biscuit #20 count 2 inset 2in   glue }
    »join Post to top, bottom with { dado 1/4in deep   glue }«
}
`,
            },
        ],
        good: [
            {
                note: 'A band covers it.',
                text: `use casewright.species

material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
material Strip : solid { species BlackWalnut }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front band 1/4in of Strip }
    shelf Low at 12in
    join Low to every side with { dado 1/4in deep   glue }
}
`,
            },
            {
                note: 'The shelf stands back, and its dado stops with it.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in { depth 10 1/2in }
    join Low to every side with { dado 1/4in deep   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const lines = frontLinesOf(casework);
        const { byPart } = joineryOf(casework);
        const finished = new Set([...casework.parts.values()].filter(isCovered).map(({ assembly }) => assembly));
        if (finished.size === 0) return;
        for (const [path, { features, enters, receives }] of byPart) {
            const part = casework.parts.get(path);
            if (!part || !finished.has(part.assembly) || part.directions.thickness === 'y' || !isSound(part) || isCovered(part)) continue;
            if (enters.some((one) => one.sideOfEntering === 'front') || receives.some((one) => one.sideOfReceiving === 'front')) continue;
            for (const { does, solid, cause } of features) {
                if (!isSlot(does) || (cause.is === 'joint' && part.directions.thickness === 'x')) continue;
                const bounds = boundsOf(solid);
                if (bounds.most.y < frontWithin(lines, part, bounds) - tolerance.fit) continue;
                const joint = cause.is === 'joint' ? casework.joints[cause.joint] : undefined;
                const edge = cause.is === 'edge' ? part.edges[cause.edge] : undefined;
                const step = cause.is === 'edge' ? edge?.steps[cause.step] : joint?.steps[cause.step];
                if (!step) continue;
                report({
                    span: joint ? joint.span : edge!.span,
                    part: path,
                    message: `the ${does} in \`${part.name}\` runs out at its front edge, which nothing covers`,
                    hint: `put a band or a nosing on the front edge of \`${part.name}\`, let what enters stand back from it, or allow it with the reason`,
                    related: [{ span: step.span, message: `the ${does}` }],
                });
            }
        }
    },
});

function isSlot(does: Feature['does']): boolean {
    return does === 'dado' || does === 'groove';
}

function isCovered({ edges }: Part): boolean {
    return edges.some(({ name, steps }) => name === 'front' && steps.some(covers));
}
