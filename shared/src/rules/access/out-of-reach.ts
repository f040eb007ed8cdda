import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { publicCases, reach } from '../inspection/public-access.js';
import { speakerFor } from '../inspection/speaker.js';

export const outOfReach = defineRule({
    code: 'ACC-001',
    name: 'out-of-reach',
    severity: 'note',
    phase: 'project',
    title: 'A shelf for the public lies out of reach from a wheelchair',
    what: 'In a project that says `accessible yes`, the upper face of a shelf or a bottom is lower than 15in or higher than 48in over the floor. Computed without anything in the way; who reaches over something, or deep into a case, reaches less far.',
    why: 'Somebody who sits does not get at what lies there. Whether each shelf has to be reached, or some of each kind, is for the code of the place to say; shelves from which people serve themselves need not all be (225.2.2, from memory).',
    mend: 'Put what everybody needs between the two heights, and let the others hold what is shown or stored.',
    source: {
        kind: 'standard',
        citation: '2010 ADA Standards for Accessible Design, 308.2.1 and 308.3.1; local codes decide',
        value: '15in to 48in over the floor',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Library" { accessible yes; build 1 Stand }

case Stand of Mdf {
    width 36in   height 72in   depth 12in
    anchor 70in high
    side Left, Right
    shelf Low at 20in
    shelf »High« at 60in
    join every shelf to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Library" { accessible yes; build 1 Stand }

case Stand of Mdf {
    width 36in   height 72in   depth 12in
    anchor 70in high
    side Left, Right
    shelf Low at 20in
    shelf High at 40in
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { assembly, floor, parts } of publicCases(casework)) {
            for (const part of parts) {
                if (part.kind !== 'shelf' && part.kind !== 'bottom') continue;
                const height = part.box.most.z - floor;
                const isHigh = height > reach.to + tolerance.fit;
                if (!isHigh && height >= reach.from - tolerance.fit) continue;
                report({
                    span: part.nameSpan,
                    part: part.path,
                    message: `\`${part.name}\` lies ${speaker.millimetres(height)} over the floor, ${isHigh ? 'higher' : 'lower'} than is reached from a wheelchair`,
                    found: speaker.millimetres(height),
                    needed: `${speaker.millimetres(reach.from)} to ${speaker.millimetres(reach.to)}`,
                    hint: 'let it hold what not everybody needs; local codes say which shelves have to be reached',
                    saidOnce: { key: assembly.path, others: `of \`${assembly.name}\`` },
                });
            }
        }
    },
});
