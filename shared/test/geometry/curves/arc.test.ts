import { describe, expect, test } from 'vitest';
import { arcCurve, arcCurveOfRadius, arcCurveThrough, type CurveOutcome, circularSegment, point } from '../../../src/geometry/index.js';
import { curveOf, refusalOf } from './outcome.js';

/** Computed from chord and rise: radius = (c^2/4 + s^2) / 2s. Bulge also as the DXF reference defines it, tan(included angle / 4). */
const segments = [
    [36, 4, 42.5, 50.115231, 37.173721, 96.941567, 0.2222222],
    [1000, 100, 1300, 45.23973, 1026.456911, 67196.9923, 0.2],
    [24, 12, 12, 180, 37.699112, 226.194671, 1],
    [48, 1.5, 192.75, 14.305337, 48.124903, 48.037479, 0.0625],
    [900, 25, 4062.5, 12.71932, 901.85071, 15009.2552, 0.0555556],
    [10, 8, 5.5625, 231.978467, 22.521384, 74.825098, 1.6],
] as const;

test.each(segments)(
    'segment of chord %d, rise %d: elementary geometry, computed; bulge by the DXF reference, LWPOLYLINE group 42',
    (chord, rise, radius, degrees, length, area, bulge) => {
        const segment = circularSegment(chord, rise);
        expect(segment.radius).toBeCloseTo(radius, 9);
        expect((segment.includedAngle * 180) / Math.PI).toBeCloseTo(degrees, 5);
        expect(segment.length).toBeCloseTo(length, 5);
        expect(Math.abs(segment.area - area)).toBeLessThan(1e-4);
        expect(segment.bulge).toBeCloseTo(bulge, 7);
        expect(Math.tan(segment.includedAngle / 4)).toBeCloseTo(segment.bulge, 12);
    },
);

test.each(segments.filter(([chord, rise]) => rise <= chord / 2))('arc over a level chord %d, rise %d', (chord, rise, radius, _, length) => {
    const arc = curveOf(arcCurve(point(0, 300), point(chord, 300), rise));
    expect(arc.radius).toBeCloseTo(radius, 9);
    expect(arc.leastRadius().radius).toBeCloseTo(radius, 9);
    expect(arc.length).toBeCloseTo(length, 5);
    expect(arc.valueAt(chord / 2).value).toBeCloseTo(300 + rise, 9);
    expect(arc.valueAt(0)).toEqual({ value: 300, beyond: false });
    expect(arc.valueAt(chord)).toEqual({ value: 300, beyond: false });
    expect(arc.curvatureAt(chord / 3)).toBeCloseTo(-1 / radius, 12);
});

test('a very flat arc keeps its places: rise 1e-5 mm on 10 m is a parabola to 1e-12', () => {
    const arc = curveOf(arcCurve(point(0, 0), point(10_000, 0), 1e-5));
    for (const share of [0.1, 0.25, 0.5, 0.9]) {
        expect(Math.abs(arc.valueAt(10_000 * share).value - 4e-5 * share * (1 - share))).toBeLessThan(1e-12);
    }
});

test('no rise is a straight line', () => {
    const arc = curveOf(arcCurve(point(0, 0), point(100, 50), 0));
    expect(arc.radius).toBe(Infinity);
    expect(arc.valueAt(50).value).toBeCloseTo(25, 12);
    expect(arc.leastRadius().radius).toBe(Infinity);
    expect(arc.length).toBeCloseTo(Math.hypot(100, 50), 12);
});

describe('the three ways to an arc make one arc', () => {
    const from = point(0, 444.5);
    const to = point(1676.4, 304.8);
    const byRise = curveOf(arcCurve(from, to, 28.575));
    const ways: readonly (readonly [string, CurveOutcome])[] = [
        ['by radius', arcCurveOfRadius(from, to, byRise.radius)],
        ['through three points', arcCurveThrough(to, from, byRise.pointAt(500))],
        ['with the ends exchanged', arcCurve(to, from, 28.575)],
    ];
    test.each(ways)('%s', (_, outcome) => {
        const arc = curveOf(outcome);
        expect(arc.length).toBeCloseTo(byRise.length, 7);
        for (const x of [0, 1, 700, 1600, 1676.4]) {
            expect(arc.valueAt(x).value).toBeCloseTo(byRise.valueAt(x).value, 7);
        }
    });

    test('a negative rise or radius bellies the other way', () => {
        const hollow = curveOf(arcCurve(from, to, -28.575));
        expect(hollow.curvatureAt(10)).toBeCloseTo(-byRise.curvatureAt(10), 15);
        const hollowByRadius = curveOf(arcCurveOfRadius(from, to, -byRise.radius));
        expect(hollowByRadius.valueAt(800).value).toBeCloseTo(hollow.valueAt(800).value, 7);
    });
});

test('a half round is upright at its ends and still has its values', () => {
    const arc = curveOf(arcCurve(point(0, 0), point(24, 0), 12));
    expect(arc.slopeAt(0)).toBe(Infinity);
    expect(arc.slopeAt(24)).toBe(-Infinity);
    expect(arc.slopeAt(12)).toBeCloseTo(0, 12);
    expect(arc.valueAt(12 - 12 * Math.SQRT1_2).value).toBeCloseTo(12 * Math.SQRT1_2, 12);
    expect(arc.abscissasAt(6)).toHaveLength(2);
});

test('impossible arcs are refused with the numbers that mend them', () => {
    expect(refusalOf(arcCurve(point(0, 0), point(24, 0), 12.01))).toMatchObject({
        reason: 'rise-too-great',
        greatest: expect.closeTo(12, 9),
    });
    const leaning = refusalOf(arcCurve(point(0, 0), point(100, 100), 30));
    expect(leaning).toMatchObject({ reason: 'rise-too-great' });
    expect(leaning.reason === 'rise-too-great' && leaning.greatest).toBeCloseTo((Math.SQRT2 / 2) * 100 * Math.tan(Math.PI / 8), 9);
    expect(refusalOf(arcCurveOfRadius(point(0, 0), point(24, 0), 11))).toMatchObject({
        reason: 'radius-too-small',
        least: expect.closeTo(12, 9),
    });
    expect(refusalOf(arcCurveOfRadius(point(0, 0), point(24, 0), 0))).toMatchObject({ reason: 'radius-too-small', radius: 0 });
    expect(refusalOf(arcCurve(point(3, 4), point(3, 4), 1))).toMatchObject({ reason: 'zero-chord' });
    expect(refusalOf(arcCurve(point(3, 4), point(3, 40), 1))).toMatchObject({ reason: 'upright-chord' });
    expect(refusalOf(arcCurve(point(3, 4), point(30, Number.NaN), 1))).toMatchObject({ reason: 'out-of-range' });
    expect(refusalOf(arcCurve(point(3, 4), point(30, 4), Infinity))).toMatchObject({ reason: 'out-of-range' });
    expect(refusalOf(arcCurveThrough(point(0, 0), point(1, 50), point(2, 0)))).toMatchObject({ reason: 'rise-too-great' });
    expect(refusalOf(arcCurveThrough(point(0, 0), point(0, 5), point(2, 0)))).toMatchObject({ reason: 'upright-chord' });
});
