import { describe, expect, it, test } from 'vitest';
import { amountOf, type LibraryFact, readLibrary, textOf, wordOf } from './library-reader.js';

const fasteners = readLibrary('casewright.fasteners');

function fastenerNamed(name: string): LibraryFact {
    const found = fasteners.get(name);
    if (!found) {
        throw new Error(`the library has no fastener ${name}`);
    }
    return found;
}

const screws = [...fasteners.values()].filter((fastener) => fastener.family === 'screw');

describe('wood screws', () => {
    test.each(screws)('$name has a shank of 0.060 in and 0.013 in for each number: ASME B18.6.1', (screw) => {
        const number = Number(wordOf(screw, 'size')?.slice(1));
        expect(screw.name).toBe(`WoodScrew${number}`);
        expect(amountOf(screw, 'diameter', 'in')).toBeCloseTo(0.06 + 0.013 * number, 9);
    });

    // ASME B18.6.1 in millimetres, as tables print it.
    test.each([
        [0, 1.52],
        [2, 2.18],
        [4, 2.84],
        [6, 3.51],
        [8, 4.17],
        [10, 4.83],
        [12, 5.49],
        [14, 6.15],
        [20, 8.13],
    ])('number %d is %d mm', (number, diameter) => {
        expect(amountOf(fastenerNamed(`WoodScrew${number}`), 'diameter', 'mm')).toBeCloseTo(diameter, 2);
    });

    // Rolled: ANSI/AWC NDS-2018, Appendix L, Table L3, #10 read, the others from memory. Cut: a trade table, about 2/3 of the shank.
    const roots: readonly (readonly [number, number, number | undefined])[] = [
        [6, 0.113, 0.094],
        [7, 0.122, undefined],
        [8, 0.131, 0.112],
        [9, 0.142, undefined],
        [10, 0.152, 0.13],
        [12, 0.171, 0.148],
        [14, 0.196, 0.165],
        [16, 0.209, 0.184],
        [18, 0.232, undefined],
        [20, 0.255, undefined],
        [24, 0.298, undefined],
    ];
    test.each(roots)('number %d has a root of %d in rolled, %d in cut: NDS-2018, Table L3, in part from memory', (number, rolled, cut) => {
        const screw = fastenerNamed(`WoodScrew${number}`);
        expect(amountOf(screw, 'rolledRoot', 'in')).toBe(rolled);
        expect(amountOf(screw, 'cutRoot', 'in')).toBe(cut);
        if (cut !== undefined) {
            expect(cut / amountOf(screw, 'diameter', 'in')!).toBeCloseTo(2 / 3, 1);
        }
    });

    it('has the two roots apart, and their source wherever there is one', () => {
        for (const screw of screws) {
            const rolled = amountOf(screw, 'rolledRoot', 'in');
            const cut = amountOf(screw, 'cutRoot', 'in') ?? 0;
            expect(textOf(screw, 'rootSource') !== undefined, screw.name).toBe(rolled !== undefined);
            expect(cut, screw.name).toBeLessThan(rolled ?? Number.MIN_VALUE);
        }
    });
});

describe('biscuits: trade sizes, #20 read, #0 and #10 from memory', () => {
    test.each([
        [0, 47, 15, 8],
        [10, 53, 19, 10],
        [20, 56, 23, 12.3],
    ])('#%d is %d by %d mm in a slot %d mm deep', (number, length, width, depth) => {
        const biscuit = fastenerNamed(`Biscuit${number}`);
        expect(wordOf(biscuit, 'size')).toBe(`#${number}`);
        expect(amountOf(biscuit, 'length', 'mm')).toBe(length);
        expect(amountOf(biscuit, 'width', 'mm')).toBe(width);
        expect(amountOf(biscuit, 'thickness', 'mm')).toBe(4);
        expect(amountOf(biscuit, 'depth', 'mm')).toBe(depth);
        // Two slots take the whole biscuit, and at the face they are longer than it: the chord of a cutter of 100 mm.
        expect(2 * depth).toBeGreaterThan(width);
        expect(2 * Math.sqrt(50 ** 2 - (50 - depth) ** 2)).toBeGreaterThan(length);
    });
});

describe('dowels (common practice, no source)', () => {
    test.each([
        ['Dowel6x30', 6, 30],
        ['Dowel8x30', 8, 30],
        ['Dowel8x35', 8, 35],
        ['Dowel8x40', 8, 40],
        ['Dowel10x40', 10, 40],
    ])('%s is %d by %d mm', (name, diameter, length) => {
        expect(amountOf(fastenerNamed(name), 'diameter', 'mm')).toBe(diameter);
        expect(amountOf(fastenerNamed(name), 'length', 'mm')).toBe(length);
    });

    test.each([
        ['DowelQuarter', 1 / 4],
        ['DowelFiveSixteenths', 5 / 16],
        ['DowelThreeEighths', 3 / 8],
    ])('%s is %d in thick, of any length', (name, diameter) => {
        expect(amountOf(fastenerNamed(name), 'diameter', 'in')).toBe(diameter);
        expect(amountOf(fastenerNamed(name), 'length', 'in')).toBeUndefined();
    });
});

describe('every fastener', () => {
    test.each([...fasteners.values()])('$name says what it is and where its sizes come from', (fastener) => {
        expect(fastener.kind).toBe('fastener');
        expect(fastener.family).toMatch(/^(screw|biscuit|dowel)$/);
        expect(fastener.doc).toMatch(/^[A-Z].+\.$/);
        expect(textOf(fastener, 'source')).toMatch(/^(ASME B18\.6\.1|trade size \(from memory\)|trade size; |common practice, no source)/);
    });

    it('has each trade size of a family once, so that a joint can name it', () => {
        const named = [...fasteners.values()].filter((fastener) => fastener.properties.has('size'));
        const sizes = named.map((fastener) => `${fastener.family} ${wordOf(fastener, 'size')}`);
        expect(new Set(sizes).size).toBe(sizes.length);
    });
});
