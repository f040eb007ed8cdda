/** Layouts of the sheets of whole designs: every piece once, every cut at the saw, and counts that are plain by hand. */
import { sheetLayouts } from 'casewright-shared/documents';
import { describe, expect, it } from 'vitest';
import { analyseFile } from './analysed.js';

const example = (name: string) => new URL(`../../examples/${name}/${name}.case`, import.meta.url).pathname;

async function layoutsOf(name: string) {
    const { casework } = await analyseFile(example(name));
    const document = sheetLayouts(casework, {});
    if (document?.is !== 'sheet') throw new Error('the layouts are a sheet');
    const group = (heading: string) => document.sheet.groups.find((one) => one.heading.startsWith(heading))!;
    const count = (heading: string, row: number) => {
        const cell = group(heading).rows[row]?.count;
        return cell?.is === 'count' ? cell.count : undefined;
    };
    return { sheet: document.sheet, drawings: document.pages?.drawings ?? [], group, count };
}

describe('the sheets of two display cases', async () => {
    const { group, count, drawings, sheet } = await layoutsOf('kiln-lane');

    it('take four sheets of plywood: of eight layers, 66 3/8in long and near 18in wide, two lie side by side in 48in, and none behind another in 96in', () => {
        expect(count('WalnutPly: plywood', 0)).toBe(4);
        expect(group('WalnutPly: plywood').notes).toEqual(['No layout of WalnutPly takes fewer sheets: this is proved.']);
    });

    it('take two sheets of fibreboard: the ten shelves, near 37 1/8in by 16 7/16, 11 1/8, 15 29/32, 14 7/8 and 13 7/32in, have more area than one', () => {
        const area = 2 * 37.125 * (16.4375 + 11.125 + 15.90625 + 14.875 + 13.21875);
        expect(area).toBeGreaterThan(48.5 * 96.5);
        expect(area).toBeLessThan(2 * 48.5 * 96.5);
        expect(count('Mdf: fibreboard', 0)).toBe(2);
    });

    it('draw each sheet on a page of its own, whose title says which it is', () => {
        const sheets = sheet.groups.filter(({ heading }) => /: sheets? \d/.test(heading)).map(({ heading }) => heading.replace(': ', ', '));
        expect(drawings.map(({ title }) => title)).toEqual(sheets);
        expect(sheets.length).toBeGreaterThan(5);
    });
});

describe.each(['kiln-lane', 'reading-wall', 'tarn-house', 'ferry-steps'])('the cuts of %s', async (name) => {
    const { sheet } = await layoutsOf(name);
    const materials = [...new Set(sheet.groups.map(({ heading }) => heading.split(':')[0]!))];

    it('give every piece as often as it is needed', () => {
        for (const material of materials) {
            const needed = sheet.groups
                .find(({ heading }) => heading === `${material}: pieces`)!
                .rows.map(({ count }) => (count?.is === 'count' ? count.count : 0));
            const given = needed.map(() => 0);
            for (const { heading, rows } of sheet.groups) {
                const range = heading.startsWith(`${material}: sheet`) ? /sheets? (\d+)(?: to (\d+))?/.exec(heading) : null;
                if (!range) continue;
                const alike = range[2] ? Number(range[2]) - Number(range[1]) + 1 : 1;
                for (const row of rows) {
                    for (const cell of [row.gives, row.left]) {
                        const words = cell?.is === 'text' ? cell.text : '';
                        for (const [, times, mark] of words.matchAll(/(?:(\d+) x )?piece (\d+)/g))
                            given[Number(mark) - 1]! += alike * Number(times ?? 1);
                    }
                }
            }
            expect({ material, given }).toEqual({ material, given: needed });
        }
    });

    it('cut every lettered piece after it has come off, once', () => {
        for (const { heading, rows } of sheet.groups.filter(({ heading: words }) => /: sheets? \d/.test(words))) {
            const known = new Set(['the sheet']);
            for (const row of rows) {
                const from = row.from?.is === 'text' ? row.from.text : '';
                expect({ heading, from, isKnown: known.has(from) }).toEqual({ heading, from, isKnown: true });
                for (const cell of [row.gives, row.left]) {
                    for (const letter of (cell?.is === 'text' ? cell.text : '').match(/\b[A-Z]{1,2}\b/g) ?? []) known.add(letter);
                }
            }
        }
    });
});
