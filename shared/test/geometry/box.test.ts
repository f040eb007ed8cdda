import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
    type Box,
    boxAround,
    boxBetween,
    boxContact,
    boxContains,
    boxContainsPoint,
    boxOverlap,
    boxOverlapVolume,
    boxSize,
    boxVolume,
    mirrorBox,
    moveBox,
    tolerance,
} from '../../src/geometry/index.js';

// The same figures in every run: a failure is one for everybody.
fc.configureGlobal({ seed: 1 });

const at = (x: number, y: number, z: number) => ({ x, y, z });
const side = boxBetween(at(0, 0, 0), at(18, 300, 700));
const shelf = boxBetween(at(18, 0, 100), at(582, 290, 118));

test('a shelf against a side touches it across x and overlaps nothing', () => {
    expect(boxContact(side, shelf)).toBe('x');
    expect(boxContact(shelf, side)).toBe('x');
    expect(boxOverlap(side, shelf)).toBeUndefined();
    expect(boxOverlapVolume(side, shelf)).toBe(0);
});

test('a shelf 6 mm into a side overlaps it by the dado', () => {
    const entered = boxBetween(at(12, 0, 100), at(588, 290, 118));
    expect(boxOverlap(side, entered)).toEqual({ least: at(12, 0, 100), most: at(18, 290, 118) });
    expect(boxOverlapVolume(side, entered)).toBe(6 * 290 * 18);
    expect(boxContact(side, entered)).toBeUndefined();
});

test('a gap or an overlap under the fit tolerance still only touches', () => {
    for (const error of [-0.4, 0.4]) {
        const near = moveBox(shelf, at(error * tolerance.fit, 0, 0));
        expect(boxContact(side, near)).toBe('x');
        expect(boxOverlap(side, near)).toBeUndefined();
    }
    expect(boxContact(side, moveBox(shelf, at(2 * tolerance.fit, 0, 0)))).toBeUndefined();
    expect(boxOverlap(side, moveBox(shelf, at(-2 * tolerance.fit, 0, 0)))).toBeDefined();
});

test('boxes that share an edge only do not touch', () => {
    expect(boxContact(side, boxBetween(at(18, 300, 0), at(30, 400, 700)))).toBeUndefined();
});

test('sizes, volume and containment', () => {
    expect(boxSize(shelf)).toEqual(at(564, 290, 18));
    expect(boxVolume(shelf)).toBe(564 * 290 * 18);
    const whole = boxAround([side, shelf]) as Box;
    expect(whole).toEqual({ least: at(0, 0, 0), most: at(582, 300, 700) });
    expect(boxContains(whole, shelf)).toBe(true);
    expect(boxContains(side, shelf)).toBe(false);
    expect(boxContainsPoint(side, at(18.005, 0, 0))).toBe(true);
    expect(boxContainsPoint(side, at(18.05, 0, 0))).toBe(false);
    expect(boxAround([])).toBeUndefined();
});

const anyBox = fc
    .array(fc.double({ min: -3000, max: 3000, noNaN: true }), { minLength: 6, maxLength: 6 })
    .map(([a, b, c, d, e, f]) => boxBetween(at(a as number, b as number, c as number), at(d as number, e as number, f as number)));

test('the overlap of two boxes lies in both, and its volume is never more than either has', () => {
    fc.assert(
        fc.property(anyBox, anyBox, (a, b) => {
            const overlap = boxOverlap(a, b);
            if (overlap !== undefined) {
                expect(boxContains(a, overlap, 0) && boxContains(b, overlap, 0)).toBe(true);
                expect(boxVolume(overlap)).toBeLessThanOrEqual(Math.min(boxVolume(a), boxVolume(b)));
            }
            expect(boxOverlapVolume(a, b)).toBe(boxOverlapVolume(b, a));
        }),
    );
});

test('a box mirrored twice is itself, and a mirror keeps its sizes', () => {
    const mirrored = mirrorBox(shelf, 'x', 300);
    expect(mirrored).toEqual({ least: at(18, 0, 100), most: at(582, 290, 118) });
    expect(mirrorBox(mirrorBox(side, 'y', 40), 'y', 40)).toEqual(side);
    expect(boxSize(mirrorBox(side, 'z', 40))).toEqual(boxSize(side));
});
