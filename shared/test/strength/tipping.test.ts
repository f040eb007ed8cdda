/** Tipping against closed forms, and against statics by brute force. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anchorPull, stabilityTests, standingOf, tippingPush, type Weight } from '../../src/strength/tipping.js';

const inch = 25.4;
const pound = 0.45359237;
const poundForce = 4.4482216152605;

describe('a case of 60 lb whose weight lies 9in behind its front line', () => {
    const weights: readonly Weight[] = [{ mass: 60 * pound, at: { x: 0, y: 7 * inch, z: 20 * inch } }];
    const standing = standingOf(weights, 16 * inch);

    it('is held down by 540 lb in, so that 15 lbf at 36in tip it', () => {
        // Worked example of static tipping: 60 lb times 9 in over 36 in.
        expect(tippingPush(standing, 36 * inch) / poundForce).toBeCloseTo(15, 9);
    });

    it('tips at 24.228 degrees when its weight lies 20in high: atan(9 / 20)', () => {
        expect((standing.angle * 180) / Math.PI).toBeCloseTo(24.228, 3);
    });

    it('keeps 180 lb in against the published push of 10 lbf at 36in', () => {
        // 60 lb times 9 in less 10 lbf times 36 in (statics; levels by ASTM F2057-23, 9.2.2).
        const { force } = stabilityTests.push;
        expect((tippingPush(standing, 1) - force * 36 * inch) / poundForce / inch).toBeCloseTo(180, 9);
    });

    it('is tipped by less on a floor that leans: 60 (9 cos - 20 sin) over 36', () => {
        const lean = (2 * Math.PI) / 180;
        const expected = (60 * (9 * Math.cos(lean) - 20 * Math.sin(lean))) / 36;
        expect(tippingPush(standing, 36 * inch, lean) / poundForce).toBeCloseTo(expected, 9);
        expect(tippingPush(standing, 36 * inch, standing.angle)).toBeCloseTo(0, 9);
    });

    it('needs no anchor under 10 lbf at 36in, and 5 lbf at 36in under 20', () => {
        expect(anchorPull(standing, { force: 10 * poundForce, height: 36 * inch }, 36 * inch)).toBe(0);
        expect(anchorPull(standing, { force: 20 * poundForce, height: 36 * inch }, 36 * inch) / poundForce).toBeCloseTo(5, 9);
    });
});

/** Turns the weights forward about the front line until they no longer fall back, step by step. */
function angleByBruteForce(weights: readonly Weight[], frontLine: number): number {
    const moment = (angle: number) =>
        weights.reduce((sum, { mass, at }) => {
            const [y, z] = [at.y - frontLine, at.z];
            return sum + mass * (y * Math.cos(angle) + z * Math.sin(angle));
        }, 0);
    let [low, high] = [0, Math.PI / 2];
    for (let turn = 0; turn < 60; turn++) {
        const middle = (low + high) / 2;
        if (moment(middle) < 0) low = middle;
        else high = middle;
    }
    return low;
}

it('the angle of any heap of weights is that at which it no longer falls back', () => {
    const weight = fc.record({
        mass: fc.double({ min: 0.1, max: 100, noNaN: true }),
        at: fc.record({
            x: fc.constant(0),
            y: fc.double({ min: 0, max: 400, noNaN: true }),
            z: fc.double({ min: 1, max: 2000, noNaN: true }),
        }),
    });
    fc.assert(
        fc.property(fc.array(weight, { minLength: 1, maxLength: 12 }), (weights) => {
            expect(standingOf(weights, 450).angle).toBeCloseTo(angleByBruteForce(weights, 450), 9);
        }),
    );
});
