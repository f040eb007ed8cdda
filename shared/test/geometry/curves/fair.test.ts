import { describe, expect, test } from 'vitest';
import { spiralOverChord, spiralPoint } from '../../../src/geometry/curves/euler-spiral.js';
import { fairThrough, type Point, point } from '../../../src/geometry/index.js';
import { integrate } from './independent-elastica.js';
import { curveOf, refusalOf } from './outcome.js';

describe('Euler spirals', () => {
    test('Fresnel integrals C(1) = 0.7798934003768228, S(1) = 0.4382591473903548 (Abramowitz & Stegun, Table 7.7, from memory)', () => {
        const spiral = { start: point(0, 0), startAngle: 0, startCurvature: 0, curvatureRate: Math.PI, length: 1 };
        const end = spiralPoint(spiral, 1);
        expect(end.x).toBeCloseTo(0.7798934003768228, 14);
        expect(end.y).toBeCloseTo(0.4382591473903548, 14);
    });

    test.each([
        [0, 0],
        [0.3, -0.3],
        [0.3, 0.3],
        [-1.2, 0.1],
        [1.9, 1.9],
        [-2, 2],
        [2, -1.5],
    ])('over a chord, ends at %d and %d: odex finds the same end and direction', (start, end) => {
        const { length, startCurvature, endCurvature } = spiralOverChord(start, end);
        const rate = (endCurvature - startCurvature) / length;
        const [x, y, angle] = integrate(
            (along, [, , turned]) => [Math.cos(turned as number), Math.sin(turned as number), startCurvature + rate * along],
            [0, 0, start],
            length,
        );
        expect(x).toBeCloseTo(1, 10);
        expect(y).toBeCloseTo(0, 10);
        expect(angle).toBeCloseTo(end, 10);
    });
});

const pins = [point(0, 444.5), point(300, 470), point(700, 440), point(900, 400), point(1676.4, 304.8)];

describe('a batten through five pins', () => {
    const fair = curveOf(fairThrough(pins));

    test('passes every pin', () => {
        for (const pin of pins) {
            expect(fair.valueAt(pin.x).value).toBeCloseTo(pin.y, 9);
        }
    });

    test('position, tangent and curvature go on at every pin; curvature is nothing at the free ends', () => {
        const hair = 1e-7;
        for (const distance of fair.breaks) {
            expect(Math.abs(fair.curvatureAt(distance - hair) - fair.curvatureAt(distance))).toBeLessThan(1e-11);
            expect(Math.abs(fair.angleAt(distance - hair) - fair.angleAt(distance))).toBeLessThan(1e-9);
            const [before, at] = [fair.pointAt(distance - hair), fair.pointAt(distance)];
            expect(Math.hypot(at.x - before.x, at.y - before.y)).toBeLessThan(2 * hair);
        }
        expect(fair.curvatureAt(0)).toBeCloseTo(0, 12);
        expect(fair.curvatureAt(fair.length)).toBeCloseTo(0, 12);
    });

    test('odex follows its curvature to the same points', () => {
        for (const share of [0.2, 0.45, 0.8, 1]) {
            const to = share * fair.length;
            let state: readonly number[] = [fair.start.x, fair.start.y, fair.angleAt(0)];
            const stops = [0, ...fair.breaks.filter((distance) => distance < to), to];
            for (const [index, stop] of stops.slice(1).entries()) {
                const from = stops[index] as number;
                const middle = (from + stop) / 2;
                const curvature = (along: number) => fair.curvatureAt(middle) + fair.curvatureRateAt(middle) * (along - middle);
                state = integrate(
                    (along, [, , angle]) => [Math.cos(angle as number), Math.sin(angle as number), curvature(along)],
                    state,
                    stop,
                    from,
                );
            }
            const at = fair.pointAt(to);
            expect(Math.hypot(at.x - (state[0] as number), at.y - (state[1] as number))).toBeLessThan(1e-7);
        }
    });

    test('points given from the far end give the same line', () => {
        const back = curveOf(fairThrough(pins.toReversed()));
        for (const x of [100, 800, 1500]) {
            expect(back.valueAt(x).value).toBeCloseTo(fair.valueAt(x).value, 9);
        }
    });

    test('it turns with its pins, as a batten does and a cubic through depths does not', () => {
        const turn = (p: Point, angle: number) =>
            point(p.x * Math.cos(angle) - p.y * Math.sin(angle), p.x * Math.sin(angle) + p.y * Math.cos(angle));
        const turned = curveOf(fairThrough(pins.map((pin) => turn(pin, 0.6))));
        expect(turned.length).toBeCloseTo(fair.length, 7);
        for (const distance of [100, 700, 1400]) {
            const expected = turn(fair.pointAt(distance), 0.6);
            const found = turned.pointAt(distance);
            expect(Math.hypot(found.x - expected.x, found.y - expected.y)).toBeLessThan(1e-6);
        }
    });

    test('its bumps and hollows are where its curvature changes sign', () => {
        expect(fair.inflections()).toHaveLength(1);
        for (const { distance } of fair.inflections()) {
            expect(fair.curvatureAt(distance - 1) * fair.curvatureAt(distance + 1)).toBeLessThan(0);
        }
    });
});

test('a shallow batten over three pins is the centre-loaded simple beam, y = h (3 x/L - 4 (x/L)^3) (beam tables, from memory)', () => {
    const [span, height] = [1000, 1];
    const fair = curveOf(fairThrough([point(0, 0), point(span / 2, height), point(span, 0)]));
    for (const share of [0.1, 0.25, 0.4]) {
        expect(Math.abs(fair.valueAt(share * span).value - height * (3 * share - 4 * share ** 3))).toBeLessThan(2e-5 * height);
    }
});

test('pins in a line, or two of them, give the line', () => {
    const line = curveOf(fairThrough([point(0, 10), point(30, 40), point(31, 41), point(100, 110)]));
    expect(line.length).toBeCloseTo(100 * Math.SQRT2, 10);
    expect(line.inflections()).toEqual([]);
    expect(line.valueAt(77).value).toBeCloseTo(87, 10);
    expect(curveOf(fairThrough([point(0, 0), point(3, 4)])).length).toBeCloseTo(5, 12);
});

test('points that no batten can take are refused', () => {
    expect(refusalOf(fairThrough([point(0, 0)]))).toEqual({ reason: 'too-few-points', found: 1, needed: 2 });
    expect(refusalOf(fairThrough([point(0, 0), point(10, 0), point(10, 5), point(20, 0)]))).toMatchObject({
        reason: 'points-out-of-order',
        index: 2,
    });
    expect(refusalOf(fairThrough([point(0, 0), point(10, Number.NaN)]))).toEqual({ reason: 'out-of-range' });
    const steep = [point(0, 0), point(100, 0), point(105, 300), point(110, 0), point(200, 0)];
    expect(['folds-back', 'no-fair-line']).toContain(refusalOf(fairThrough(steep)).reason);
    expect(refusalOf(fairThrough([point(0, 0), point(100, 5), point(130, 200), point(230, 205)]))).toMatchObject({ reason: 'folds-back' });
});
