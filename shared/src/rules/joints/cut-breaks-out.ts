import type { Casework, FaceName, JointStep, Part } from '../../casework/index.js';
import { type Box, tolerance } from '../../geometry/index.js';
import { boundsOf, type Contact, type Feature, type FrontLines, frontLinesOf, frontWithin, lengthOf, spanOf } from '../../joinery/index.js';
import { defineRule } from '../define-rule.js';
import {
    axisOf,
    type CutOfJoint,
    calledOf,
    distanceFrom,
    inspectJoints,
    isFaceOf,
    type QuietJoints,
    sidesAlong,
} from '../inspection/joint-work.js';
import { measuredDown, measuredOff, writtenAnew } from '../inspection/mended-lengths.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';
import type { Found } from '../rule.js';

/** What must stay behind a hole or a slot, in mm: 1/16 in. */
const leastSkin = 25.4 / 16;

const quiet: QuietJoints = new WeakSet();

export const cutBreaksOut = defineRule({
    code: 'JNT-008',
    name: 'cut-breaks-out',
    severity: 'warning',
    phase: 'sizes',
    title: 'A slot or a hole of a joint breaks out of the board',
    what: 'The slot of a biscuit, the hole of a dowel or a shelf pin, or the mortise of a loose tenon comes through the far face of the board or leaves less than 1/16in of it; or it lies so near to the end of the joint that it opens in the edge, where a front is curved in that curve.',
    why: 'The veneer over a hole that is too deep bulges or breaks through when the dowel is driven in. A slot that opens in a front edge is seen for as long as the case stands: the cutter of a biscuit joiner leaves a slot of 2 5/8in for a #20.',
    mend: 'Take a shorter dowel or a smaller biscuit, let less of it go `into` the part that receives, or set the first one farther from the end with a larger `inset`.',
    source: {
        kind: 'physics',
        citation:
            'What is cut deeper or nearer than the wood is opens on the other side; the skin that must stay by common practice, no source',
        value: '2 √(r² - (r - d)²) for the slot of a cutter of radius r that is plunged d; at least 1/16in stays',
    },
    fix: 'unsafe',
    follows: ['PLC-003', 'PLC-008'],
    examples: {
        bad: [
            {
                note: 'The slot is 2 5/8in long, so it ends 5/16in before the front.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    »join Low to every side with { biscuit #20 count 2 inset 1in   glue }«
}
`,
            },
            {
                note: 'The hole is 1mm deeper than the dowel goes in, and so comes through a side of 0.72in.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    »join Low to every side with { dowel 8mm x 40mm count 3 inset 2in into 18mm   glue }«
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
    join Low to every side with { biscuit #20 count 2 inset 2in   glue }
}
`,
            },
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { dowel 8mm x 40mm count 3 inset 2in into 12mm   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const lines = frontLinesOf(casework);
        inspectJoints(casework, quiet, report, ({ joint, contact, cuts }, report) => {
            for (const cut of cuts) {
                if (!isOfFastener(cut)) continue;
                const found = through(casework, cut, speaker) ?? sideways(casework, cut, contact, lines, speaker);
                if (found) report({ ...found, span: joint.span, part: cut.part.path });
            }
        });
    },
});

const ofFasteners: ReadonlySet<Feature['does']> = new Set(['biscuit slot', 'dowel hole', 'pin hole', 'mortise']);
const names: Readonly<Partial<Record<Feature['does'], string>>> = { 'biscuit slot': 'slot', 'pin hole': 'hole', 'dowel hole': 'hole' };

/** A tenon that is left on the board goes through on purpose. */
function isOfFastener({ feature, step }: CutOfJoint): boolean {
    return ofFasteners.has(feature.does) && step.does !== 'tenon';
}

type Words = Omit<Found, 'span' | 'part'>;

/** Too deep. */
function through(casework: Casework, { feature, step, part }: CutOfJoint, speaker: Speaker): Words | undefined {
    const { from, to } = spanOf(part.box, axisOf(feature.side));
    const left = to - from - feature.depth;
    if (left >= leastSkin - tolerance.fit) return undefined;
    const name = names[feature.does] ?? feature.does;
    const deepest = measuredDown(casework, to - from - leastSkin, step.amount);
    return {
        message:
            left > tolerance.fit
                ? `the ${name} for a ${calledOf(step)}, ${speaker.millimetres(feature.depth)} deep, leaves only ${speaker.millimetres(left)} of \`${part.name}\``
                : `the ${name} for a ${calledOf(step)}, ${speaker.millimetres(feature.depth)} deep, comes through \`${part.name}\`, which is ${speaker.millimetres(to - from)} thick`,
        hint: `cut it at most ${speaker.millimetres(deepest)} deep: ${shorter(step, part, feature)}`,
        found: `${speaker.millimetres(feature.depth)} deep`,
        needed: `at most ${speaker.millimetres(deepest)}, so that ${speaker.millimetres(leastSkin)} stays`,
        related: [{ span: step.span, message: 'what it is cut for' }],
        ...lessInto(casework, step, feature.depth - deepest),
    };
}

/** Less of a dowel goes into the part that receives, where the text says how much. */
function lessInto(casework: Casework, { does, lengths }: JointStep, less: number) {
    const into = does === 'dowel' ? lengths?.into : undefined;
    const left = into && measuredDown(casework, millimetresOf(into) - less, into);
    return left === undefined || left <= 0 ? {} : writtenAnew(casework, into, left);
}

function shorter({ does }: JointStep, part: Part, { side }: Feature): string {
    if (does === 'dowel' && isFaceOf(part, side)) return 'let less of it go `into` the part that receives, or take a shorter one';
    return does === 'biscuit' ? 'take a smaller biscuit' : 'take a shorter one';
}

/** Too near to the end of the joint. */
function sideways(
    casework: Casework,
    { feature, step, part }: CutOfJoint,
    { along }: Contact,
    lines: FrontLines,
    speaker: Speaker,
): Words | undefined {
    if (along === part.directions.thickness) return undefined;
    const bounds = boundsOf(feature.solid);
    const wood = along === 'y' ? asDeepAs(part.box, frontWithin(lines, part, bounds)) : part.box;
    const stretch = spanOf(bounds, along);
    for (const side of sidesAlong(along)) {
        const out = -distanceFrom(side, wood, stretch);
        if (out <= tolerance.fit) continue;
        const name = names[feature.does] ?? feature.does;
        return {
            message: `the ${name} for a ${calledOf(step)} is ${speaker.millimetres(stretch.to - stretch.from)} long and breaks out of the ${side} of \`${part.name}\` by ${speaker.millimetres(out)}`,
            ...(stretch.to - stretch.from > lengthOf(spanOf(wood, along)) + tolerance.fit
                ? {
                      hint: `${shorter(step, part, feature)}: \`${part.name}\` is only ${speaker.millimetres(lengthOf(spanOf(wood, along)))} long there`,
                  }
                : fartherIn(casework, step, out, side, speaker)),
            related: [{ span: step.span, message: 'what it is cut for' }],
        };
    }
    return undefined;
}

function asDeepAs({ least, most }: Box, front: number): Box {
    return { least, most: { ...most, y: front } };
}

function fartherIn(casework: Casework, { inset }: JointStep, out: number, side: FaceName, speaker: Speaker) {
    const said = inset && millimetresOf(inset);
    if (said === undefined) return { hint: `put in fewer of them, or say an \`inset\`, so that they stay farther from the ${side}` };
    const needed = measuredOff(casework, said + out, inset);
    return {
        hint: `set the first one at least ${speaker.millimetres(needed)} from the end`,
        found: `\`inset\` of ${speaker.millimetres(said)}`,
        needed: `at least ${speaker.millimetres(needed)}`,
        ...writtenAnew(casework, inset, needed),
    };
}
