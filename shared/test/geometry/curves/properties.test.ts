import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
    add,
    arcCurve,
    arcCurveOfRadius,
    arcCurveThrough,
    battenPins,
    bowCurve,
    type Curve,
    type CurveOutcome,
    distanceToRun,
    fairThrough,
    joined,
    lineCurve,
    type Point,
    parallelCurve,
    point,
    reduceToArcs,
    surveyOf,
    tightestHollow,
} from '../../../src/geometry/index.js';

// The same curves in every run: a failure is one for everybody.
fc.configureGlobal({ seed: 1 });

/** Numbers spread evenly between two: `fc.double` spreads them over their exponents, so most of its are next to nothing. */
function uniform(min: number, max: number): fc.Arbitrary<number> {
    const steps = 2 ** 30;
    return fc.integer({ min: 0, max: steps }).map((step) => min + ((max - min) * step) / steps);
}

/** Lengths from hairs to rooms, and now and then something that is no length at all. */
const wild = fc.oneof(
    { weight: 12, arbitrary: uniform(-3000, 3000) },
    { weight: 2, arbitrary: fc.double({ min: -1e-3, max: 1e-3, noNaN: true }) },
    { weight: 2, arbitrary: fc.integer({ min: -40, max: 40 }) },
    { weight: 1, arbitrary: fc.double({ min: -1e9, max: 1e9, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(0, -0, 1e-12, 1e300, -1e300, Infinity, -Infinity, Number.NaN, 5e-324) },
);
const wildPoint = fc.tuple(wild, wild).map(([x, y]) => point(x, y));

/** Sizes of casework: every curve of it must come out. */
const height = uniform(300, 2400);
const depth = uniform(150, 600);
const chord = fc.tuple(height, depth, depth).map(([top, lower, upper]) => [point(0, lower), point(top, upper)] as const);
const riseShare = uniform(-0.1, 0.1);

const pins = fc.array(fc.tuple(uniform(20, 600), depth), { minLength: 2, maxLength: 9 }).map((steps) => {
    let x = 0;
    return steps.map(([step, y]) => {
        x += step;
        return point(x, y);
    });
});

const oneCurve: fc.Arbitrary<CurveOutcome> = fc.oneof(
    fc.tuple(wildPoint, wildPoint).map(([p, q]) => lineCurve(p, q)),
    fc.tuple(wildPoint, wildPoint, wild).map(([p, q, rise]) => arcCurve(p, q, rise)),
    fc.tuple(wildPoint, wildPoint, wild).map(([p, q, radius]) => arcCurveOfRadius(p, q, radius)),
    fc.tuple(wildPoint, wildPoint, wildPoint).map(([p, q, r]) => arcCurveThrough(p, q, r)),
    fc.tuple(wildPoint, wildPoint, wild).map(([p, q, rise]) => bowCurve(p, q, rise)),
    fc.tuple(chord, riseShare).map(([[p, q], share]) => arcCurve(p, q, share * (q.x - p.x))),
    fc.tuple(chord, riseShare).map(([[p, q], share]) => bowCurve(p, q, share * (q.x - p.x))),
    fc.array(wildPoint, { maxLength: 6 }).map((points) => fairThrough(points)),
    fc.array(wildPoint, { maxLength: 6 }).map((points) => fairThrough(points.toSorted((p, q) => p.x - q.x))),
    pins.map((points) => fairThrough(points)),
);

/** A curve, or a parallel of it, or it and the line on from it. */
const anyCurve: fc.Arbitrary<CurveOutcome> = fc.oneof(
    { weight: 6, arbitrary: oneCurve },
    { weight: 2, arbitrary: fc.tuple(oneCurve, wild).map(([base, offset]) => (base.ok ? parallelCurve(base.curve, offset) : base)) },
    {
        weight: 2,
        arbitrary: fc.tuple(oneCurve, wildPoint, fc.option(wild, { freq: 1 })).map(([first, step, offset]) => {
            const second = first.ok ? lineCurve(first.curve.end, add(first.curve.end, point(Math.abs(step.x), step.y))) : first;
            const whole = first.ok && second.ok ? joined([first.curve, second.curve]) : second;
            return whole.ok && offset !== null ? parallelCurve(whole.curve, offset) : whole;
        }),
    },
);

/** Everything a curve says about itself, as one list of numbers. */
function numbersOf(curve: Curve): number[] {
    const { from, to } = curve.span;
    const abscissas = [from, from + (to - from) * 1e-9, (from + to) / 2, from + 0.77 * (to - from), to, from - 10, to + 10];
    const distances = [-1, 0, curve.length / 3, curve.length, curve.length + 1];
    const { radius, distance, point: at } = curve.leastRadius();
    return [
        curve.length,
        ...abscissas.flatMap((x) => [curve.valueAt(x).value, curve.slopeAt(x), curve.distanceAt(x)]),
        ...distances.flatMap((along) => {
            const place = curve.pointAt(along);
            return [place.x, place.y, curve.angleAt(along), curve.curvatureAt(along), curve.curvatureRateAt(along)];
        }),
        ...curve.abscissasAt(curve.valueAt((from + to) / 2).value),
        ...curve.inflections().flatMap((place) => [place.distance, place.point.x, place.point.y]),
        radius,
        distance,
        at.x,
        at.y,
        ...curve.sample(curve.length / 100).flatMap(({ x, y }) => [x, y]),
        ...reductionNumbers(curve),
        ...surveyNumbers(curve),
    ];
}

function surveyNumbers(curve: Curve): number[] {
    const hollow = tightestHollow(curve);
    return [
        ...surveyOf(curve).flatMap((found) => [found.distance, found.point.x, found.radius, found.turn ?? 0, found.radiusAfter ?? 0]),
        ...(hollow ? [hollow.radius, hollow.distance, hollow.point.x] : []),
    ];
}

function reductionNumbers(curve: Curve): number[] {
    const { runs, deviation } = reduceToArcs(curve, curve.length / 1000);
    return [deviation, ...runs.flatMap(({ from, to, bulge }) => [from.x, from.y, to.x, to.y, bulge])];
}

test('10,000 random curves: each is made or refused, and what is made never answers NaN', () => {
    const made = new Map<string, number>();
    fc.assert(
        fc.property(anyCurve, (outcome) => {
            if (outcome.ok) {
                made.set(outcome.curve.kind, (made.get(outcome.curve.kind) ?? 0) + 1);
                expect(numbersOf(outcome.curve).some((number) => Number.isNaN(number))).toBe(false);
            }
        }),
        { numRuns: 10_000 },
    );
    // The property would hold of nothing at all: every kind must have come up.
    for (const kind of ['line', 'arc', 'bow', 'fair', 'joined', 'parallel']) {
        expect(made.get(kind) ?? 0).toBeGreaterThan(100);
    }
});

const caseCurve: fc.Arbitrary<Curve> = fc
    .oneof(
        fc.tuple(chord, riseShare).map(([[p, q], share]): CurveOutcome => arcCurve(p, q, share * (q.x - p.x))),
        fc.tuple(chord, riseShare).map(([[p, q], share]): CurveOutcome => bowCurve(p, q, share * (q.x - p.x))),
        pins.map((points): CurveOutcome => fairThrough(points)),
    )
    .filter((outcome) => outcome.ok)
    .map((outcome) => (outcome as { readonly curve: Curve }).curve);

const share = uniform(0, 1);

describe('curves of casework sizes', () => {
    test('the abscissa of a depth is where the curve has that depth, and all are found', () => {
        fc.assert(
            fc.property(caseCurve, share, (curve, at) => {
                const x = curve.span.from + at * (curve.span.to - curve.span.from);
                const { value } = curve.valueAt(x);
                const found = curve.abscissasAt(value);
                for (const abscissa of found) {
                    expect(Math.abs(curve.valueAt(abscissa).value - value)).toBeLessThan(3e-6);
                }
                expect(found.length).toBeGreaterThan(0);
                // Where the curve runs nearly level, the depth does not tell the place.
                if (Math.abs(curve.slopeAt(x)) > 0.01) {
                    expect(Math.min(...found.map((abscissa) => Math.abs(abscissa - x)))).toBeLessThan(1e-3);
                }
            }),
            { numRuns: 2000 },
        );
    });

    test('point, distance and abscissa go round', () => {
        fc.assert(
            fc.property(caseCurve, share, (curve, at) => {
                const place = curve.pointAt(at * curve.length);
                expect(curve.valueAt(place.x).value).toBeCloseTo(place.y, 6);
                expect(curve.distanceAt(place.x)).toBeCloseTo(at * curve.length, 6);
            }),
            { numRuns: 2000 },
        );
    });

    test('an offset keeps its distance everywhere, square to the curve', () => {
        fc.assert(
            fc.property(caseCurve, uniform(-12, 12), share, (base, offset, at) => {
                const outcome = parallelCurve(base, offset);
                fc.pre(outcome.ok);
                const { curve, from, to } = keptStretch(outcome.ok ? outcome.curve : undefined);
                const place = curve.pointAt(from + at * (to - from));
                expect(Math.abs(leastDistance(base, place) - Math.abs(offset))).toBeLessThan(2e-6);
            }),
            { numRuns: 600 },
        );
    });

    test('a reduction to arcs stays within its tolerance', () => {
        fc.assert(
            fc.property(caseCurve, fc.constantFrom(0.5, 0.05, 0.005), share, (curve, within, at) => {
                const { runs, deviation } = reduceToArcs(curve, within);
                const place = curve.pointAt(at * curve.length);
                expect(deviation).toBeLessThanOrEqual(within);
                expect(Math.min(...runs.map((run) => distanceToRun(place, run)))).toBeLessThanOrEqual(within);
            }),
            { numRuns: 1000 },
        );
    });

    test('a batten through its pins strays no further than they say', () => {
        fc.assert(
            fc.property(caseCurve, share, (curve, place) => {
                const pins = battenPins(curve, curve.span, [600, 450, 300, 200, 150, 100, 75, 50], 0.4);
                if (!pins) return;
                const batten = fairThrough(pins.at);
                if (!batten.ok) throw new Error(batten.refusal.reason);
                const x = curve.span.from + place * (curve.span.to - curve.span.from);
                const square = Math.cos(Math.atan(curve.slopeAt(x)));
                const stray = Math.abs(batten.curve.valueAt(x).value - curve.valueAt(x).value) * square;
                // measured at 32 places between two pins, so a little more may lie between those
                expect(stray).toBeLessThanOrEqual(pins.deviation * 1.02 + 1e-6);
            }),
            { numRuns: 300 },
        );
    });

    test('a sampled polyline stays within its tolerance', () => {
        fc.assert(
            fc.property(caseCurve, fc.constantFrom(1, 0.05, 0.002), share, (curve, within, at) => {
                const points = curve.sample(within);
                const place = curve.pointAt(at * curve.length);
                const nearest = Math.min(
                    ...points.slice(1).map((to, index) => distanceToRun(place, { from: points[index] as Point, to, bulge: 0 })),
                );
                expect(nearest).toBeLessThanOrEqual(within);
            }),
            { numRuns: 1000 },
        );
    });
});

/** The stretch of a parallel that is not straight continuation. */
function keptStretch(parallel: (Curve & { readonly continuedBy: { readonly start: number; readonly end: number } }) | undefined) {
    if (parallel === undefined) {
        throw new Error('the precondition lets no refusal through');
    }
    return { curve: parallel, from: parallel.continuedBy.start, to: parallel.length - parallel.continuedBy.end };
}

/** Distance from a point to a curve: the best of many places, then the golden section about it. */
function leastDistance(curve: Curve, from: Point): number {
    const distanceAt = (along: number) => {
        const at = curve.pointAt(along);
        return Math.hypot(at.x - from.x, at.y - from.y);
    };
    const count = 200;
    const step = curve.length / count;
    let best = 0;
    for (let index = 1; index <= count; index++) {
        best = distanceAt(index * step) < distanceAt(best * step) ? index : best;
    }
    let [low, high] = [Math.max(best - 1, 0) * step, Math.min(best + 1, count) * step];
    const section = (Math.sqrt(5) - 1) / 2;
    while (high - low > 1e-7) {
        const [left, right] = [high - section * (high - low), low + section * (high - low)];
        [low, high] = distanceAt(left) < distanceAt(right) ? [low, right] : [left, high];
    }
    return distanceAt((low + high) / 2);
}
