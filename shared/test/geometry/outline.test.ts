import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
    arcCurve,
    bowCurve,
    closedOutline,
    edgeLength,
    edgeRuns,
    mirrorOutline,
    moveOutline,
    type Outline,
    outlineArea,
    outlineContains,
    outlineExtent,
    outlinePerimeter,
    point,
    polylineRuns,
    rectangleOutline,
    reduceToArcs,
    reversedRuns,
    runMiddle,
} from '../../src/geometry/index.js';
import { curveOf } from './curves/outcome.js';

// The same figures in every run: a failure is one for everybody.
fc.configureGlobal({ seed: 1 });

const names = { bottom: 'bottom', right: 'front', top: 'top', left: 'back' };

test('a rectangle', () => {
    const outline = rectangleOutline(300, 700, names);
    expect(outlineArea(outline)).toBe(210_000);
    expect(outlinePerimeter(outline)).toBe(2000);
    expect(edgeLength(outline, 'front')).toBe(700);
    expect(edgeLength(outline, 'left')).toBe(0);
    expect(outlineExtent(outline)).toEqual({ least: point(0, 0), most: point(300, 700) });
});

/** A board 36 by 10 whose far edge is an arc of rise 4: area, length and radius of the segment from elementary geometry, computed. */
function bellied(rise: number): Outline {
    const front = reduceToArcs(curveOf(arcCurve(point(0, 10), point(36, 10), rise)), 0.001).runs;
    const made = closedOutline([
        { edge: 'back', runs: polylineRuns([point(0, 0), point(36, 0)]) },
        { edge: 'right', runs: polylineRuns([point(36, 0), point(36, 10)]) },
        { edge: 'front', runs: reversedRuns(front) },
        { edge: 'left', runs: polylineRuns([point(0, 10), point(0, 0)]) },
    ]);
    if (!made.ok) {
        throw new Error(JSON.stringify(made));
    }
    return made.outline;
}

describe('an edge on an arc of chord 36 and rise 4 (segment area 96.941567, arc 37.173721: elementary geometry, computed)', () => {
    test('bellied out', () => {
        const outline = bellied(4);
        expect(outlineArea(outline)).toBeCloseTo(360 + 96.941567, 5);
        expect(edgeLength(outline, 'front')).toBeCloseTo(37.173721, 5);
        expect(edgeRuns(outline, 'front')).toHaveLength(1);
        expect(outlineExtent(outline).most.y).toBeCloseTo(14, 9);
        expect(runMiddle(edgeRuns(outline, 'front')[0] as Outline['runs'][number]).y).toBeCloseTo(14, 9);
        expect(outlineContains(outline, point(18, 13.9))).toBe(true);
        expect(outlineContains(outline, point(18, 14.1))).toBe(false);
        expect(outlineContains(outline, point(18, 10))).toBe(true);
        expect(outlineContains(outline, point(2, 13.9))).toBe(false);
    });

    test('hollowed in', () => {
        const outline = bellied(-4);
        expect(outlineArea(outline)).toBeCloseTo(360 - 96.941567, 5);
        expect(outlineExtent(outline).most.y).toBeCloseTo(10, 9);
        expect(outlineContains(outline, point(18, 6.1))).toBe(false);
        expect(outlineContains(outline, point(18, 5.9))).toBe(true);
        expect(outlineContains(outline, point(18, 10))).toBe(false);
        expect(outlineContains(outline, point(1, 9))).toBe(true);
    });
});

test('an outline given clockwise is turned round and keeps its edge names', () => {
    const made = closedOutline([
        { edge: 'left', runs: polylineRuns([point(0, 0), point(0, 5)]) },
        { edge: 'slope', runs: polylineRuns([point(0, 5), point(5, 0)]) },
        { edge: 'bottom', runs: polylineRuns([point(5, 0), point(0, 0)]) },
    ]);
    expect(made.ok && outlineArea(made.outline)).toBe(12.5);
    expect(made.ok && made.outline.runs.map(({ edge }) => edge)).toEqual(['bottom', 'slope', 'left']);
});

test('edges that do not meet are refused by name', () => {
    expect(
        closedOutline([
            { edge: 'left', runs: polylineRuns([point(0, 0), point(0, 5)]) },
            { edge: 'slope', runs: polylineRuns([point(0, 5), point(5, 0)]) },
            { edge: 'bottom', runs: polylineRuns([point(5, 0), point(1, 0)]) },
        ]),
    ).toEqual({ ok: false, edge: 'bottom', next: 'left', gap: 1 });
    expect(closedOutline([])).toEqual({ ok: false, edge: undefined });
});

test('a circle of two half rounds reaches its radius along both axes', () => {
    const made = closedOutline([
        {
            edge: 'rim',
            runs: [
                { from: point(-3, -4), to: point(3, 4), bulge: 1 },
                { from: point(3, 4), to: point(-3, -4), bulge: 1 },
            ],
        },
    ]);
    if (!made.ok) {
        throw new Error('not closed');
    }
    expect(outlineArea(made.outline)).toBeCloseTo(Math.PI * 25, 9);
    expect(outlinePerimeter(made.outline)).toBeCloseTo(Math.PI * 10, 9);
    const { least, most } = outlineExtent(made.outline);
    for (const reach of [-least.x, -least.y, most.x, most.y]) {
        expect(reach).toBeCloseTo(5, 12);
    }
});

test('containment agrees with the circle everywhere, for arcs less and more than a half round', () => {
    const anyArc = fc.double({ min: 0.05, max: 3, noNaN: true });
    const anyPlace = fc.tuple(fc.double({ min: -12, max: 12, noNaN: true }), fc.double({ min: -12, max: 12, noNaN: true }));
    fc.assert(
        fc.property(anyArc, anyPlace, (angle, [x, y]) => {
            const [from, to] = [-angle, angle].map((turned) => point(10 * Math.cos(turned), 10 * Math.sin(turned))) as [
                ReturnType<typeof point>,
                ReturnType<typeof point>,
            ];
            const made = closedOutline([
                { edge: 'arc', runs: [{ from, to, bulge: Math.tan(angle / 2) }] },
                { edge: 'chord', runs: polylineRuns([to, from]) },
            ]);
            const insideCircle = Math.hypot(x, y) <= 10;
            const beyondChord = x >= 10 * Math.cos(angle);
            fc.pre(Math.abs(Math.hypot(x, y) - 10) > 1e-5 && Math.abs(x - 10 * Math.cos(angle)) > 1e-5);
            expect(made.ok && outlineContains(made.outline, point(x, y))).toBe(insideCircle && beyondChord);
        }),
        { numRuns: 2000 },
    );
});

test('a mirrored or moved outline keeps area, perimeter and edge lengths', () => {
    const bow = curveOf(bowCurve(point(0, 444.5), point(1676.4, 304.8), 28.575));
    const made = closedOutline([
        { edge: 'front', runs: reduceToArcs(bow, 0.01).runs },
        { edge: 'top', runs: polylineRuns([bow.end, point(1676.4, 0)]) },
        { edge: 'back', runs: polylineRuns([point(1676.4, 0), point(0, 0)]) },
        { edge: 'bottom', runs: polylineRuns([point(0, 0), bow.start]) },
    ]);
    if (!made.ok) {
        throw new Error('not closed');
    }
    for (const image of [mirrorOutline(made.outline, 12), moveOutline(made.outline, point(-700, 90))]) {
        expect(outlineArea(image)).toBeCloseTo(outlineArea(made.outline), 5);
        expect(outlinePerimeter(image)).toBeCloseTo(outlinePerimeter(made.outline), 8);
        expect(edgeLength(image, 'front')).toBeCloseTo(bow.length, 3);
    }
    expect(outlineExtent(mirrorOutline(made.outline, 0)).least.x).toBeCloseTo(-1676.4, 9);
});
