import type { Axis, FaceName, Part } from '../../casework/index.js';
import { type Box, tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { isSound } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const partOutsideCase = defineRule({
    code: 'PLC-004',
    name: 'part-outside-case',
    severity: 'error',
    phase: 'sizes',
    title: 'The part stands out of its case',
    what: 'A part reaches past the width, height or depth of its case. An edge that is placed `past` something stands out on purpose and is not meant.',
    why: 'The case is then larger than what was agreed, and so larger than the niche, the doorway or the ceiling it was measured for.',
    mend: 'Move the part, make the case larger, or say that it is meant: `edge front at 1in past case`. The size over all is then printed beside the size of the room.',
    source: { kind: 'language', citation: 'The size of a case is the size of its outside' },
    fix: 'none',
    follows: ['PLC-002', 'EDG-004', 'EDG-006', 'JNT-001'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf »High« at 37in
    join every shelf to every side with { glue }
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
    shelf High at 35in
    join every shelf to every side with { glue }
}
`,
            },
            {
                note: 'A top that stands out on purpose.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
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
        const cases = new Map(casework.assemblies.map((assembly) => [assembly.path, assembly]));
        for (const part of casework.parts.values()) {
            const home = cases.get(part.assembly);
            if (!home?.room || !isSound(part)) continue;
            const out = furthestOut(part, home.room);
            if (!out) continue;
            const by = speaker.millimetres(out.by);
            report({
                span: part.nameSpan,
                part: part.path,
                message: `\`${part.name}\` stands ${by} out of the ${out.face} of \`${home.name}\``,
                hint: isEdge(part, out.face)
                    ? `move it, or say that it is meant, such as \`edge ${out.face} at ${by} past case\``
                    : 'move it, or make the case larger',
                found: by,
                needed: 'inside the case',
                related: [{ span: home.span, message: `\`${home.name}\`` }],
            });
        }
    },
});

const axisOf: Readonly<Record<FaceName, Axis>> = { left: 'x', right: 'x', back: 'y', front: 'y', bottom: 'z', top: 'z' };

/** Whether that end of a part is an edge of it, which can be placed by itself. */
function isEdge(part: Part, face: FaceName): boolean {
    return part.directions.thickness !== axisOf[face];
}

/** The face by which a part stands furthest out of a room, of those that are not meant to. */
function furthestOut(part: Part, room: Box): { readonly face: FaceName; readonly by: number } | undefined {
    const { box } = part;
    const out: readonly { readonly face: FaceName; readonly by: number }[] = [
        { face: 'left', by: room.least.x - box.least.x },
        { face: 'right', by: box.most.x - room.most.x },
        { face: 'back', by: room.least.y - box.least.y },
        { face: 'front', by: box.most.y - room.most.y },
        { face: 'bottom', by: room.least.z - box.least.z },
        { face: 'top', by: box.most.z - room.most.z },
    ];
    return out.filter(({ face, by }) => by > tolerance.fit && !part.past.includes(face)).sort((a, b) => b.by - a.by)[0];
}
