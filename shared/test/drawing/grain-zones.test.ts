import { describe, expect, test } from 'vitest';
import { grainZones } from '../../src/drawing/grain-zones.js';
import { arcCurve, bowCurve, lineCurve, point } from '../../src/geometry/index.js';
import { curveOf } from '../geometry/curves/outcome.js';

const falling = curveOf(lineCurve(point(0, 400), point(900, 300)));
const rising = curveOf(lineCurve(point(0, 300), point(900, 400)));

// Common practice, no source: cut down from the wide wood to the narrow, with the fibres; an ordinary feed goes up along a front.
describe('grain zones', () => {
    test('along the grain the way is downhill, and an ordinary feed tears out where the wood grows wider', () => {
        expect(grainZones(falling, 0, 900, 'along')).toEqual([{ along: { from: 0, to: 900 }, way: 'up', tearsOut: false }]);
        expect(grainZones(rising, 0, 900, 'along')).toEqual([{ along: { from: 0, to: 900 }, way: 'down', tearsOut: true }]);
    });

    test('across the grain it is the other way: the fibres stand to the line', () => {
        expect(grainZones(falling, 0, 900, 'across')).toMatchObject([{ way: 'down', tearsOut: true }]);
        expect(grainZones(rising, 0, 900, 'across')).toMatchObject([{ way: 'up', tearsOut: false }]);
    });

    test('a belly has two zones that part at its top, to within what is no slope at all', () => {
        const zones = grainZones(curveOf(arcCurve(point(0, 300), point(900, 300), 80)), 0, 900, 'along');
        expect(zones.map(({ way }) => way)).toEqual(['down', 'up']);
        // a slope of one degree lies 22.7mm from the top of this circle (R = 1305.6mm)
        expect(Math.abs(zones[0]!.along.to - 450)).toBeLessThan(23 + 900 / 256);
        expect(zones[1]!.along.from).toBe(zones[0]!.along.to);
    });

    test('zones are counted from the low end of the part, which may stand up on the curve', () => {
        const zones = grainZones(curveOf(bowCurve(point(0, 300), point(1000, 300), 80)), 200, 600, 'along');
        expect(zones).toHaveLength(2);
        expect(zones[0]!.along.from).toBe(0);
        expect(zones[0]!.along.to).toBeGreaterThan(260);
        expect(zones[0]!.along.to).toBeLessThan(340);
        expect(zones[1]!.along.to).toBe(600);
    });

    test('a line that lies along its grain may be cut either way', () => {
        expect(grainZones(curveOf(lineCurve(point(0, 300), point(900, 300))), 0, 900, 'along')).toMatchObject([{ tearsOut: false }]);
    });
});
