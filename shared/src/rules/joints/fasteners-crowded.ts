import { tolerance } from '../../geometry/index.js';
import { boundsOf, lengthOf, spanOf } from '../../joinery/index.js';
import { defineRule } from '../define-rule.js';
import { calledOf, inspectJoints, type JointWork, type QuietJoints } from '../inspection/joint-work.js';
import { speakerFor } from '../inspection/speaker.js';

/** From the middle of one round hole to that of the next, in diameters. */
const diameters = 3;

const quiet: QuietJoints = new WeakSet();

export const fastenersCrowded = defineRule({
    code: 'JNT-010',
    name: 'fasteners-crowded',
    severity: 'warning',
    phase: 'sizes',
    title: 'Screws, dowels or biscuits of a joint stand too near to one another',
    what: 'Two screws, dowels or bolts of a joint stand nearer to one another than three diameters of the thicker one; or the slots of two biscuits or the mortises of two tenons run into one another.',
    why: 'The wood splits from hole to hole, and one long slot holds its biscuits nowhere. More fasteners than there is wood for make a joint weaker.',
    mend: 'Put in fewer, or a thinner or shorter kind.',
    source: {
        kind: 'standard',
        citation: 'EN 1995-1-1:2004, Table 8.2, across the grain with bored holes (from memory); slots by their geometry',
        value: '3 diameters from middle to middle; the length of the slot',
    },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008'],
    examples: {
        bad: [
            {
                note: 'A slot for a #20 biscuit is 2 5/8in long, so five of them are one slot.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    »join Low to every side with { biscuit #20 count 5 inset 1 1/2in   glue }«
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { biscuit #20 count 3 inset 1 1/2in   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        inspectJoints(casework, quiet, report, (work, report) => {
            const { joint, enters, receives } = work;
            for (const row of [roundOnes(work), slots(work)]) {
                const crowd = nearestTwo(row);
                if (!crowd) continue;
                const [one, other] = crowd;
                const apart = Math.abs(other.at - one.at);
                const least = Math.max(one.needs, other.needs);
                report({
                    span: joint.span,
                    part: enters.path,
                    message: one.isSlot
                        ? `two ${one.called}s between \`${enters.name}\` and \`${receives.name}\` stand ${speaker.millimetres(apart)} apart, and each takes ${speaker.millimetres(least)}: their slots run into one another`
                        : `a ${one.called} and ${one.called === other.called ? 'the next' : `a ${other.called}`} between \`${enters.name}\` and \`${receives.name}\` stand ${speaker.millimetres(apart)} apart, less than three diameters`,
                    hint: 'put in fewer of them',
                    found: `${speaker.millimetres(apart)} apart`,
                    needed: `at least ${speaker.millimetres(least)}`,
                    related: [{ span: one.span, message: 'how many there are' }],
                });
            }
        });
    },
});

interface Stand {
    readonly called: string;
    /** Along the joint, and how far the next must be, in mm. */
    readonly at: number;
    readonly needs: number;
    readonly isSlot: boolean;
    readonly span: JointWork['joint']['span'];
}

function roundOnes({ fasteners, contact: { along } }: JointWork): readonly Stand[] {
    return fasteners.flatMap(({ fastener: { head, shank, kind }, step }) =>
        shank === undefined || kind === 'shelf pin'
            ? []
            : [{ called: calledOf(step), at: head[along], needs: diameters * shank, isSlot: false, span: step.span }],
    );
}

/** The slots in the part that enters: those in the other one are the same. */
function slots({ cuts, enters, contact: { along } }: JointWork): readonly Stand[] {
    return cuts.flatMap(({ feature, step, part }) => {
        if (part !== enters || (feature.does !== 'biscuit slot' && feature.does !== 'mortise')) return [];
        const stretch = spanOf(boundsOf(feature.solid), along);
        const at = (stretch.from + stretch.to) / 2;
        return [{ called: calledOf(step), at, needs: lengthOf(stretch), isSlot: true, span: step.span }];
    });
}

/** The first two that stand too near to one another, along the joint. */
function nearestTwo(row: readonly Stand[]): readonly [Stand, Stand] | undefined {
    const sorted = row.toSorted((a, b) => a.at - b.at);
    for (const [index, one] of sorted.entries()) {
        const next = sorted[index + 1];
        if (next && next.at - one.at < Math.max(one.needs, next.needs) - tolerance.fit) return [one, next];
    }
    return undefined;
}
