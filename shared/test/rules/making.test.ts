import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Batten, CurveModel } from '../../src/casework/index.js';
import {
    arcCurve,
    arcCurveThrough,
    bowCurve,
    type Curve,
    type CurveOutcome,
    fairThrough,
    joined,
    lineCurve,
    point,
} from '../../src/geometry/index.js';
import { board, type CaseworkWords, caseworkOf, edgeOf, findingsOf, measure, property, shown, spanOf, thingOf } from './casework-of.js';

function made(outcome: CurveOutcome): Curve {
    if (!outcome.ok) throw new Error(outcome.refusal.reason);
    return outcome.curve;
}

const inch = 25.4;
const across = (rise: number, chord = 36) => [point(0, 14 * inch), point(chord * inch, 14 * inch), rise * inch] as const;

function sweep(curve: Curve, batten?: Batten): CurveModel {
    return {
        path: 'Case.Sweep',
        name: 'Sweep',
        assembly: 'Case',
        over: 'height',
        curve,
        pieces: [],
        joints: [],
        used: curve.span,
        parts: ['Case.Left'],
        ...(batten ? { batten } : {}),
        span: spanOf(8),
        nameSpan: spanOf(8),
    };
}

const things = [
    // Wood Handbook FPL-GTR-282, Table 5-3b
    thingOf('species', 'WhiteAsh', 'hardwood', {
        modulusOfElasticity: property.measure('1740000 psi'),
        modulusOfRupture: property.measure('15400 psi'),
    }),
    thingOf('species', 'Spruce', 'softwood', {
        modulusOfElasticity: property.measure('1570000 psi'),
        modulusOfRupture: property.measure('10200 psi'),
    }),
    thingOf('material', 'Thin', 'plywood'),
    thingOf('material', 'Walnut', 'lumber'),
];

/** Findings on a side that follows the curve, with a band or nosing on its front. */
function found(
    code: string,
    curve: Curve,
    { band, batten, shop }: { band?: [string, string]; batten?: Batten; shop?: CaseworkWords['shop'] } = {},
) {
    const tall = `${curve.span.to / inch}in`;
    const side = board(1, 'side', 'Left', ['0mm', '18mm'], ['0mm', '20in'], ['0mm', tall], { frontCurve: 'Case.Sweep' });
    const edges = band
        ? [
              {
                  ...edgeOf(5, 'front', [{ does: 'band', amount: band[0], material: `hand-made.case#${band[1]}` }]),
                  takesOff: measure(band[0]),
              },
          ]
        : [];
    return findingsOf(code, caseworkOf({ parts: [{ ...side, edges }], curves: [sweep(curve, batten)], things, ...(shop ? { shop } : {}) }));
}

const batten = (thickness: string, species: string): Batten => ({
    thickness: measure(thickness),
    width: undefined,
    length: undefined,
    species: `hand-made.case#${species}`,
    span: spanOf(8),
});

// NDS-2018, section 5.3.8 (from memory): 0.5 % for hardwoods, 0.4 % for softwoods; least radius of a bow whose rise is a tenth of its
// chord 1.05065 chords (elastica, computed column)
describe('CRV-004 batten-breaks', () => {
    const bow = made(bowCurve(...across(3.6)));
    const radius = 36 * 1.05065;

    test('hardwood up to a hundredth of the radius', () => {
        expect(found('CRV-004', bow, { batten: batten(`${(0.01 * radius * 0.999).toFixed(4)}in`, 'WhiteAsh') })).toEqual([]);
        expect(found('CRV-004', bow, { batten: batten(`${(0.01 * radius * 1.001).toFixed(4)}in`, 'WhiteAsh') })).toHaveLength(1);
    });

    test('softwood up to a hundred and twenty-fifth', () => {
        expect(found('CRV-004', bow, { batten: batten(`${(0.008 * radius * 0.999).toFixed(4)}in`, 'Spruce') })).toEqual([]);
        expect(found('CRV-004', bow, { batten: batten(`${(0.008 * radius * 1.001).toFixed(4)}in`, 'Spruce') })).toHaveLength(1);
    });

    test('past the modulus of rupture over that of elasticity it breaks: 0.89 % for white ash', () => {
        expect(found('CRV-004', bow, { batten: batten('3/4in', 'WhiteAsh') })).toEqual([
            'Case.Left: the batten of 3/4in breaks before it lies on `Sweep`: a strain of 0.99 % at a radius of 37 13/16in, and `WhiteAsh` breaks at 0.89 %',
        ]);
        expect(found('CRV-004', bow, { batten: batten('1/2in', 'WhiteAsh') })[0]).toContain(
            'may break before it lies on `Sweep`: a strain of 0.66 %',
        );
    });

    test('an arc is drawn with a trammel; a fair line and a bow among pieces with a batten', () => {
        const thick = batten('3/4in', 'WhiteAsh');
        expect(found('CRV-004', made(arcCurve(...across(3.6))), { batten: thick })).toEqual([]);
        const straight = made(lineCurve(point(36 * inch, 14 * inch), point(50 * inch, 14 * inch)));
        expect(found('CRV-004', made(joined([bow, straight])), { batten: thick })).toHaveLength(1);
        const fair = made(fairThrough([point(0, 14 * inch), point(18 * inch, 17.6 * inch), point(36 * inch, 14 * inch)]));
        expect(found('CRV-004', fair, { batten: thick })).toHaveLength(1);
    });

    test('without a batten, or a wood, nothing is known', () => {
        expect(found('CRV-004', bow)).toEqual([]);
        expect(found('CRV-004', bow, { batten: { ...batten('3/4in', 'WhiteAsh'), species: undefined } })).toEqual([]);
    });
});

// FAA AC 43.13-1B, table of bend radii, face grain around the bend: 1/8in plywood 12in, 1/4in plywood 31in
describe('CRV-005 plywood-bent-too-tight', () => {
    const arcOfRadius = (radius: number, chord = 20) =>
        made(arcCurve(...across(radius - Math.sqrt(radius ** 2 - (chord / 2) ** 2), chord)));

    test.each([
        ['1/8in', 12],
        ['1/4in', 31],
    ])('plywood of %s to %d inches, at its middle', (thickness, least) => {
        const half = thickness === '1/8in' ? 1 / 16 : 1 / 8;
        expect(found('CRV-005', arcOfRadius(least + half + 0.01), { band: [thickness, 'Thin'] })).toEqual([]);
        expect(found('CRV-005', arcOfRadius(least + half - 0.01), { band: [thickness, 'Thin'] })).toHaveLength(1);
    });

    test('solid wood is not its business', () => {
        expect(found('CRV-005', arcOfRadius(15), { band: ['1/4in', 'Walnut'] })).toEqual([]);
    });

    test('says the radius, and that of the table', () => {
        expect(found('CRV-005', arcOfRadius(15.125), { band: ['1/4in', 'Thin'] })).toEqual([
            'Case.Left: the band of 1/4in on the front edge of `Left` is plywood bent to a radius of 15in, and the table for aircraft plywood has a radius of at least 31in',
        ]);
    });
});

describe('CRV-006 hollow-under-bit', () => {
    const shop = (flush: string | undefined): CaseworkWords['shop'] => ({
        ...caseworkOf({ parts: [] }).shop,
        ...(flush
            ? {
                  thing: thingOf('shop', 'shop', '', {
                      bits: { is: 'block', properties: new Map([['flush', property.measure(flush)]]), span: spanOf(9) },
                  }),
              }
            : {}),
    });
    const hollow = (radius: number) => made(arcCurve(...across(-(radius - Math.sqrt(radius ** 2 - 0.25 ** 2)), 0.5)));

    test('a cutter has to be no rounder than the hollow (geometry)', () => {
        expect(found('CRV-006', hollow(0.3), { shop: shop('0.61in') })).toHaveLength(1);
        expect(found('CRV-006', hollow(0.3), { shop: shop('0.59in') })).toEqual([]);
    });

    test('inside a band the hollow is wider by the band', () => {
        expect(found('CRV-006', hollow(0.3), { shop: shop('0.8in'), band: ['1/8in', 'Walnut'] })).toEqual([]);
        expect(found('CRV-006', hollow(0.3), { shop: shop('0.86in'), band: ['1/8in', 'Walnut'] })).toHaveLength(1);
    });

    test('any bit rounds an inner corner, and none an outer one', () => {
        const [down, up] = [
            made(lineCurve(point(0, 14 * inch), point(10 * inch, 8 * inch))),
            made(lineCurve(point(10 * inch, 8 * inch), point(20 * inch, 14 * inch))),
        ];
        expect(found('CRV-006', made(joined([down, up])), { shop: shop('1/4in') })).toEqual([
            'Case.Left: `Sweep` has an inner corner at 10in of the height, and the smallest flush bit, of 1/4in, has a radius of 1/8in',
        ]);
        const roof = [point(0, 12 * inch), point(10 * inch, 14 * inch), point(20 * inch, 12 * inch)] as const;
        expect(
            found('CRV-006', made(joined([made(lineCurve(roof[0], roof[1])), made(lineCurve(roof[1], roof[2]))])), { shop: shop('1/4in') }),
        ).toEqual([]);
    });

    test('a belly, or a shop that names no flush bit', () => {
        expect(found('CRV-006', made(arcCurve(...across(0.1, 0.5))), { shop: shop('1in') })).toEqual([]);
        expect(found('CRV-006', hollow(0.3), { shop: shop(undefined) })).toEqual([]);
    });
});

describe('CRV-007 depth-runs-out', () => {
    const falling = (to: number) => made(lineCurve(point(0, 14 * inch), point(36 * inch, to * inch)));

    test('a line that comes back to the back edge', () => {
        expect(found('CRV-007', falling(0))).toEqual([
            'Case.Left: `Left` has no depth left at 36in of the height: `Sweep` comes back to its back edge there',
        ]);
        expect(found('CRV-007', falling(1))).toEqual([]);
    });

    test('or leaves less than its bands', () => {
        expect(found('CRV-007', falling(1), { band: ['1in', 'Walnut'] })).toHaveLength(1);
        expect(found('CRV-007', falling(1), { band: ['7/8in', 'Walnut'] })).toEqual([]);
    });
});

describe('a board that is bent to a plan', () => {
    /** A kick 3/8in thick behind an arc over the width with a radius at its face. */
    const kick = (radius: number, material: string, thickness = '3/8in') => {
        const half = 15;
        const rise = radius - Math.sqrt(radius ** 2 - half ** 2);
        const arc = made(arcCurve(point(0, 10 * inch), point(2 * half * inch, 10 * inch), rise * inch));
        const line: CurveModel = { ...sweep(arc), over: 'width', parts: ['Case.kick'] };
        const layer = {
            material: `hand-made.case#${material}`,
            thickness: measure(thickness),
            grain: 'length' as const,
            box: undefined,
            span: spanOf(7),
        };
        const size = { length: undefined, width: undefined, thickness: undefined };
        const bentBoard = board(7, 'kick', 'kick', ['0in', '30in'], ['10in', '14in'], ['0in', '4in'], {
            frontCurve: 'Case.Sweep',
            bent: true,
            layers: [{ ...layer, size }],
        });
        const lumber = thingOf('material', 'AshBoard', 'lumber', { species: property.thing('WhiteAsh') });
        return caseworkOf({ parts: [bentBoard], curves: [line], things: [...things, lumber] });
    };

    // NDS-2018, section 5.3.8 (from memory): R at least 100 t on the inside: 37 1/2in for 3/8in
    test('of hardwood: a hundred times its thickness', () => {
        expect(findingsOf('CRV-003', kick(37.9, 'AshBoard'))).toEqual([]);
        expect(findingsOf('CRV-003', kick(37.8, 'AshBoard'))[0]).toMatch(
            /^Case\.kick: the board of 3\/8in of `kick` is bent to a radius of 37 7\/16in: that stretches it by 0\.50 %/,
        );
    });

    // FAA AC 43.13-1B: 54in for 3/8in plywood, to its middle
    test('of plywood: as the table has it', () => {
        expect(findingsOf('CRV-005', kick(54.2, 'Thin'))).toEqual([]);
        expect(findingsOf('CRV-005', kick(54.1, 'Thin'))).toHaveLength(1);
    });
});

/** A curve with the words of its pieces at places of their own, by rising abscissa. */
function pieced(curve: Curve, count: number): CurveModel {
    const { pieces } = curve as { pieces?: readonly Curve[] };
    const spans = (pieces ?? [curve]).map((piece, index) => ({ kind: piece.kind, over: piece.span, span: spanOf(20 + index) }));
    expect(spans).toHaveLength(count);
    return { ...sweep(curve), pieces: spans };
}
const at = (code: string, line: CurveModel) => shown(caseworkOf({ parts: [], curves: [line] })).filter((finding) => finding.code === code);

describe('CRV-009 corner-in-curve and CRV-010 bend-changes-at-once', () => {
    const straight = made(lineCurve(point(0, 300), point(400, 300)));
    // from (400, 300) with the direction of the line: a circle of radius 500 (its centre straight behind), to 30 degrees further on
    const tangent = made(
        arcCurveThrough(
            point(400, 300),
            point(400 + 500 * Math.sin(0.2), 300 - 500 * (1 - Math.cos(0.2))),
            point(650, 300 - 500 * (1 - Math.cos(Math.PI / 6))),
        ),
    );

    test('two lines of 45 degrees: a corner of ninety, at the words of the second', () => {
        const roof = made(joined([made(lineCurve(point(0, 0), point(100, 100))), made(lineCurve(point(100, 100), point(200, 0)))]));
        const [corner] = at('CRV-009', pieced(roof, 2));
        expect(corner?.message).toBe('`Sweep` has a corner at 3 15/16in of the height: it turns by 90.0 degrees at once');
        expect(corner?.span).toEqual(spanOf(21));
        expect(at('CRV-010', pieced(roof, 2))).toEqual([]);
    });

    test('a line that goes on in a circle: no corner, but its bend changes at once', () => {
        const line = pieced(made(joined([straight, tangent])), 2);
        expect(at('CRV-009', line)).toEqual([]);
        const [jump] = at('CRV-010', line);
        expect(jump?.message).toBe(
            'the bend of `Sweep` changes at once at 15 3/4in of the height: from straight to a radius of 19 11/16in',
        );
        expect(jump?.span).toEqual(spanOf(21));
    });

    test('one line through points, an arc and a bow have neither; nor has a line that only follows from another', () => {
        const fair = made(fairThrough([point(0, 300), point(300, 380), point(600, 350), point(900, 250)]));
        expect([...at('CRV-009', pieced(fair, 1)), ...at('CRV-010', pieced(fair, 1))]).toEqual([]);
        const line = pieced(made(joined([straight, tangent])), 2);
        expect(at('CRV-010', { ...line, follows: { path: 'Case.Sweep', how: '1in outside' } })).toEqual([]);
    });
});

describe('CRV-011 point-out-of-line', () => {
    const places = [0, 150, 300, 450, 600, 750, 900];
    const bow = made(bowCurve(point(0, 300), point(900, 300), 30));
    const through = (off: Readonly<Record<number, number>>) =>
        pieced(made(fairThrough(places.map((x) => point(x, bow.valueAt(x).value + (off[x] ?? 0))))), 1);

    test('points of one bow are in line', () => {
        expect(at('CRV-011', through({}))).toEqual([]);
    });

    test('a point that is in by 5 mm makes the batten wave, and is named with how far it is off', () => {
        const [found] = at('CRV-011', through({ 450: -5 }));
        expect(found?.message).toMatch(/^the point 12\.795in at 17\.717in of `Sweep` is out of line: it lies 3\/16in behind the line/);
        expect(found?.found).toContain('behind the line');
        // the line through the others is the bow to within a quarter of a millimetre, and 3/16in is 4.8 mm
        expect(found?.hint).toBe('take it out, or move it by 3/16in; where the wave is meant, give that bend a second point');
    });

    test('a bend of several points is taken for meant, and so is the middle of points that are alike from both ends', () => {
        expect(at('CRV-011', through({ 300: -40, 450: -70, 600: -40 }))).toEqual([]);
        expect(at('CRV-011', through({ 450: -20 }))).toEqual([]);
    });

    const pins = (...points: readonly (readonly [number, number])[]) =>
        at('CRV-011', pieced(made(fairThrough(points.map(([x, y]) => point(x * inch, y * inch)))), 1)).map(({ message }) => message);

    test('a belly that one point makes between two hollows is named, however far it is off', () => {
        expect(pins([0, 15], [10, 14], [20, 15], [40, 12], [60, 11])).toEqual([
            expect.stringMatching(/^the point 15in at 20in of `Sweep` is out of line: it lies 1 \d+\/\d+in before the line/),
        ]);
        expect(pins([0, 16], [10, 14], [20, 17], [30, 13], [40, 16], [60, 12])).toHaveLength(1);
    });

    test('a line that turns once is let be: a belly that goes over into a hollow, with one point each or with two', () => {
        expect(pins([0, 18], [15, 18.5], [45, 12], [60, 12])).toEqual([]);
        expect(pins([0, 18], [10, 18.75], [20, 18.5], [40, 13], [50, 12.25], [60, 12])).toEqual([]);
    });

    test('a serpentine front is let be: with one point for its belly where both halves are alike, with two where they are not', () => {
        expect(pins([0, 18], [9, 17], [24, 20], [39, 17], [48, 18])).toEqual([]);
        expect(pins([0, 18], [6, 17], [10, 17.25], [20, 19.5], [28, 19.75], [38, 17.5], [42, 17], [48, 17.5])).toEqual([]);
    });

    test('points of an arc that were set to the sixteenth are in line, at whichever places 4in apart', () => {
        // rise 2in over 60in: a radius of (30^2 + 2^2) / 4 = 226in
        const arcAt = (x: number) => 14 + Math.sqrt(226 ** 2 - (x - 30) ** 2) - 224;
        const place = fc.uniqueArray(fc.integer({ min: 1, max: 14 }), { minLength: 2, maxLength: 9 });
        fc.assert(
            fc.property(place, (places) => {
                const all = [0, ...places.sort((a, b) => a - b), 15];
                expect(pins(...all.map((x) => [4 * x, Math.round(arcAt(4 * x) * 16) / 16] as const))).toEqual([]);
            }),
        );
    });

    test('and of the same arc, one point between others that is an inch in is found', () => {
        const arcAt = (x: number) => 14 + Math.sqrt(226 ** 2 - (x - 30) ** 2) - 224;
        fc.assert(
            fc.property(fc.constantFrom(20, 40), fc.constantFrom(-1, -0.5), (x, off) => {
                const [found] = pins(...[0, 10, 20, 30, 40, 50, 60].map((at) => [at, arcAt(at) + (at === x ? off : 0)] as const));
                expect(found).toContain(`at ${x}in of`);
            }),
        );
    });
});

describe('CRV-012 bevel-beyond-saw', () => {
    const shelf = (bevel: string, form: 'bevelled' | 'square' = 'bevelled') =>
        board(3, 'shelf', 'Low', ['0in', '30in'], ['0in', '10in'], ['0in', '3/4in'], {
            front: { form, low: measure('10in'), high: measure('9in'), bevel: measure(bevel) },
        });
    const withTilt = (tilt: string): NonNullable<CaseworkWords['shop']> => ({
        ...caseworkOf({ parts: [] }).shop,
        thing: thingOf('shop', 'shop', '', { tilt: property.measure(tilt) }),
    });

    // common practice, no source: most table saws tilt to 45 degrees
    test('up to 45 degrees, or what the shop says', () => {
        expect(findingsOf('CRV-012', caseworkOf({ parts: [shelf('45deg')] }))).toEqual([]);
        expect(findingsOf('CRV-012', caseworkOf({ parts: [shelf('46deg')] }))).toEqual([
            'Case.Low: the front of `Low` is bevelled by 46.0 degrees, and a table saw tilts by 45 degrees',
        ]);
        expect(findingsOf('CRV-012', caseworkOf({ parts: [shelf('46deg')], shop: withTilt('47deg') }))).toEqual([]);
        expect(findingsOf('CRV-012', caseworkOf({ parts: [shelf('31deg')], shop: withTilt('30deg') }))[0]).toContain(
            'and the saw tilts by 30 degrees',
        );
    });

    test('a square front is sawn square, however steep its line', () => {
        expect(findingsOf('CRV-012', caseworkOf({ parts: [shelf('60deg', 'square')] }))).toEqual([]);
    });
});
