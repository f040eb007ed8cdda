/** How hardwood is counted. Rules of the National Hardwood Lumber Association, from memory; the numbers are computed from them by hand. */
import { describe, expect, test } from 'vitest';
import type { Piece } from '../../../src/casework/index.js';
import { type BoardStock, boardBlank } from '../../../src/documents/boards/board-blanks.js';
import { boardFeet, clearYield, surfaceMeasure } from '../../../src/documents/boards/board-feet.js';
import { quantity, Rational, unitNamed } from '../../../src/quantity/index.js';

const inch = 25.4;
const foot = 12 * inch;

describe('board feet', () => {
    test('1in by 6in by 8ft has 4, 5/4 by 7 1/2in by 10ft has 7.8125', () => {
        expect(boardFeet({ thickness: inch, width: 6 * inch, length: 8 * foot })).toBeCloseTo(4, 9);
        expect(boardFeet({ thickness: 1.25 * inch, width: 7.5 * inch, length: 10 * foot })).toBeCloseTo(7.8125, 9);
    });

    test('what is thinner than an inch counts as an inch', () => {
        expect(boardFeet({ thickness: 0.75 * inch, width: 6 * inch, length: 8 * foot })).toBeCloseTo(4, 9);
    });

    test('the surface measure is in whole feet: 8 1/4in by 10ft is 6.875, so 7; a part of a foot of length does not count; halves go either way', () => {
        expect(surfaceMeasure(8.25 * inch, 10 * foot, false)).toBe(7);
        expect(surfaceMeasure(8.25 * inch, 10.9 * foot, false)).toBe(7);
        expect([false, true].map((up) => surfaceMeasure(6 * inch, 9 * foot, up))).toEqual([4, 5]);
    });

    test('grades have so many twelfths of clear wood, and other words none', () => {
        expect(clearYield('FAS')! * 12).toBeCloseTo(10, 9);
        expect(clearYield('No. 1 Common')! * 12).toBeCloseTo(8, 9);
        expect(clearYield('M-2')).toBeUndefined();
    });
});

describe('a piece in the board', () => {
    const stock: BoardStock = { roughThickness: 25, surfaced: 22, leastWidth: 114, greatestWidth: 220 };
    const milling = { long: 25, wide: 6, face: 1.5, boardEnd: 50, boardEdge: 3, thinRip: 6 };
    const size = (millimetres: number) => ({
        quantity: quantity.of(Rational.of(millimetres), unitNamed('mm')),
        why: { kind: 'operation' as const, about: [], inputs: [] },
    });
    const blankOf = (role: Piece['role'], length: number, width: number, thickness: number, count = 1) => {
        const rough = { length: size(length), width: size(width), thickness: size(thickness) };
        return boardBlank([{ role, rough, quantity: count } as unknown as Piece], stock, milling, 3)!;
    };

    test('a band that is no wider than the board is thick is ripped from its edge', () => {
        expect(blankOf('band', 1000, 20, 3, 4)).toMatchObject({ count: 4, width: 4.5, length: 1000, way: { is: 'onEdge' } });
    });

    test('a wider one is resawn: with 4.5 each and 3 between them three go into 22, so 4 bands take two blanks', () => {
        expect(blankOf('band', 1000, 40, 3, 4)).toMatchObject({ count: 2, width: 41.5, way: { is: 'resawn', strips: 3, sawnTo: 4.5 } });
    });

    test('a board wider than the widest is glued up of strips that every board gives: 400 of four, each 100 and 6 to joint', () => {
        expect(blankOf('solid', 800, 400, 20, 2)).toMatchObject({ count: 8, width: 106, length: 825, way: { is: 'gluedUp', strips: 4 } });
    });

    test('one that a wide board gives is one piece, and one thicker than a board is two', () => {
        expect(blankOf('solid', 800, 200, 20)).toMatchObject({ count: 1, width: 206, way: { is: 'flat' } });
        expect(blankOf('solid', 800, 60, 40)).toMatchObject({ count: 2, way: { is: 'laminated', layers: 2 } });
    });
});
