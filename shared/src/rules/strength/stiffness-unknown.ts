import type { Casework, Thing } from '../../casework/index.js';
import { isSolidWood, shelfStrengths } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { systemOf } from '../inspection/speaker.js';

export const stiffnessUnknown = defineRule({
    code: 'STR-004',
    name: 'stiffness-unknown',
    severity: 'note',
    phase: 'sizes',
    title: 'A shelf carries something, and nothing says how stiff it is',
    what: 'A part has a load or goods on it, and the material of its board or of its nosing has no modulus of elasticity; of solid wood none is known across the grain.',
    why: 'Its sag cannot be computed, so nothing warns of one that is too great.',
    mend: 'State what the maker of the panel says: `modulusAlong`, `modulusAcross` for plywood (no figure is published that holds for all hardwood or birch plywood, so the library has none), `modulusOfElasticity` for other panels; or take a fibreboard, particleboard or sanded softwood plywood of the library, which have it (`like FibreboardThreeQuarter`).',
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
        for (const shelf of shelfStrengths(casework)) {
            if (shelf.is !== 'unknown' || !shelf.material) continue;
            const { part, material, load } = shelf;
            report({
                span: part.nameSpan,
                part: part.path,
                message: `\`${part.name}\` carries ${load.says}, and nothing says how stiff \`${material.name}\` is`,
                hint: hintFor(material, casework),
                related: [
                    { span: material.nameSpan, message: 'the material' },
                    { span: load.span, message: 'what it carries' },
                ],
                // one figure is missing, however many shelves are of it
                saidOnce: { key: material.id, others: `of \`${material.name}\`` },
            });
        }
    },
});

/** Figures to show how it is written, near those of the library. */
const samples = {
    inch: { elasticity: '520000 psi', along: '1200000 psi', across: '600000 psi', solid: '1800000 psi' },
    mm: { elasticity: '3600 MPa', along: '8000 MPa', across: '4000 MPa', solid: '12000 MPa' },
} as const;

function hintFor(material: Thing, casework: Casework): string {
    const { elasticity, along, across, solid } = samples[systemOf(casework)];
    const asItsMaker = 'state what its maker says, such as';
    if (isSolidWood(material)) {
        return `turn its grain along the span, and say its \`species\` or state its stiffness, such as \`modulusOfElasticity ${solid}\``;
    }
    const { family } = material;
    if (family === 'fibreboard' || family === 'particleboard') {
        const like = family === 'fibreboard' ? 'Fibreboard' : 'Particleboard';
        return `${asItsMaker} \`modulusOfElasticity ${elasticity}\`, or take one of the library that has it: \`like ${like}\``;
    }
    if (family === 'hardboard') return `${asItsMaker} \`modulusOfElasticity ${elasticity}\``;
    return `${asItsMaker} \`modulusAlong ${along}  modulusAcross ${across}\`: none is published that holds for all plywood of a kind`;
}
