import type { Casework, Part } from '../../casework/index.js';
import { defineRule } from '../define-rule.js';
import { frontLinesOf } from '../inspection/front-line.js';
import { neighboursIn } from '../inspection/neighbours.js';
import { type SharedWood, sharedWood } from '../inspection/shared-wood.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';
import type { Found } from '../rule.js';

type Said = Pick<Found, 'message' | 'hint' | 'found'>;

const direction = { x: 'across the width', y: 'in the depth', z: 'in the height' } as const;

export const partsOverlap = defineRule({
    code: 'PLC-003',
    name: 'parts-overlap',
    severity: 'error',
    phase: 'sizes',
    title: 'Two parts claim the same wood',
    what: 'Two parts of one case lie partly in the same place, by more than touching. A dado, a tenon, a rabbet or a groove that is made for the other part is no overlap, and neither is a layer that stops short to let the other in.',
    why: 'Only one of the two can be there. Cut to these sizes, one of them does not go in.',
    mend: 'Move one of the two, or write first the one that is to run through: what is written later stops where it meets it. If the one is let into the other, say so with a joint (`dado 1/4in`) or an edge (`edge back rabbet 1/2in deep for back`).',
    source: {
        kind: 'physics',
        citation: 'Two solids cannot fill one space',
        value: 'more than 0.01 mm in all three directions: what no shop tool can see is touching',
    },
    fix: 'none',
    follows: ['PLC-001', 'PLC-002', 'PLC-004'],
    examples: {
        bad: [
            {
                note: 'The upper shelf is given its place by its upper face, 1/4in above the lower one.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Lower at 12in
    shelf »Upper« at 12 1/4in
    join every shelf to every side with { glue }
}
`,
            },
            {
                note: 'The divider was written first and stands from bottom to top; the shelf is told to go from side to side all the same.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 48in   height 36in   depth 11in
    side Left, Right
    divider Post at middle
    shelf »Low« at 12in { edge left at Left   edge right at Right }
    join every shelf to every side with { glue }
}
`,
            },
            {
                note: 'The boxes fill the case from end to end. They are right by themselves: it is the shelf beside them that has no room.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Box of Ply {
    side Left, Right
    top
    join top to every side with { glue }
}

case Wall of Ply {
    width 60in   height 36in   depth 11in
    case Unit[2] of Box width equal
    shelf »Extra« at 12in
    join Unit[1] to Unit[2] with { screw #8 x 1 1/4in count 4 }
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
    shelf Lower at 12in
    shelf Upper at 24in
    join every shelf to every side with { glue }
}
`,
            },
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 48in   height 36in   depth 11in
    side Left, Right
    divider Post at middle as Near, Far
    shelf Low in Near at 12in
    join Low to Left, Post with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const lines = frontLinesOf(casework);
        const standsIn = standingIn(casework);
        const said = new Set<string>();
        for (const { earlier, later } of neighboursIn(casework)) {
            const shared = sharedWood(casework, lines, earlier, later);
            if (!shared) continue;
            // A case that stands in another is whole by itself: what does not fit is the part beside it.
            const [part, other] = standsIn(later, earlier) ? [earlier, later] : [later, earlier];
            const isOfOneCase = part.assembly === other.assembly;
            if (isOfOneCase && part.name === other.name) continue; // one name for two parts: that has been reported
            const pair = `${part.path} ${other.assembly}`;
            if (!isOfOneCase && said.has(pair)) continue;
            said.add(pair);
            // `Left` is the name of a side in every case: parts of two cases go by their paths.
            const names = isOfOneCase ? [part.name, other.name] : [part.path, other.path];
            const [name = '', otherName = ''] = names.map((one) => `\`${one}\``);
            report({
                span: part.nameSpan,
                part: part.path,
                ...(shared.isCross ? sayCross(name, otherName) : sayOverlap(shared, name, otherName, speaker)),
                needed: 'no wood claimed twice',
                related: [{ span: other.nameSpan, message: otherName + (other === earlier ? ', written before it' : '') }],
            });
        }
    },
});

function sayOverlap({ axis, depth }: SharedWood, name: string, other: string, speaker: Speaker): Said {
    const by = speaker.millimetres(depth);
    return {
        message: `${name} and ${other} claim the same wood: they overlap by ${by} ${direction[axis]}`,
        hint: `move one of them by ${by}, write first the one that is to run through, or let one into the other with a joint, a rabbet or a groove`,
        found: by,
    };
}

function sayCross(name: string, other: string): Said {
    return {
        message: `${name} and ${other} cross: each goes through the other`,
        hint: `put ${name} into one of the openings beside ${other}, or stop ${other} at it: what is written later stops where it meets what is written before`,
        found: 'a crossing',
    };
}

/** Whether the first part is of a case that stands in the case of the second. */
function standingIn(casework: Casework): (part: Part, other: Part) => boolean {
    const inside = new Map(casework.assemblies.map((assembly) => [assembly.path, assembly.inside]));
    return (part, other) => {
        for (let holder = inside.get(part.assembly); holder !== undefined; holder = inside.get(holder)) {
            if (holder === other.assembly) return true;
        }
        return false;
    };
}
