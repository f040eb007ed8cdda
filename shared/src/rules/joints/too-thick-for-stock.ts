import type { Casework, JointStep, Part } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { boundsOf, type Feature, lengthOf, spanOf } from '../../joinery/index.js';
import { defineRule } from '../define-rule.js';
import { calledOf, inspectJoints, isFaceOf, type JointWork, type QuietJoints, stockOf } from '../inspection/joint-work.js';
import { nominalThicknessOf } from '../inspection/material.js';
import { thickestDowel, writtenAnew } from '../inspection/mended-lengths.js';
import { speakerFor } from '../inspection/speaker.js';

/** How much of the stock may be taken by what goes into its edge. */
const share = 1 / 2;

const quiet: QuietJoints = new WeakSet();

export const tooThickForStock = defineRule({
    code: 'JNT-007',
    name: 'too-thick-for-stock',
    severity: 'warning',
    phase: 'sizes',
    title: 'A dowel, a biscuit, a tenon or a screw is too thick for the edge that it goes into',
    what: 'What goes into the edge or the end of a board takes more than half of what the board is called: a dowel of 1/2in in a board of 3/4in, a biscuit in a board of 1/4in. A screw or a nail counts by its shank.',
    why: 'A thin wall on either side splits when the glue swells the dowel, or when the screw is turned in. In plywood two or three veneers are left.',
    mend: 'Take a thinner one, a third to a half of the board, or make the board thicker.',
    source: {
        kind: 'shop practice',
        citation: 'common practice, no source',
        value: 'a third to a half of the nominal thickness of the thinner part',
    },
    fix: 'unsafe',
    follows: ['PLC-003', 'PLC-008'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right layers 2
    shelf Low at 12in
    »join Low to every side with { dowel 1/2in x 1 1/2in count 3 inset 1 1/2in   glue }«
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right layers 2
    shelf Low at 12in
    join Low to every side with { dowel 3/8in x 1 1/2in count 3 inset 1 1/2in   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        inspectJoints(casework, quiet, report, (work, report) => {
            for (const { step, called, part, thick } of thickOnes(work)) {
                const stock = nominalThicknessOf(casework, part) ?? stockOf(part);
                if (thick <= share * stock + tolerance.fit) continue;
                const most = share * stock;
                report({
                    span: work.joint.span,
                    part: part.path,
                    message: `a ${called} ${speaker.millimetres(thick)} thick takes more than half of the edge of \`${part.name}\`, which is ${speaker.millimetres(stockOf(part))} thick`,
                    hint: `take one of at most ${speaker.millimetres(most)}, or a thicker \`${part.name}\``,
                    found: speaker.millimetres(thick),
                    needed: `at most ${speaker.millimetres(most)}, half of what \`${part.name}\` is called`,
                    related: [{ span: step.span, message: 'how thick it is' }],
                    ...thinner(casework, step, most),
                });
            }
        });
    },
});

interface Thick {
    readonly step: JointStep;
    readonly called: string;
    /** The part into whose edge it goes, and how thick it is there, in mm. */
    readonly part: Part;
    readonly thick: number;
}

const turnedIn: ReadonlySet<string> = new Set(['screw', 'panel screw', 'nail']);

/** What goes into edges: of what is glued in by its holes and slots, of what is driven by its shank. */
function* thickOnes({ enters, receives, fasteners, cuts }: JointWork): Generator<Thick> {
    for (const { fastener, step } of fasteners) {
        const { kind, shank, passes } = fastener;
        if (!turnedIn.has(kind) || shank === undefined) continue;
        const into = passes.find(({ intoEdge }) => intoEdge);
        if (into) yield { step, called: kind, part: into.part === enters.path ? enters : receives, thick: shank };
    }
    for (const { feature, step, part } of cuts) {
        const thick = isFaceOf(part, feature.side) ? undefined : thicknessOf(feature, part);
        if (thick !== undefined) yield { step, called: calledOf(step), part, thick };
    }
}

/** How much of the thickness of its board a hole or slot of something glued in takes. */
function thicknessOf({ does, solid }: Feature, { directions: { thickness } }: Part): number | undefined {
    if (does === 'dowel hole' && solid.is === 'cylinder') return solid.diameter;
    if (does === 'biscuit slot' && solid.is === 'segment') return solid.thickness;
    return does === 'mortise' ? lengthOf(spanOf(boundsOf(solid), thickness)) : undefined;
}

function thinner(casework: Casework, { does, diameter }: JointStep, most: number) {
    const sold = does === 'dowel' ? thickestDowel(casework, most, diameter) : undefined;
    return sold === undefined ? {} : writtenAnew(casework, diameter, sold);
}
