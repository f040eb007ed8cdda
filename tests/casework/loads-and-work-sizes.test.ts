/** What a shelf is said to carry, and how much work is done at an edge or joint: what is no load and no size is an error, and never silent. */
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';
import { caseWith } from './stock.js';

/** Errors and warnings as code and words. */
async function foundIn(text: string): Promise<readonly (readonly [string, string])[]> {
    const analysis = await analyseText(text);
    return analysis.findings.filter(({ severity }) => severity !== 'note').map(({ code, span }) => [code, analysis.textAt(span)]);
}

const withDeck = (words: string): string =>
    caseWith(`side Left, Right\nshelf Deck at 30in\njoin Deck to every side with { glue }\n${words}`);

describe('a load', () => {
    it.each([
        ['without a unit', 'load 40 on Deck', 'UNI-001', '40'],
        ['that is a length', 'load 40in on Deck', 'UNI-003', '40in'],
        ['that is an area', 'load 4 ft2 on Deck', 'UNI-003', '4 ft2'],
        ['below zero', 'load -40lb on Deck', 'PLC-002', '-40lb'],
        ['on a side', 'load 40lb on Left', 'NAM-007', 'Left'],
        ['on all sides', 'load 40lb on every side', 'NAM-007', 'every side'],
    ])('%s is an error', async (_, words, code, at) => expect(await foundIn(withDeck(words))).toEqual([[code, at]]));

    it.each(['40lb', '40 lbf', '20 lb/ft', '10 kg/m2', '25 lb/ft2', '0.2 psi', '20lb + 5kg'])('of %s is one', async (amount) =>
        expect((await analyseText(withDeck(`load ${amount} on Deck`))).findings.filter(({ severity }) => severity === 'error')).toEqual([]),
    );
});

describe('goods', () => {
    const goods = (more: string) => `goods Vase { size 4in wide 4in deep 4in high ${more} }\n`;

    it('on a side is an error', async () =>
        expect(await foundIn(goods('mass 1lb') + withDeck('hold Vase on Left'))).toEqual([['NAM-007', 'Left']]));

    it('without a mass are warned of at their name, once', async () => {
        const found = await foundIn(goods('') + withDeck('hold 2 Vase on Deck\nhold 1 Vase on Deck'));
        expect(found).toEqual([['LOA-002', 'Vase']]);
        expect(await foundIn(goods('mass 1lb') + withDeck('hold 2 Vase on Deck'))).toEqual([]);
    });
});

describe('work of no size', () => {
    it.each([
        ['a band', 'edge front band -1/4in of Oak', '-1/4in'],
        ['a band of nothing', 'edge front band 0in of Oak', '0in'],
        ['a nosing', 'edge front nosing -3/4in of Oak', '-3/4in'],
        ['the height of a nosing', 'edge front nosing 3/4in of Oak { high -1in }', '-1in'],
        ['what stands proud', 'edge front band 1/8in of Oak { proud -1/64in }', '-1/64in'],
        ['a rabbet', 'edge back rabbet -1/4in deep 1/4in wide', '-1/4in'],
        ['a round', 'edge front round -1/8in', '-1/8in'],
        ['a chamfer', 'edge front chamfer -1/8in', '-1/8in'],
    ])('%s is an error', async (_, words, at) => {
        const found = await foundIn(caseWith(`side Left, Right\nshelf Deck at 30in { ${words} }\njoin Deck to every side with { glue }`));
        expect(found).toEqual([['PLC-002', at]]);
    });

    it.each([
        ['a dado', 'dado -1/4in deep', '-1/4in'],
        ['a gap', 'gap -1mm', '-1mm'],
        ['the length of a screw', 'screw #8 x -1in', '-1in'],
        ['the way from one screw to the next', 'screw #8 x 1in spacing 0in', '0in'],
    ])('%s in a joint is an error', async (_, words, at) =>
        expect(
            await foundIn(caseWith(`side Left, Right\nshelf Deck at 30in\njoin Deck to every side with { ${words} glue }`)),
        ).toContainEqual(['PLC-002', at]),
    );

    it('a gap of nothing and nothing proud are meant', async () =>
        expect(
            await foundIn(
                caseWith(
                    'side Left, Right\nshelf Deck at 30in { edge front band 1/8in of Oak { proud 0in } }\njoin Deck to every side with { gap 0mm glue }',
                ),
            ),
        ).toEqual([]));
});
