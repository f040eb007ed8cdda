import { panesIn } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { speakerFor } from '../inspection/speaker.js';

export const glassNotSafe = defineRule({
    code: 'GLS-001',
    name: 'glass-not-safe',
    severity: 'warning',
    phase: 'sizes',
    title: 'A pane of glass is not said to be tempered or laminated',
    what: 'A part is of a material of the family `glass` whose `glazing` is annealed, or is not said.',
    why: 'Annealed glass breaks in blades. The rule of the United States for safety glazing covers doors of buildings, showers and baths, not furniture (16 CFR 1201, from memory); most makers take safety glass for shelves and doors of cases all the same.',
    mend: 'Order it tempered or laminated and say so in the material: `glazing tempered`. Tempered glass cannot be cut or drilled afterwards: holes and edges are ordered with it. Local codes and the maker of the glass decide, also on what it may carry.',
    source: {
        kind: 'standard',
        citation: '16 CFR 1201 and ANSI Z97.1, classes of safety glazing (their scope from memory)',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
material Pane like ClearGlass { thickness 1/4in }
bought Pin { hole 5mm wide 10mm deep   carries 20kg }

case Showcase of Mdf {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf »Low« at 12in of Pane
    join Low to every side with { gap 1/16in at each end   rest on Pin count 2 inset 2in }
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
bought Pin { hole 5mm wide 10mm deep   carries 20kg }

case Showcase of Mdf {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in of TemperedGlassQuarter
    join Low to every side with { gap 1/16in at each end   rest on Pin count 2 inset 2in }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { part, material, length, width, glazing } of panesIn(casework)) {
            if (glazing === 'tempered' || glazing === 'laminated') continue;
            const how =
                glazing === undefined ? `and \`${material.name}\` does not say how it is made` : 'and annealed: it breaks in blades';
            report({
                span: part.nameSpan,
                part: part.path,
                message: `\`${part.name}\` is a pane of glass, ${speaker.millimetres(length)} by ${speaker.millimetres(width)}, ${how}`,
                hint: 'order it tempered or laminated, and say so: `glazing tempered`',
                found: glazing ?? 'nothing said',
                needed: 'tempered or laminated',
                related: [{ span: material.nameSpan, message: 'the glass' }],
                saidOnce: { key: material.id, others: `of \`${material.name}\`` },
            });
        }
    },
});
