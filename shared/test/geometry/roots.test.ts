import { expect, test } from 'vitest';
import { integral, unitPoints } from '../../src/geometry/quadrature.js';
import { risingRoot } from '../../src/geometry/roots.js';

test.each([
    ['from a good guess', 0.7],
    ['from a guess outside the bracket', 40],
    ['from no number', Number.NaN],
])('the cosine meets the diagonal at 0.7390851332151607 %s (from memory)', (_, guess) => {
    const root = risingRoot(
        (t) => t - Math.cos(t),
        (t) => 1 + Math.sin(t),
        0,
        2,
        guess,
    );
    expect(root).toBeCloseTo(0.7390851332151607, 15);
});

test('a slope that says nothing, or misleads, only costs halvings', () => {
    const value = (t: number) => Math.cbrt(t - 0.3);
    for (const slope of [() => Number.NaN, () => 0, () => Infinity, () => -1, () => 1e-9]) {
        expect(risingRoot(value, slope, -1, 1, 0.9)).toBeCloseTo(0.3, 12);
    }
});

test('a root at an end of the bracket is that end, and without a change of sign the nearer end comes back', () => {
    expect(
        risingRoot(
            (t) => t,
            () => 1,
            0,
            1,
            0.5,
        ),
    ).toBeCloseTo(0, 15);
    expect(
        risingRoot(
            (t) => t - 1,
            () => 1,
            0,
            1,
            0.5,
        ),
    ).toBeCloseTo(1, 15);
    expect(
        risingRoot(
            (t) => t - 5,
            () => 1,
            0,
            1,
            0.5,
        ),
    ).toBeCloseTo(1, 12);
    expect(
        risingRoot(
            (t) => t + 5,
            () => 1,
            0,
            1,
            0.5,
        ),
    ).toBeCloseTo(0, 12);
});

test('the quadrature is exact for polynomials of the 23rd degree', () => {
    expect(integral((t) => 24 * t ** 23, 0, 1)).toBeCloseTo(1, 13);
    expect(integral((t) => Math.sin(t), 0, Math.PI, 3)).toBeCloseTo(2, 14);
    expect(unitPoints(3).reduce((sum, { weight, place }) => sum + weight * Math.exp(place), 0)).toBeCloseTo(Math.E - 1, 14);
});
