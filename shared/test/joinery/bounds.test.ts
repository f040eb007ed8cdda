import { expect, test } from 'vitest';
import { boundsOf } from '../../src/joinery/index.js';

test('a biscuit slot: the chord of a 100 mm cutter plunged 12.3 mm is 2 √(50² - 37.7²) = 65.69 mm, plain geometry', () => {
    const { least, most } = boundsOf({
        is: 'segment',
        middle: { x: 100, y: 200, z: 300 },
        along: { x: 0, y: 1, z: 0 },
        into: { x: -1, y: 0, z: 0 },
        radius: 50,
        depth: 12.3,
        thickness: 4,
    });
    expect(most.y - least.y).toBeCloseTo(65.69, 2);
    expect([least.x, most.x]).toEqual([87.7, 100]);
    expect([least.z, most.z]).toEqual([298, 302]);
});

test('a hole of 8 mm that slants by 30 degrees reaches half of its diameter across its axis, by the slant of its ends', () => {
    const [cosine, sine] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const { least, most } = boundsOf({
        is: 'cylinder',
        start: { x: 0, y: 0, z: 0 },
        direction: { x: cosine, y: 0, z: sine },
        diameter: 8,
        length: 20,
    });
    expect(least.x).toBeCloseTo(-4 * sine, 9);
    expect(most.x).toBeCloseTo(20 * cosine + 4 * sine, 9);
    expect(most.z).toBeCloseTo(20 * sine + 4 * cosine, 9);
    expect([least.y, most.y]).toEqual([-4, 4]);
});

test('a prism along y has its corners in z and x', () => {
    const { least, most } = boundsOf({
        is: 'prism',
        along: 'y',
        over: { from: 5, to: 9 },
        section: [
            { x: 1, y: 2 },
            { x: 4, y: 2 },
            { x: 4, y: 7 },
        ],
    });
    expect(least).toEqual({ x: 2, y: 5, z: 1 });
    expect(most).toEqual({ x: 7, y: 9, z: 4 });
});
