import type { Casework, Thing } from '../../casework/index.js';
import { defineRule } from '../define-rule.js';
import { sheetsOf } from '../inspection/material.js';
import { sheetFit } from '../inspection/sheet-fit.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';

export const largerThanSheet = defineRule({
    code: 'MAT-003',
    name: 'larger-than-sheet',
    severity: 'error',
    phase: 'project',
    title: 'The part is larger than every sheet of its material',
    what: 'A part, or a layer of one, as it is first cut, fits on no sheet of its material, whichever way it is turned. What the shop trims off the edges of a sheet (`shop { trim 1/4in each edge }`) is taken off first.',
    why: 'It cannot be cut in one piece.',
    mend: 'Take a material that comes in larger sheets (`sheet 48in x 96in, 60in x 120in`), or make the part of two: a divider in the middle gives the joint a place.',
    source: { kind: 'physics', citation: 'A piece is cut from a sheet; sheet sizes are those of the material' },
    fix: 'none',
    follows: ['PLC-002', 'PLC-004'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 100in   depth 11in
    side »Left«, Right
    shelf Low at 12in
    join Low to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in, 60in x 120in   grain length }

case Bookcase of Ply {
    width 30in   height 100in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const piece of casework.pieces) {
            const fit = sheetFit(casework, piece);
            const part = casework.parts.get(piece.part);
            if (fit?.answer !== 'no sheet' || !part) continue;
            const found = `${speaker.millimetres(fit.width)} x ${speaker.millimetres(fit.length)}`;
            const needed = largestSheet(fit.material, speaker);
            const what = piece.role === 'layer' ? `a layer of \`${part.name}\`` : `\`${part.name}\``;
            report({
                span: part.nameSpan,
                part: part.path,
                message: `${what} is ${found} as first cut, and the largest sheet of \`${fit.material.name}\` is ${needed}${lessTrim(casework, speaker)}`,
                hint: 'take a material with larger sheets, or make it of two parts',
                found,
                needed: `at most ${needed}`,
                related: [{ span: fit.material.nameSpan, message: `\`${fit.material.name}\`` }],
            });
        }
    },
});

function largestSheet(material: Thing, speaker: Speaker): string {
    const area = ({ width, length }: ReturnType<typeof sheetsOf>[number]) => millimetresOf(width) * millimetresOf(length);
    const [largest] = sheetsOf(material).toSorted((a, b) => area(b) - area(a));
    return largest ? `${speaker.measure(largest.width)} x ${speaker.measure(largest.length)}` : '';
}

function lessTrim({ shop: { trim } }: Casework, speaker: Speaker): string {
    return trim && millimetresOf(trim) > 0 ? `, less ${speaker.measure(trim)} on each edge` : '';
}
