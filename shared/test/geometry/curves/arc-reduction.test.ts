import { expect, test } from 'vitest';
import {
    arcCurve,
    bowCurve,
    distanceToRun,
    fairThrough,
    joined,
    lineCurve,
    point,
    reduceToArcs,
    runLength,
} from '../../../src/geometry/index.js';
import { curveOf } from './outcome.js';

const bow = curveOf(bowCurve(point(0, 444.5), point(1676.4, 304.8), 28.575));

test.each([1, 0.1, 0.01, 0.001, 0.0001])(
    'a bow within %d mm: runs meet, tangents go on, and the deviation told is the deviation',
    (within) => {
        const { runs, deviation } = reduceToArcs(bow, within);
        expect(runs[0]?.from).toEqual(bow.start);
        expect(runs.at(-1)?.to).toEqual(bow.end);
        for (const [index, run] of runs.slice(1).entries()) {
            const before = runs[index] as typeof run;
            expect(run.from).toEqual(before.to);
            const tilt = ({ from, to }: typeof run) => Math.atan2(to.y - from.y, to.x - from.x);
            expect(tilt(before) + 2 * Math.atan(before.bulge)).toBeCloseTo(tilt(run) - 2 * Math.atan(run.bulge), 8);
        }
        let found = 0;
        for (let index = 0; index <= 5000; index++) {
            const place = bow.pointAt((bow.length * index) / 5000);
            found = Math.max(found, Math.min(...runs.map((run) => distanceToRun(place, run))));
        }
        expect(found).toBeLessThanOrEqual(within);
        expect(deviation).toBeLessThanOrEqual(within);
        expect(found / deviation).toBeGreaterThan(0.9);
        expect(found / deviation).toBeLessThan(1.05);
        expect(Math.abs(runs.reduce((sum, run) => sum + runLength(run), 0) - bow.length)).toBeLessThan(within);
    },
);

test('tighter tolerances take more runs, by their cube root', () => {
    const counts = [1, 0.001].map((within) => reduceToArcs(bow, within).runs.length) as [number, number];
    expect(counts[1]).toBeLessThan(15 * counts[0]);
});

test('an arc is one run and a line is one run, both exact', () => {
    const arc = curveOf(arcCurve(point(0, 0), point(36, 0), 4));
    const reduced = reduceToArcs(arc, 0.01);
    expect(reduced.runs).toHaveLength(1);
    // DXF reference, LWPOLYLINE group 42: bulge tan(included angle / 4), negative clockwise; 2 rise / chord = 0.2222222.
    expect(reduced.runs[0]?.bulge).toBeCloseTo(-2 / 9, 9);
    expect(reduced.deviation).toBeLessThan(1e-9);
    const line = curveOf(lineCurve(point(0, 0), point(36, 4)));
    expect(reduceToArcs(line, 0.01).runs).toEqual([{ from: point(0, 0), to: point(36, 4), bulge: 0 }]);
    expect(reduceToArcs(line, 0.01).deviation).toBeLessThan(1e-12);
});

test('kinks and inflections stay where they are', () => {
    const fair = curveOf(fairThrough([point(0, 400), point(300, 430), point(600, 380), point(900, 410)]));
    const kinked = curveOf(joined([fair, curveOf(lineCurve(fair.end, point(1100, 300)))]));
    const { runs, deviation } = reduceToArcs(kinked, 0.02);
    expect(deviation).toBeLessThanOrEqual(0.02);
    expect(runs.some(({ from }) => from.x === 900 && from.y === 410)).toBe(true);
    for (const { distance } of fair.inflections()) {
        const at = fair.pointAt(distance);
        expect(Math.min(...runs.map(({ from }) => Math.hypot(from.x - at.x, from.y - at.y)))).toBeLessThan(1e-6);
    }
});

test('the distance to a run is to its circle between its ends and to an end beyond them', () => {
    const halfRound = { from: point(-5, 0), to: point(5, 0), bulge: -1 };
    expect(distanceToRun(point(0, 7), halfRound)).toBeCloseTo(2, 12);
    expect(distanceToRun(point(0, 1), halfRound)).toBeCloseTo(4, 12);
    expect(distanceToRun(point(5, -3), halfRound)).toBeCloseTo(3, 12);
    expect(distanceToRun(point(3, 4), { from: point(0, 0), to: point(10, 0), bulge: 0 })).toBeCloseTo(4, 12);
});
