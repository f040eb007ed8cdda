import { expect, test } from 'vitest';
import type { Casework, Layer } from '../../src/casework/index.js';
import { offsetTable } from '../../src/documents/offset-table.js';
import { templates } from '../../src/documents/templates.js';
import { extentOf, offsetsFrom, templateShapes } from '../../src/drawing/index.js';
import { bowCurve, distanceToRun, parallelCurve, point } from '../../src/geometry/index.js';
import { size, span } from '../documents/casework-builder.js';
import { bookcase } from '../documents/sample-casework.js';
import { curveOf } from '../geometry/curves/outcome.js';
import { bowedBookcase, sweep } from './bowed-bookcase.js';

const inch = 25.4;
const upright: Layer = {
    material: undefined,
    thickness: undefined,
    grain: 'length',
    size: size(undefined, undefined, undefined),
    box: undefined,
    span,
};
const [shape] = templateShapes(bowedBookcase);

test('one template serves both hands, and says so', () => {
    expect(templateShapes(bowedBookcase).map(({ parts }) => parts.map(({ name }) => name))).toEqual([['Left', 'Right']]);
    const made = templates(bowedBookcase, { units: 'in' });
    const words = made?.is === 'drawings' ? made.drawings.flatMap(({ texts }) => texts.map(({ text }) => text)) : [];
    const said = words.map((line) => line.trim()).join(' ');
    expect(said).toContain('this face: inner face of Left (left hand); outer face of Right (right hand); turn over for the other');
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

/** The same with more belly, so that its depth grows up to half its height, and with grain up its sides. */
const bellied: Casework = {
    ...bowedBookcase,
    curves: bowedBookcase.curves.map((line) => ({
        ...line,
        curve: curveOf(bowCurve(point(0, 10 * inch), point(66 * inch, 9 * inch), 2 * inch)),
    })),
    parts: new Map([...bowedBookcase.parts].map(([name, part]) => [name, { ...part, layers: [upright] }])),
};
const marked = () => {
    const made = templates(bellied, { units: 'in' });
    if (made?.is !== 'drawings') throw new Error('no templates');
    return made.drawings[0]!;
};

test('the legend stays clear of the line that is cut, and says what the marks of the router mean', () => {
    const legend = marked().texts.filter(({ height }) => height === 5);
    // 9in at the shallowest; letters of Helvetica are 0.72 of their capitals wide on the mean, and these lines near it
    for (const { text, at } of legend) expect(at.x + text.trim().length * 0.72 * 5, text).toBeLessThan(9 * inch);
    const said = legend.map(({ text }) => text.trim()).join(' ');
    expect(said).toContain('arrows: with the grain; hatched: an ordinary feed (up along the front) tears out: climb lightly, or turn over');
    expect(said).toContain('no hollow: a flush bit of any size follows the line');
});

test('hatching lies only where the depth grows from the bottom up, and arrows go down the slope on both sides of it', () => {
    const [{ core, finished } = { core: undefined, finished: undefined }] = templateShapes(bellied);
    const line = core ?? finished!;
    const { lines } = marked();
    const ends = (role: string) => lines.filter((one) => one.role === role).map(({ runs }) => [runs[0]!.from, runs.at(-1)!.to] as const);
    expect(ends('tearOut').length).toBeGreaterThan(10);
    for (const [from, to] of ends('tearOut')) expect(line.slopeAt((from.y + to.y) / 2)).toBeGreaterThan(-0.02);
    const shafts = ends('grain').filter(([from, to]) => Math.hypot(to.x - from.x, to.y - from.y) > 10);
    expect(shafts.length).toBeGreaterThan(4);
    for (const [from, to] of shafts) expect(line.valueAt(to.y).value).toBeLessThan(line.valueAt(from.y).value);
});

test('a part without grain has neither arrows nor hatching', () => {
    const made = templates(bowedBookcase, { units: 'in' });
    const roles = made?.is === 'drawings' ? made.drawings.flatMap(({ lines }) => lines.map(({ role }) => role)) : [];
    expect(roles).not.toContain('grain');
    expect(roles).not.toContain('tearOut');
});

test('the bars to measure lie clear of every word', () => {
    const made = templates(bowedBookcase, { units: 'in' });
    const [drawing] = made?.is === 'drawings' ? made.drawings : [];
    const bars = drawing!.lines.filter(({ isLegend }) => isLegend);
    expect(bars.length).toBeGreaterThan(10);
    const top = Math.max(...bars.flatMap(({ runs }) => runs.flatMap(({ from, to }) => [from.y, to.y])));
    const rest = extentOf({ ...drawing!, lines: drawing!.lines.filter(({ isLegend }) => !isLegend), texts: drawing!.texts.slice(0, -2) });
    expect(top).toBeLessThan(rest.least.y);
});
