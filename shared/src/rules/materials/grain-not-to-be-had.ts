import { defineRule } from '../define-rule.js';
import { namesInWords } from '../inspection/names-in-words.js';
import { misfitsIn } from '../inspection/sheet-fit.js';
import { speakerFor } from '../inspection/speaker.js';

export const grainNotToBeHad = defineRule({
    code: 'MAT-004',
    name: 'grain-not-to-be-had',
    severity: 'error',
    phase: 'project',
    title: 'The part fits on a sheet only with its grain the wrong way',
    what: 'As it is first cut, a part or a layer fits on a sheet of its material, but only turned so that the grain runs across the way it was asked to run.',
    why: 'Grain that runs up on one side of a case and across on the other is seen at once. A shelf with its grain across is also weaker.',
    mend: 'Turn the grain on purpose, `grain width`; take a material that comes in longer or wider sheets; or make the part smaller.',
    source: { kind: 'physics', citation: 'A piece is cut from a sheet; the grain of a sheet runs one way' },
    fix: 'none',
    follows: ['PLC-002', 'PLC-004'],
    examples: {
        bad: [
            {
                note: 'Six feet wide and grain upright: the sheet is only four feet across its grain.',
                text: `material Ply  : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Ply4 : plywood { thickness 1/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 72in   height 36in   depth 11in
    side Left, Right { edge back rabbet 3/8in deep for back }
    »back« of Ply4 { grain length }
    join back to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply  : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Ply4 : plywood { thickness 1/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 72in   height 36in   depth 11in
    side Left, Right { edge back rabbet 3/8in deep for back }
    back of Ply4 { grain width }
    join back to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { piece, parts, names, material, length, width } of misfitsIn(casework, 'across the grain')) {
            const [along, across] = piece.grain === 'width' ? [width, length] : [length, width];
            const found = `${speaker.millimetres(along)} along the grain and ${speaker.millimetres(across)} across it`;
            report({
                span: parts[0]!.nameSpan,
                part: parts[0]!.path,
                concerns: parts.map(({ path }) => path),
                message: `${namesInWords(names)} ${names.length > 1 ? 'want' : 'wants'} ${found}, and a sheet of \`${material.name}\` has that only the other way round`,
                hint: `turn its grain, \`grain ${piece.grain === 'width' ? 'length' : 'width'}\`, or take a material with other sheets`,
                found,
                related: [{ span: material.nameSpan, message: `\`${material.name}\`` }],
            });
        }
    },
});
