import { expect, test } from 'vitest';
import { ElasticaSeries } from '../../../src/geometry/curves/elastica-series.js';
import { bowShapeOfEndAngle, bowShapeOfRise } from '../../../src/geometry/index.js';
import { integralsByQuadrature, stripOfEndAngle, stripPoints } from './independent-elastica.js';

const degrees = Math.PI / 180;

/**
 * Timoshenko & Gere, Theory of Elastic Stability, 2nd ed., section 2.7: a bar of half the strip's length, load at its free end.
 * Columns computed anew (the book's own entries differ from them in the last place at several angles):
 * end angle in degrees, K, E, load ratio, chord, tip deflection (twice the rise), rise, greatest curvature.
 */
const endAngleTable = [
    [20, 1.582843, 1.558887, 1.0154, 0.9697, 0.2194, 0.1097, 1.0994],
    [40, 1.620026, 1.523799, 1.0637, 0.8812, 0.4222, 0.2111, 2.2163],
    [60, 1.68575, 1.467462, 1.1517, 0.741, 0.5932, 0.2966, 3.3715],
    [80, 1.786769, 1.39314, 1.2939, 0.5594, 0.7195, 0.3597, 4.5941],
    [90, 1.854075, 1.350644, 1.3932, 0.4569, 0.7628, 0.3814, 5.2441],
    [100, 1.935581, 1.305539, 1.5184, 0.349, 0.7915, 0.3958, 5.931],
    [120, 2.156516, 1.211056, 1.8848, 0.1232, 0.8032, 0.4016, 7.4704],
    [140, 2.50455, 1.118378, 2.5423, -0.1069, 0.7504, 0.3752, 9.414],
    [160, 3.153385, 1.040114, 4.0301, -0.3403, 0.6246, 0.3123, 12.4219],
    [176, 4.742717, 1.002584, 9.1162, -0.5772, 0.4214, 0.2107, 18.9593],
] as const;

test.each(endAngleTable)(
    'bow with ends at %d degrees agrees with Timoshenko & Gere, Theory of Elastic Stability, 2nd ed., section 2.7 (computed columns)',
    (alpha, first, second, loadRatio, chord, tipDeflection, rise, curvature) => {
        const shape = bowShapeOfEndAngle(alpha * degrees);
        const within = (found: number, printed: number, places: number) => {
            expect(Math.abs(found - printed)).toBeLessThanOrEqual(0.50001 * 10 ** -places);
        };
        within(shape.integrals.first, first, 6);
        within(shape.integrals.second, second, 6);
        within(shape.loadRatio, loadRatio, 4);
        within(shape.chord, chord, 4);
        within(2 * shape.rise, tipDeflection, 4);
        within(shape.rise, rise, 4);
        within(shape.greatestCurvature, curvature, 4);
    },
);

test.each(endAngleTable)('the same columns at %d degrees agree to 1e-9 with the differential equation solved by odex', (alpha) => {
    const shape = bowShapeOfEndAngle(alpha * degrees);
    const integrals = integralsByQuadrature(alpha * degrees);
    expect(Math.abs(shape.integrals.first - integrals.first)).toBeLessThan(1e-9);
    expect(Math.abs(shape.integrals.second - integrals.second)).toBeLessThan(1e-9);
    const strip = stripOfEndAngle(alpha * degrees);
    expect(Math.abs(shape.chord - strip.chord)).toBeLessThan(1e-9);
    expect(Math.abs(shape.rise - strip.rise)).toBeLessThan(1e-9);
    expect(Math.abs(shape.loadRatio - strip.load / Math.PI ** 2)).toBeLessThan(1e-9);
    expect(Math.abs(shape.greatestCurvature - strip.load * strip.rise)).toBeLessThan(1e-8);
});

/** The same elastica solved for a given rise over chord, computed: end angle, length/chord, rise/length, least radius/chord, load ratio. */
const riseTable = [
    [0.05, 8.96782, 1.006154, 0.049694, 2.04517, 1.00307],
    [0.1, 17.74721, 1.02445, 0.097613, 1.05065, 1.0121],
    [0.125, 22.01288, 1.038011, 0.120423, 0.85733, 1.0187],
    [0.2, 34.11294, 1.09529, 0.1826, 0.58117, 1.04574],
    [0.25, 41.48722, 1.146197, 0.218113, 0.49821, 1.06872],
    [0.5, 69.48353, 1.516693, 0.329664, 0.3849, 1.2111],
] as const;

test.each(riseTable)(
    'bow of rise %d of its chord agrees with the elastica solved for that rise (Timoshenko & Gere, section 2.7, computed)',
    (ratio, alpha, length, rise, radius, loadRatio) => {
        const shape = bowShapeOfRise(ratio);
        expect(Math.abs(shape.endAngle / degrees - alpha)).toBeLessThan(6e-6);
        expect(Math.abs(1 / shape.chord - length)).toBeLessThan(1e-6);
        expect(Math.abs(shape.rise - rise)).toBeLessThan(1e-6);
        expect(Math.abs(1 / shape.greatestCurvature / shape.chord - radius)).toBeLessThan(6e-6);
        expect(Math.abs(shape.loadRatio - loadRatio)).toBeLessThan(6e-6);
        expect(shape.rise / shape.chord).toBeCloseTo(ratio, 13);
    },
);

test.each([0.1, 5, 20, 60, 89.9, 120, 160, 176])('points along a bow with ends at %d degrees agree with odex', (alpha) => {
    const series = new ElasticaSeries(bowShapeOfEndAngle(alpha * degrees));
    const count = 8;
    for (const [index, expected] of stripPoints(alpha * degrees, count).entries()) {
        const place = series.at((Math.PI / 2) * (index / count));
        expect(Math.abs(place.along - expected.along)).toBeLessThan(1e-10);
        expect(Math.abs(place.height - expected.height)).toBeLessThan(1e-10);
    }
});

test('a strip without load is straight and at its first buckling load (Euler column, pi^2 B / L^2)', () => {
    const shape = bowShapeOfRise(0);
    expect(shape).toMatchObject({ endAngle: 0, chord: 1, rise: 0, loadRatio: 1, greatestCurvature: 0 });
    const series = new ElasticaSeries(shape);
    expect(series.at(Math.PI / 4).along).toBeCloseTo(0.25, 15);
    expect(series.at(Math.PI / 4).height).toBe(0);
});
