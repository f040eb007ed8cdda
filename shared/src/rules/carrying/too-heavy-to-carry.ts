import { carriedPieces, liftOf, mostPeople } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { massInWords } from '../inspection/force-words.js';

export const tooHeavyToCarry = defineRule({
    code: 'HND-004',
    name: 'too-heavy-to-carry',
    severity: 'warning',
    phase: 'project',
    title: 'A case weighs more than four people of the shop lift',
    what: 'What is carried in one piece weighs more than four times what the shop says that one person lifts (`lift`). Masses are those of its boards, by the densities of their materials, without packing and hardware.',
    why: 'Four people find a hold on a case, and no more. A back that is hurt once is hurt for good.',
    mend: 'Divide it into cases that are joined `on site`, take shelves and doors off for the way, use lighter materials, or bring a lift. `casewright build --only strength` shows what each piece weighs.',
    source: {
        kind: 'standard',
        citation:
            'DHHS (NIOSH) publication 94-110: 51 lb in the best case of one person, and far less from the floor. The limit here is the own `lift` of the shop, of four people by common practice, no source',
        value: '4 times `lift`',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
shop { lift 50lb }
project "Hall" { »build 1 Press« }

case Press of Mdf {
    width 60in   height 84in   depth 24in
    anchor 80in high
    side Left, Right
    shelf Row[8] clear equal
    join every shelf to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
shop { lift 50lb }
project "Hall" { build 1 Press }

case Press of Mdf {
    width 60in   height 84in   depth 24in
    anchor 80in high
    side Left, Right
    shelf Row[2] clear equal
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const lift = liftOf(casework);
        if (lift === undefined || lift <= 0) return;
        for (const piece of carriedPieces(casework)) {
            if (piece.mass === undefined || piece.mass <= mostPeople * lift) continue;
            report({
                span: piece.assembly.span,
                message: `\`${piece.assembly.name}\` weighs about ${massInWords(piece.mass, casework)} in one piece: ${Math.ceil(piece.mass / lift)} people at ${massInWords(lift, casework)} each`,
                found: massInWords(piece.mass, casework),
                needed: `at most ${massInWords(mostPeople * lift, casework)}, four people's lift`,
                hint: 'divide it into cases that are joined `on site`, or use lighter materials',
            });
        }
    },
});
