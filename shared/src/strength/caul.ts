/**
 * Cauls: two bearers across a panel, one over and one under it, drawn together by a clamp at each end while the glue sets. A straight one
 * presses at its ends only, for it bends away in the middle; planed to a crown that is what it would bend, it presses evenly along its
 * length once its clamps have closed it. Millimetres, newtons, megapascals.
 */

/** Of a rectangle: height in the direction of pressing. */
export interface CaulSection {
    readonly height: number;
    readonly width: number;
    readonly modulusOfElasticity: number;
}

/**
 * How far a caul that is held at its ends and loaded evenly bends, at a distance from one end: w x (L^3 - 2 L x^2 + x^3) / (24 E I), and
 * 5 w L^4 / (384 E I) at its middle (simple beam under a uniform load: Wood Handbook FPL-GTR-282, Equation 9-2 and Table 9-1, with the
 * apparent modulus of elasticity, which holds the shear of a beam of 14 depths; a shorter one bends a little more).
 * @param load on its length, N/mm
 */
export function caulCrown({ height, width, modulusOfElasticity }: CaulSection, length: number, load: number, from: number): number {
    const moment = (width * height ** 3) / 12;
    return (load * from * (length ** 3 - 2 * length * from ** 2 + from ** 3)) / (24 * modulusOfElasticity * moment);
}

export interface CaulLoad {
    /** On the length of the caul, N/mm. */
    readonly load: number;
    /** Of the clamp at each end, N. */
    readonly force: number;
    /** At the middle, mm. */
    readonly crown: number;
    /** Greatest bending stress, MPa. */
    readonly stress: number;
}

/** What a pressure on the glue asks of a caul that serves a width of the panel. */
export function caulLoad(section: CaulSection, length: number, spacing: number, pressure: number): CaulLoad {
    const load = pressure * spacing;
    const sectionModulus = (section.width * section.height ** 2) / 6;
    return {
        load,
        force: (load * length) / 2,
        crown: caulCrown(section, length, load, length / 2),
        stress: (load * length ** 2) / 8 / sectionModulus,
    };
}

/** The pressure that two clamps give a glue line under a caul, MPa. */
export function clampPressure(force: number, length: number, spacing: number): number {
    return (2 * force) / (length * spacing);
}
