import type { Casework, Part, Path } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { type CutOfJoint, calledOf, jointWorkIn } from '../inspection/joint-work.js';

/** How high a face may lie and be looked down on, in mm: a standing eye is some 57 in to 60 in over the floor. Common practice, no source. */
const eyeLevel = 57 * 25.4;

export const fastenerShows = defineRule({
    code: 'JNT-016',
    name: 'fastener-shows',
    severity: 'note',
    phase: 'sizes',
    title: 'Heads of screws or pockets are seen',
    what: 'Screws are driven, or pockets are bored, from a face that is seen: the outside of an end of the case, a front; and pockets that are bored from above, below the eye. A face that another part or another case covers is not seen.',
    why: 'A row of screw heads in a finished side is the first thing that is seen of a case.',
    mend: 'Drive them from inside, from below or from behind: a `pocket` with its `face`; take dowels or biscuits instead; or plug the holes and allow it with that reason. The side of a case that stands against a wall or another cabinet is allowed with that reason too.',
    source: { kind: 'shop practice', citation: 'common practice, no source' },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008', 'JNT-004', 'JNT-005'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    »join Low to every side with { screw #8 x 2in count 3 inset 2in   glue }«
}
`,
            },
        ],
        good: [
            {
                note: 'Pockets are bored from below where nothing else is said.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { pocket #8 x 1 1/4in count 3 inset 2in   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const isSeen = seenFaces(casework);
        for (const { joint, cuts } of jointWorkIn(casework)) {
            const seen = cuts.find((cut) => isOfHead(cut) && isSeen(cut));
            if (!seen) continue;
            const { feature, step, part } = seen;
            const what = feature.does === 'pocket' ? 'pockets are bored' : `heads of ${calledOf(step)}s lie`;
            report({
                span: joint.span,
                part: part.path,
                message: `${what} in ${faceInWords(part, feature.side)} of \`${part.name}\`, where they are seen`,
                hint:
                    feature.does === 'pocket'
                        ? 'name another `face`, or plug them and allow it with that reason'
                        : 'drive them from where nobody looks, or plug them and allow it with that reason',
                related: [{ span: step.span, message: 'what is driven' }],
            });
        }
    },
});

/** The cut with the head: the pocket, or the hole at the surface. */
function isOfHead({ feature: { does } }: CutOfJoint): boolean {
    return does === 'pocket' || does === 'clearance hole' || does === 'bolt hole';
}

function faceInWords({ hand }: Part, side: CutOfJoint['feature']['side']): string {
    return side === hand ? 'the outside' : `the ${side} face`;
}

/** Whether the side from which a cut is made is seen; said of what is certain to be, and of nothing else. */
function seenFaces(casework: Casework): (cut: CutOfJoint) => boolean {
    const ends = seenEnds(casework);
    const rooms = new Map(casework.assemblies.map(({ path, room }) => [path, room]));
    return ({ feature, part }) => {
        const { side } = feature;
        if (feature.does === 'clearance hole' && feature.solid.is === 'cylinder' && isSlanted(feature.solid.direction)) return false;
        if (side === part.hand && part.kind === 'side') return ends.has(part.path);
        const room = rooms.get(part.assembly);
        if (!room) return false;
        if (side === 'front') return part.box.most.y >= room.most.y - tolerance.fit;
        return side === 'top' && feature.does === 'pocket' && part.box.most.z - room.least.z < eyeLevel;
    };
}

/** The hole behind a pocket: it is bored through the pocket. */
function isSlanted({ x, y, z }: { readonly x: number; readonly y: number; readonly z: number }): boolean {
    return Math.max(Math.abs(x), Math.abs(y), Math.abs(z)) < 1 - tolerance.angle;
}

/** The sides at the ends of a case by itself: one that is in another case or joined to one may be covered. */
function seenEnds({ assemblies, joints, parts }: Casework): ReadonlySet<Path> {
    const covered = new Set<Path>();
    const paths = new Set(assemblies.map(({ path }) => path));
    for (const { enters, receives } of joints) for (const path of [enters, receives]) if (paths.has(path)) covered.add(path);
    const seen = new Set<Path>();
    for (const { path, inside, room, parts: own } of assemblies) {
        if (inside !== undefined || covered.has(path) || !room) continue;
        for (const each of own) {
            const part = parts.get(each);
            if (part?.kind !== 'side' || !part.hand) continue;
            const isAtEnd =
                part.hand === 'left' ? part.box.least.x <= room.least.x + tolerance.fit : part.box.most.x >= room.most.x - tolerance.fit;
            if (isAtEnd) seen.add(each);
        }
    }
    return seen;
}
