import type { Casework, Part } from '../../casework/index.js';
import { boxContact } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { boxAlongside, type FrontLines, frontLinesOf } from '../inspection/front-line.js';
import { namesInWords } from '../inspection/names-in-words.js';
import { joinedIn, neighboursIn } from '../inspection/neighbours.js';
import { roomMade } from '../inspection/shared-wood.js';

export const touchingWithoutJoint = defineRule({
    code: 'JNT-002',
    name: 'touching-without-joint',
    severity: 'note',
    phase: 'project',
    title: 'Parts touch, and nothing says how they are held together',
    what: 'Two parts of a case meet face to face, or one lies in a rabbet of the other, and no `join` covers the pair. There is one note for each part, at the part that is written later.',
    why: 'It may be meant: a back need not be fixed to every shelf. If it was forgotten, the screws are missing on the list and in the case.',
    mend: 'Add a `join`, or say that it is meant: `allow touching-without-joint on Low because "rests on the kick"`.',
    source: { kind: 'shop practice', citation: 'common practice, no source' },
    fix: 'none',
    fromAbsence: true,
    follows: ['PLC-002', 'PLC-003', 'PLC-004', 'PLC-008', 'JNT-013'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf »Low« at 12in
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
    shelf Low at 12in
    join Low to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        for (const [part, others] of unjoined(casework)) {
            const isOfOneCase = others.every(({ assembly }) => assembly === part.assembly);
            // `Left` is the name of a side in every case: parts of two cases go by their paths.
            const nameOf = ({ name, path }: Part) => (isOfOneCase ? name : path);
            report({
                span: part.nameSpan,
                part: part.path,
                message: `\`${nameOf(part)}\` touches ${namesInWords(others.map(nameOf))}, and no joint is named between them`,
                hint: isOfOneCase
                    ? `write \`join ${part.name} to ${chosen(others)} with\` and a joint, or allow it with the reason`
                    : 'join the parts, or the cases that hold them, or allow it with the reason',
            });
        }
    },
});

/** The parts as a `join` chooses them: several of a kind by their kind. */
function chosen(parts: readonly Part[]): string {
    const words = parts.map(({ kind, name }) => (parts.filter((other) => other.kind === kind).length > 1 ? `every ${kind}` : name));
    return [...new Set(words)].join(', ');
}

/** For each part, the earlier parts that it touches without a joint. */
function unjoined(casework: Casework): ReadonlyMap<Part, readonly Part[]> {
    const lines = frontLinesOf(casework);
    const isJoined = joinedIn(casework);
    const found = new Map<Part, Part[]>();
    for (const { earlier, later } of neighboursIn(casework)) {
        if (!isTouching(lines, earlier, later) || isJoined(earlier, later)) continue;
        const others = found.get(later);
        if (others) others.push(earlier);
        else found.set(later, [earlier]);
    }
    return found;
}

function isTouching(lines: FrontLines, a: Part, b: Part): boolean {
    return boxContact(boxAlongside(lines, a, b.box), boxAlongside(lines, b, a.box)) !== undefined || roomMade(a, b);
}
