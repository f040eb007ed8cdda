/** One slip of the keyboard is one finding, and says what to write. */
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';
import { caseWith } from './stock.js';

async function foundIn(text: string) {
    const analysis = await analyseText(text);
    return analysis.findings
        .filter(({ allowed }) => allowed === undefined)
        .map(({ code, span, hint }) => ({ code, at: analysis.textAt(span), hint }));
}
const inCase = (words: string) => foundIn(caseWith(`side Left, Right\n${words}`));
const glued = 'join every shelf to every side with { glue }';

describe('one mistake', () => {
    it('a comma that is missing between two parts', async () =>
        expect((await inCase(`shelf Low at 20in\ntop\njoin Low to every side top with { glue }`)).map(({ code }) => code)).toEqual([
            'TXT-002',
        ]));

    it('the material that is missing at the case', async () => {
        const text = `case Box {\n width 20in\n height 20in\n depth 10in\n side Left, Right\n shelf Low at 10in\n ${glued}\n}`;
        expect(await foundIn(text)).toEqual([
            { code: 'MAT-001', at: 'Box', hint: 'name the material at the case, `case Box of ...`, or at each part' },
        ]);
    });

    it('two shelves of one name at one place', async () =>
        expect((await inCase(`shelf Low at 20in\nshelf Low at 20in\n${glued}`)).map(({ code, at }) => [code, at])).toEqual([
            ['NAM-002', 'Low'],
        ]));

    it('a part that is joined to itself', async () =>
        expect(await inCase(`shelf Low at 20in\n${glued}\njoin Low to Low with { glue }`)).toEqual([
            { code: 'NAM-007', at: 'Low', hint: 'name the part that it is joined to' },
        ]));
});

describe('what to write instead', () => {
    it.each([
        ['a screw by its number', `shelf Low at 20in\njoin Low to every side with { screw 8 x 1in }`, '8', 'write `#8` or `8mm`'],
        ['half a layer', `shelf Low at 20in layers 2.5\n${glued}`, '2.5', 'write `2` or `3`'],
        ['no layer', `shelf Low at 20in layers 0\n${glued}`, '0', 'write `1` or more, or take it out'],
        ['layers with a unit', `shelf Low at 20in layers 3in\n${glued}`, '3in', 'write a plain number, such as `3`'],
        ['a mass for a length', `shelf Low at 20in depth 12lb\n${glued}`, '12lb', 'write a length, such as `12in` or `300mm`'],
        ['a tolerance without a unit', `shelf Low at 20in ± 1/64\n${glued}`, '1/64', 'give it a unit: 1/64in'],
    ])('of %s', async (_, words, at, hint) => expect((await inCase(words)).map((one) => [one.at, one.hint])).toContainEqual([at, hint]));

    it('of an arc that is bent out by less than nothing', async () => {
        const curve =
            'curve Bow of depth over width {\n from 10in at left\n arc out -2in\n to 10in at right\n}\nshelf Low at 20in depth Bow\n';
        expect((await inCase(curve + glued)).map(({ hint }) => hint)).toContain(
            'write `arc in 2in`: the word says which way, and the length is above zero',
        );
    });
});
