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

describe('several shelves of one statement', () => {
    const tier = 'shelf Tier[4] clear equal\n load 35 lb/ft2 on Tier[1]\n load 45 lb/ft2 on Tier[3]\n load 40 lb/ft2 on Tier[4]';

    it('are one finding about the worst, with the number of the others and a mend for all', async () => {
        const { findings } = await analyseText(stand(tier));
        const sags = findings.filter(({ code }) => code === 'STR-001');
        expect(sags).toHaveLength(1);
        expect(sags[0]!.message).toMatch(/^`Tier\[3\]` sags .*; so with 2 more of `Tier`, none worse$/);
        expect(sags[0]!.hint).toContain('as it is it may span about');
    });

    it('count those that are allowed apart', async () => {
        const allowed = `${tier}\n allow shelf-sags on Tier[3] because "behind doors"`;
        const open = (await analyseText(stand(allowed))).findings.filter((one) => one.code === 'STR-001' && one.allowed === undefined);
        expect(open.map(({ message }) => message)).toEqual([
            expect.stringMatching(/^`Tier\[4\]` .*; so with 1 more of `Tier`, none worse$/),
        ]);
    });

    it('the worst of those that break is told, with what each of them holds', async () => {
        const loads = 'shelf Tier[2] clear equal\n load 300 lb on Tier[1]\n load 400 lb on Tier[2]';
        const breaking = (await analyseText(stand(loads))).findings.filter(({ code }) => code === 'STR-003');
        expect(breaking.map(({ message }) => message)).toEqual([
            expect.stringMatching(/^`Tier\[2\]` may break under 400 lb: .*; so with 1 more of `Tier`, none worse$/),
        ]);
    });

    it('need a nosing that is high enough for each', async () => {
        const nosed = (load: string) =>
            stand(
                `shelf Tier[2] clear equal { edge front nosing 3/4in of Oak { high 1in } }\n load 30 lb on Tier[1]\n load ${load} on Tier[2]`,
            );
        const heightIn = async (text: string) => {
            const [finding] = (await analyseText(text)).findings.filter(({ code }) => code === 'STR-002');
            return /a nosing (.*)in high would do/.exec(finding?.hint ?? '')?.[1];
        };
        expect(await heightIn(nosed('55 lb'))).toBeDefined();
        expect(await heightIn(nosed('55 lb'))).not.toBe(await heightIn(nosed('30 lb')));
    });
});

describe('a shelf without a nosing', () => {
    // Sag over span goes with the cube of the span (Wood Handbook FPL-GTR-282, Table 9-1): what the hint says is quiet, an inch more is not.
    it('whose sag will be seen is told how far it may span', async () => {
        const text = (width: string) => stand('shelf Low at 12in\n load 12 lb/ft2 on Low', width);
        const [seen] = (await analyseText(text('36in'))).findings.filter(({ code }) => code === 'STR-002');
        const span = Number(/may span about ([0-9]+)in$/.exec(seen?.hint ?? '')?.[1]);
        const codesAt = async (clear: number) => (await analyseText(text(`${clear + 1.5}in`))).findings.map(({ code }) => code);
        expect(await codesAt(span)).not.toContain('STR-002');
        expect(await codesAt(span + 1)).toContain('STR-002');
    });
});

describe('a material without a modulus', () => {
    const ply = (units: string) =>
        `${stand('shelf Low at 8in\n shelf Mid at 20in\n shelf High at 30in\n load 20 lb on every shelf', '36in', 'Ply').replace(
            'goods Box',
            'material Ply like HardwoodPlywood { thickness 3/4in }\ngoods Box',
        )}\nproject "P" {\n ${units}\n build Stand\n}\n`;

    it('is one note however many shelves are of it, with the words of plywood in the units of the project', async () => {
        for (const [units, sample] of [
            ['', 'modulusAlong 1200000 psi'],
            ['units mm', 'modulusAlong 8000 MPa'],
        ] as const) {
            const notes = (await analyseText(ply(units))).findings.filter(({ code }) => code === 'STR-004');
            expect(notes).toHaveLength(1);
            expect(notes[0]!.message).toBe('`Low` carries 20 lb, and nothing says how stiff `Ply` is; so with 2 more of `Ply`');
            expect(notes[0]!.hint).toContain(sample);
            expect(notes[0]!.hint).not.toContain('modulusOfElasticity');
        }
    });

    it('what the hint says mends it', async () => {
        const mended = ply('').replace(
            'like HardwoodPlywood {',
            'like HardwoodPlywood { modulusAlong 1200000 psi  modulusAcross 600000 psi ',
        );
        expect((await analyseText(mended)).findings.map(({ code }) => code)).not.toContain('STR-004');
    });
});

it('goods of which not one fits are no load', async () => {
    const low = 'shelf Low at 36in\n top\n join top to every side with { glue }\n hold Box on Low';
    const text = stand(low, '36in', 'Ply').replace('goods Box', 'material Ply like HardwoodPlywood { thickness 3/4in }\ngoods Box');
    expect((await said(text)).filter((line) => / 0 Box/.test(line))).toEqual([]);
});
