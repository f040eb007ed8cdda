/** Where the rules of joints begin: each limit with its source, a design that just keeps it, and one that just does not. */
import { expect, it } from 'vitest';
import { analyseText } from './analysed.js';

/** A shelf of 18mm between two sides, 300mm deep; or a top over them. */
function shelf(joint: string, sides = 'side Left, Right'): string {
    return design(`${sides}\n    shelf Low at 400mm\n    join Low to every side with { ${joint} }`);
}

function top(joint: string, edges = ''): string {
    return design(`top ${edges}\n    side Left, Right\n    join top to every side with { ${joint} }`);
}

function design(body: string): string {
    return `use casewright.species
material Birch : plywood { thickness 18mm   sheet 1220mm x 2440mm   grain length }
material Thin : plywood { thickness 6mm   sheet 1220mm x 2440mm   grain length }
material Pine : lumber { species PonderosaPine   rough 27mm   planed 20mm }
bought Peg { hole 5mm wide 10mm deep }

case Rack of Birch {
    width 800mm   height 900mm   depth 300mm
    ${body}
}
`;
}

const doubled = 'side Left, Right layers 2';

const limits: readonly (readonly [limit: string, source: string, code: string, kept: string, missed: string])[] = [
    [
        'a dowel is at most half as thick as its board: 9mm in 18mm',
        'common practice, no source',
        'JNT-007',
        shelf('dowel 9mm x 30mm count 3 inset 40mm   glue', doubled),
        shelf('dowel 9.1mm x 30mm count 3 inset 40mm   glue', doubled),
    ],
    [
        'a slot for a #20 biscuit is 65.69mm long, so its middle is at least 32.85mm from the front',
        'geometry: 2 sqrt(50^2 - (50 - 12.3)^2); the depth is a trade size, from memory',
        'JNT-008',
        shelf('biscuit #20 count 2 inset 32.9mm   glue'),
        shelf('biscuit #20 count 2 inset 32.8mm   glue'),
    ],
    [
        'a hole 1mm deeper than its dowel leaves 1/16in of 18mm where 15.4mm of the dowel go in',
        'common practice, no source',
        'JNT-008',
        shelf('dowel 8mm x 40mm count 3 inset 40mm into 15.4mm   glue'),
        shelf('dowel 8mm x 40mm count 3 inset 40mm into 15.5mm   glue'),
    ],
    [
        'a dowel of 8mm stands at least 16mm from the end',
        'common practice, no source',
        'JNT-009',
        shelf('dowel 8mm x 30mm count 3 inset 16mm into 10mm   glue'),
        shelf('dowel 8mm x 30mm count 3 inset 15.9mm into 10mm   glue'),
    ],
    [
        'a pin of 5mm stands at least 10mm from the edge',
        'common practice, no source',
        'JNT-009',
        shelf('rest on Peg count 2 inset 10mm'),
        shelf('rest on Peg count 2 inset 9.9mm'),
    ],
    [
        'dowels of 8mm stand at least 24mm apart, three diameters',
        'EN 1995-1-1:2004, Table 8.2 (from memory)',
        'JNT-010',
        shelf('dowel 8mm x 30mm pitch 24mm count 3 into 10mm   glue'),
        shelf('dowel 8mm x 30mm pitch 23.9mm count 3 into 10mm   glue'),
    ],
    [
        'two #10 biscuits stand at least 60mm apart: that is the length of their slots',
        'geometry: 2 sqrt(50^2 - (50 - 10)^2) = 60; the depth is a trade size, from memory',
        'JNT-010',
        shelf('biscuit #10 pitch 60mm count 3   glue'),
        shelf('biscuit #10 pitch 59.9mm count 3   glue'),
    ],
    [
        'a nail 10mm from the end of a solid board of 20mm splits it, and plywood it does not',
        'USDA Wood Handbook (FPL-GTR-282, 2021), chapter 8',
        'JNT-011',
        top('nail 45mm count 3 inset 30mm   glue'),
        top('nail 45mm count 3 inset 30mm   glue', 'of Pine').replace('side Left, Right', 'side Left, Right of Pine'),
    ],
    [
        'the shank of a screw of 4mm, 9mm from the end, is clear of a round of 7mm',
        'geometry: 9 - 4 / 2 = 7',
        'JNT-014',
        top('screw 4mm x 50mm count 3 inset 40mm pilot 2.5mm   glue', '{ edge left, right round 7mm }'),
        top('screw 4mm x 50mm count 3 inset 40mm pilot 2.5mm   glue', '{ edge left, right round 7.1mm }'),
    ],
    [
        'a back of 6mm lies on at least 6mm of a rabbet, so that its screws keep half its thickness from its edge',
        'USDA Wood Handbook (FPL-GTR-282, 2021), chapter 8, nails',
        'EDG-009',
        rabbeted('6mm'),
        rabbeted('5.9mm'),
    ],
    [
        'a rabbet at a corner takes half of 18mm',
        'common practice, no source',
        'JNT-003',
        design('side Left, Right\n    top\n    join top to every side with { rabbet 9mm deep   glue }'),
        design('side Left, Right\n    top\n    join top to every side with { rabbet 9.1mm deep   glue }'),
    ],
];

function rabbeted(deep: string): string {
    return design(`side Left, Right { edge back rabbet ${deep} deep for back }
    top
    bottom
    back of Thin
    join top, bottom to every side with { biscuit #20 count 2 inset 40mm   glue }
    join back to every side, top, bottom with { screw #6 x 25mm spacing 150mm }`);
}

async function codesIn(text: string): Promise<readonly string[]> {
    const { findings } = await analyseText(text);
    return [...new Set(findings.filter(({ allowed }) => allowed === undefined).map(({ code }) => code))];
}

it.each(limits)('%s (%s)', async (_limit, _source, code, kept, missed) => {
    expect(await codesIn(kept)).toEqual([]);
    expect(await codesIn(missed)).toEqual([code]);
});
