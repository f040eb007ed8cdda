import { rackedCases } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';

export const noBracing = defineRule({
    code: 'RCK-001',
    name: 'no-bracing',
    severity: 'error',
    phase: 'project',
    title: 'Nothing keeps a case that stands by itself from leaning over sideways',
    what: 'A case that a project builds, and that is not anchored to the wall, has upright boards and others that lie between them and are joined to them, and no board across them that faces the room: no back, no kick, no rail, no panel that is fixed to an upright. Dados, screws and glue at the ends of shelves count for nothing here: they are levers a board thick.',
    why: 'Pushed sideways, or moved on an uneven floor, its corners open, and it folds flat with all that stands on it.',
    mend: 'Give it a back and fix that along its edges, or a rail under the top and a kick at the floor. A case that is screwed to a wall says so: `anchor 64in high`.',
    source: {
        kind: 'physics',
        citation: 'Statics: boards that are joined at their ends alone are a mechanism of four hinges',
    },
    fix: 'none',
    fromAbsence: true,
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
    join every shelf to every side with { dado 1/4in deep   glue }
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
material Thin like FibreboardQuarter
project "Hall" { build 1 Chest }

case Chest of Mdf {
    width 36in   height 30in   depth 18in
    side Left, Right { edge back rabbet 3/8in deep for back }
    shelf Low at 4in
    shelf High at top
    back of Thin
    join every shelf to every side with { dado 1/4in deep   glue }
    join back to every side, every shelf with { screw #6 x 1in spacing 6in }
}
`,
            },
        ],
    },
    check(casework, report) {
        if (!casework.project) return;
        for (const { assembly, braces } of rackedCases(casework)) {
            if (braces.length > 0) continue;
            report({
                span: assembly.span,
                message: `\`${assembly.name}\` stands by itself, and nothing keeps it square: no back, rail or kick is fixed across its upright boards`,
                hint: 'give it a `back` and join that along its edges, or say that it is screwed to a wall: `anchor 64in high`',
                found: 'no board across it that faces the room',
                needed: 'a back, or a rail and a kick',
            });
        }
    },
});
