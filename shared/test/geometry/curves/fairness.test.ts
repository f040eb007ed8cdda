import { expect, test } from 'vitest';
import { arcCurve, bowCurve, fairnessOf, lineCurve, point } from '../../../src/geometry/index.js';
import { integralsByQuadrature } from './independent-elastica.js';
import { curveOf } from './outcome.js';

test.each([0.2, 1, 4000])('a full circle of radius %d: length times bending energy is (2 pi)^2, variation 0 (closed form)', (radius) => {
    const circle = { length: 2 * Math.PI * radius, breaks: [], curvatureAt: () => 1 / radius, curvatureRateAt: () => 0 };
    const fairness = fairnessOf(circle);
    expect(fairness.scaledBendingEnergy).toBeCloseTo(39.478418, 6);
    expect(fairness.scaledBendingEnergy).toBeCloseTo((2 * Math.PI) ** 2, 10);
    expect(fairness.curvatureVariation).toBe(0);
});

test('a quarter round of radius 1: bending energy pi / 2 (closed form)', () => {
    const quarter = curveOf(arcCurve(point(0, 0), point(Math.SQRT2, 0), 1 - Math.SQRT1_2));
    expect(fairnessOf(quarter).bendingEnergy).toBeCloseTo(Math.PI / 2, 12);
    expect(fairnessOf(quarter).curvatureVariation).toBe(0);
});

test('an Euler spiral, curvature a s over length L: a^2 L^3 / 3 and a^2 L (closed form)', () => {
    const [a, length] = [0.7, 3];
    const fairness = fairnessOf({ length, breaks: [1.1], curvatureAt: (s) => a * s, curvatureRateAt: () => a });
    expect(fairness.bendingEnergy).toBeCloseTo((a * a * length ** 3) / 3, 12);
    expect(fairness.curvatureVariation).toBeCloseTo(a * a * length, 12);
});

test("a bow: bending energy 16 K (E - k'^2 K) / L, from the integral of cn^2 (Abramowitz & Stegun, 16.26, from memory)", () => {
    const bow = curveOf(bowCurve(point(0, 0), point(1000, 0), 200));
    const { first, second } = integralsByQuadrature(bow.strip.endAngle);
    const complement = Math.cos(bow.strip.endAngle / 2) ** 2;
    expect(fairnessOf(bow).scaledBendingEnergy).toBeCloseTo(16 * first * (second - complement * first), 8);
});

test('a line bends nowhere', () => {
    expect(fairnessOf(curveOf(lineCurve(point(0, 0), point(3, 4))))).toEqual({
        bendingEnergy: 0,
        curvatureVariation: 0,
        scaledBendingEnergy: 0,
        scaledCurvatureVariation: 0,
    });
});
