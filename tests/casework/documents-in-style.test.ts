/** What a shop reads in the lists: in the units of the document, each thing once, and with the shop's own figures. */
import { documentKinds, type Row, type Sheet } from 'casewright-shared/documents';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const options = { locate: () => ({ file: '', line: 1, column: 1 }), findings: [] };

const design = (project: string, shop = '') => `
use casewright.species
use casewright.panels
material Birch like BirchPlywood { thickness 18mm  actual 18mm }
material Oak : lumber { species WhiteOak  rough 27mm  planed 20mm }
edging Lip { band 3mm of Oak }
joint Housed { dado 6mm deep  glue }
joint Backed { screw 3.5mm x 25mm spacing 150mm }
${shop}
project "Low cabinet" { ${project}  build Low }
case Low of Birch {
    width 1200mm
    height 760mm
    depth Bow
    curve Bow of depth over width {
        from 380mm at left
        to 380mm at right
        arc out 60mm
    }
    top { edge left, right, front at 20mm past case  edge left, right, front Lip }
    side Left, Right layers 2 { edge front Lip }
    back of Birch
    bottom at 90mm { edge front Lip }
    join bottom to every side with Housed
    join top to every side with { dowel 8mm count 3  glue }
    join back to every side with Backed
}
`;

async function sheetOf(kind: string, text: string, units?: 'in' | 'mm'): Promise<Sheet> {
    const { casework } = await analyseText(text);
    expect(casework.problems).toEqual([]);
    const made = documentKinds.find((one) => one.kind === kind)!.make(casework, { ...options, ...(units ? { units } : {}) });
    if (made?.is !== 'sheet') throw new Error('there is no sheet');
    return made.sheet;
}

const textIn = (row: Row | undefined, key: string) => (row?.[key]?.is === 'text' ? row[key].text : '');
const rowsOf = ({ groups }: Sheet) => groups.flatMap(({ rows }) => rows);
const rowOf = (sheet: Sheet, parts: string, piece = '') =>
    rowsOf(sheet).find((row) => textIn(row, 'parts') === parts && textIn(row, 'piece').startsWith(piece));
const sizeOf = (row: Row | undefined, key: string) => {
    const cell = row?.[key];
    return cell?.is === 'size' ? [cell.length, cell.width].map((amount) => amount?.printed.text) : [];
};

describe('lists in the units of the document', () => {
    it.each(['in', 'mm'] as const)('in %s no note of a piece is in the other units', async (units) => {
        const sheet = await sheetOf('cut-list', design('units mm'), units);
        const notes = rowsOf(sheet).map((row) => textIn(row, 'notes'));
        const bevel = notes.find((note) => note.includes('bevelled'));
        expect(bevel).toMatch(units === 'mm' ? /380mm( deep)? at the outer face/ : /14 31\/32in shy( deep)? at the outer face/);
        expect(
            notes
                .filter((note) => note.includes('outside'))
                .every((note) => note.includes(units === 'mm' ? '20mm outside' : '25/32in full outside')),
        ).toBe(true);
        for (const note of notes) expect(note).not.toMatch(units === 'mm' ? /\din\b/ : /\dmm/);
    });

    it('a screw by its diameter keeps it, and a joint that is written in place is said to be', async () => {
        const items = rowsOf(await sheetOf('materials', design('units mm')));
        expect(items.map((row) => textIn(row, 'item'))).toContain('screw 3.5mm x 25mm');
        const dowels = items.find((row) => textIn(row, 'item') === 'dowel 8mm');
        expect(textIn(dowels, 'use')).toBe('joint written in place (dowel and glue)');
    });
});

describe('what a shop that says nothing adds', () => {
    it('is round in millimetres where the project is in them, and in inches otherwise', async () => {
        const metric = (await analyseText(design('units mm'))).casework.shop;
        const shown = ({ oversize, bandLong, bandOver, bentLong, kerf }: typeof metric) =>
            [oversize, bandLong, bandOver, bentLong, kerf].map(
                ({ quantity }) => Number(quantity.value.toString()) || quantity.value.toString(),
            );
        expect(shown(metric)).toEqual([6, 12, '3/2', 25, '16/5']);
        const inches = (await analyseText(design(''))).casework.shop;
        expect(shown(inches)).toEqual(['127/20', '127/10', '127/80', '127/5', '127/40']);
    });
});

describe('each thing once', () => {
    it('the edges of a laminated part are done after the glue-up, and said with its first layer', async () => {
        const sheet = await sheetOf('cut-list', design('units mm'));
        const [first, second] = ['layer 1', 'layer 2'].map((layer) => rowOf(sheet, 'Left', layer));
        expect(textIn(first, 'edges')).toBe('after the glue-up: front: band 3mm of Oak');
        expect(textIn(first, 'notes')).toContain('front edge bevelled');
        expect(textIn(second, 'edges')).toBe('');
        expect(textIn(second, 'notes')).toBe('glue up 2 layers, then trim them as one; better face in');
    });

    it('a strip that covers two others covers their ends', async () => {
        const sheet = await sheetOf('cut-list', design('units mm'));
        expect(textIn(rowOf(sheet, 'top', 'front'), 'notes')).toContain('glue on after the left and right strips, and cover their ends');
    });

    it('the offsets of a symmetric part stand once, and hold from both sides', async () => {
        const headings = (await sheetOf('offsets', design('units mm'))).groups.map(({ heading }) => heading);
        expect(headings.filter((heading) => heading?.startsWith('Bow: bottom'))).toEqual([
            'Bow: bottom: 1 in all, from the left, and the same from the right',
        ]);
    });
});

it('a band that is bent goes into a dado with its board, as a straight one does', async () => {
    const bent = rowOf(await sheetOf('cut-list', design('units mm')), 'bottom', 'front');
    const straight = rowOf(await sheetOf('cut-list', design('units mm').replace('arc out 60mm', 'line')), 'bottom', 'front');
    const inside = 1200 - 4 * 18 + 2 * 6;
    expect(sizeOf(straight, 'finished')[0]).toBe(String(inside));
    // An arc of 1200mm that rises by 60mm has a radius of (600^2 + 60^2) / (2 x 60) = 3030mm: the way along it between the ends.
    const way = 2 * 3030 * Math.asin(inside / 2 / 3030);
    expect(sizeOf(bent, 'finished')[0]).toBe(String(Math.round(way * 10) / 10));
});

it.each([
    ['count 4', 'the shop has 4: '],
    ['count 500', 'the shop has 500: enough for one panel at a time.'],
])('cauls: the clamps that they take against those of the shop, %s', async (count, said) => {
    const shop = `shop { caul { height 70mm  width 45mm  species HardMaple  spacing 200mm }  clamp Bar { ${count} } }`;
    const notes = (await sheetOf('cauls', design('units mm', shop))).groups.flatMap((group) => group.notes);
    const compared = notes.find((note) => note.includes('clamps for a panel'));
    expect(compared).toContain(said);
    const pairs = Number(/^(\d+) pairs/.exec(notes.find((note) => note.includes(' pairs, '))!)![1]);
    expect(compared).toContain(`They take ${2 * pairs} clamps for a panel`);
    if (count === 'count 4') expect(compared).toContain(`${2 * pairs - 4} too few`);
});
