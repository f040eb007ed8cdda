import { describe, expect, test } from 'vitest';
import { combDrawing, type Drawing, extentOf } from '../../src/drawing/index.js';
import { arcCurve, bowCurve, type Curve, distance, fairThrough, joined, lineCurve, type Point, point } from '../../src/geometry/index.js';
import { curveOf } from '../geometry/curves/outcome.js';

const drawn = (curve: Curve, over: 'height' | 'width' = 'height'): Drawing =>
    combDrawing(curve, {
        title: 'Line',
        over,
        spacing: 150,
        say: (millimetres) => `${millimetres.toFixed(0)}mm`,
        sayRadius: (millimetres) => (millimetres > 1e8 ? 'straight' : `${millimetres.toFixed(0)}mm`),
        sayFeature: ({ is }) => is,
        notes: ['a note'],
    });
const teethOf = ({ lines }: Drawing) => lines.filter(({ role }) => role === 'comb').map(({ runs }) => runs[0]!);
const length = ({ from, to }: { from: Point; to: Point }) => distance(from, to);
const said = ({ texts }: Drawing) => texts.map(({ text }) => text);

const bow = curveOf(bowCurve(point(0, 400), point(1600, 300), 60));

describe('a curvature comb', () => {
    test('the teeth of an arc are all as long as the longest', () => {
        for (const tooth of teethOf(drawn(curveOf(arcCurve(point(0, 300), point(900, 300), 80))))) expect(length(tooth)).toBeCloseTo(40, 9);
    });

    test('those of a bow go with its height over the string, as its bend does (elastica: bending moment is pull times arm)', () => {
        const teeth = teethOf(drawn(bow));
        const scale = 1 / Number(/1 : ([0-9.]+)\./.exec(said(drawn(bow)).join(' '))![1]!);
        for (const { from, to } of teeth) {
            const x = from.y / scale;
            const y = 300 + from.x / scale;
            const height = ((y - (400 - (100 * x) / 1600)) * 1600) / Math.hypot(1600, 100);
            expect(distance(from, to) / 40).toBeCloseTo(height / 60, 1);
        }
    });

    test('they stand out over a belly and in over a hollow, square to the line', () => {
        for (const over of ['height', 'width'] as const) {
            for (const rise of [80, -80]) {
                const drawing = drawn(curveOf(arcCurve(point(0, 300), point(900, 300), rise)), over);
                const teeth = teethOf(drawing);
                const middle = teeth[Math.floor(teeth.length / 2)]!;
                // front to the right on a line over the height, towards the viewer on one over the width
                const out = over === 'height' ? middle.to.x - middle.from.x : middle.from.y - middle.to.y;
                expect(Math.sign(out), `${over} ${rise}`).toBe(Math.sign(rise));
            }
        }
    });

    test('a straight line has no teeth', () => {
        expect(teethOf(drawn(curveOf(lineCurve(point(0, 300), point(900, 200)))))).toEqual([]);
    });

    test('where the bend changes at once the tips step', () => {
        const [a, b] = [curveOf(arcCurve(point(0, 0), point(200, 0), 20)), curveOf(arcCurve(point(200, 0), point(400, 0), -20))];
        const drawing = drawn(curveOf(joined([a, b])));
        const tips = drawing.lines.filter(({ role }) => role === 'envelope');
        expect(tips).toHaveLength(2);
        expect(distance(tips[0]!.runs.at(-1)!.to, tips[1]!.runs[0]!.from)).toBeGreaterThan(70);
        expect(said(drawing)).toContain('jump 200mm');
    });

    test('a pin out of line is named where it stands', () => {
        const places = [0, 125, 250, 375, 500, 625, 750, 875, 1000];
        const base = curveOf(bowCurve(point(0, 300), point(1000, 300), 130));
        const curve = curveOf(fairThrough(places.map((x) => point(x, base.valueAt(x).value + (x === 375 ? 3 : 0)))));
        expect(said(drawn(curve)).filter((text) => text.startsWith('flat')).length).toBeGreaterThan(0);
    });

    test('it fits letter paper and A4 with what a printer leaves', () => {
        for (const [curve, over] of [
            [bow, 'height'],
            [curveOf(arcCurve(point(0, 300), point(900, 300), 200)), 'width'],
            [curveOf(arcCurve(point(0, 300), point(900, 300), -200)), 'width'],
        ] as const) {
            const { least, most } = extentOf(drawn(curve, over));
            const sides = [most.x - least.x, most.y - least.y].sort((a, b) => a - b);
            expect(sides[0]).toBeLessThan(210 - 20);
            expect(sides[1]).toBeLessThan(279 - 20);
        }
    });
});
