/** Solid wood that moves, from the text to the finding and the sheet. */
import { climateOf, heldAcross, movingParts } from 'casewright-shared/strength';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const table = (words: string, project = '') => `
use casewright.species
use casewright.panels
material Mdf like FibreboardThreeQuarter
material Oak : lumber { species RedOak   rough 5/4   planed 1in }
${project}
case Table of Mdf {
    width 48in   height 30in   depth 20in
    ${words}
}
`;
const said = async (text: string) => (await analyseText(text)).findings.filter(({ code }) => code === 'MOV-001');

describe('a wide top of red oak', () => {
    // 20in by 0.00369 for each percent (Wood Handbook FPL-GTR-190, Table 13-5), from 30 % to 60 % of humidity: 6.17 to 10.97 % of moisture
    // (FPL-GTR-282, Equation 4-5)
    it('moves by its coefficient', async () => {
        const { casework } = await analyseText(table('top of Oak\n side Left, Right\n join top to every side with { glue }'));
        const [moving] = movingParts(casework);
        expect(moving!.width / 25.4).toBeCloseTo(20, 9);
        expect(moving!.moves / 25.4).toBeCloseTo(20 * 0.00369 * (10.97 - 6.172), 3);
    });

    it('glued across to fibreboard is an error, once for both sides', async () => {
        const findings = await said(table('top of Oak\n side Left, Right\n join top to every side with { glue }'));
        expect(findings).toMatchObject([
            {
                severity: 'error',
                message: '`top` is solid RedOak, glued across its grain to `Left`: over 20in it moves about 0.354in in a year, and is held',
            },
        ]);
    });

    it.each([
        ['screwed so that it is free', 'top of Oak\n side Left, Right\n join top to every side with { screw #8 x 1 1/4in count 4   free }'],
        ['on sides of the same wood, which move with it', 'top of Oak\n side Left, Right of Oak\n join top to every side with { glue }'],
        ['of fibreboard', 'top\n side Left, Right\n join top to every side with { glue }'],
        ['a narrow rail', 'rail Front of Oak at front height 3in\n side Left, Right\n join Front to every side with { glue }'],
    ])('is no mistake %s', async (_, words) => {
        expect(await said(table(words))).toEqual([]);
    });

    it('holds a rail that is glued under it along its width', async () => {
        const words =
            'top of Oak\n side Left, Right of Oak\n divider Batten of Oak at middle { grain width }\n join top to every side with { glue }\n join Batten to top with { glue }';
        const { casework } = await analyseText(table(words));
        const held = heldAcross(casework).filter(({ moving }) => moving.name === 'top');
        expect(held.map(({ holding }) => holding.name)).toEqual(['Batten']);
    });

    it('moves less in a steadier room', async () => {
        const words = 'top of Oak\n side Left, Right\n join top to every side with { glue }';
        const museum = 'project "P" {\n climate 45% to 50%\n build Table\n}';
        expect(await said(table(words, museum))).toEqual([]);
        const { casework } = await analyseText(table(words, museum));
        expect(casework.project?.climate).toHaveLength(2);
        expect(climateOf(casework)).toMatchObject({ dry: 0.45, damp: 0.5, stated: true });
        const wet = await analyseText(table(words, 'project "P" {\n climate 100% to 0%\n build Table\n}'));
        expect(climateOf(wet.casework)).toMatchObject({ dry: 0.05, damp: 0.95 });
    });
});
