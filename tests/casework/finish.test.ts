/** What finishes the parts of whole designs: surfaces that are plain by hand, coatings on them, and fasteners by the pack. */
import { documentKinds } from 'casewright-shared/documents';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const lacquer = 'solids 24%   wet 4mil   transfer 65%   price 62 USD per gal';

/** Two sides 10in by 30in of 1 1/2in, and two shelves 37in by 10in of 3/4in between them. */
const stand = (more = '', coating = lacquer) => `edition 1
use casewright.panels
material Ply like HardwoodPlywood { thickness 3/4in   actual 3/4in   price 100 USD per sheet   sheet 48in x 96in }
coating Lacquer { ${coating} }
finish Clear { sand #180; coat Lacquer count 2 }
finish Once { coat Lacquer }
case Stand of Ply {
    width 40in   height 30in   depth 10in
    finished Clear
    side Left, Right layers 2
    shelf Low at 12in { finished none }
    shelf High at 20in { finished Once }
    join Low, High to every side with { biscuit #20 count 2   glue }
}
${more}
`;

async function bought(text: string, heading: string, units?: 'in' | 'mm') {
    const { casework, findings } = await analyseText(text);
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    const document = documentKinds
        .find(({ kind }) => kind === 'purchase')!
        .make(casework, { locate: () => undefined as never, findings: [], ...(units ? { units } : {}) });
    if (document?.is !== 'sheet') throw new Error('the purchase list is a sheet');
    const group = document.sheet.groups.find((one) => one.heading === heading);
    const rows = (group?.rows ?? []).map((row) =>
        Object.fromEntries(
            Object.entries(row).map(([key, cell]) => [
                key,
                cell.is === 'text'
                    ? cell.text
                    : cell.is === 'count'
                      ? cell.count
                      : cell.is === 'amount'
                        ? cell.amount.printed.text
                        : cell.is,
            ]),
        ),
    );
    return { rows, notes: [...(group?.notes ?? []), ...document.sheet.notes] };
}

// sides: 2 x (2 x 30 x 10 + 2 x 40 x 1 1/2) less four ends of shelves, 10 x 3/4 each; the shelf: 2 x 37 x 10 + 2 x 47 x 3/4 less its two ends
const sides = (2 * (2 * 300 + 2 * 40 * 1.5) - 4 * 7.5) / 144;
const shelf = (2 * 370 + 2 * 47 * 0.75 - 2 * 7.5) / 144;
// 231 / 0.004 / 144 x 65 %
const squareFeetByGallon = 260.677;
const roundedUp = (value: number) => (Math.ceil(value * 100) / 100).toFixed(2);

describe('a finish', () => {
    it('goes on every face and edge that is not joined, of its case and of the parts that say their own', async () => {
        const { rows } = await bought(stand(), 'Finish');
        expect(rows).toMatchObject([
            {
                item: 'Lacquer',
                use: `Clear: 2 coats on ${sides.toFixed(1)} ft2, Once: 1 coat on ${shelf.toFixed(1)} ft2`,
                details: '24 % solids, 4 mil wet, 65 % transferred, 260.7 ft2 per gal',
                buy: `${roundedUp((2 * sides + shelf) / squareFeetByGallon)} gal`,
            },
        ]);
    });

    it('is bought by the can where the text says how much is in one', async () => {
        const { rows } = await bought(stand('', `${lacquer}   can 1 qt`), 'Finish');
        expect(rows).toMatchObject([{ count: 1, buy: '1 can', size: '1 qt', cost: '15.50 USD' }]); // a quarter of 62
        const byCan = await bought(stand('', 'solids 24%   wet 40mil   price 18 USD per can   can 1 qt'), 'Finish');
        const cans = Math.ceil(((2 * sides + shelf) / (231 / 0.04 / 144)) * 4);
        expect(byCan.rows).toMatchObject([{ count: cans, cost: `${18 * cans}.00 USD` }]);
    });

    it('is reckoned from how thick it dries just as well: 0.96 mil at 24 % were 4 mil', async () => {
        const dry = await bought(stand('', lacquer.replace('wet 4mil', 'dry 0.96mil')), 'Finish');
        expect(dry.rows).toEqual((await bought(stand(), 'Finish')).rows);
    });

    it('of which nothing says how thick it is costs nothing that anyone knows', async () => {
        const { rows, notes } = await bought(stand('', 'price 62 USD per gal'), 'Finish');
        expect(rows).toMatchObject([{ buy: 'unknown' }]);
        expect(rows[0]).not.toHaveProperty('cost');
        expect(notes.find((note) => note.startsWith('Without a price'))).toContain('Lacquer (it does not say how thick a coat is');
    });

    it('from a brush is counted without loss, and that is said', async () => {
        const { notes } = await bought(stand('', 'solids 40%   wet 4mil'), 'Finish');
        expect(notes).toContainEqual(expect.stringContaining('as if none of it were lost: Lacquer'));
        expect((await bought(stand(), 'Finish')).notes).not.toContainEqual(expect.stringContaining('as if none of it were lost'));
    });

    it('is in no list where no part is finished', async () => {
        const text = stand().replace('finished Clear', '').replace('{ finished Once }', '');
        expect((await bought(text, 'Finish')).rows).toEqual([]);
    });

    it('in millimetres is bought in litres where nothing else is said', async () => {
        const { rows } = await bought(stand('', 'solids 24%   wet 100um'), 'Finish', 'mm');
        const litres = ((2 * sides + shelf) * 0.3048 ** 2 * 100) / 1000;
        expect(rows).toMatchObject([{ buy: `${roundedUp(litres)} litre`, details: '24 % solids, 100 um wet, 10.0 m2 per litre' }]);
    });

    it('of a nosing counts what hangs below its board, in front and behind', async () => {
        const wood = 'material Wood : lumber { planed 3/4in }';
        const nosed = (high: string) =>
            stand(wood).replace('finished Once', `finished Once   edge front nosing 3/4in of Wood { high ${high} }`);
        const area = async (text: string) =>
            Number(/1 coat on ([0-9.]+) ft2/.exec(String((await bought(text, 'Finish')).rows[0]!.use))![1]);
        const [flush, hanging] = [await area(nosed('3/4in')), await area(nosed('12 3/4in'))];
        expect(hanging - flush).toBeCloseTo((2 * 12 * 37) / 144, 1);
    });

    it('that is none is an error at its words', async () => {
        const { findings } = await analyseText(stand().replace('finished Clear', 'finished Ply'));
        expect(findings.map(({ code }) => code)).toContain('NAM-007');
    });
});

describe('fasteners', () => {
    const number20 = (price: string) => `fastener Number20 : biscuit { size #20   ${price} }`;

    it.each([
        ['price 40 USD per 1000   pack 100', '1 pack of 100', '4.00 USD'],
        ['price 5.50 USD per pack   pack 3', '3 packs of 3', '16.50 USD'], // eight are needed
        ['price 4 USD per 100', undefined, '0.32 USD'],
        ['price 4 USD per 100   pack 5', '2 packs of 5', '0.40 USD'],
        ['price 0.07 USD per each', undefined, '0.56 USD'],
    ])('at %s', async (price, buy, cost) => {
        const { rows } = await bought(stand(number20(price)), 'Fasteners');
        expect(rows).toMatchObject([{ item: 'biscuit #20', count: 8, cost, ...(buy === undefined ? {} : { buy }) }]);
    });

    it('of another size, or two of one size, have no price that is known', async () => {
        const other = await bought(stand('fastener Number10 : biscuit { size #10   price 4 USD per 100 }'), 'Fasteners');
        const two = await bought(
            stand(`${number20('price 4 USD per 100')}\n${number20('price 5 USD per 100').replace('Number20', 'Other20')}`),
            'Fasteners',
        );
        for (const { rows, notes } of [other, two]) {
            expect(rows[0]).not.toHaveProperty('cost');
            expect(notes.find((note) => note.startsWith('Without a price'))).toContain('biscuit #20');
        }
    });

    it('are told apart by their lengths', async () => {
        const screws = `fastener Short : screw { size #8   length 1in   price 1 USD per each }
fastener Long : screw { size #8   lengths 1 1/4in, 2in   price 3 USD per each }`;
        const text = stand(screws).replace('biscuit #20 count 2', 'screw #8 x 1 1/4in count 2');
        expect((await bought(text, 'Fasteners')).rows).toMatchObject([{ details: 'Long', count: 8, cost: '24.00 USD' }]);
    });
});
