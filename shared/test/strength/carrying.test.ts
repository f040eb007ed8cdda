/** Carrying against the published lifting equation and closed forms of geometry. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
    attitudesOf,
    longestRoundCorner,
    mustBeLaid,
    recommendedWeight,
    throughDoorway,
    tiltDiagonal,
} from '../../src/strength/carrying.js';

describe('what one person may lift', () => {
    const lift = { horizontal: 25, vertical: 75, distance: 25, asymmetry: 0, frequency: 1, coupling: 1 };

    // DHHS (NIOSH) publication 94-110: RWL = LC HM VM DM AM FM CM, worked from its multipliers (a copy rounds the first two to 16.7 and 7.35)
    it.each([
        ['the best case', {}, 23],
        ['H 25, V 30, D 75, FM 0.95', { vertical: 30, distance: 75, frequency: 0.95 }, 16.632],
        [
            'H 40, V 125, D 75, A 45, FM 0.84, CM 0.95',
            { horizontal: 40, vertical: 125, distance: 75, asymmetry: 45, frequency: 0.84, coupling: 0.95 },
            7.345,
        ],
        ['H 45, V 0, D 75, CM 0.95', { horizontal: 45, vertical: 0, distance: 75, coupling: 0.95 }, 8.279],
    ])('%s', (_, more, kilograms) => {
        expect(recommendedWeight({ ...lift, ...more })).toBeCloseTo(kilograms, 3);
    });

    it.each([
        ['farther than 63 cm', { horizontal: 64 }],
        ['higher than 175 cm', { vertical: 176 }],
        ['over more than 175 cm', { distance: 176 }],
        ['turned by more than 135 degrees', { asymmetry: 136 }],
    ])('nothing %s', (_, more) => expect(recommendedWeight({ ...lift, ...more })).toBe(0));
});

// √(h² + d²), computed: in inches and in millimetres
it.each([
    [84, 16, 85.51],
    [84, 24, 87.361],
    [90, 12, 90.796],
    [2100, 400, 2137.76],
    [2400, 600, 2473.86],
    [92.952, 24, 96],
    [2365.08, 600, 2440],
])('%d high and %d deep, tilted up it reaches %d', (height, depth, reaches) => {
    expect(Math.abs(tiltDiagonal({ height, depth }) - reaches)).toBeLessThan(0.006);
});

describe('round a corner', () => {
    // least over the angle of a / sin + b / cos - w / (sin cos), computed
    it.each([
        [36, 36, 0, 101.823],
        [36, 36, 16, 69.823],
        [36, 32, 14, 68.076],
    ])('of %d and %d, %d wide: %d', (a, b, width, longest) => expect(longestRoundCorner(a, b, width)).toBeCloseTo(longest, 3));

    it('for no width it is (a^(2/3) + b^(2/3))^(3/2), and no case is turned where it is wider than a hall', () => {
        fc.assert(
            fc.property(fc.double({ min: 10, max: 100, noNaN: true }), fc.double({ min: 10, max: 100, noNaN: true }), (a, b) => {
                expect(longestRoundCorner(a, b, 0) / (a ** (2 / 3) + b ** (2 / 3)) ** 1.5).toBeCloseTo(1, 9);
                expect(longestRoundCorner(a, b, Math.min(a, b) + 0.001)).toBe(0);
            }),
        );
    });

    // by brute force: a rectangle whose one side slides along both outer walls keeps clear of the inner corner exactly up to that length
    it('is where the inner corner touches it', () => {
        const [a, b, width] = [36, 32, 14];
        const longest = longestRoundCorner(a, b, width);
        const clearance = (length: number) => {
            let least = Number.POSITIVE_INFINITY;
            for (let step = 1; step < 5000; step++) {
                const angle = ((Math.PI / 2) * step) / 5000;
                // its outer side from (length cos, 0) to (0, length sin); the inner corner at (a, b)
                least = Math.min(least, a * Math.sin(angle) + b * Math.cos(angle) - length * Math.sin(angle) * Math.cos(angle));
            }
            return least - width;
        };
        expect(clearance(longest - 0.01)).toBeGreaterThan(0);
        expect(clearance(longest + 0.01)).toBeLessThan(0);
    });
});

describe('through a doorway of 32in x 80in', () => {
    const door = { width: 32, height: 80 };
    it.each([
        [{ width: 60, depth: 24, height: 72 }, 'upright'],
        [{ width: 60, depth: 24, height: 84 }, 'on its side'],
        [{ width: 30, depth: 40, height: 84 }, 'on its back'],
        [{ width: 30, depth: 84, height: 90 }, undefined],
        [{ width: 78, depth: 24, height: 90 }, 'on its side'],
        [{ width: 40, depth: 34, height: 84 }, undefined],
    ])('%o goes %s', (piece, how) => expect(throughDoorway(piece, door)?.how).toBe(how));

    it('every attitude has the three sizes of the case', () => {
        for (const { length, width, height } of attitudesOf({ width: 3, depth: 1, height: 2 }))
            expect([length, width, height].sort((p, q) => p - q)).toEqual([1, 2, 3]);
    });

    it('a case higher than a door is laid', () => {
        expect(mustBeLaid({ height: 81 }, { doorways: [door], corners: [], ceiling: 96 })).toBe(true);
        expect(mustBeLaid({ height: 79 }, { doorways: [door], corners: [], ceiling: 96 })).toBe(false);
    });
});
