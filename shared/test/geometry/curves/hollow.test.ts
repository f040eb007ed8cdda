import { expect, test } from 'vitest';
import { arcCurve, bowCurve, innerCorners, joined, leftInCorner, lineCurve, point, tightestHollow } from '../../../src/geometry/index.js';
import { curveOf } from './outcome.js';

test('a belly has no hollow, nor has a line', () => {
    expect(tightestHollow(curveOf(arcCurve(point(0, 300), point(900, 300), 80)))).toBeUndefined();
    expect(tightestHollow(curveOf(lineCurve(point(0, 300), point(900, 200))))).toBeUndefined();
});

test('the hollow of an arc is its circle: chord 36, sagitta 4, R = 42.5 (geometry of the circle)', () => {
    expect(tightestHollow(curveOf(arcCurve(point(0, 30), point(36, 30), -4)))?.radius).toBeCloseTo(42.5, 9);
});

test('that of a bow is at its middle: rise a tenth of its chord, 1.05065 chords (elastica, computed column)', () => {
    const hollow = tightestHollow(curveOf(bowCurve(point(0, 300), point(1000, 300), -100)))!;
    expect(hollow.radius / 1000).toBeCloseTo(1.05065, 5);
    expect(hollow.point.x).toBeCloseTo(500, 6);
});

test('of several pieces the tightest hollow counts, whatever bellies bend more', () => {
    const [belly, hollow] = [
        curveOf(arcCurve(point(0, 300), point(200, 300), 60)),
        curveOf(arcCurve(point(200, 300), point(800, 300), -40)),
    ];
    // seen from the front the corner between them opens: the belly goes down into it and the hollow goes on down
    const found = tightestHollow(curveOf(joined([belly, hollow])), { from: 250, to: 800 })!;
    expect(found.radius).toBeCloseTo((300 ** 2 + 40 ** 2) / 80, 6);
});

test('an inner corner opens to the front; one that stands out of it is none', () => {
    const [down, up] = [curveOf(lineCurve(point(0, 300), point(100, 250))), curveOf(lineCurve(point(100, 250), point(200, 300)))];
    expect(innerCorners(curveOf(joined([down, up])))).toMatchObject([{ point: point(100, 250) }]);
    expect(innerCorners(curveOf(joined([down, up])), { from: 0, to: 90 })).toEqual([]);
    const [rise, fall] = [curveOf(lineCurve(point(0, 250), point(100, 300))), curveOf(lineCurve(point(100, 300), point(200, 250)))];
    expect(innerCorners(curveOf(joined([rise, fall])))).toEqual([]);
});

test('in a right angle a cutter leaves its radius times the root of two less one (geometry)', () => {
    expect(leftInCorner(Math.PI / 2, 10)).toBeCloseTo(10 * (Math.SQRT2 - 1), 12);
    expect(leftInCorner(0, 10)).toBe(0);
});

test('only what lies between the abscissas asked for', () => {
    const bow = curveOf(bowCurve(point(0, 300), point(1000, 300), -100));
    const low = tightestHollow(bow, { from: 0, to: 200 })!;
    expect(low.point.x).toBeCloseTo(200, 3);
    expect(low.radius).toBeGreaterThan(1060);
});
