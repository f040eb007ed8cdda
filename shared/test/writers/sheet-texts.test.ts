/** Which texts a printed sheet has, and that each stands whole on one. */
import { expect, test } from 'vitest';
import { templates } from '../../src/documents/templates.js';
import type { DrawnText } from '../../src/drawing/index.js';
import { papers } from '../../src/writers/index.js';
import { boxOf, type LengthOf, textsOnSheets } from '../../src/writers/sheet-texts.js';
import { tile, tileName } from '../../src/writers/tiles.js';
import { bowedBookcase } from '../drawing/bowed-bookcase.js';

/** Wider than any typeface of the writers sets them. */
const lengthOf: LengthOf = ({ text, height }) => [...text].length * height * 0.85;

const made = templates(bowedBookcase, { units: 'in' });
if (made?.is !== 'drawings') throw new Error('no templates');
const [drawing] = made.drawings;
const figures = drawing!.texts.filter(({ isLegend, names }) => !isLegend && !names);

test.each(Object.keys(papers) as (keyof typeof papers)[])(
    'on %s each figure stands whole on one sheet, and no text crosses a cut',
    (paper) => {
        const tiling = tile(drawing!, paper, 'in');
        const sheets = [...textsOnSheets(drawing!.texts, tiling, lengthOf)];
        for (const [{ cut }, texts] of sheets) {
            for (const text of texts) {
                const { least, most } = boxOf(text, lengthOf);
                expect(least.x, text.text).toBeGreaterThan(cut.least.x);
                expect(least.y, text.text).toBeGreaterThan(cut.least.y);
                expect(most.x, text.text).toBeLessThan(cut.most.x);
                expect(most.y, text.text).toBeLessThan(cut.most.y);
            }
        }
        const printed = sheets.flatMap(([, texts]) => texts).filter(({ names }) => !names);
        expect(figures.length).toBeGreaterThan(30);
        expect(printed.map(({ text }) => text).sort()).toEqual(figures.map(({ text }) => text).sort());
    },
);

// Of the shelves of this bookcase one meets its sides: two faces.
test('every sheet that the line of a shelf crosses has its name and height', () => {
    const tiling = tile(drawing!, 'letter', 'in');
    const labels = drawing!.texts.filter(({ names }) => names !== undefined);
    expect(labels.some(({ text }) => /, upper face [\d /]+in/.test(text))).toBe(true);
    expect(labels.some(({ text }) => /, lower face [\d /]+in/.test(text))).toBe(true);
    let crossed = 0;
    for (const [{ cut }, texts] of textsOnSheets(drawing!.texts, tiling, lengthOf)) {
        for (const { text, names } of labels) {
            const { from, to } = names!;
            const isCrossed =
                from.y > cut.least.y && from.y < cut.most.y && from.x < cut.most.x - 5 && to.x > cut.least.x + 5 && from.y === to.y;
            if (!isCrossed) continue;
            crossed++;
            expect(texts.map((one) => one.text)).toContain(text);
        }
    }
    expect(crossed).toBe(2);
});

test('a text that has no room outside of the line stands inside of it, and one far from what is printed is left out', () => {
    const cut = { least: { x: 0, y: 0 }, most: { x: 100, y: 100 } };
    const one = { column: 3, row: 2, cut, shown: cut, isBlank: false };
    const tiling = { paper: { name: 'letter' as const, ...papers.letter }, corner: { x: 0, y: 0 }, columns: 1, rows: 1, tiles: [one] };
    const text: DrawnText = { text: 'at 26in: 17in', at: { x: 90, y: 50 }, anchor: 'start', height: 3, turned: false };
    const inside = { at: { x: 70, y: 50 }, anchor: 'end' } as const;
    const far = { ...text, text: 'far', at: { x: 300, y: 50 } };
    expect(textsOnSheets([{ ...text, elsewhere: [inside] }, far], tiling, lengthOf).get(one)).toMatchObject([
        { ...inside, text: text.text },
    ]);
    // no place has room: it is moved, and not cut off
    expect(boxOf(textsOnSheets([text], tiling, lengthOf).get(one)![0]!, lengthOf).most.x).toBeCloseTo(97.5, 9);
    // no letter that makes it a size of paper: A4, B4
    expect(tileName(one)).toBe('2-4');
});
