import { expect, test } from 'vitest';
import { lineCurve, point, turnBetween } from '../../../src/geometry/index.js';
import { curveOf, refusalOf } from './outcome.js';

test('a line over a span, given from either end', () => {
    for (const [p, q] of [
        [point(100, 400), point(500, 100)],
        [point(500, 100), point(100, 400)],
    ] as const) {
        const line = curveOf(lineCurve(p, q));
        expect(line.span).toEqual({ from: 100, to: 500 });
        expect(line.length).toBe(500);
        expect(line.valueAt(300)).toEqual({ value: 250, beyond: false });
        expect(line.valueAt(99)).toEqual({ value: 400, beyond: true });
        expect(line.slopeAt(300)).toBeCloseTo(-0.75, 12);
        expect(line.pointAt(250)).toEqual(point(300, 250));
        expect(turnBetween(line.tangentAt(3), point(4, -3))).toBeCloseTo(0, 12);
        expect(line.distanceAt(340)).toBeCloseTo(300, 12);
        expect(line.abscissasAt(175)[0]).toBeCloseTo(400, 9);
        expect(line.abscissasAt(99)).toEqual([]);
        expect(line.leastRadius().radius).toBe(Infinity);
        expect(line.inflections()).toEqual([]);
        expect(line.sample(0.1)).toEqual([point(100, 400), point(500, 100)]);
    }
});

test('a level line has its depth at both ends of a level stretch', () => {
    const level = curveOf(lineCurve(point(0, 300), point(700, 300)));
    expect(level.abscissasAt(300)).toEqual([0, 700]);
    expect(level.abscissasAt(300.1)).toEqual([]);
});

test('a line that spans nothing is refused', () => {
    expect(refusalOf(lineCurve(point(5, 5), point(5, 5)))).toEqual({ reason: 'zero-chord', at: point(5, 5) });
    expect(refusalOf(lineCurve(point(5, 5), point(5, 50)))).toEqual({ reason: 'upright-chord', at: point(5, 5) });
    expect(refusalOf(lineCurve(point(5, 5), point(1e300, 50)))).toEqual({ reason: 'out-of-range' });
});
