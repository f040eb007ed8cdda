import { describe, expect, test } from 'vitest';
import { caulCrown, caulLoad, clampPressure, gluePressure } from '../../src/strength/index.js';

const psi = 0.006894757293168361;
const poundForce = 4.4482216152605;

describe('a caul bends as a simple beam under an even load', () => {
    // closed forms of the beam tables (Wood Handbook FPL-GTR-282, Table 9-1), worked out by hand
    test('36in of 11 1/4in by 3/4in cherry (1.49 million psi) under 3.125 lbf/in: 0.1160in at the middle', () => {
        const section = { height: 0.75 * 25.4, width: 11.25 * 25.4, modulusOfElasticity: 1.49e6 * psi };
        const crown = caulCrown(section, 36 * 25.4, (3.125 * poundForce) / 25.4, 18 * 25.4);
        expect(crown / 25.4).toBeCloseTo(0.116, 4);
    });

    test('900 mm of 300 by 19 mm, 10,300 MPa, under 0.6 N/mm: 2.90216 mm', () => {
        expect(caulCrown({ height: 19, width: 300, modulusOfElasticity: 10_300 }, 900, 0.6, 450)).toBeCloseTo(2.90216, 5);
    });

    test('nothing at its ends, the same from either end, and 57/80 of the middle at a quarter (the closed form)', () => {
        const section = { height: 60, width: 40, modulusOfElasticity: 12_000 };
        const at = (from: number) => caulCrown(section, 500, 3, from);
        expect(at(0)).toBe(0);
        expect(at(500)).toBeCloseTo(0, 12);
        expect(at(125)).toBeCloseTo(at(375), 12);
        expect(at(125) / at(250)).toBeCloseTo(57 / 80, 12);
    });
});

describe('what a pressure asks, and what clamps give', () => {
    test('the two clamps carry the whole load, and give the pressure back', () => {
        const { force, load, stress } = caulLoad({ height: 60, width: 40, modulusOfElasticity: 12_000 }, 500, 150, 1.2);
        expect(load).toBeCloseTo(180, 12);
        expect(force).toBeCloseTo(45_000, 9);
        // 6 M / (b h^2) with M = w L^2 / 8
        expect(stress).toBeCloseTo((6 * (180 * 500 ** 2)) / 8 / (40 * 60 ** 2), 9);
        expect(clampPressure(force, 500, 150)).toBeCloseTo(1.2, 12);
    });

    test("what white glue's makers publish: 100 to 150 psi for softwoods, 175 to 250 psi for hardwoods", () => {
        const inPsi = Object.values(gluePressure).flatMap(({ least, most }) => [least / psi, most / psi]);
        expect(inPsi.map(Math.round)).toEqual([175, 250, 100, 150]);
    });
});
