import { defineRule } from '../define-rule.js';
import { speakerFor } from '../inspection/speaker.js';

export const jointGapes = defineRule({
    code: 'SOL-002',
    name: 'joint-gapes',
    severity: 'warning',
    phase: 'project',
    title: 'Two parts that are joined do not touch as they are really shaped',
    what: 'Two parts whose boxes touch, and that are joined, do not touch once their curves, bevels, layers and cuts are there. A joint that keeps its parts apart by a `gap`, or that is made on site, may be open. It is found by `check` and `build` on the command line.',
    why: 'Glue fills no gap that can be seen, and a screw that pulls one shut bends what it pulls.',
    mend: 'Bring the two together: move the one, or let a layer or a cut stop where the other begins. If the gap is meant, say so in the joint: `gap 1/8in`.',
    source: {
        kind: 'physics',
        citation: 'Distance between two solids',
        value: 'more than 0.01 mm where they are nearest',
    },
    fix: 'none',
    follows: ['PLC-001', 'PLC-002', 'PLC-003', 'PLC-004'],
    examples: {
        bad: [
            {
                note: 'The inner layer of the sides stops 4in over the floor, for the kick. The bottom lies lower than that, and only the outer layer goes past it.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right {
        layer Outer of Ply
        layer Inner of Ply { leave bottom 4in for kick }
    }
    »bottom« at 3in
    kick at 2in behind bottom.front
    join bottom to every side with { glue }
    join kick to bottom, every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right {
        layer Outer of Ply
        layer Inner of Ply { leave bottom 4in for kick }
    }
    bottom at 4 3/4in
    kick at 2in behind bottom.front
    join bottom to every side with { glue }
    join kick to bottom, every side with { glue }
}
`,
            },
        ],
    },
    checkSolids(casework, { openJoints }, report) {
        const speaker = speakerFor(casework);
        for (const { joint, gap } of openJoints) {
            const said = casework.joints[joint];
            const [part, other] = [said?.enters, said?.receives].map((path) => (path === undefined ? undefined : casework.parts.get(path)));
            if (!said || !part || !other) continue;
            const isOfOneCase = part.assembly === other.assembly;
            const [name, otherName] = isOfOneCase ? [part.name, other.name] : [part.path, other.path];
            report({
                span: part.nameSpan,
                message: `\`${name}\` is joined to \`${otherName}\` and does not touch it once both are cut`,
                hint: 'move one of the two, or say a `gap` in the joint if it is meant',
                found: `${speaker.millimetres(gap)} where they are nearest`,
                needed: 'touching, or a `gap` in the joint',
                part: part.path,
                related: [
                    { span: said.span, message: 'they are joined here' },
                    { span: other.nameSpan, message: `\`${otherName}\` is here` },
                ],
            });
        }
    },
});
