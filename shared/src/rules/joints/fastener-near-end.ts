import type { Casework, FaceName, JointStep, Part } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { type Fastener, type FrontLines, frontLinesOf, frontWithin } from '../../joinery/index.js';
import { defineRule } from '../define-rule.js';
import { calledOf, distanceFrom, inspectJoints, type JointWork, type QuietJoints, sidesAlong } from '../inspection/joint-work.js';
import { measuredOff, writtenAnew } from '../inspection/mended-lengths.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';

/** From the middle of a hole to the end of the wood, in diameters. */
const diameters = 2;

const quiet: QuietJoints = new WeakSet();

export const fastenerNearEnd = defineRule({
    code: 'JNT-009',
    name: 'fastener-near-end',
    severity: 'warning',
    phase: 'sizes',
    title: 'A screw, a dowel or a pin stands too near to the end of the joint',
    what: 'The middle of a screw, a dowel, a bolt or a shelf pin is nearer to the edge or the end of a board, along the joint, than two of its diameters.',
    why: 'The wood between the hole and the edge breaks out: when the dowel is driven in, when the screw is turned home, or under the first load. Timber codes ask for more where a joint carries: 3 to 7 diameters in a bored hole (EN 1995-1-1, Table 8.2, from memory).',
    mend: 'Set the first one farther from the end with a larger `inset`.',
    source: {
        kind: 'shop practice',
        citation: 'common practice, no source',
        value: '2 diameters from the middle of the hole to the edge',
    },
    fix: 'unsafe',
    follows: ['PLC-003', 'PLC-008', 'JNT-008'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    »join Low to every side with { dowel 8mm x 30mm count 3 inset 1/2in into 10mm   glue }«
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
    join Low to every side with { dowel 8mm x 30mm count 3 inset 3/4in into 10mm   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const lines = frontLinesOf(casework);
        inspectJoints(casework, quiet, report, (work, report) => {
            for (const { fastener, step } of work.fasteners) {
                const { shank } = fastener;
                if (shank === undefined) continue;
                const near = nearestEnd(work, fastener, lines);
                const least = diameters * shank;
                // What opens in the edge is told of by another rule.
                if (!near || near.distance >= least - tolerance.fit) continue;
                report({
                    span: work.joint.span,
                    part: near.part.path,
                    message: `a ${calledOf(step)} stands ${speaker.millimetres(near.distance)} from the ${near.side} of \`${near.part.name}\`, less than two of its diameters`,
                    ...fartherIn(casework, step, { near, least }, speaker),
                    found: speaker.millimetres(near.distance),
                    needed: `at least ${speaker.millimetres(least)}, two diameters of ${speaker.millimetres(shank)}`,
                    related: [{ span: step.span, message: 'where it stands' }],
                });
            }
        });
    },
});

interface NearEnd {
    readonly part: Part;
    readonly side: FaceName;
    readonly distance: number;
}

/** The end along the joint that the wood of either part comes to first. */
function nearestEnd({ contact, enters, receives }: JointWork, { head, kind }: Fastener, lines: FrontLines): NearEnd | undefined {
    const { along } = contact;
    const place = { from: head[along], to: head[along] };
    let nearest: NearEnd | undefined;
    for (const part of kind === 'shelf pin' ? [receives] : [enters, receives]) {
        if (part.directions.thickness === along) continue;
        const front = along === 'y' ? frontWithin(lines, part, { least: head, most: head }) : part.box.most.y;
        const wood = { least: part.box.least, most: { ...part.box.most, y: front } };
        for (const side of sidesAlong(along)) {
            const distance = distanceFrom(side, wood, place);
            if (!nearest || distance < nearest.distance - tolerance.fit) nearest = { part, side, distance };
        }
    }
    return nearest;
}

function fartherIn(
    casework: Casework,
    { inset }: JointStep,
    { near, least }: { readonly near: NearEnd; readonly least: number },
    speaker: Speaker,
) {
    if (!inset) return { hint: 'put in fewer of them, or say an `inset`' };
    const needed = measuredOff(casework, millimetresOf(inset) + least - near.distance, inset);
    return { hint: `set the first one at least ${speaker.millimetres(needed)} from the end`, ...writtenAnew(casework, inset, needed) };
}
