/** The way in and what is lifted, from the text to the finding. */
import { carriedPieces, wayOf } from 'casewright-shared/strength';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const press = (size: string, route: string, more = '') => `
use casewright.panels
material Mdf like FibreboardThreeQuarter
${more}
project "P" {
    build 1 Press
    ${route === '' ? '' : `route { ${route} }`}
}
case Press of Mdf {
    ${size}
    anchor 40in high
    side Left, Right
    shelf Row[2] clear equal
    join every shelf to every side with { glue }
}
`;
const said = async (text: string) =>
    (await analyseText(text)).findings
        .filter(({ code }) => code.startsWith('HND'))
        .map(({ code, message, needed }) => `${code} ${message}; ${needed}`);

describe('the way in', () => {
    it('two of the sizes of a case go through a doorway, or it does not go in', async () => {
        const size = 'width 60in   height 84in   depth 33in';
        expect(await said(press(size, 'doorway 32in x 80in'))).toEqual([
            'HND-001 `Press` does not go through the doorway of 32in x 80in, upright, on its back or on its side; two of its sizes within 32in x 80in',
        ]);
        expect(await said(press(size, 'doorway 34in x 80in'))).toEqual([]);
        expect(await said(press(size, ''))).toEqual([]);
    });

    it('every doorway of the way counts', async () => {
        const text = press('width 60in   height 84in   depth 30in', 'doorway 36in x 80in   doorway 28in x 78in');
        expect(wayOf((await analyseText(text)).casework).doorways.map(({ width }) => Math.round(width / 2.54) / 10)).toEqual([36, 28]);
        expect(await said(text)).toEqual([expect.stringMatching(/^HND-001 .* 28in x 78in/)]);
    });

    // 84in and 24in: 87.361in; under 96in a case 24in deep may be 92.952in high
    it('a case that comes in lying stands up under the ceiling, or not', async () => {
        const route = 'doorway 32in x 80in   ceiling 96in';
        expect(await said(press('width 30in   height 92 7/8in   depth 24in', route))).toEqual([]);
        const [line] = await said(press('width 30in   height 93in   depth 24in', route));
        expect(line).toMatch(
            /^HND-002 `Press` has to come in lying, and does not stand up under 96in: tilted up it reaches 96\.0\d+in; at this depth at most 92\.9\d+in high$/,
        );
    });

    it('one that goes in upright need not stand up', async () => {
        expect(await said(press('width 30in   height 78in   depth 60in', 'doorway 32in x 80in   ceiling 80in'))).toEqual([]);
    });

    // 69.823in is the longest that is 16in wide round a corner of two halls of 36in
    it('it turns a corner, or not', async () => {
        const corner = 'corner 36in x 36in   ceiling 80in';
        expect(await said(press('width 69 3/4in   height 70in   depth 16in', corner))).toEqual([]);
        const [line] = await said(press('width 69 7/8in   height 70in   depth 16in', corner));
        expect(line).toMatch(/^HND-003 `Press` does not go round the corner of 36in and 36in; 16in wide, at most 69\.8\d+in long$/);
    });
});

describe('what is lifted', () => {
    const wide = 'width 60in   height 84in   depth 24in';

    it('four people of the shop lift a case, or it is too heavy', async () => {
        // two sides of 84 x 24 x 3/4in and two shelves of 58 1/2 x 24 x 3/4in of 48 lb/ft3: 142.5 lb
        expect(await said(press(wide, '', 'shop { lift 36lb }'))).toEqual([]);
        expect(await said(press(wide, '', 'shop { lift 35lb }'))).toEqual([
            "HND-004 `Press` weighs about 143lb in one piece: 5 people at 35lb each; at most 140lb, four people's lift",
        ]);
        expect(await said(press(wide, ''))).toEqual([]);
    });

    const wall = (how: string) => `
use casewright.panels
material Mdf like FibreboardThreeQuarter
joint Screwed { screw #8 x 1 1/4in count 6 }
project "P" { build 1 Wall }
case Box of Mdf {
    side Left, Right
    shelf Low at bottom
    join Low to every side with { glue }
}
case Wall {
    width 80in   height 40in   depth 12in
    case Unit[2] of Box width equal
    join Unit[1] to Unit[2] with Screwed ${how}
}
`;
    it('cases that are joined on site are carried one by one', async () => {
        const piecesOf = async (how: string) => carriedPieces((await analyseText(wall(how))).casework).map(({ width }) => width / 25.4);
        expect(await piecesOf('on site')).toEqual([40, 40]);
        expect(await piecesOf('')).toEqual([80]);
    });
});
