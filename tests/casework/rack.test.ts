/** Offcuts on the rack: layouts take them before sheets are bought, as many as there are, and alternatives take only their own. */
import { documentKinds } from 'casewright-shared/documents';
import { expect, it } from 'vitest';
import { analyseText } from './analysed.js';

/** Two sides of 10in by 30in: with a kerf of an eighth both come out of 20 1/4in by 30in. */
const stand = (rack: string, project = '') => `edition 1
use casewright.panels
material Ply like HardwoodPlywood { thickness 3/4in   actual 3/4in   price 100 USD per sheet   sheet 48in x 96in }
material Dear like Ply { price 300 USD per sheet }
${rack}
project "A stand" {
    build 1 Stand
    ${project}
}
case Stand of Ply {
    width 40in   height 30in   depth 10in
    side Left, Right
}
shop { kerf 1/8in   trim 1/4in each edge   labor 60 USD per hour   times { cut 0 minutes } }
`;

async function made(kind: 'purchase' | 'sheets' | 'costing', text: string) {
    const { casework, findings } = await analyseText(text);
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    const document = documentKinds.find((one) => one.kind === kind)!.make(casework, { locate: () => undefined as never, findings: [] });
    if (document?.is !== 'sheet') throw new Error(`the ${kind} is a sheet`);
    return document;
}

async function sheetsBought(text: string) {
    const { sheet } = await made('purchase', text);
    const rows = sheet.groups.find(({ heading }) => heading === 'Sheets')?.rows ?? [];
    return rows.map(({ details, count, buy, cost }) => [
        details?.is === 'text' ? details.text : '',
        count?.is === 'count' ? count.count : 0,
        buy?.is === 'text' ? buy.text : '',
        cost?.is === 'amount' ? cost.amount.printed.text : '',
    ]);
}

it('both sides come out of one offcut that is just wide enough, and no sheet is bought', async () => {
    const rows = await sheetsBought(stand('offcut P1 { material Ply   size 20 1/4in x 30in }'));
    expect(rows).toEqual([['offcut P1', 1, 'from the rack', '']]);
});

it('an offcut with room for one side alone leaves the other to a sheet; two of it suffice', async () => {
    const one = 'offcut P1 { material Ply   size 20in x 30in }';
    expect((await sheetsBought(stand(one))).map(([, count, buy]) => [count, buy])).toEqual([[1, '1 sheet']]);
    const both = await sheetsBought(stand(one.replace('30in', '30in   count 2')));
    expect(both).toEqual([['offcut P1', 2, 'from the rack', '']]);
});

it('an offcut keeps its grain: its length is along it, as that of a sheet', async () => {
    expect((await sheetsBought(stand('offcut P1 { material Ply   size 30in x 20 1/4in }'))).map(([, , buy]) => buy)).toEqual(['1 sheet']);
});

it('an offcut of another material, or smaller than every piece, is left where it is', async () => {
    const rack = 'offcut D1 { material Dear   size 40in x 40in }\noffcut P1 { material Ply   size 9in x 90in }';
    expect((await sheetsBought(stand(rack))).map(([, , buy]) => buy)).toEqual(['1 sheet']);
});

it('the layout says which offcut is taken', async () => {
    const { sheet } = await made('sheets', stand('offcut P1 { material Ply   size 21in x 31in }'));
    expect(sheet.groups[0]!.rows[0]!.item).toEqual({ is: 'text', text: 'offcut P1 from the rack, 21in x 31in' });
});

it('of an alternative the rack stays what it is: offcuts of the other material are not taken for it, its own are', async () => {
    const project = 'alternative Other { take Dear for Ply }';
    const price = async (rack: string) => {
        const { sheet } = await made('costing', stand(rack, project));
        const cost = sheet.groups.find(({ heading }) => heading === 'Alternatives')!.rows[0]!.cost;
        return cost?.is === 'amount' ? Number.parseFloat(cost.amount.printed.text) : undefined;
    };
    const [without, ofPly, ofDear] = [
        await price(''),
        await price('offcut P1 { material Ply   size 21in x 31in }'),
        await price('offcut D1 { material Dear   size 21in x 31in }'),
    ];
    expect(ofPly).toBe(without);
    expect(without! - ofDear!).toBe(300);
});
