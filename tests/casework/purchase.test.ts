/** The purchase list of whole designs: amounts and sums that are plain by hand. */
import { documentKinds } from 'casewright-shared/documents';
import { real } from 'casewright-shared/quantity';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseFile, analyseText } from './analysed.js';

type Analysed = Awaited<ReturnType<typeof analyseText>>;

function purchaseOf({ casework }: Analysed, units?: 'in' | 'mm') {
    const document = documentKinds
        .find(({ kind }) => kind === 'purchase')!
        .make(casework, { locate: () => undefined as never, findings: [], ...(units ? { units } : {}) });
    if (document?.is !== 'sheet') throw new Error('the purchase list is a sheet');
    const { groups, notes } = document.sheet;
    const rows = (heading: string) =>
        (groups.find((group) => group.heading === heading)?.rows ?? []).map((row) =>
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
    return { rows, notes: [...notes, ...groups.flatMap((group) => group.notes)], groups };
}

/** Two sides of two layers, 10in by 30in, and a shelf of 3/4in that is glued between them. */
const stand = (more = '') => `edition 1
use casewright.panels
use casewright.species
material Ply like HardwoodPlywood { thickness 3/4in   actual 3/4in   price 100 USD per sheet   sheet 48in x 96in }
material Wood : lumber { species RedOak   rough 4/4   planed 3/4in   boards 6in to 9in wide, 8ft to 8ft long   price 9.99 USD per board foot ${more} }
case Stand of Ply {
    width 40in   height 30in   depth 10in
    side Left, Right layers 2
    shelf Low at 12in
    stretcher Rail of Wood at 20in
    join Low to every side with { biscuit #20 count 2   glue }
    join Rail to every side with { dowel 8mm x 40mm count 2 }
}
`;

describe('a stand', async () => {
    const { rows, notes } = purchaseOf(await analyseText(stand()));

    it('takes one sheet: two layers a side and a shelf are 10.2 of its 32 square feet', () => {
        expect(rows('Sheets')).toMatchObject([{ item: 'Ply', count: 1, price: '100.00 USD per sheet', cost: '100.00 USD' }]);
    });

    it('takes one board of oak, 6in by 8ft by 4/4: four board feet by the rule of the trade, T x W x L / 12 (NHLA)', () => {
        expect(rows('Boards')).toMatchObject([{ item: 'Wood', count: 1, buy: '4.0 bdft', cost: '39.96 USD' }]);
    });

    it('takes what its joints say: two of each at either end', () => {
        expect(rows('Fasteners').map(({ item, count }) => [item, count])).toEqual([
            ['biscuit #20', 4],
            ['dowel 8mm x 40mm', 4],
        ]);
    });

    it('is glued at both ends of the shelf, 3/4in by 10in, and between the layers of both sides at their rough size', async () => {
        const { pieces } = (await analyseText(stand())).casework;
        const layers = pieces.filter(({ role }) => role === 'layer');
        expect(layers.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(4);
        const area = (measure: 'length' | 'width') => real.toNumber(layers[0]!.rough[measure]!.quantity.value) / 25.4;
        const [glue] = rows('Glue');
        const between = (2 * area('length') * area('width')) / 144;
        expect(glue!.use).toBe(`joints ${((2 * 0.75 * 10) / 144).toFixed(1)} ft2, layers ${between.toFixed(1)} ft2`);
        // usual single spread 35 to 50 lb per 1000 ft2 (common practice, no source); a pound has 16 ounces
        const ounces = (pounds: number) => ((between + 15 / 144) * pounds * 16) / 1000;
        const [least, most] = String(glue!.buy)
            .match(/[\d.]+/g)!
            .map(Number);
        expect(Math.abs(least! - ounces(35))).toBeLessThan(0.1);
        expect(Math.abs(most! - ounces(50))).toBeLessThan(0.1);
    });

    it('says what it comes to, and what has no price', () => {
        expect(notes).toContain('What has a price comes to 139.96 USD, without tax and delivery.');
        expect(notes).toContain('Without a price here: biscuit #20, dowel 8mm x 40mm, wood glue.');
    });

    it('takes more rough wood where the grade says how much of it is clear: two thirds in No. 1 Common (NHLA)', async () => {
        expect(purchaseOf(await analyseText(stand('grade "No. 1 Common"'))).rows('Boards')).toMatchObject([
            { buy: '6.0 bdft', cost: '59.94 USD' },
        ]);
    });
});

it.each([
    ['3 USD per ft2', '3.00 USD per ft2', '96.00 USD'], // 48in by 96in are 32 square feet
    ['100 USD/sheet', '100.00 USD per sheet', '100.00 USD'],
    ['3 USD/ft2', '3.00 USD per ft2', '96.00 USD'],
])('sheets at %s', async (price, stated, cost) => {
    const { rows } = purchaseOf(await analyseText(stand().replace('100 USD per sheet', price)));
    expect(rows('Sheets')).toMatchObject([{ price: stated, cost }]);
});

it('a price for another measure is shown, and not reckoned with', async () => {
    const { rows, notes } = purchaseOf(await analyseText(stand().replace('100 USD per sheet', '3 USD per board foot')));
    expect(rows('Sheets')).toMatchObject([{ price: '3.00 USD per board foot' }]);
    expect(rows('Sheets')[0]).not.toHaveProperty('cost');
    expect(notes.find((note) => note.startsWith('Without'))).toContain('Ply (its price is per board foot)');
});

it('what is bought costs the same, whatever it is printed in: wood is counted in what its price is for', async () => {
    const analysed = await analyseText(stand());
    const [inch, metric] = (['in', 'mm'] as const).map((units) => purchaseOf(analysed, units));
    expect(metric!.rows('Boards')).toMatchObject([{ buy: '4.0 bdft', cost: '39.96 USD' }]);
    const said = 'What has a price comes to 139.96 USD, without tax and delivery.';
    expect([inch!, metric!].map(({ notes }) => notes.includes(said))).toEqual([true, true]);
});

it('a price finer than a cent is printed with all that it states, and its cost to the cent', async () => {
    const { rows } = purchaseOf(await analyseText(stand().replace('9.99 USD', '9.9875 USD')));
    expect(rows('Boards')).toMatchObject([{ price: '9.9875 USD per board foot', cost: '39.95 USD' }]);
});

it('sheets that cost nothing are counted like others: no more are taken than need be', async () => {
    const free = purchaseOf(await analyseText(stand().replace('100 USD', '0 USD')));
    expect(free.rows('Sheets')).toMatchObject([{ count: 1, price: '0.00 USD per sheet', cost: '0.00 USD' }]);
});

it('a nosing is glued where it meets its shelf: 3/4in of the 1 1/2in that it is high, along 37in', async () => {
    const text = stand().replace('shelf Low at 12in', 'shelf Low at 12in { edge front nosing 3/4in of Wood { high 1 1/2in } }');
    const [glue] = purchaseOf(await analyseText(text)).rows('Glue');
    expect(glue!.use).toContain(`bands and nosings ${((0.75 * 37) / 144).toFixed(1)} ft2`);
});

it('currencies do not add up to one another', async () => {
    const { notes } = purchaseOf(await analyseText(stand().replace('100 USD', '100 EUR')));
    expect(notes).toContain('What has a price comes to 100.00 EUR and 39.96 USD, without tax and delivery.');
});

it.each(['kiln-lane', 'reading-wall', 'tarn-house', 'ferry-steps'])('%s: the printed costs add up to the printed sum', async (name) => {
    const { groups, notes } = purchaseOf(await analyseFile(new URL(`../../examples/${name}/${name}.case`, import.meta.url).pathname));
    const costs = groups.flatMap((group) =>
        group.rows.flatMap(({ cost }) => (cost?.is === 'amount' ? Number.parseFloat(cost.amount.printed.text) : [])),
    );
    const sum = costs.reduce((one, other) => one + other, 0);
    const said = notes.find((note) => note.startsWith('What has a price'));
    expect(costs.length > 0).toBe(name !== 'tarn-house'); // which states no price
    if (said === undefined) expect(costs).toEqual([]);
    else expect(said).toContain(` ${sum.toFixed(2)} `);
});

it('whatever sheets and boards cost, each line is its count or amount times its price, to the cent', async () => {
    await fc.assert(
        fc.asyncProperty(fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: 1, max: 9_999 }), async (sheet, foot) => {
            const money = (cents: number) => (cents / 100).toFixed(2);
            const text = stand()
                .replace('100 USD', `${money(sheet)} USD`)
                .replace('9.99 USD', `${money(foot)} USD`);
            const { rows, notes } = purchaseOf(await analyseText(text));
            expect(rows('Sheets')[0]).toMatchObject({ cost: `${money(sheet)} USD` });
            expect(rows('Boards')[0]).toMatchObject({ cost: `${money(4 * foot)} USD` });
            expect(notes.some((note) => note.includes(` ${money(sheet + 4 * foot)} USD`))).toBe(true);
        }),
        { numRuns: 12, seed: 7 },
    );
});
