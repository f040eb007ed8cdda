import { climateOf, heldAcross, mostHeldAcross } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { speakerFor } from '../inspection/speaker.js';

export const gluedAcrossGrain = defineRule({
    code: 'MOV-001',
    name: 'glued-across-grain',
    severity: 'error',
    phase: 'sizes',
    title: 'Wide solid wood is glued across its grain to what does not move',
    what: 'A joint glues a part of solid wood, across its grain, to plywood, to a board, or to wood whose grain runs the other way; and from the driest to the dampest month it would move there by more than about 3/32in. The humidities are those of `climate` in the project, or 30 % to 60 %; boards are taken as flat-sawn, the way that moves most.',
    why: 'The glue holds, and the wood does not: the board splits in the first dry winter, or bows what it is glued to.',
    mend: 'Let it move: leave the glue out and fix it with `free` joints (slotted screws, buttons), glue it at the front only, make it of plywood, or turn its grain the way that the other goes.',
    source: {
        kind: 'handbook',
        citation:
            'Changes by Wood Handbook FPL-GTR-190, Table 13-5, moistures by FPL-GTR-282, Equation 4-5; how much a glued joint takes is common practice, no source',
        value: '3/32in, about what a 5in board moves in a year',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.species
use casewright.panels
material Mdf like FibreboardThreeQuarter
material Oak : lumber { species RedOak   rough 5/4   planed 1in }

case Table of Mdf {
    width 48in   height 30in   depth 20in
    top of Oak
    side Left, Right
    »join top to every side with { biscuit #20 count 4   glue }«
}
`,
            },
        ],
        good: [
            {
                note: 'Screws in slots hold it down and let it move.',
                text: `use casewright.species
use casewright.panels
material Mdf like FibreboardThreeQuarter
material Oak : lumber { species RedOak   rough 5/4   planed 1in }

case Table of Mdf {
    width 48in   height 30in   depth 20in
    top of Oak
    side Left, Right
    join top to every side with { screw #8 x 1 1/4in count 4   free }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const { dry, damp } = climateOf(casework);
        const said = new Set<string>();
        for (const { joint, moving, holding, wood, width, moves } of heldAcross(casework)) {
            // one statement joins a top to every side: one mistake
            const key = `${joint.span.file} ${joint.span.start} ${moving.nameSpan.file} ${moving.nameSpan.start}`;
            if (moves <= mostHeldAcross || said.has(key)) continue;
            said.add(key);
            const rounded = Math.round(moves * 10) / 10;
            report({
                span: joint.span,
                part: moving.path,
                message: `\`${moving.name}\` is solid ${wood.species}, glued across its grain to \`${holding.name}\`: over ${speaker.millimetres(width)} it moves about ${speaker.millimetres(rounded)} in a year, and is held`,
                found: `${speaker.millimetres(rounded)} between ${percent(dry)} and ${percent(damp)} of humidity`,
                needed: `at most about ${speaker.millimetres(mostHeldAcross)}`,
                hint: 'leave out `glue` and say `free` (slotted screws, buttons), or make it of plywood, or turn its grain',
                related: [
                    { span: moving.nameSpan, message: 'what moves' },
                    { span: holding.nameSpan, message: 'what holds it' },
                ],
            });
        }
    },
});

function percent(share: number): string {
    return `${Math.round(share * 100)} %`;
}
