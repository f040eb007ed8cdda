import { describe, expect, test } from 'vitest';
import { arcCurve, bowCurve, joined, lineCurve, parallelCurve, point } from '../../../src/geometry/index.js';
import { curveOf, refusalOf } from './outcome.js';

const inch = 25.4;

test('the parallel inside an arc is the concentric arc', () => {
    const arc = curveOf(arcCurve(point(0, 300), point(1000, 300), 100));
    const inside = curveOf(parallelCurve(arc, 20));
    expect(inside.leastRadius().radius).toBeCloseTo(1280, 6);
    expect(inside.valueAt(500).value).toBeCloseTo(380, 9);
    for (const x of [100, 300, 900]) {
        expect(inside.valueAt(x).value).toBeCloseTo(-900 + Math.sqrt(1280 ** 2 - (x - 500) ** 2), 6);
    }
    expect(inside.span.from).toBeCloseTo(0, 9);
    expect(inside.span.to).toBeCloseTo(1000, 9);
});

test('the parallel outside a level line and a sloped one', () => {
    const line = curveOf(lineCurve(point(0, 0), point(300, 400)));
    const outside = curveOf(parallelCurve(line, -10));
    expect(outside.valueAt(150).value).toBeCloseTo(200 + 10 / 0.6, 9);
    expect(outside.valueAt(0).value).toBeCloseTo(10 / 0.6, 9);
    expect(outside.valueAt(300).value).toBeCloseTo(400 + 10 / 0.6, 9);
});

describe('the core line 1/8 in inside a bow', () => {
    const bow = curveOf(bowCurve(point(0, 17.5 * inch), point(66 * inch, 12 * inch), 1.125 * inch));
    const core = curveOf(parallelCurve(bow, inch / 8));

    test('lies over the same span, continued at one end by under a hair', () => {
        expect(core.span.from).toBeCloseTo(0, 9);
        expect(core.span.to).toBeCloseTo(66 * inch, 9);
        expect(core.continuedBy.start).toBe(0);
        expect(core.continuedBy.end).toBeCloseTo(-(inch / 8) * Math.sin(bow.angleAt(bow.length)), 2);
        expect(core.valueAt(66 * inch).beyond).toBe(false);
    });

    test('bends tighter by the offset where the bow bends most', () => {
        expect(core.leastRadius().radius).toBeCloseTo(bow.leastRadius().radius - inch / 8, 6);
    });

    test('its own angle, curvature and length fit its points', () => {
        for (const distance of [10, 500, 1200]) {
            const [before, after] = [core.pointAt(distance - 0.05), core.pointAt(distance + 0.05)];
            expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeCloseTo(0.1, 9);
            expect(core.angleAt(distance)).toBeCloseTo(Math.atan2(after.y - before.y, after.x - before.x), 8);
            expect(core.curvatureAt(distance)).toBeCloseTo((core.angleAt(distance + 0.05) - core.angleAt(distance - 0.05)) / 0.1, 10);
            expect(core.curvatureRateAt(distance)).toBeCloseTo(
                (core.curvatureAt(distance + 0.5) - core.curvatureAt(distance - 0.5)) / 1,
                11,
            );
        }
    });
});

describe('at a kink the two parallels meet in one point', () => {
    const level = curveOf(lineCurve(point(0, 400), point(800, 400)));
    const slope = curveOf(lineCurve(point(800, 400), point(1600, 300)));
    const kinked = curveOf(joined([level, slope]));
    const bisector = Math.tan(Math.atan2(100, 800) / 2);

    test('cut where they cross, on the inner side', () => {
        const inside = curveOf(parallelCurve(kinked, 10));
        const corner = inside.sample(0.1)[1];
        expect(corner?.x).toBeCloseTo(800 - 10 * bisector, 9);
        expect(corner?.y).toBeCloseTo(390, 9);
    });

    test('continued to a mitre on the outer side', () => {
        const outside = curveOf(parallelCurve(kinked, -10));
        expect(outside.valueAt(800 + 10 * bisector).value).toBeCloseTo(410, 9);
        expect(outside.valueAt(1600).value).toBeCloseTo(300 + 10 / Math.cos(Math.atan2(100, 800)), 9);
    });

    test('cut where two curved pieces cross', () => {
        const first = curveOf(arcCurve(point(0, 400), point(500, 400), 40));
        const second = curveOf(arcCurve(point(500, 400), point(1000, 400), 40));
        const outside = curveOf(parallelCurve(curveOf(joined([first, second])), -15));
        // By symmetry they cross above the kink, on both outer circles.
        const height = outside.valueAt(500).value;
        const centre = 440 - first.radius;
        expect(Math.hypot(250, height - centre)).toBeCloseTo(first.radius + 15, 8);
    });

    test('a piece too short for the offset beside a kink is refused', () => {
        const rise = curveOf(lineCurve(point(0, 0), point(100, 100)));
        const fall = curveOf(lineCurve(point(100, 100), point(110, 90)));
        expect(refusalOf(parallelCurve(curveOf(joined([rise, fall])), 30))).toMatchObject({
            reason: 'cusp',
            radius: 0,
            at: point(100, 100),
        });
    });
});

test('an offset as great as the least radius on its side is refused, where it cusps; on the other side it is not', () => {
    const bow = curveOf(bowCurve(point(0, 300), point(300, 300), 120));
    const { radius } = bow.leastRadius();
    const refusal = refusalOf(parallelCurve(bow, radius + 0.001));
    expect(refusal).toMatchObject({ reason: 'cusp', distance: bow.length / 2 });
    expect(refusal.reason === 'cusp' && refusal.radius).toBeCloseTo(radius, 9);
    expect(parallelCurve(bow, radius - 0.01).ok).toBe(true);
    expect(parallelCurve(bow, -2 * radius).ok).toBe(true);
    expect(refusalOf(parallelCurve(bow, Number.NaN))).toEqual({ reason: 'out-of-range' });
});

test('a steep line whose parallel lies wholly beside the span is refused', () => {
    const steep = curveOf(lineCurve(point(0, 0), point(10, 100)));
    expect(refusalOf(parallelCurve(steep, 50))).toEqual({ reason: 'offset-leaves-span' });
});
