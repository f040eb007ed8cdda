/** Screws and nails against the worked values of the publications that their equations are from. */
import { describe, expect, it } from 'vitest';
import { type GravityBasis, onBasis } from '../../../src/strength/joints/gravity.js';
import {
    breakingFromParticleboard,
    breakingWithdrawal,
    type DrivenForm,
    designWithdrawal,
    inch,
    poundForce,
} from '../../../src/strength/joints/withdrawal.js';
import {
    bearingStrength,
    bendingYield,
    penetrationFactor,
    reductionTerm,
    type SingleShear,
    testedLateral,
    weakestMode,
    type YieldMode,
    yieldModes,
} from '../../../src/strength/joints/yield.js';

const psi = poundForce / inch ** 2;
const embedded = (gravity: number, diameter: number, length: number) => ({ gravity, diameter: diameter * inch, length: length * inch });

describe('pulls that break', () => {
    // Wood Handbook FPL-GTR-282, Equation 8-10b (15,700 G² D L), and chapter 8 for nails and lag screws (from memory).
    it.each<[DrivenForm, number, number, number, number]>([
        ['wood screw', 0.63, 0.164, 1, 1021.9],
        ['wood screw', 0.5, 0.164, 1, 643.7],
        ['wood screw', 0.42, 0.164, 1, 454.2],
        ['nail', 0.5, 0.131, 1.25, 227.2],
        ['lag screw', 0.5, 0.25, 1, 1012.5],
    ])('%s in wood of %d, %d in thick, %d in deep: %d lb', (form, gravity, diameter, length, pounds) => {
        expect(breakingWithdrawal(form, embedded(gravity, diameter, length)) / poundForce).toBeCloseTo(pounds, 1);
    });

    it('is the same by the equation in newtons and millimetres: 108.25 G² D L', () => {
        // Wood Handbook, Equation 8-10a (from memory); 15,700 by unit conversion.
        const newtons = breakingWithdrawal('wood screw', embedded(0.63, 0.164, 1));
        expect(newtons / (108.25 * 0.63 ** 2 * 0.164 * inch * inch)).toBeCloseTo(1, 4);
        expect(newtons).toBeCloseTo(4546, 0);
    });

    it('from particleboard of 0.75, number 8, 5/8 in deep: 299.8 lb from the face and 232.0 lb from the edge', () => {
        // Wood Handbook, chapter 8 (from memory).
        const screw = embedded(0.75, 0.164, 0.625);
        expect(breakingFromParticleboard('face', screw)).toBeCloseTo(1333.5, 0);
        expect(breakingFromParticleboard('face', screw) / poundForce).toBeCloseTo(299.8, 1);
        expect(breakingFromParticleboard('edge', screw) / poundForce).toBeCloseTo(232.0, 1);
    });
});

describe('design values in withdrawal, pounds for each inch', () => {
    // NDS-2018, Equations 12.2-1 to 12.2-3.
    it.each<[DrivenForm, number, number, number, number]>([
        ['wood screw', 0.5, 0.138, 98.3, 1],
        ['wood screw', 0.5, 0.164, 116.85, 2],
        ['wood screw', 0.5, 0.19, 135.4, 1],
        ['wood screw', 0.67, 0.138, 176.6, 1],
        ['wood screw', 0.67, 0.164, 209.8, 1],
        ['wood screw', 0.67, 0.19, 243.1, 1],
        ['wood screw', 0.45, 0.19, 109.7, 1],
        ['nail', 0.42, 0.131, 20.667, 3],
        ['lag screw', 0.55, 0.5, 436.56, 2],
    ])('%s in wood of %d, %d in thick: %d', (form, gravity, diameter, pounds, figures) => {
        expect(designWithdrawal(form, embedded(gravity, diameter, 1)) / poundForce).toBeCloseTo(pounds, figures);
    });

    it('of the published examples: a nail 2.395 in deep holds 49.50 lb, a lag screw 2.1875 in deep 954.98 lb', () => {
        // American Wood Council, Structural Wood Design Examples, E2.1a and E2.3.
        const nail = designWithdrawal('nail', embedded(0.42, 0.131, 2.395));
        expect(nail / poundForce).toBeCloseTo(49.5, 2);
        expect(nail / (2.395 * inch)).toBeCloseTo(3.61931, 3);
        const lag = designWithdrawal('lag screw', embedded(0.55, 0.5, 2.1875));
        expect(lag / poundForce).toBeCloseTo(954.98, 1);
        expect(lag / 1000).toBeCloseTo(4.24794, 3);
    });
});

describe('dowel bearing strengths', () => {
    // NDS-2018, Table 12.3.3, which rounds to 50 psi (rounding from memory).
    it.each([
        [0.5, 4636.7, 4650],
        [0.55, 5525.5, 5550],
        [0.67, 7944.9, 7950],
    ])('of wood of %d: %d psi, %d in the table', (gravity, pounds, tabulated) => {
        expect(bearingStrength(gravity) / psi).toBeCloseTo(pounds, 1);
        expect(Math.round(bearingStrength(gravity) / psi / 50) * 50).toBe(tabulated);
    });
});

function shear(gravity: number, diameter: number, ksi: number, side: number, main: number): SingleShear {
    const bearing = bearingStrength(gravity);
    return {
        diameter: diameter * inch,
        bendingYield: ksi * 1000 * psi,
        reduction: reductionTerm(diameter * inch),
        side: { length: side * inch, bearing },
        main: { length: main * inch, bearing },
    };
}

describe('yield in single shear', () => {
    it('a 10d common nail through 3/4 in of Douglas-fir, 2.25 in into it, all six modes: 105.1 lb', () => {
        // American Wood Council, Structural Wood Design Examples; NDS-2018, Equations 12.3-1 to 12.3-6.
        const modes = yieldModes(shear(0.5, 0.148, 90, 0.75, 2.25));
        const pounds = (mode: YieldMode) => modes[mode] / poundForce;
        expect(pounds('Im')).toBeCloseTo(701.8, 1);
        expect(pounds('Is')).toBeCloseTo(233.9, 1);
        expect(pounds('II')).toBeCloseTo(233.9, 1);
        expect(pounds('IIIm')).toBeCloseTo(243.7, 1);
        expect(pounds('IIIs')).toBeCloseTo(105.1, 2);
        expect(pounds('IV')).toBeCloseTo(117.4, 1);
        expect(weakestMode(modes).mode).toBe('IIIs');
        expect(weakestMode(modes).load).toBeCloseTo(467.49, 1);
    });

    // NDS-2018 by its equations: number 8, root of a rolled thread 0.131 in, through 3/4 in, 1.25 in deep.
    it.each([
        [0.5, 88.1, 'IIIs'],
        [0.67, 120.4, 'IV'],
        [0.43, 71.1, 'IIIs'],
    ])('a screw of number 8 in wood of %d: %d lb by mode %s', (gravity, pounds, mode) => {
        const weakest = weakestMode(yieldModes(shear(gravity, 0.131, 90, 0.75, 1.25)));
        expect(weakest.load / poundForce).toBeCloseTo(pounds, 1);
        expect(weakest.mode).toBe(mode);
    });

    it('bends at the yield of its size, and is divided by the term of its size', () => {
        // NDS-2018, Table I1 and Table 12.3.1B.
        expect([0.099, 0.142, 0.148, 0.177, 0.19, 0.25].map((d) => Math.round((bendingYield(d * inch) ?? 0) / psi / 1000))).toEqual([
            100, 100, 90, 90, 80, 70,
        ]);
        expect(bendingYield(0.08 * inch)).toBeUndefined();
        expect([0.131, 0.17, 0.19].map((d) => reductionTerm(d * inch))).toEqual([2.2, 2.2, 2.4]);
    });

    it('counts not at all under six diameters in the second board, and fully from ten on', () => {
        // NDS-2018, 12.1.5, and the notes to its tables (from memory).
        expect([5.9, 6, 8, 10, 12].map((diameters) => penetrationFactor(diameters * 4, 4))).toEqual([0, 0.6, 0.8, 1, 1]);
    });
});

it('a screw of number 8 across hard hardwood gives 172.1 lb at the proportional limit of a test', () => {
    // Wood Handbook, chapter 8, table of coefficients (from memory): 6,400 D².
    const newtons = testedLateral('wood screw', { family: 'hardwood', gravity: 0.63 }, 0.164 * inch) ?? Number.NaN;
    expect(newtons / poundForce).toBeCloseTo(172.1, 1);
    expect(newtons).toBeCloseTo(765.8, 0);
    expect(testedLateral('wood screw', { family: 'hardwood', gravity: 0.9 }, 4)).toBeUndefined();
});

describe('coefficients of the tests, the same in newtons and millimetres', () => {
    // Wood Handbook, chapter 8 (from memory): each printed in both systems.
    it.each<[DrivenForm, 'softwood' | 'hardwood', number, number]>([
        ['nail', 'softwood', 0.35, 50.04],
        ['nail', 'softwood', 0.45, 62.55],
        ['nail', 'softwood', 0.5, 76.45],
        ['nail', 'hardwood', 0.4, 50.04],
        ['nail', 'hardwood', 0.5, 69.5],
        ['nail', 'hardwood', 0.63, 94.52],
        ['wood screw', 'softwood', 0.35, 23.17],
        ['wood screw', 'softwood', 0.45, 29.79],
        ['wood screw', 'softwood', 0.5, 36.4],
        ['wood screw', 'hardwood', 0.4, 26.48],
        ['wood screw', 'hardwood', 0.5, 36.4],
        ['wood screw', 'hardwood', 0.63, 44.13],
        ['lag screw', 'softwood', 0.35, 23.3],
        ['lag screw', 'softwood', 0.45, 26.34],
        ['lag screw', 'softwood', 0.5, 29.51],
        ['lag screw', 'hardwood', 0.4, 26.34],
        ['lag screw', 'hardwood', 0.5, 29.51],
        ['lag screw', 'hardwood', 0.63, 34.13],
    ])('%s in %s of %d: %d', (form, family, gravity, coefficient) => {
        expect((testedLateral(form, { family, gravity }, 1) ?? 0) / coefficient).toBeCloseTo(1, 3);
    });
});

describe('a specific gravity on another basis', () => {
    // Of species in Wood Handbook, Table 5-3b (volume at 12 %), as NDS-2018, Table 12.3.3A tabulates them on ovendry volume.
    it.each([
        ['northern red oak', 0.63, 0.68],
        ['white oak', 0.68, 0.73],
        ['yellow-poplar', 0.42, 0.43],
        ['Douglas-fir', 0.48, 0.5],
        ['eastern white pine', 0.35, 0.36],
        ['ponderosa pine', 0.4, 0.43],
        ['Sitka spruce', 0.4, 0.43],
    ])('%s of %d comes within a twenty-fifth of the %d of the code', (_, airdry, tabulated) => {
        expect(Math.abs(onBasis(airdry, 'airdry', 'ovendry') / tabulated - 1)).toBeLessThan(0.04);
    });

    it('comes back to itself', () => {
        const bases: readonly GravityBasis[] = ['airdry', 'green', 'ovendry'];
        for (const from of bases) for (const to of bases) expect(onBasis(onBasis(0.55, from, to), to, from)).toBeCloseTo(0.55, 12);
    });
});
