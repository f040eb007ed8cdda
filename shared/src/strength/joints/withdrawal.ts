/** What pulls a screw or a nail out of wood, by the published equations. Millimetres in, newtons out. */

export type DrivenForm = 'wood screw' | 'nail' | 'lag screw';

/** What goes into the wood. Specific gravities have three bases; which one an equation was made for is said with it. */
export interface Embedded {
    readonly gravity: number;
    /** Of the shank. */
    readonly diameter: number;
    /** Of the thread, or of the nail, in the wood. */
    readonly length: number;
}

/** `p = factor G^gravity D^diameter L`, in pounds and inches. */
interface Law {
    readonly factor: number;
    readonly gravity: number;
    readonly diameter: number;
}

const breaking: Readonly<Record<DrivenForm, Law>> = {
    'wood screw': { factor: 15700, gravity: 2, diameter: 1 },
    nail: { factor: 7850, gravity: 5 / 2, diameter: 1 },
    'lag screw': { factor: 8100, gravity: 3 / 2, diameter: 3 / 4 },
};

const design: Readonly<Record<DrivenForm, Law>> = {
    'wood screw': { factor: 2850, gravity: 2, diameter: 1 },
    nail: { factor: 1380, gravity: 5 / 2, diameter: 1 },
    'lag screw': { factor: 1800, gravity: 3 / 2, diameter: 3 / 4 },
};

export const inch = 25.4;
/** The pound (1 lb = 0.45359237 kg) under standard gravity, in newtons. */
export const poundForce = 4.4482216152605;

function pull({ factor, gravity, diameter }: Law, embedded: Embedded): number {
    const pounds = factor * embedded.gravity ** gravity * (embedded.diameter / inch) ** diameter * (embedded.length / inch);
    return pounds * poundForce;
}

/**
 * The pull that breaks it out of side grain in a short test, on the average (Wood Handbook FPL-GTR-282, Equation 8-10b for wood screws; its
 * chapter 8 for nails and lag screws, from memory). The specific gravity is ovendry mass over volume at 12 %.
 */
export function breakingWithdrawal(form: DrivenForm, embedded: Embedded): number {
    return pull(breaking[form], embedded);
}

/**
 * The design value in withdrawal from side grain, under a load of normal duration (NDS-2018, Equations 12.2-1 to 12.2-3). The specific
 * gravity is ovendry mass over ovendry volume.
 */
export function designWithdrawal(form: DrivenForm, embedded: Embedded): number {
    return pull(design[form], embedded);
}

/**
 * The pull that breaks a wood screw out of particleboard in a short test: `K D^(1/2) (L - D/3)^(5/4) G²` (Wood Handbook, chapter 8, from
 * memory). The specific gravity is that of the board: ovendry mass over its volume as it is.
 */
export function breakingFromParticleboard(into: 'face' | 'edge', { gravity, diameter, length }: Embedded): number {
    const [d, l] = [diameter / inch, length / inch];
    const factor = into === 'face' ? 2655 : 2055;
    return factor * Math.sqrt(d) * Math.max(0, l - d / 3) ** (5 / 4) * gravity ** 2 * poundForce;
}

/** The share of the pull from side grain at which wood screws come out of end grain (Wood Handbook FPL-GTR-282, chapter 8). */
export const endGrainShare = 0.75;
