import type { Casework, FaceName, Part } from '../../casework/index.js';
import { boxContact, boxesShare, tolerance } from '../../geometry/index.js';
import { lengthOf, spanOf } from '../../joinery/index.js';
import { defineRule } from '../define-rule.js';
import { letsIn } from '../inspection/edge-steps.js';
import { axisOf, distanceFrom } from '../inspection/joint-work.js';
import { namesInWords } from '../inspection/names-in-words.js';
import { joinedIn, neighboursIn } from '../inspection/neighbours.js';

/** How near to the edge of a back a part must lie to hold that edge, in mm, and how much of the edge it must run along. */
const reach = 50;
const share = 1 / 2;

export const backNotHeld = defineRule({
    code: 'JNT-013',
    name: 'back-not-held',
    severity: 'warning',
    phase: 'project',
    title: 'A back is not held on all its edges',
    what: 'Joints hold some edges of a back, and along another one lies a part that no joint and no groove fixes to it.',
    why: 'A back keeps a case square by its edges. Where one is loose, the case racks: it leans sideways under a push, doors and shelves bind, and the joints at the corners take what the back should.',
    mend: 'Join the back to the part along that edge as well: `join back to every side, top, bottom with` and a joint.',
    source: { kind: 'shop practice', citation: 'common practice, no source' },
    fix: 'none',
    fromAbsence: true,
    follows: ['PLC-002', 'PLC-003', 'PLC-004', 'PLC-008'],
    examples: {
        bad: [
            {
                note: 'The upper edge of the back is held by nothing.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Thin : plywood { thickness 1/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge back rabbet 3/8in deep for back }
    top
    bottom
    »back« of Thin
    join top, bottom to every side with { biscuit #20 count 2 inset 2in   glue }
    join back to every side, bottom with { screw #6 x 1in spacing 6in }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Thin : plywood { thickness 1/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge back rabbet 3/8in deep for back }
    top
    bottom
    back of Thin
    join top, bottom to every side with { biscuit #20 count 2 inset 2in   glue }
    join back to every side, top, bottom with { screw #6 x 1in spacing 6in }
}
`,
            },
        ],
    },
    check(casework, report) {
        const backs = new Map<Part, Part[]>();
        for (const part of casework.parts.values()) if (part.kind === 'back' && part.joints.length > 0) backs.set(part, []);
        if (backs.size === 0) return;
        for (const { earlier, later } of neighboursIn(casework)) {
            backs.get(earlier)?.push(later);
            backs.get(later)?.push(earlier);
        }
        const isJoined = joinedIn(casework);
        for (const [back, others] of backs) {
            const isHeldBy = (part: Part) => isJoined(back, part) || hasGrooveFor(casework, part, back);
            const loose = looseEdges(back, others, isHeldBy);
            if (loose.length === 0) continue;
            const beside = [...new Set(loose.flatMap(({ parts }) => parts))];
            report({
                span: back.nameSpan,
                part: back.path,
                concerns: beside.map(({ path }) => path),
                message: `the ${loose.map(({ edge }) => edge).join(' and the ')} edge of \`${back.name}\` ${loose.length > 1 ? 'are' : 'is'} held by nothing: ${namesInWords(beside.map(({ name }) => name))} ${beside.length > 1 ? 'lie' : 'lies'} along it, and no joint is named`,
                hint: `join \`${back.name}\` to ${namesInWords(beside.map(({ name }) => name))} too`,
                found: `${4 - loose.length} of 4 edges held`,
                needed: 'all four',
            });
        }
    },
});

interface LooseEdge {
    readonly edge: FaceName;
    readonly parts: readonly Part[];
}

/** The edges along which parts lie, none of which holds the back. */
function looseEdges(back: Part, others: readonly Part[], isHeldBy: (part: Part) => boolean): readonly LooseEdge[] {
    const touching = others.filter((part) => part.kind !== 'back' && isAgainst(back, part));
    return (['left', 'right', 'bottom', 'top'] as const).flatMap((edge) => {
        const parts = touching.filter((part) => liesAlong(back, edge, part));
        return parts.length === 0 || others.some((part) => liesAlong(back, edge, part) && isHeldBy(part)) ? [] : [{ edge, parts }];
    });
}

/** Whether the two touch with a face, or one lies in a rabbet or a groove of the other. */
function isAgainst({ box }: Part, other: Part): boolean {
    return boxContact(box, other.box) !== undefined || boxesShare(box, other.box);
}

/** Whether a part runs along an edge of a back, near to it. */
function liesAlong(back: Part, edge: FaceName, part: Part): boolean {
    const axis = axisOf(edge);
    const other = axis === 'x' ? 'z' : 'x';
    const [one, two] = [spanOf(back.box, other), spanOf(part.box, other)];
    const shared = Math.min(one.to, two.to) - Math.max(one.from, two.from);
    if (shared < share * lengthOf(one) || part.directions.thickness !== axis) return false;
    return Math.abs(distanceFrom(edge, back.box, spanOf(part.box, axis))) <= reach + tolerance.fit;
}

/** A groove holds what stands in it; a rabbet does not. */
function hasGrooveFor({ parts }: Casework, host: Part, back: Part): boolean {
    return host.edges.some(({ steps }) =>
        steps.some((step) => letsIn(step) && step.does === 'groove' && step.for !== undefined && parts.get(step.for) === back),
    );
}
