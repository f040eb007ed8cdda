/** Beams against published formulas and check values. */
import { describe, expect, it } from 'vitest';
import { type Beam, type BeamLoad, bendingOf, greatestMoment, greatestSag, sagAt } from '../../src/strength/beam.js';
import { bendingStress, transformedSection } from '../../src/strength/section.js';

const inch = 25.4;
const psi = 0.006894757293168;
const poundForce = 4.4482216152605;

function beam(span: number, stiffness: number, loads: readonly BeamLoad[], ends: Beam['ends'] = 'simple'): Beam {
    return { span, stiffnessAt: () => stiffness, ends, loads };
}
const uniform = (span: number, perLength: number): BeamLoad => ({ is: 'spread', from: 0, to: span, perLength: () => perLength });
const sagOf = (one: Beam) => greatestSag(one, bendingOf(one));

// A shelf 36in long, 3/4in by 11 1/4in, with 40 lb/ft2 on it: worked values computed from the standard beam formulas
// (Wood Handbook FPL-GTR-282, Table 9-1; uniform load 5 w L⁴ / 384 E I, load at the middle P L³ / 48 E I).
const span = 36 * inch;
const secondMoment = 0.3955078125 * inch ** 4;
const perLength = (3.125 * poundForce) / inch;

describe('beams of one section', () => {
    it.each([
        ['cherry', 1.49e6, 0.116],
        ['northern red oak', 1.82e6, 0.0949],
        ['eastern white pine', 1.24e6, 0.1394],
        ['medium-density fibreboard', 530_000, 0.326],
        ['particleboard M-2', 290_000, 0.5959],
    ])('a shelf of %s sags %d psi: %d in', (_, modulus, inches) => {
        const sag = sagOf(beam(span, modulus * psi * secondMoment, [uniform(span, perLength)]));
        expect(sag.value / inch).toBeCloseTo(inches, 4);
        expect(sag.at / span).toBeCloseTo(0.5, 4);
    });

    it('fixed at both ends it sags a fifth as far: 0.0232in', () => {
        const fixed = sagOf(beam(span, 1.49e6 * psi * secondMoment, [uniform(span, perLength)], 'fixed'));
        expect(fixed.value / inch).toBeCloseTo(0.0232, 4);
    });

    it('50 lb at the middle: 0.08247in, and 0.020617in between fixed ends', () => {
        const load: BeamLoad = { is: 'point', at: span / 2, force: 50 * poundForce };
        const stiffness = 1.49e6 * psi * secondMoment;
        expect(sagOf(beam(span, stiffness, [load])).value / inch).toBeCloseTo(0.08247, 5);
        expect(sagOf(beam(span, stiffness, [load], 'fixed')).value / inch).toBeCloseTo(0.020617, 6);
    });

    it('50 lb at 12in from one end: 0.065161in there, most 19.596in from the far support', () => {
        const one = beam(span, 1.49e6 * psi * secondMoment, [{ is: 'point', at: 12 * inch, force: 50 * poundForce }]);
        const bending = bendingOf(one);
        expect(sagAt(one, bending, 12 * inch) / inch).toBeCloseTo(0.065161, 6);
        const most = greatestSag(one, bending);
        expect(most.value / inch).toBeCloseTo(0.070939, 6);
        expect((span - most.at) / inch).toBeCloseTo(19.596, 2);
    });

    it('900 mm, 300 x 19 mm, 10,300 MPa, 0.6 N/mm: 2.90216 mm', () => {
        expect(sagOf(beam(900, 10_300 * 171_475, [uniform(900, 0.6)])).value).toBeCloseTo(2.90216, 5);
    });

    it('the moment at the middle is w L² / 8, and half the load is on each support', () => {
        const one = beam(900, 1, [uniform(900, 0.6)]);
        const bending = bendingOf(one);
        expect(greatestMoment(one, bending).value).toBeCloseTo((0.6 * 900 ** 2) / 8, 6);
        expect(bending.reactions[0]).toBeCloseTo(270, 9);
        expect(bending.reactions[1]).toBeCloseTo(270, 9);
    });
});

/** A second method: the beam cut into equal steps, `M = E I y''` by central differences, solved from end to end. */
function sagByFiniteDifferences(one: Beam, steps: number): number {
    const { span: length } = one;
    const bending = bendingOf({ ...one, ends: 'simple' });
    const step = length / steps;
    // y[i-1] - 2 y[i] + y[i+1] = -step² M / E I, nothing at the ends: a tridiagonal system, swept once each way
    const upper: number[] = [];
    const right: number[] = [];
    for (let index = 1; index < steps; index++) {
        const x = index * step;
        const load = (-(step ** 2) * bending.momentAt(x)) / one.stiffnessAt(x);
        const pivot = -2 - (upper.at(-1) ?? 0);
        const before = right.at(-1) ?? 0;
        upper.push(1 / pivot);
        right.push((load - before) / pivot);
    }
    let [deflection, most] = [0, 0];
    for (let index = steps - 2; index >= 0; index--) {
        deflection = right[index]! - upper[index]! * deflection;
        most = Math.max(most, deflection);
    }
    return most;
}

describe('beams whose section changes along them, against finite differences', () => {
    it('a shelf with a bowed front', () => {
        const depth = (x: number) => 250 + 80 * Math.sin((Math.PI * x) / 1000);
        const one: Beam = {
            span: 1000,
            stiffnessAt: (x) => (10_000 * depth(x) * 19 ** 3) / 12,
            ends: 'simple',
            loads: [{ is: 'spread', from: 0, to: 1000, perLength: (x) => 0.002 * depth(x) }],
        };
        expect(sagOf(one).value / sagByFiniteDifferences(one, 2000)).toBeCloseTo(1, 4);
    });

    it('a tapered shelf with half a load and one box on it', () => {
        const one: Beam = {
            span: 800,
            stiffnessAt: (x) => 5e8 * (1 + x / 800),
            ends: 'simple',
            loads: [
                { is: 'spread', from: 100, to: 450, perLength: () => 0.5 },
                { is: 'point', at: 600, force: 80 },
            ],
        };
        expect(sagOf(one).value / sagByFiniteDifferences(one, 4000)).toBeCloseTo(1, 3);
    });
});

// Worked examples of composite shelves, computed by hand from the transformed section.
describe('sections of unlike materials', () => {
    it('18 mm plywood with an 18 x 40 mm edge of solid wood, flush at the top: 3.03 times as stiff', () => {
        const section = transformedSection([
            { name: 'plywood', width: 300, height: 18, below: 0, modulus: 4500 },
            { name: 'edge', width: 18, height: 40, below: 0, modulus: 8000 },
        ]);
        expect(section.neutralAxis).toBeCloseTo(11.1078, 4);
        expect(section.stiffness / 4500).toBeCloseTo(441_669, 0);
        expect(section.stiffness / ((4500 * 300 * 18 ** 3) / 12)).toBeCloseTo(3.0293, 4);
    });

    it('3/4in particleboard with a 3/4 x 1 1/2in cherry nosing: 568,884 lb in²', () => {
        const section = transformedSection([
            { name: 'particleboard', width: 11.25, height: 0.75, below: 0, modulus: 0.29e6 },
            { name: 'nosing', width: 0.75, height: 1.5, below: 0, modulus: 1.49e6 },
        ]);
        expect(section.neutralAxis).toBeCloseTo(0.527456, 6);
        expect(section.stiffness).toBeCloseTo(568_884, -1);
    });

    it('19 mm fibreboard between 0.6 mm veneers: as stiff as 3,526 MPa throughout', () => {
        const section = transformedSection([
            { name: 'veneer', width: 1, height: 0.6, below: 0, modulus: 10_300 },
            { name: 'fibreboard', width: 1, height: 19, below: 0.6, modulus: 2160 },
            { name: 'veneer', width: 1, height: 0.6, below: 19.6, modulus: 10_300 },
        ]);
        expect(section.stiffness).toBeCloseTo(2_422_045, 0);
        expect(section.stiffness / (20.2 ** 3 / 12)).toBeCloseTo(3526, 0);
    });

    it('the stress of a plain section is 6 M / b h²', () => {
        const strip = { name: 'board', width: 300, height: 19, below: 0, modulus: 10_300 };
        expect(bendingStress(transformedSection([strip]), strip, 60_750)).toBeCloseTo((6 * 60_750) / (300 * 19 ** 2), 9);
    });
});
