import type { Casework, Thing } from '../../casework/index.js';
import { defineRule } from '../define-rule.js';
import { sheetsOf } from '../inspection/material.js';
import { namesInWords } from '../inspection/names-in-words.js';
import { type Misfit, misfitsIn } from '../inspection/sheet-fit.js';
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
        for (const misfit of misfitsIn(casework, 'no sheet')) {
            const { material, width, length, parts } = misfit;
            const found = `${speaker.millimetres(width)} x ${speaker.millimetres(length)}`;
            const needed = largestSheet(material, speaker);
            report({
                span: parts[0]!.nameSpan,
                part: parts[0]!.path,
                concerns: parts.map(({ path }) => path),
                message: `${whatIs(misfit)} ${found} as first cut, and the largest sheet of \`${material.name}\` is ${needed}${lessTrim(casework, speaker)}`,
                hint: 'take a material with larger sheets, or make it of two parts',
                found,
                needed: `at most ${needed}`,
                related: [{ span: material.nameSpan, message: `\`${material.name}\`` }],
            });
        }
    },
});

function whatIs({ piece, names }: Misfit): string {
    const said = namesInWords(names);
    if (piece.role === 'layer') return `a layer of ${said} is`;
    return `${said} ${names.length > 1 ? 'are' : 'is'}`;
}

function largestSheet(material: Thing, speaker: Speaker): string {
    const area = ({ width, length }: ReturnType<typeof sheetsOf>[number]) => millimetresOf(width) * millimetresOf(length);
    const [largest] = sheetsOf(material).toSorted((a, b) => area(b) - area(a));
    return largest ? `${speaker.measure(largest.width)} x ${speaker.measure(largest.length)}` : '';
}

function lessTrim({ shop: { trim } }: Casework, speaker: Speaker): string {
    return trim && millimetresOf(trim) > 0 ? `, less ${speaker.measure(trim)} on each edge` : '';
}
