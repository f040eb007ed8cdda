import { describe, expect, test } from 'vitest';
import { arcCurve, battenPins, bowCurve, fairThrough, lineCurve, point } from '../../../src/geometry/index.js';
import { curveOf } from './outcome.js';

const arc = curveOf(arcCurve(point(0, 300), point(900, 300), 80));
const bow = curveOf(bowCurve(point(0, 300), point(900, 300), 80));
const spacings = [450, 300, 200, 150, 100, 75, 50];

describe('pins for a batten', () => {
    test('a batten through them stays within what is asked, measured on a finer grid than the search has', () => {
        for (const curve of [arc, bow]) {
            const pins = battenPins(curve, curve.span, spacings, 0.4)!;
            expect(pins.deviation).toBeLessThanOrEqual(0.4);
            const batten = curveOf(fairThrough(pins.at));
            for (let x = 0; x <= 900; x += 0.5) expect(Math.abs(batten.valueAt(x).value - curve.valueAt(x).value)).toBeLessThan(0.41);
        }
    });

    test('the ends of an arc want more pins than those of a bow: a free batten has no bend at its ends', () => {
        const [forArc, forBow] = [arc, bow].map((curve) => battenPins(curve, curve.span, spacings, 0.4)!);
        expect(forArc!.at.length).toBeGreaterThan(forBow!.at.length);
    });

    test('a straight line wants its two ends', () => {
        const line = curveOf(lineCurve(point(0, 300), point(900, 200)));
        expect(battenPins(line, line.span, [2000], 0.4)).toMatchObject({ at: [point(0, 300), point(900, 200)], spacing: 2000 });
    });

    test('where no spacing is near enough, the nearest comes back with how far it strays', () => {
        const pins = battenPins(arc, arc.span, [450, 300], 0.001)!;
        expect(pins.spacing).toBe(300);
        expect(pins.deviation).toBeGreaterThan(0.001);
    });
});
