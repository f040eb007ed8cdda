/** Boards of whole designs: every strip once, and amounts that are plain by hand. */
import { boardLayouts } from 'casewright-shared/documents';
import { describe, expect, it } from 'vitest';
import { analyseFile } from './analysed.js';

const example = (name: string) => new URL(`../../examples/${name}/${name}.case`, import.meta.url).pathname;

async function boardsOf(name: string) {
    const { casework } = await analyseFile(example(name));
    const document = boardLayouts(casework, {});
    if (document?.is !== 'sheet') throw new Error('the boards are a sheet');
    const { sheet, pages } = document;
    const rows = (heading: string) => sheet.groups.find((one) => one.heading.startsWith(heading))!.rows;
    return { sheet, drawings: pages?.drawings ?? [], rows };
}

const countIn = (cell: unknown) => (cell as { is: string; count: number } | undefined)?.count ?? 0;
const textIn = (cell: unknown) => (cell as { is: string; text: string } | undefined)?.text ?? '';

describe('the walnut of two display cases', async () => {
    const { rows, sheet, drawings } = await boardsOf('kiln-lane');

    it('has bands wider than the board is thick resawn, three from 7/8in: three of 3/16in and two cuts of 1/8in are 13/16in', () => {
        const bands = rows('Walnut: pieces').filter(({ item }) => textIn(item).includes('band'));
        expect(bands.map(({ way }) => textIn(way))).toEqual(Array(2).fill('resaw each into 3 of 3/16in, for 4 in all'));
        expect(bands.map((row) => countIn(row.count))).toEqual([2, 2]);
    });

    it('counts board feet by the rule of the trade: an 8ft board, 5in wide and 1in thick, has 5 x 8 / 12 of them', () => {
        for (const { item, count, volume } of rows('Walnut: lumber')) {
            const feet = Number(/(\d+)ft long/.exec(textIn(item))![1]);
            const printed = Number((volume as { amount: { printed: { text: string } } }).amount.printed.text);
            expect(printed).toBeCloseTo((countIn(count) * 5 * feet) / 12, 1);
        }
    });

    it('takes at least the area of its blanks', () => {
        const square = rows('Walnut: lumber').reduce(
            (sum, { item, count }) => sum + countIn(count) * 4.75 * (12 * Number(/(\d+)ft long/.exec(textIn(item))![1]) - 4),
            0,
        );
        const blanks = 2 * 12.9 * 1.625 + 2 * 67.28 * 1.625 + 10 * 38.1 * 1.3125 + 2 * 38.1 * 3.5;
        expect(square).toBeGreaterThan(blanks);
        expect(square).toBeLessThan(2 * blanks);
    });

    it('draws each board on a page of its own', () => {
        const boards = sheet.groups.filter(({ heading }) => /: boards? \d/.test(heading)).map(({ heading }) => heading.replace(': ', ', '));
        expect(drawings.map(({ title }) => title)).toEqual(boards);
    });
});

describe.each(['kiln-lane', 'reading-wall', 'tarn-house', 'ferry-steps'])('the boards of %s', async (name) => {
    const { sheet, rows } = await boardsOf(name);

    it('give every piece as often as it is needed', () => {
        const materials = [...new Set(sheet.groups.map(({ heading }) => heading.split(':')[0]!))];
        for (const material of materials) {
            const needed = rows(`${material}: pieces`).map((row) => countIn(row.count));
            const given = needed.map(() => 0);
            for (const { heading, rows: cuts } of sheet.groups) {
                const range = heading.startsWith(`${material}: board`) ? /boards? (\d+)(?: to (\d+))? of/.exec(heading) : null;
                if (!range) continue;
                const alike = range[2] ? Number(range[2]) - Number(range[1]) + 1 : 1;
                for (const cut of cuts) {
                    for (const cell of [cut.gives, cut.left]) {
                        for (const [, times, mark] of textIn(cell).matchAll(/(?:(\d+) x )?piece (\d+)/g))
                            given[Number(mark) - 1]! += alike * Number(times ?? 1);
                    }
                }
            }
            expect(given).toEqual(needed);
        }
    });

    it('are the same a second time', async () => {
        expect(JSON.stringify((await boardsOf(name)).sheet.groups.map(({ heading, notes }) => [heading, notes]))).toBe(
            JSON.stringify(sheet.groups.map(({ heading, notes }) => [heading, notes])),
        );
    });
});
