import { shelfStrengths } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';

export const stiffnessUnknown = defineRule({
    code: 'STR-004',
    name: 'stiffness-unknown',
    severity: 'note',
    phase: 'sizes',
    title: 'A shelf carries something, and nothing says how stiff it is',
    what: 'A part has a load or goods on it, and the material of its board or of its nosing has no modulus of elasticity; of solid wood none is known across the grain.',
    why: 'Its sag cannot be computed, so nothing warns of one that is too great.',
    mend: 'Take a material of the library that has it (`like FibreboardThreeQuarter`), or state it from the maker of the panel: `modulusOfElasticity 520000 psi`, and `modulusAlong`, `modulusAcross` for plywood.',
    source: { kind: 'physics', citation: 'A deflection needs a modulus of elasticity' },
    fix: 'none',
    fromAbsence: true,
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf »Low« at 12in
    join Low to every side with { glue }
    load 20 lb/ft2 on Low
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length   modulusAlong 1200000 psi }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { glue }
    load 20 lb/ft2 on Low
}
`,
            },
        ],
    },
    check(casework, report) {
        const said = new Set<string>();
        for (const shelf of shelfStrengths(casework)) {
            // one note for each statement and material: an array of shelves is one mistake
            if (shelf.is !== 'unknown' || !shelf.material) continue;
            const { part, material, load } = shelf;
            const key = `${part.nameSpan.file} ${part.nameSpan.start} ${material.id}`;
            if (said.has(key)) continue;
            said.add(key);
            report({
                span: part.nameSpan,
                part: part.path,
                message: `\`${part.name}\` carries ${load.says}, and nothing says how stiff \`${material.name}\` is`,
                hint: `state what its maker says, such as \`modulusOfElasticity 520000 psi\`, or take one of the library that has it`,
                related: [
                    { span: material.nameSpan, message: 'the material' },
                    { span: load.span, message: 'what it carries' },
                ],
            });
        }
    },
});
