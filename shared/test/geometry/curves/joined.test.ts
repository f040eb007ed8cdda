import { describe, expect, test } from 'vitest';
import { arcCurve, bowCurve, isJoined, joined, lineCurve, point } from '../../../src/geometry/index.js';
import { curveOf, refusalOf } from './outcome.js';

const level = curveOf(lineCurve(point(0, 400), point(800, 400)));
/** Tangent to the level line at its start: a quarter of the way round its chord's turn. */
const tangentArc = curveOf(arcCurve(point(800, 400), point(1200, 320), curveRise(400, 80)));
const slope = curveOf(lineCurve(point(800, 400), point(1600, 300)));

/** Rise of the arc that leaves level and drops by `drop` over `run`: its half angle equals the tilt of its chord. */
function curveRise(run: number, drop: number): number {
    return (Math.hypot(run, drop) / 2) * Math.tan(Math.atan2(drop, run) / 2);
}

describe('two lines at an angle', () => {
    const kinked = curveOf(joined([slope, level]));

    test('come in order of the abscissa, with the kink known', () => {
        expect(kinked.pieces).toEqual([level, slope]);
        expect(kinked.joints).toHaveLength(1);
        expect(kinked.joints[0]).toMatchObject({ distance: 800, point: point(800, 400), gap: 0, continuity: 'position' });
        expect(kinked.joints[0]?.turn).toBeCloseTo(-Math.atan2(100, 800), 12);
        expect(kinked.breaks).toEqual([800]);
    });

    test('evaluate over both pieces', () => {
        expect(kinked.valueAt(400).value).toBe(400);
        expect(kinked.valueAt(1200).value).toBeCloseTo(350, 10);
        expect(kinked.slopeAt(799)).toBe(0);
        expect(kinked.slopeAt(800)).toBeCloseTo(-0.125, 12);
        expect(kinked.length).toBeCloseTo(800 + Math.hypot(800, 100), 10);
        expect(kinked.pointAt(kinked.distanceAt(1000)).y).toBeCloseTo(375, 10);
        expect(kinked.abscissasAt(350)[0]).toBeCloseTo(1200, 9);
        expect(kinked.abscissasAt(400)).toEqual([0, 800]);
        expect(kinked.inflections()).toEqual([]);
        expect(kinked.leastRadius().radius).toBe(Infinity);
        expect(kinked.sample(0.1)).toEqual([point(0, 400), point(800, 400), point(1600, 300)]);
    });
});

test('a line into the arc tangent to it goes on in tangent, not in curvature', () => {
    const [joint] = curveOf(joined([level, tangentArc])).joints;
    expect(joint?.continuity).toBe('tangent');
    expect(joint?.curvatureJump).toBeCloseTo(tangentArc.curvatureAt(0), 12);
});

test('a line into the bow tangent to it goes on in curvature: a bow has none at its ends', () => {
    const bow = curveOf(bowCurve(point(0, 300), point(1000, 300), 40));
    const away = curveOf(lineCurve(point(1000, 300), point(1300, 300 + 300 * bow.slopeAt(1000))));
    expect(curveOf(joined([bow, away])).joints[0]?.continuity).toBe('curvature');
});

test('hollow, straight, then bellied: the inflection is where the hollow ends; the least radius is of the tighter piece', () => {
    const hollow = curveOf(arcCurve(point(0, 400), point(500, 380), -30));
    const straight = curveOf(lineCurve(point(500, 380), point(700, 390)));
    const bellied = curveOf(bowCurve(point(700, 390), point(1500, 350), 20));
    const whole = curveOf(joined([hollow, straight, bellied]));
    expect(whole.inflections()).toEqual([{ distance: hollow.length, point: point(500, 380) }]);
    expect(whole.leastRadius().radius).toBeCloseTo(hollow.radius, 9);
    expect(whole.joints.map(({ continuity }) => continuity)).toEqual(['position', 'position']);
});

test('a joined curve among the pieces counts as its pieces', () => {
    const inner = curveOf(joined([level, slope]));
    const outer = curveOf(joined([inner, curveOf(lineCurve(point(1600, 300), point(1700, 300)))]));
    expect(outer.pieces).toHaveLength(3);
    expect(isJoined(outer)).toBe(true);
    expect(isJoined(level)).toBe(false);
});

test('pieces that do not meet are refused, by the place of the later one in what was given', () => {
    const apart = curveOf(lineCurve(point(800, 398), point(900, 398)));
    expect(refusalOf(joined([apart, level]))).toEqual({ reason: 'pieces-apart', index: 0, gap: 2, at: point(800, 400) });
    expect(refusalOf(joined([level, curveOf(lineCurve(point(700, 400), point(900, 400)))]))).toMatchObject({
        reason: 'pieces-apart',
        gap: 100,
    });
    expect(refusalOf(joined([]))).toEqual({ reason: 'no-pieces' });
});
