import { describe, expect, test } from 'vitest';
import {
    arcCurve,
    bowCurve,
    type Curve,
    fairThrough,
    joined,
    lineCurve,
    parallelCurve,
    point,
    surveyOf,
} from '../../../src/geometry/index.js';
import { curveOf } from './outcome.js';

const found = (curve: Curve) => surveyOf(curve).map(({ is, point: at }) => `${is} at ${at.x.toFixed(0)}`);

describe('a line that is fair has nothing to find', () => {
    test.each<[string, Curve]>([
        ['a straight line', curveOf(lineCurve(point(0, 0), point(900, 100)))],
        ['an arc', curveOf(arcCurve(point(0, 300), point(900, 300), 80))],
        ['a bow', curveOf(bowCurve(point(0, 300), point(900, 200), -80))],
        ['a batten over three pins', curveOf(fairThrough([point(0, 300), point(450, 380), point(900, 300)]))],
        ['the parallel of a bow', curveOf(parallelCurve(curveOf(bowCurve(point(0, 300), point(900, 200), 80)), 3))],
    ])('%s', (_, curve) => {
        expect(surveyOf(curve)).toEqual([]);
    });
});

test('a corner of two lines is found with its turn', () => {
    const roof = curveOf(joined([curveOf(lineCurve(point(0, 0), point(100, 100))), curveOf(lineCurve(point(100, 100), point(200, 0)))]));
    const [corner, ...more] = surveyOf(roof);
    expect(more).toEqual([]);
    expect(corner).toMatchObject({ is: 'corner', point: point(100, 100) });
    expect(corner!.turn).toBeCloseTo(-Math.PI / 2, 12);
});

test('an arc that goes on straight along its tangent: the bend ends at once', () => {
    // a quarter turn of radius 100 from upright to level, then level
    const round = curveOf(arcCurve(point(0, 0), point(100, 100), 100 * (Math.SQRT2 - 1) * Math.SQRT1_2));
    const [jump, ...more] = surveyOf(curveOf(joined([round, curveOf(lineCurve(point(100, 100), point(300, 100)))])));
    expect(more).toEqual([]);
    expect(jump).toMatchObject({ is: 'jump', turnsBack: false, radiusAfter: Number.POSITIVE_INFINITY });
    expect(jump!.radius).toBeCloseTo(100, 6);
});

test('two arcs of one radius that turn opposite ways: one jump, and it turns back', () => {
    const [a, b] = [curveOf(arcCurve(point(0, 0), point(200, 0), 20)), curveOf(arcCurve(point(200, 0), point(400, 0), -20))];
    expect(surveyOf(curveOf(joined([a, b])))).toMatchObject([{ is: 'jump', turnsBack: true }]);
});

test('a pin that stands out of a bow by a few millimetres makes a bump with a flat on each side', () => {
    const bow = curveOf(bowCurve(point(0, 300), point(1000, 300), 130));
    const on = (x: number) => bow.valueAt(x).value;
    const places = [0, 125, 250, 375, 500, 625, 750, 875, 1000];
    expect(surveyOf(curveOf(fairThrough(places.map((x) => point(x, on(x))))))).toEqual([]);
    const kinked = curveOf(fairThrough(places.map((x) => point(x, on(x) + (x === 500 ? 4 : 0)))));
    const flats = surveyOf(kinked).filter(({ is }) => is === 'flat');
    expect(flats.map(({ point: { x } }) => Math.sign(x - 500))).toEqual(expect.arrayContaining([-1, 1]));
    // the middle pin bends most, so it is the one peak; its neighbours are what is left beside the flats
    const bend = (x: number) => Math.abs(kinked.curvatureAt(kinked.distanceAt(x)));
    for (const {
        point: { x },
    } of flats)
        expect(bend(x)).toBeLessThan(bend(500) / 2);
});

test('a line that turns from belly to hollow does so at one place', () => {
    const reverse = curveOf(fairThrough([point(0, 300), point(300, 350), point(600, 300), point(900, 250), point(1200, 300)]));
    expect(found(reverse).filter((one) => one.startsWith('inflection'))).toEqual(['inflection at 600']);
});
