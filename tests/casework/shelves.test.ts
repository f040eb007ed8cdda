/** Shelves that carry something, from the text to the finding: how far they sag, and what mends it. */
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const stand = (words: string, width = '36in', material = 'Mdf') => `
use casewright.species
use casewright.panels
material Mdf like FibreboardThreeQuarter
material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }
goods Box { size 8in wide 10in deep 6in high   mass 12lb   stack 2 }
case Stand of ${material} {
    width ${width}
    height 40in
    depth 12in
    side Left, Right of Mdf
    ${words}
    join every shelf to every side with { glue }
}
`;
const said = async (text: string) => (await analyseText(text)).findings.map(({ code, message, found }) => `${code} ${message}; ${found}`);

describe('shelves', () => {
    // Beam formula 5 w L⁴ / 384 E I (Wood Handbook FPL-GTR-282, Table 9-1): 34 1/2in clear, 12in deep, 3/4in thick, 520,000 psi,
    // 40 lb/ft2 is 3.333 lb/in, and the shelf itself 34.5 x 12 x 0.75in of 48 lb/ft3 is 0.25 lb/in.
    it('of fibreboard under 40 lb/ft2 sags 5 w L⁴ / 384 E I', async () => {
        const { findings } = await analyseText(stand('shelf Low at 12in\n load 40 lb/ft2 on Low'));
        const sag = findings.find(({ code }) => code === 'STR-001');
        const secondMoment = (12 * 0.75 ** 3) / 12;
        const inches = (5 * (40 / 12 + 0.25) * 34.5 ** 4) / (384 * 520_000 * secondMoment);
        expect(Number(/sags ([0-9.]+)in/.exec(sag?.message ?? '')?.[1])).toBeCloseTo(inches, 2);
    });

    it('are quiet with a nosing on edge, which carries most', async () => {
        const nosed = 'shelf Low at 12in { edge front nosing 3/4in of Oak { high 1 1/2in } }\n load 40 lb/ft2 on Low';
        expect((await said(stand(nosed))).filter((line) => line.startsWith('STR-001'))).toEqual([]);
    });

    it('carry as many goods as fit: four side by side, one deep, two high, of 12 lb', async () => {
        const [line] = (await said(stand('shelf Low at 12in\n top\n join top to every side with { glue }\n hold Box on Low'))).filter(
            (one) => one.startsWith('STR'),
        );
        expect(line).toContain('8 Box');
    });

    it('that are too low for the goods say so', async () => {
        const low = 'shelf Low at 36in\n top\n join top to every side with { glue }\n hold Box on Low';
        expect(await said(stand(low))).toContainEqual(
            expect.stringContaining('LOA-001 `Box` does not fit on `Low`: it is 6in high; 3 1/4in clear'),
        );
    });

    it('keep the limit that the project says', async () => {
        const project = `${stand('shelf Low at 12in\n load 20 lb/ft2 on Low', '27in')}\nproject "P" {\n sag 1/600\n build Stand\n}\n`;
        expect((await said(project)).filter((line) => line.startsWith('STR-001'))).toHaveLength(1);
        expect(
            (await said(stand('shelf Low at 12in\n load 20 lb/ft2 on Low', '27in'))).filter((line) => line.startsWith('STR-001')),
        ).toEqual([]);
    });
});
