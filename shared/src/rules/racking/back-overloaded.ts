import { type Bracing, bracingOf, rackedCases } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { forceInWords } from '../inspection/force-words.js';

export const backOverloaded = defineRule({
    code: 'RCK-003',
    name: 'back-overloaded',
    severity: 'warning',
    phase: 'project',
    title: 'The fasteners of a back do not take the push that a case is to stand',
    what: 'A case says which level push along the wall it is to take at its top, and the screws or nails along the edges of its back may carry less for ten minutes, by their published design values. The back is taken as a panel in shear on a frame of hinges.',
    why: 'The fasteners work loose one after another, and the case leans.',
    mend: 'Set them closer, take longer or thicker ones, or anchor the case. Where nothing is published for a fastener in its board, this rule is silent, and the strength sheet says so.',
    source: {
        kind: 'standard',
        citation: 'ANSI/AWC NDS-2018, 12.3; for ten minutes 1.6 (2.3.2, from memory); statics of a panel in pure shear',
        value: 'push H along top and bottom, H h / b along the sides',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.species
use casewright.panels
material Pine : lumber { species PonderosaPine   rough 4/4   planed 3/4in }
material Thin like SoftwoodPlywood { thickness 1/4in }
project "Hall" { »build 1 Chest« }

case Chest of Pine {
    width 36in   height 30in   depth 18in
    push 300 lbf
    back of Thin
    side Left, Right
    top
    bottom at 4in
    join top, bottom to every side with { dado 1/4in deep   glue }
    join back to every side, top, bottom with { screw #6 x 1 1/4in count 2 inset 2in }
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.species
use casewright.panels
material Pine : lumber { species PonderosaPine   rough 4/4   planed 3/4in }
material Thin like SoftwoodPlywood { thickness 1/4in }
project "Hall" { build 1 Chest }

case Chest of Pine {
    width 36in   height 30in   depth 18in
    push 50 lbf
    back of Thin
    side Left, Right
    top
    bottom at 4in
    join top, bottom to every side with { dado 1/4in deep   glue }
    join back to every side, top, bottom with { screw #6 x 1 1/4in spacing 4in }
}
`,
            },
        ],
    },
    check(casework, report) {
        if (!casework.project) return;
        for (const racked of rackedCases(casework)) {
            const bracing = bracingOf(casework, racked);
            if (bracing?.capacity === undefined || !isKnown(bracing) || bracing.capacity >= bracing.push) continue;
            const { assembly } = racked;
            report({
                span: assembly.span,
                message: `\`${assembly.name}\` is to take a push of ${forceInWords(bracing.push, casework)} along the wall, and the fasteners of its back may carry ${forceInWords(bracing.capacity, casework)}`,
                found: forceInWords(bracing.capacity, casework),
                needed: forceInWords(bracing.push, casework),
                hint: `set them closer: ${(bracing.push / bracing.capacity).toFixed(1)} times as many would do; or take longer or thicker ones`,
            });
        }
    },
});

/** Whether every board that braces it has a figure: one without may carry the rest. */
function isKnown({ braces }: Bracing): boolean {
    return braces.every(
        ({ capacity, edges }) => capacity !== undefined && edges.every(({ holds }) => holds.every(({ is }) => is === 'known')),
    );
}
