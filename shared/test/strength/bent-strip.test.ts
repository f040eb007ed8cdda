import { describe, expect, test } from 'vitest';
import { bowCurve, bowShapeOfEndAngle, bowShapeOfRise, bowShapeOfRiseInStrip } from '../../src/geometry/index.js';
import { bentStrip, dryStrain, leastRadiusOfPlywood, outerStrain, thickestFor } from '../../src/strength/index.js';
import { stripOfEndAngle } from '../geometry/curves/independent-elastica.js';

const degrees = Math.PI / 180;

describe('a strip that a string bends', () => {
    // Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., section 2.7: load over Euler load and curvature, computed columns
    test.each([
        [20, 1.0154, 1.0994],
        [40, 1.0637, 2.2163],
        [60, 1.1517, 3.3715],
        [80, 1.2939, 4.5941],
    ])('at an end angle of %d degrees it pulls %d times its Euler load', (angle, overEuler, curvature) => {
        const shape = bowShapeOfEndAngle(angle * degrees);
        const [length, width, thickness, stiffness] = [1000, 25, 4, 10_000];
        const strip = { length, loadRatio: shape.loadRatio, greatestCurvature: shape.greatestCurvature / length };
        const bent = bentStrip(strip, thickness, { width, modulusOfElasticity: stiffness });
        // a tenth stiffer than the tabulated modulus: Wood Handbook FPL-GTR-282, Table 5-3b, note c
        const euler = (Math.PI ** 2 * 1.1 * stiffness * ((width * thickness ** 3) / 12)) / length ** 2;
        expect(bent.pull! / euler).toBeCloseTo(overEuler, 4);
        expect(bent.strain).toBeCloseTo(((thickness / 2) * curvature) / length, 6);
    });

    test('the pull is what an independent solution of the differential equation needs', () => {
        const bow = bowCurve({ x: 0, y: 0 }, { x: 900, y: 0 }, 180);
        if (!bow.ok) throw new Error(bow.refusal.reason);
        const { strip } = bow.curve;
        const rigidity = (1.1 * 12_000 * 20 * 5 ** 3) / 12;
        const { pull } = bentStrip(strip, 5, { width: 20, modulusOfElasticity: 12_000 });
        // moment at the middle: pull times rise is rigidity times curvature
        expect((pull! * 180) / rigidity).toBeCloseTo(strip.greatestCurvature, 12);
        const solved = stripOfEndAngle(strip.endAngle);
        expect(pull! / rigidity).toBeCloseTo(solved.load / strip.length ** 2, 9);
    });

    test('without a width or a stiffness nothing is said of the pull', () => {
        expect(bentStrip({ length: 1000, loadRatio: 1, greatestCurvature: 0.001 }, 4, undefined)).toEqual({
            pull: undefined,
            strain: 0.002,
        });
    });
});

describe('a string shortened to a rise', () => {
    test.each([0.05, 0.1, 0.2, 0.5])('is the same bow as that of rise over chord %d', (ratio) => {
        const known = bowShapeOfRise(ratio);
        const found = bowShapeOfRiseInStrip(known.rise)!;
        expect(found.endAngle).toBeCloseTo(known.endAngle, 12);
        expect(found.chord).toBeCloseTo(known.chord, 12);
    });

    test('a rise that no strip has is refused', () => {
        // the greatest rise of a strip is 0.403 of its length, at an end angle of 117 degrees: the elastica columns peak there
        expect(bowShapeOfRiseInStrip(0.41)).toBeUndefined();
        expect(bowShapeOfRiseInStrip(0)).toBeUndefined();
        expect(bowShapeOfRiseInStrip(Number.NaN)).toBeUndefined();
    });
});

describe('what wood takes', () => {
    test('NDS-2018, section 5.3.8 (from memory): 1/100 for hardwoods is a strain of 0.5 %, 1/125 for softwoods 0.4 %', () => {
        expect(dryStrain('hardwood')).toBeCloseTo(0.005, 15);
        expect(dryStrain('softwood')).toBeCloseTo(0.004, 15);
        expect(thickestFor(dryStrain('hardwood'), 1000)).toBeCloseTo(10, 12);
        expect(outerStrain(10, 1000)).toBeCloseTo(0.005, 15);
    });

    // FAA AC 43.13-1B, minimum bend radii of plywood: thickness, face grain around the bend, face grain along the axis
    test.each([
        [0.035, 2.0, 1.1],
        [0.125, 12.0, 7.1],
        [0.19, 21.0, 14.0],
        [0.25, 31.0, 20.0],
        [0.375, 54.0, 36.0],
    ])('plywood of %d in bends to %d in, or %d in', (thickness, around, along) => {
        expect(leastRadiusOfPlywood(thickness * 25.4, 'around').radius / 25.4).toBeCloseTo(around, 9);
        expect(leastRadiusOfPlywood(thickness * 25.4, 'along').radius / 25.4).toBeCloseTo(along, 9);
    });

    test('between two rows it lies between their radii; past the table it says so', () => {
        const between = leastRadiusOfPlywood(0.28 * 25.4, 'around');
        expect(between.inTable).toBe(true);
        expect(between.radius / 25.4).toBeGreaterThan(31);
        expect(between.radius / 25.4).toBeLessThan(43);
        const past = leastRadiusOfPlywood(0.75 * 25.4, 'around');
        expect(past.inTable).toBe(false);
        expect(past.radius / 25.4).toBeCloseTo(108, 9);
    });
});
