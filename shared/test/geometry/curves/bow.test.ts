import { describe, expect, test, vi } from 'vitest';
import { ElasticaSeries } from '../../../src/geometry/curves/elastica-series.js';
import { arcCurve, bowCurve, bowShapeOfEndAngle, point } from '../../../src/geometry/index.js';
import { stripPoints } from './independent-elastica.js';
import { curveOf, refusalOf } from './outcome.js';

const inch = 25.4;
const foot = point(0, 17.5 * inch);
const head = point(66 * inch, 12 * inch);

describe('a bow on a tilted string, 17 1/2 in at the floor to 12 in at 66 in, out 1 1/8 in', () => {
    const bow = curveOf(bowCurve(foot, head, 1.125 * inch));
    const tilt = Math.atan2(head.y - foot.y, head.x - foot.x);

    test('passes its ends exactly and its rise at mid-string', () => {
        expect(bow.valueAt(0)).toEqual({ value: foot.y, beyond: false });
        expect(bow.valueAt(66 * inch)).toEqual({ value: head.y, beyond: false });
        const middle = bow.pointAt(bow.length / 2);
        expect(middle.x).toBeCloseTo(33 * inch - 1.125 * inch * Math.sin(tilt), 9);
        expect(middle.y).toBeCloseTo(14.75 * inch + 1.125 * inch * Math.cos(tilt), 9);
    });

    test('agrees with the elastica solved by odex within 1e-9 of the string', () => {
        const { length, endAngle } = bow.strip;
        for (const { along, height } of stripPoints(endAngle, 6)) {
            const x = 33 * inch + length * (along * Math.cos(tilt) - height * Math.sin(tilt));
            const y = 14.75 * inch + length * (along * Math.sin(tilt) + height * Math.cos(tilt));
            expect(Math.abs(bow.valueAt(x).value - y)).toBeLessThan(1e-9 * bow.strip.stringLength);
        }
    });

    test('the strip is as long as the line and bends most at its middle', () => {
        expect(bow.strip.length).toBe(bow.length);
        expect(bow.strip.stringLength).toBeCloseTo(Math.hypot(66, 5.5) * inch, 9);
        const least = bow.leastRadius();
        expect(least.distance).toBeCloseTo(bow.length / 2, 9);
        expect(least.radius).toBeCloseTo(1 / bow.strip.greatestCurvature, 6);
        expect(bow.curvatureAt(0)).toBeCloseTo(0, 15);
        expect(bow.curvatureAt(bow.length)).toBeCloseTo(0, 15);
    });

    test('a place that is no number has a depth that is no number, and ends the search', () => {
        expect(bow.valueAt(Number.NaN).value).toBeNaN();
    });

    test('past its ends it holds its last value and says so', () => {
        expect(bow.valueAt(-0.001)).toEqual({ value: foot.y, beyond: true });
        expect(bow.valueAt(66.5 * inch)).toEqual({ value: head.y, beyond: true });
        expect(bow.valueAt(66 * inch + 1e-9)).toEqual({ value: head.y, beyond: false });
        expect(bow.slopeAt(67 * inch)).toBe(0);
    });

    test('slope, angle and curvature are the derivatives of the points', () => {
        for (const x of [1, 300, 838, 1200, 1675]) {
            const step = 1e-3;
            expect(bow.slopeAt(x)).toBeCloseTo((bow.valueAt(x + step).value - bow.valueAt(x - step).value) / (2 * step), 8);
            const distance = bow.distanceAt(x);
            expect(bow.curvatureAt(distance)).toBeCloseTo((bow.angleAt(distance + 0.1) - bow.angleAt(distance - 0.1)) / 0.2, 10);
            expect(bow.curvatureRateAt(distance)).toBeCloseTo((bow.curvatureAt(distance + 0.5) - bow.curvatureAt(distance - 0.5)) / 1, 12);
        }
    });

    test('in is the mirror image of out about the string', () => {
        const hollow = curveOf(bowCurve(head, foot, -1.125 * inch));
        const middle = hollow.pointAt(hollow.length / 2);
        expect(middle.y).toBeCloseTo(14.75 * inch - 1.125 * inch * Math.cos(tilt), 9);
        expect(hollow.strip).toEqual(bow.strip);
    });
});

test.each([0.01, 0.02, 0.05])('bow and arc of rise %d differ by about 0.04 of the rise at the quarter points', (ratio) => {
    // Limit for small rises: sin(pi/4) of the sine against 3/4 of the parabola, 0.0429 of the rise.
    const bow = curveOf(bowCurve(point(0, 0), point(1000, 0), 1000 * ratio));
    const arc = curveOf(arcCurve(point(0, 0), point(1000, 0), 1000 * ratio));
    for (const quarter of [250, 750]) {
        const share = (arc.valueAt(quarter).value - bow.valueAt(quarter).value) / (1000 * ratio);
        expect(share).toBeGreaterThan(0.04);
        expect(share).toBeLessThan(0.046);
    }
});

test.each([
    [0.05, 0.81],
    [0.25, 0.797],
])(
    'a bow of rise %d of its string bends to %d of the radius of the arc of that rise (computed from the two closed forms)',
    (ratio, share) => {
        const bow = curveOf(bowCurve(point(0, 0), point(1000, 0), 1000 * ratio));
        const arc = curveOf(arcCurve(point(0, 0), point(1000, 0), 1000 * ratio));
        expect(Math.abs(bow.leastRadius().radius / arc.radius - share)).toBeLessThan(5e-4);
    },
);

test('a bow without rise is its string', () => {
    const bow = curveOf(bowCurve(point(0, 10), point(100, 60), 0));
    expect(bow.length).toBeCloseTo(Math.hypot(100, 50), 12);
    expect(bow.valueAt(30).value).toBeCloseTo(25, 12);
    expect(bow.leastRadius().radius).toBe(Infinity);
    expect(bow.strip.loadRatio).toBe(1);
});

test('the steepest bow over a level string stands upright at its ends', () => {
    const { rise, chord } = bowShapeOfEndAngle(Math.PI / 2);
    const bow = curveOf(bowCurve(point(0, 0), point(100, 0), (100 * rise) / chord));
    expect(bow.angleAt(0)).toBeCloseTo(Math.PI / 2, 9);
    for (let x = 0; x <= 100; x += 0.125) {
        expect(bow.valueAt(x).value).toBeGreaterThanOrEqual(0);
        expect(bow.pointAt(bow.distanceAt(x)).x).toBeCloseTo(x, 9);
    }
});

test('impossible bows are refused with the numbers that mend them', () => {
    expect(refusalOf(bowCurve(foot, foot, 10))).toMatchObject({ reason: 'zero-chord' });
    expect(refusalOf(bowCurve(point(0, 0), point(0, 10), 1))).toMatchObject({ reason: 'upright-chord' });
    expect(refusalOf(bowCurve(foot, head, Number.NaN))).toMatchObject({ reason: 'out-of-range' });
    const refusal = refusalOf(bowCurve(point(0, 0), point(100, 0), 90));
    // Rise over chord at an end angle of 90 degrees: 0.3814 / 0.4569 (Timoshenko & Gere, section 2.7, computed columns).
    expect(refusal).toMatchObject({ reason: 'rise-too-great', rise: 90 });
    expect(refusal.reason === 'rise-too-great' && refusal.greatest).toBeCloseTo(83.46, 1);
});

test.each([0.02, 0.1, 0.3])(
    '1,000 shelf depths on a bow of rise %d of its string take at most three evaluations of the series each',
    (ratio) => {
        const bow = curveOf(bowCurve(point(0, 444.5), point(1676.4, 304.8), 1676.4 * ratio));
        const evaluations = vi.spyOn(ElasticaSeries.prototype, 'at');
        for (let index = 0; index < 1000; index++) {
            bow.valueAt(1.6764 * (index + 0.5));
        }
        expect(evaluations.mock.calls.length).toBeLessThanOrEqual(3000);
        evaluations.mockRestore();
    },
);
