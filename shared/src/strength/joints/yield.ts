/**
 * Screws and nails under a load across them, through one board into another, by the yield equations of NDS-2018, 12.3.
 * Millimetres, newtons, megapascals. For shanks under 1/4 in, for which the direction of the grain does not count.
 */
import type { DrivenForm } from './withdrawal.js';
import { inch, poundForce } from './withdrawal.js';

/** One psi in megapascals. */
const psi = poundForce / inch ** 2;

/** At this diameter the equations begin to look at the direction of the grain. */
export const grainCounts = inch / 4;

/**
 * Dowel bearing strength of wood under a shank of less than 1/4 in: `16,600 G^1.84` psi (NDS-2018, Table 12.3.3, which rounds it to 50 psi).
 * @param gravity ovendry mass over ovendry volume
 */
export function bearingStrength(gravity: number): number {
    return 16600 * gravity ** 1.84 * psi;
}

/** From the thinnest on: up to which diameter, in inches, and ksi. Wood screws have the same steps. */
const yieldSteps: readonly (readonly [upTo: number, ksi: number])[] = [
    [0.142, 100],
    [0.177, 90],
    [0.236, 80],
    [0.273, 70],
];

/** Bending yield strength of a nail or screw by the diameter of its shank (NDS-2018, Table I1; of screws from memory). Undefined outside the table. */
export function bendingYield(diameter: number): number | undefined {
    const d = diameter / inch;
    if (d < 0.099 - 1e-9) return undefined;
    const step = yieldSteps.find(([upTo]) => d <= upTo + 1e-9);
    return step && step[1] * 1000 * psi;
}

/** What the yield load is divided by (NDS-2018, Table 12.3.1B, under 1/4 in): 2.2 up to 0.17 in, and from there `10 D + 0.5`. */
export function reductionTerm(diameter: number): number {
    const d = diameter / inch;
    return d <= 0.17 ? 2.2 : 10 * d + 0.5;
}

/** A fastener through the side member into the main one. */
export interface SingleShear {
    /** Of the root where it is threaded. */
    readonly diameter: number;
    readonly bendingYield: number;
    readonly reduction: number;
    readonly side: { readonly length: number; readonly bearing: number };
    readonly main: { readonly length: number; readonly bearing: number };
}

export type YieldMode = 'Im' | 'Is' | 'II' | 'IIIm' | 'IIIs' | 'IV';

/** The design load of each mode of yielding in single shear (NDS-2018, Equations 12.3-1 to 12.3-6 with k1 to k3). */
export function yieldModes({
    diameter: d,
    bendingYield: fyb,
    reduction: rd,
    side: { length: ls, bearing: fes },
    main: { length: lm, bearing: fem },
}: SingleShear): Readonly<Record<YieldMode, number>> {
    const re = fem / fes;
    const rt = lm / ls;
    const k1 = (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re);
    const k2 = -1 + Math.sqrt(2 * (1 + re) + (2 * fyb * (1 + 2 * re) * d ** 2) / (3 * fem * lm ** 2));
    const k3 = -1 + Math.sqrt((2 * (1 + re)) / re + (2 * fyb * (2 + re) * d ** 2) / (3 * fem * ls ** 2));
    return {
        Im: (d * lm * fem) / rd,
        Is: (d * ls * fes) / rd,
        II: (k1 * d * ls * fes) / rd,
        IIIm: (k2 * d * lm * fem) / ((1 + 2 * re) * rd),
        IIIs: (k3 * d * ls * fem) / ((2 + re) * rd),
        IV: (d ** 2 / rd) * Math.sqrt((2 * fem * fyb) / (3 * (1 + re))),
    };
}

/** The mode that yields first, and its load. */
export function weakestMode(modes: Readonly<Record<YieldMode, number>>): { readonly mode: YieldMode; readonly load: number } {
    const [mode, load] = (Object.entries(modes) as [YieldMode, number][]).reduce((a, b) => (b[1] < a[1] ? b : a));
    return { mode, load };
}

/** Factors on a design value, from memory of NDS-2018: what stands for years, what lasts ten minutes (2.3.2), and a load across a screw in end grain (12.5.2). */
export const designFactors = { permanent: 0.9, tenMinutes: 1.6, endGrain: 0.67 } as const;

/** A shank counts fully from this many diameters in the main member on, in proportion down to the least, and not at all below (NDS-2018, 12.1.4 to 12.1.6). */
export const penetration = { least: 6, full: 10 } as const;

/** What a shorter penetration leaves of a design value (NDS-2018, notes to the tables of chapter 12, from memory). */
export function penetrationFactor(length: number, shank: number): number {
    const ratio = length / shank;
    return ratio < penetration.least - 1e-9 ? 0 : Math.min(1, ratio / penetration.full);
}

/** Coefficient of the lateral load in tests, by kind of wood and specific gravity at 12 %, in pounds and inches. */
const lateralCoefficients = {
    softwood: [
        { upTo: 0.42, nail: 1440, 'wood screw': 3360, 'lag screw': 3380 },
        { upTo: 0.47, nail: 1800, 'wood screw': 4320, 'lag screw': 3820 },
        { upTo: 0.52, nail: 2200, 'wood screw': 5280, 'lag screw': 4280 },
    ],
    hardwood: [
        { upTo: 0.47, nail: 1440, 'wood screw': 3840, 'lag screw': 3820 },
        { upTo: 0.56, nail: 2000, 'wood screw': 5280, 'lag screw': 4280 },
        { upTo: 0.74, nail: 2720, 'wood screw': 6400, 'lag screw': 4950 },
    ],
} as const;
const lightest = { softwood: 0.29, hardwood: 0.33 } as const;

/**
 * The load across a fastener in side grain at the proportional limit of a short test, on the average, and of a nail at a slip of 0.38 mm:
 * `K D^1.5` for nails, `K D²` for screws (Wood Handbook, chapter 8, from memory). Undefined outside the range of its table.
 * @param gravity ovendry mass over volume at 12 %
 */
export function testedLateral(
    form: DrivenForm,
    wood: { readonly family: 'softwood' | 'hardwood'; readonly gravity: number },
    diameter: number,
): number | undefined {
    if (wood.gravity < lightest[wood.family]) return undefined;
    const row = lateralCoefficients[wood.family].find(({ upTo }) => wood.gravity <= upTo + 0.005);
    return row && row[form] * (diameter / inch) ** (form === 'nail' ? 1.5 : 2) * poundForce;
}
