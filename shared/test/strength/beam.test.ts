/** Beams against published formulas and check values. */
import { describe, expect, it } from 'vitest';
import { type Beam, type BeamLoad, bendingOf, greatestMoment, greatestSag, sagAt } from '../../src/strength/beam.js';
import { continuousBending } from '../../src/strength/continuous-beam.js';
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

describe('beams that run on over their supports', () => {
    it('two equal spans under a uniform load sag 0.0054161 w L⁴ / E I, with -w L² / 8 over the middle', () => {
        // Standard beam formulas (from memory), the figure computed from them.
        const one = beam(1, 1, [uniform(1, 1)]);
        const [left, right] = continuousBending([one, one]);
        expect(left && greatestSag(one, left).value).toBeCloseTo(0.0054161, 7);
        expect(right && greatestSag(one, right).value).toBeCloseTo(0.0054161, 7);
        expect(left?.momentAt(1)).toBeCloseTo(-1 / 8, 9);
        // 3/8 of the load on the outer support
        expect(left?.reactions[0]).toBeCloseTo(3 / 8, 9);
    });

    it('three equal spans: -w L² / 10 over both inner supports', () => {
        // Standard beam formulas (from memory).
        const one = beam(1, 1, [uniform(1, 1)]);
        const bending = continuousBending([one, one, one]);
        expect(bending.map(({ momentAt }) => [momentAt(0), momentAt(1)].map((moment) => moment.toFixed(6)))).toEqual([
            ['0.000000', '-0.100000'],
            ['-0.100000', '-0.100000'],
            ['-0.100000', '0.000000'],
        ]);
    });

    it('one span alone is a simple beam', () => {
        const one = beam(900, 1e9, [uniform(900, 0.6)]);
        const [bending] = continuousBending([one]);
        expect(bending && greatestSag(one, bending).value).toBeCloseTo(sagOf(one).value, 9);
    });

    it('three unlike spans, tapered, spread and point loads, within 0.1 % of beam elements', () => {
        const depth = (x: number) => 300 - 0.06 * x;
        const stretches = [
            { from: 0, to: 700 },
            { from: 700, to: 1600 },
            { from: 1600, to: 2100 },
        ];
        const loads: readonly (readonly BeamLoad[])[] = [
            [uniform(700, 0.4)],
            [uniform(900, 0.7), { is: 'point', at: 350, force: 150 }],
            [uniform(500, 0.1)],
        ];
        const beams = stretches.map(
            ({ from, to }, index): Beam => ({
                span: to - from,
                stiffnessAt: (x) => 4e5 * depth(from + x),
                ends: 'simple',
                loads: loads[index]!,
            }),
        );
        const bending = continuousBending(beams);
        const found = beams.map((one, index) => greatestSag(one, bending[index]!).value);
        const checked = sagsByElements(beams, 10);
        for (const [index, sag] of found.entries()) {
            // a span that others lift everywhere does not sag
            if (checked[index]! > 1e-6) expect(Math.abs(sag / checked[index]! - 1)).toBeLessThan(0.001);
        }
        expect(checked[1]).toBeGreaterThan(1);
    });
});

/**
 * A second method: the whole beam in straight elements of two nodes (deflection and turning at each, cubic between them), its stiffness taken
 * in the middle of each, its loads at the nodes; solved as one system with nothing at the supports. The greatest deflection of each span.
 */
function sagsByElements(beams: readonly Beam[], size: number): readonly number[] {
    const elements = beams.flatMap((one) =>
        Array.from({ length: Math.round(one.span / size) }, (_, index) => ({ one, from: index * size })),
    );
    const count = 2 * (elements.length + 1);
    const rows = Array.from({ length: count }, () => new Float64Array(count));
    const right = new Float64Array(count);
    const fixed = new Set([0]);
    for (const [index, { one, from }] of elements.entries()) {
        const stiffness = one.stiffnessAt(from + size / 2) / size ** 3;
        const l = size;
        const local = [
            [12, 6 * l, -12, 6 * l],
            [6 * l, 4 * l * l, -6 * l, 2 * l * l],
            [-12, -6 * l, 12, -6 * l],
            [6 * l, 2 * l * l, -6 * l, 4 * l * l],
        ];
        const base = 2 * index;
        for (const [row, values] of local.entries()) {
            for (const [column, value] of values.entries()) rows[base + row]![base + column]! += stiffness * value;
        }
        for (const load of one.loads) {
            if (load.is === 'point') {
                if (Math.abs(load.at - from) < 1e-9) right[base]! += load.force;
                continue;
            }
            const force = load.perLength(from + l / 2) * l;
            for (const [row, share] of [1 / 2, l / 12, 1 / 2, -l / 12].entries()) right[base + row]! += force * share;
        }
        if (from + size > one.span - 1e-9) fixed.add(base + 2);
    }
    const free = Array.from({ length: count }, (_, index) => index).filter((index) => !fixed.has(index));
    // elimination within the band: four unknowns to either side
    for (const [at, pivot] of free.entries()) {
        for (const below of free.slice(at + 1, at + 5)) {
            const factor = rows[below]![pivot]! / rows[pivot]![pivot]!;
            if (factor === 0) continue;
            for (const column of free.slice(at, at + 9)) rows[below]![column]! -= factor * rows[pivot]![column]!;
            right[below]! -= factor * right[pivot]!;
        }
    }
    const found = new Float64Array(count);
    for (let at = free.length - 1; at >= 0; at--) {
        const row = free[at]!;
        let rest = right[row]!;
        for (const column of free.slice(at + 1, at + 9)) rest -= rows[row]![column]! * found[column]!;
        found[row] = rest / rows[row]![row]!;
    }
    const most = new Map<Beam, number>();
    for (const [index, { one }] of elements.entries()) most.set(one, Math.max(most.get(one) ?? 0, found[2 * index]!));
    return beams.map((one) => most.get(one) ?? 0);
}

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
