/** What whole designs cost and what is asked for them, against sums that are plain by hand; what the client is not told; what is not known. */
import { type DocumentKind, documentKinds } from 'casewright-shared/documents';
import { writeDocument } from 'casewright-shared/writers';
import { describe, expect, it } from 'vitest';
import { analyseFile, analyseText } from './analysed.js';

type Analysed = Awaited<ReturnType<typeof analyseText>>;

function sheetOf(
    kind: DocumentKind['kind'],
    { casework }: Analysed,
    options: { readonly units?: 'in' | 'mm'; readonly date?: string } = {},
) {
    const document = documentKinds
        .find((one) => one.kind === kind)!
        .make(casework, { locate: () => undefined as never, findings: [], ...options });
    if (document === undefined) return undefined;
    if (document.is !== 'sheet') throw new Error(`the ${kind} is a sheet`);
    const { sheet } = document;
    const rows = (heading: string) =>
        (sheet.groups.find((group) => group.heading === heading)?.rows ?? []).map((row) =>
            Object.fromEntries(
                Object.entries(row).map(([key, cell]) => [
                    key,
                    'text' in cell
                        ? cell.text
                        : cell.is === 'count'
                          ? cell.count
                          : cell.is === 'amount'
                            ? cell.amount.printed.text
                            : cell.is,
                ]),
            ),
        );
    const fact = (label: string) => sheet.facts.filter((one) => one.label === label).map(({ text }) => text);
    const money = (heading: string, key = 'cost') => Object.fromEntries(rows(heading).map((row) => [row.item, row[key]]));
    return { sheet, rows, fact, money, text: () => writeDocument(document, 'md') };
}

/** One sheet at 100, one board of four board feet at 10, four biscuits at 0.25: 141 of materials. */
const stand = ({
    shop = 'labor 60 USD per hour   overhead 25%   margin 20%',
    project = 'tax 8%',
    more = '',
    sheet = '100 USD per sheet',
}: {
    readonly shop?: string;
    readonly project?: string;
    readonly more?: string;
    readonly sheet?: string;
} = {}) => `edition 1
use casewright.panels
use casewright.species
material Ply like HardwoodPlywood { species RedOak   thickness 3/4in   actual 3/4in   price ${sheet}   sheet 48in x 96in }
material Thick like Ply { actual 0.8in   price 150 USD per sheet }
material Wood : lumber { species RedOak   rough 4/4   planed 3/4in   boards 6in to 9in wide, 8ft to 8ft long   price 10 USD per board foot }
fastener Number20 : biscuit { size #20   length 56mm   width 23mm   thickness 4mm   depth 12.3mm   price 25 USD per 100 }
project "A stand" {
    client "Somebody"
    build 1 Stand
    ${project}
}
case Stand of Ply {
    width 40in   height 30in   depth 10in
    side Left, Right
    shelf Low at 12in { edge front band 1/8in of Wood }
    join Low to every side with { biscuit #20 count 2 }
    ${more}
}
shop {
    ${shop}
}
`;
const times = `times {
    sheet 30 minutes   cut 0 minutes   board 15 minutes   band 6 minutes per ft
    biscuit 3 minutes   part 10 minutes
}`;

describe('the costing of a stand', async () => {
    const costing = sheetOf('costing', await analyseText(stand({ shop: `labor 60 USD per hour   overhead 25%   margin 20%   ${times}` })))!;

    it('has its materials: a sheet, four board feet and four biscuits', () => {
        expect({ ...costing.money('Sheets'), ...costing.money('Boards'), ...costing.money('Fasteners') }).toEqual({
            Ply: '100.00 USD',
            Wood: '40.00 USD',
            'biscuit #20': '1.00 USD',
        });
    });

    it('counts the work: one sheet, one board, a band of 38 1/2in between the sides, two slots for each of four biscuits, three parts', () => {
        // 30 + 15 + 6 x 3.2 + 8 x 3 + 3 x 10 minutes, each line to the hundredth of an hour
        expect(costing.rows('Labour').map(({ item, amount, hours, cost }) => [item, amount, hours, cost])).toEqual([
            ['Sheets brought to the saw', '1', '0.50', '30.00 USD'],
            ['Cuts at the saw', expect.any(String), '0.00', '0.00 USD'],
            ['Boards jointed and planed', '1', '0.25', '15.00 USD'],
            ['Bands and nosings glued on and trimmed', '3.2 ft', '0.32', '19.20 USD'],
            ['Biscuit slots', '8', '0.40', '24.00 USD'],
            ['Parts fitted and put together', '3', '0.50', '30.00 USD'],
            ['All labour', undefined, '1.97', undefined],
        ]);
    });

    it('builds the price up: a quarter of overhead, a fifth of the price as margin, eight per cent of tax', () => {
        // glue of the band has a price in no text, so the stand with glue is below
        expect(costing.fact('Not complete')).toEqual(['no price is stated of wood glue']);
    });
});

/** With glue at 16 USD a pound: the band takes next to none of it, a hundredth of a pound. */
const complete = (more: Parameters<typeof stand>[0] = {}) =>
    stand({ ...more, shop: `${more.shop ?? 'labor 60 USD per hour   overhead 25%   margin 20%'}   glue 16 USD per lb   ${times}` });

describe('a price', async () => {
    const analysed = await analyseText(complete());
    const [costing, quote] = [sheetOf('costing', analysed, { date: '2026-12-01' })!, sheetOf('quote', analysed, { date: '2026-12-01' })!];

    it('is materials and labour, with overhead, over what the margin leaves, and tax on it', () => {
        // the band is 38 1/2in by 3/4in: 0.2 ft2 at 50 lb per 1000 ft2 is 0.01 lb
        expect(costing.money('Glue')).toEqual({ 'wood glue': expect.stringMatching(/^0\.(16|32) USD$/) });
        const glue = Number.parseFloat(String(costing.money('Glue')['wood glue']));
        const direct = 141 + glue + 118.2;
        const cost = direct + Math.round(direct * 25) / 100;
        const price = Math.round((cost / 0.8) * 100) / 100;
        const tax = Math.round(price * 8) / 100;
        expect(costing.money('Price')).toEqual({
            Materials: `${(141 + glue).toFixed(2)} USD`,
            Labour: '118.20 USD',
            Overhead: `${(cost - direct).toFixed(2)} USD`,
            Cost: `${cost.toFixed(2)} USD`,
            Profit: `${(price - cost).toFixed(2)} USD`,
            Price: `${price.toFixed(2)} USD`,
            Tax: `${tax.toFixed(2)} USD`,
            Total: `${(price + tax).toFixed(2)} USD`,
        });
    });

    it('is the same for the client, who sees none of what stands behind it', async () => {
        const { Price, Tax, Total } = costing.money('Price');
        expect(quote.money('Price', 'price')).toEqual({ Price, 'Tax, 8 %': Tax, Total });
        const text = await quote.text();
        const { Materials, Labour, Overhead, Cost, Profit } = costing.money('Price');
        for (const inner of [Materials, Labour, Overhead, Cost, Profit]) expect(text).not.toContain(inner);
        expect(text).not.toMatch(/hour|margin|overhead|labour|profit|20 %|25 %|per sheet|minute/i);
    });

    it('stands under the date that was given, and without one under none', async () => {
        expect(quote.fact('Date')).toEqual(['2026-12-01']);
        expect(sheetOf('quote', analysed)!.fact('Date')).toEqual([]);
    });

    it('says what is made, over all, of what', () => {
        expect(quote.rows('What is made')).toEqual([
            expect.objectContaining({
                count: 1,
                item: 'Stand',
                size: '40in wide, 30in high, 10in deep',
                details: 'northern red oak plywood',
            }),
        ]);
    });

    it('is the same in whatever units it is printed', () => {
        expect(sheetOf('costing', analysed, { units: 'mm' })!.money('Price')).toEqual(costing.money('Price'));
    });
});

describe('what the text does not say', () => {
    const quoteOf = async (more: Parameters<typeof stand>[0]) => sheetOf('quote', await analyseText(complete(more)))!;

    it.each([
        ['a price of a material', { sheet: '100 USD per board foot' }, 'no price is stated of Ply (its price is per board foot)'],
        ['what labour costs', { shop: 'margin 20%' }, 'the shop does not say what its `labor` costs'],
        ['one currency', { sheet: '100 EUR per sheet' }, 'amounts in EUR and in USD do not add up'],
        ['a margin that can be', { shop: 'labor 60 USD per hour   margin 100%' }, '`margin 100 %` cannot be'],
        ['an overhead that can be', { shop: 'labor 60 USD per hour   overhead -5%' }, '`overhead -5 %` cannot be'],
        ['a fastener with a price', { more: 'join Low to Left with { screw #6 x 1in count 2 }' }, 'screw #6 x 1in'],
        ['a panel that says its sheet', { more: 'shelf High at 20in of Bare' }, 'how much of Bare to buy is not known: it says no `sheet`'],
    ] as const)('%s: there is no price, and it says so on its face', async (_, more, said) => {
        const bare = 'material Bare : plywood { thickness 3/4in   price 10 USD per sheet }\n';
        const analysed = await analyseText(complete(more).replace('project "A', `${bare}project "A`));
        const [quote, costing] = [sheetOf('quote', analysed)!, sheetOf('costing', analysed)!];
        expect(quote.fact('Not complete').join()).toContain(said);
        expect(quote.fact('Not complete').join()).toContain('not to be sent');
        expect(costing.fact('Not complete').join()).toContain(said);
        expect(quote.rows('Price')).toEqual([expect.objectContaining({ item: 'Price', price: 'unknown' })]);
        expect(costing.money('Price')).not.toHaveProperty('Total');
        expect(await quote.text()).not.toMatch(/[0-9] (?:USD|EUR)/);
    });

    it('a tax: the price is without it, and that is said', async () => {
        const quote = await quoteOf({ project: '' });
        expect(quote.rows('Price')).toHaveLength(1);
        expect(quote.sheet.groups[1]!.notes).toEqual(['Without tax.']);
    });

    it('anything by which it could be priced: there is no quote', async () => {
        const analysed = await analyseText(stand({ shop: 'kerf 1/8in', project: '' }));
        expect([sheetOf('quote', analysed), sheetOf('costing', analysed)]).toEqual([undefined, undefined]);
    });

    it('terms and validity: they are printed where they are stated, and only there', async () => {
        expect((await quoteOf({})).sheet.notes).toEqual([]);
        const said = await quoteOf({ project: 'validity 30 days\n    terms "Half now."\n    terms "Half then."' });
        expect(said.sheet.notes).toEqual(['Valid for 30 days.', 'Half now.', 'Half then.']);
    });

    it('the time of an operation: the default is used, and is said to be one', async () => {
        const text = stand({ shop: 'labor 60 USD per hour   glue 16 USD per lb' });
        const labor = sheetOf('costing', await analyseText(text))!.rows('Labour');
        for (const { item, details } of labor)
            if (item !== 'All labour') expect(details).toBe('default of this tool, no source: measure your own');
    });
});

describe('an alternative', async () => {
    const project = 'alternative Stout { take Thick for Ply }';
    const analysed = await analyseText(complete({ project }));
    const [costing, quote] = [sheetOf('costing', analysed)!, sheetOf('quote', analysed)!];

    it('is what the project would cost, had the other material stood there from the start', async () => {
        const swapped = sheetOf('costing', await analyseText(complete({ project: '' }).replaceAll('of Ply {', 'of Thick {')))!;
        expect(costing.money('Alternatives').Stout).toBe(swapped.money('Price').Price);
        expect(quote.money('Alternatives', 'price').Stout).toBe(swapped.money('Price').Price);
    });

    it('says how much more it is: 50 of sheets, with overhead and margin', () => {
        expect(costing.money('Alternatives', 'amount').Stout).toBe('78.13 USD more'); // 50 x 1.25 / 0.8 = 78.125
    });

    it('of one kind cannot be taken for another', async () => {
        const wrong = await analyseText(complete({ project: 'alternative Odd { take Number20 for Ply }' }));
        expect(wrong.findings.map(({ code, message }) => `${code} ${message}`)).toContain(
            'NAM-007 `Number20` is a fastener, and `Ply` a material: one cannot be taken for the other',
        );
        const half = await analyseText(complete({ project: 'alternative Odd { take Thick }' }));
        expect(half.findings.map(({ code }) => code)).toContain('PRP-004');
    });
});

describe.each(['kiln-lane', 'reading-wall'])('%s', async (name) => {
    const path = new URL(`../../examples/${name}/${name}.case`, import.meta.url).pathname;
    const costing = sheetOf('costing', await analyseFile(path))!;

    it('says enough for a price, and its lines add up to it', () => {
        expect(costing.fact('Not complete')).toEqual([]);
        const cents = (text: unknown) => Math.round(Number.parseFloat(String(text)) * 100);
        const sum = (...headings: readonly string[]) =>
            headings
                .flatMap((heading) => costing.rows(heading))
                .reduce((total, { cost }) => total + (cost === undefined ? 0 : cents(cost)), 0);
        const price = costing.money('Price');
        expect(sum('Sheets', 'Boards', 'Fasteners', 'Glue', 'Finish')).toBe(cents(price.Materials));
        expect(sum('Labour')).toBe(cents(price.Labour));
        expect(cents(price.Materials) + cents(price.Labour) + cents(price.Overhead)).toBe(cents(price.Cost));
        expect(cents(price.Cost) + cents(price.Profit)).toBe(cents(price.Price));
        expect(cents(price.Price) + cents(price.Tax)).toBe(cents(price.Total));
    });
});
