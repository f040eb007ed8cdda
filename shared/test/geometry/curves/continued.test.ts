import { describe, expect, test } from 'vitest';
import {
    arcCurve,
    bowCurve,
    type Curve,
    continuedCurve,
    fairThrough,
    isJoined,
    joined,
    lineCurve,
    point,
} from '../../../src/geometry/index.js';
import { curveOf } from './outcome.js';

/** Rise 100 over 1000: a radius of 1300 (facts of the circle: (c^2/4 + s^2) / 2s), about (500, -800). */
const arc = curveOf(arcCurve(point(0, 400), point(1000, 400), 100));
const onCircle = (x: number) => -800 + Math.sqrt(1300 ** 2 - (x - 500) ** 2);
const bow = curveOf(bowCurve(point(0, 300), point(1000, 300), 40));
const fair = curveOf(fairThrough([point(0, 400), point(300, 430), point(700, 380), point(1000, 300)]));

describe('a curve that goes on past its ends', () => {
    test('is itself where it reaches far enough', () => {
        for (const curve of [arc, bow, fair]) expect(continuedCurve(curve, { from: 200, to: 800 }).span).toEqual(curve.span);
        for (const curve of [bow, fair]) expect(continuedCurve(curve, { from: 200, to: 800 })).toBe(curve);
    });

    test('a circle goes on on its circle, at either end', () => {
        const onward = continuedCurve(arc, { from: -200, to: 1150 });
        expect(onward.kind).toBe('arc');
        expect(onward.span).toEqual({ from: -200, to: 1150 });
        for (const x of [-200, -50, 0, 500, 1000, 1150]) expect(onward.valueAt(x).value).toBeCloseTo(onCircle(x), 9);
    });

    test('a hollow circle too', () => {
        const hollow = curveOf(arcCurve(point(0, 400), point(1000, 400), -100));
        const onward = continuedCurve(hollow, { from: -100, to: 1000 });
        // the same circle in the mirror of the line between its ends
        expect(onward.valueAt(-100).value).toBeCloseTo(800 - onCircle(-100), 9);
    });

    test.each<readonly [string, Curve]>([
        ['a bow', bow],
        ['a batten', fair],
    ])('%s goes straight on, with one tangent and no curvature at its end', (_, curve) => {
        const onward = continuedCurve(curve, { from: -80, to: 1120 });
        expect(onward.valueAt(-80).value).toBeCloseTo(curve.start.y - 80 * curve.slopeAt(0), 9);
        expect(onward.valueAt(1120).value).toBeCloseTo(curve.end.y + 120 * Math.tan(curve.angleAt(curve.length)), 9);
        expect(isJoined(onward) && onward.joints.map(({ continuity }) => continuity)).toEqual(['curvature', 'curvature']);
        for (const x of [0, 400, 1000]) expect(onward.valueAt(x).value).toBeCloseTo(curve.valueAt(x).value, 9);
    });

    test('of joined pieces only the outer ends go on', () => {
        const line = curveOf(lineCurve(point(1000, 400), point(1400, 250)));
        const onward = continuedCurve(curveOf(joined([arc, line])), { from: -50, to: 1500 });
        expect(onward.span).toEqual({ from: -50, to: 1500 });
        expect(onward.valueAt(-50).value).toBeCloseTo(onCircle(-50), 9);
        expect(onward.valueAt(1000).value).toBeCloseTo(400, 9);
        expect(onward.valueAt(1500).value).toBeCloseTo(250 - (150 / 400) * 100, 9);
    });

    test('a circle that would turn upright goes straight on instead', () => {
        const steep = curveOf(arcCurve(point(0, 0), point(1000, 0), 480));
        const radius = (500 ** 2 + 480 ** 2) / 960;
        expect(radius).toBeLessThan(501);
        const onward = continuedCurve(steep, { from: 0, to: 1010 });
        expect(onward.span.to).toBe(1010);
        expect(onward.valueAt(1010).value).toBeCloseTo(10 * Math.tan(steep.angleAt(steep.length)), 6);
    });
});
