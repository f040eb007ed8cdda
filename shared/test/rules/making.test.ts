import { describe, expect, test } from 'vitest';
import type { Batten, CurveModel } from '../../src/casework/index.js';
import { arcCurve, bowCurve, type Curve, type CurveOutcome, fairThrough, joined, lineCurve, point } from '../../src/geometry/index.js';
import { board, type CaseworkWords, caseworkOf, edgeOf, findingsOf, measure, property, spanOf, thingOf } from './casework-of.js';

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
            'Case.Left: the plywood band of 1/4in on the front edge of `Left` is bent to a radius of 15in, and the table for aircraft plywood has a radius of at least 31in',
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
