import { rackedCases } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { speakerFor } from '../inspection/speaker.js';

export const bracedAtOneEnd = defineRule({
    code: 'RCK-002',
    name: 'braced-at-one-end',
    severity: 'note',
    phase: 'project',
    title: 'A case that stands by itself is braced in one half of its height alone',
    what: 'All boards across a case that keep it square, such as a kick or a rail, lie in its lower half, or all in its upper half. Only what its upright boards resist in bending holds the other.',
    why: 'Above a kick the sides sway like posts a board thick; how far hangs on their stiffness and on the joints of the kick, for which no value is published.',
    mend: 'Add a back, or a rail in the other half.',
    source: { kind: 'physics', citation: 'Statics of a frame that is stiff at one end' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Hall" { »build 1 Chest« }

case Chest of Mdf {
    width 36in   height 30in   depth 18in
    side Left, Right
    shelf Low at 4in
    shelf High at top
    kick at 2in behind Low.front
    join every shelf to every side with { dado 1/4in deep   glue }
    join kick to Low, every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Hall" { build 1 Chest }

case Chest of Mdf {
    width 36in   height 30in   depth 18in
    side Left, Right
    shelf Low at 4in
    shelf High at top
    kick at 2in behind Low.front
    rail below High at back height 4in
    join every shelf to every side with { dado 1/4in deep   glue }
    join kick to Low, every side with { glue }
    join rail to High, every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        if (!casework.project) return;
        const speaker = speakerFor(casework);
        for (const { assembly, braces, height, isBracedThroughout } of rackedCases(casework)) {
            if (braces.length === 0 || isBracedThroughout) continue;
            const names = [...new Set(braces.map(({ name }) => `\`${name}\``))].join(', ');
            report({
                span: assembly.span,
                message: `only ${names} keeps \`${assembly.name}\` square, in one half of its ${speaker.millimetres(height)}`,
                hint: 'add a back, or a rail in the other half',
                related: braces.slice(0, 1).map(({ nameSpan }) => ({ span: nameSpan, message: 'what keeps it square' })),
            });
        }
    },
});
