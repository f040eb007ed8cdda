import { expect, test } from 'vitest';
import { offsetTable } from '../../src/documents/offset-table.js';
import { templates } from '../../src/documents/templates.js';
import { offsetsFrom, templateShapes } from '../../src/drawing/index.js';
import { distanceToRun, parallelCurve } from '../../src/geometry/index.js';
import { bookcase } from '../documents/sample-casework.js';
import { bowedBookcase, sweep } from './bowed-bookcase.js';

const inch = 25.4;
const [shape] = templateShapes(bowedBookcase);

test('one template serves both hands, and says so', () => {
    expect(templateShapes(bowedBookcase).map(({ parts }) => parts.map(({ name }) => name))).toEqual([['Left', 'Right']]);
    const made = templates(bowedBookcase, { units: 'in' });
    const words = made?.is === 'drawings' ? made.drawings.flatMap(({ texts }) => texts.map(({ text }) => text)) : [];
    expect(words).toContain('this face: inner face of Left (left hand); outer face of Right (right hand); turn over for the other');
});

test('a design with straight parts has no templates and no offsets', () => {
    expect(templates(bookcase, {})).toBeUndefined();
    expect(offsetTable(bookcase, {})).toBeUndefined();
});

test('offsets stand at every step from either end, the last at the other end', () => {
    const spacing = 5 * inch;
    const places = (end: 'low' | 'high') => offsetsFrom(end, shape!, spacing).map(({ along }) => Number((along / inch).toFixed(9)));
    expect(places('low').slice(0, 3)).toEqual([0, 5, 10]);
    expect(places('low').at(-1)).toBe(66);
    expect(places('high').slice(0, 2)).toEqual([66, 61]);
    expect(places('high').at(-1)).toBe(0);
    expect(offsetsFrom('low', shape!, spacing)[3]?.finished).toBe(sweep.valueAt(15 * inch).value);
});

test('where the top band takes all of the core, no core depth is given', () => {
    expect(offsetsFrom('low', shape!, 2 * inch).at(-1)?.core).toBeUndefined();
});

test('the drawn core line keeps the thickness of the band from the finished one, square to it', () => {
    const made = templates(bowedBookcase, { units: 'in' });
    const lines = made?.is === 'drawings' ? (made.drawings[0]?.lines ?? []) : [];
    const [finished, core] = (['finished', 'core'] as const).map((role) => lines.find((line) => line.role === role)!.runs);
    const inner = parallelCurve(sweep, inch / 8);
    if (!inner.ok) throw new Error(inner.refusal.reason);
    for (let step = 1; step < 100; step++) {
        const place = (runs: typeof core, curve: typeof sweep | typeof inner.curve, along: number) => {
            const at = { x: curve.valueAt(along).value, y: along };
            return Math.min(...runs!.map((run) => distanceToRun(at, run)));
        };
        expect(place(core, inner.curve, step * 16)).toBeLessThanOrEqual(0.001);
        expect(place(finished, inner.curve, step * 16)).toBeCloseTo(inch / 8, 2);
    }
});
