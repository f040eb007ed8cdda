/** Sections of boards that are glued up of unlike materials: how stiff they are in bending, and where their middle lies. */

/** A rectangle of one material in a section. Millimetres, and megapascals for its modulus. */
export interface Strip {
    readonly name: string;
    /** Across the section, square to the load. */
    readonly width: number;
    readonly height: number;
    /** From the top of the section down to its own top. */
    readonly below: number;
    /** Modulus of elasticity along the span. */
    readonly modulus: number;
    /** Not glued to the others: it bends as they do, about a middle of its own. */
    readonly loose?: boolean;
}

export interface Section {
    /** Modulus of elasticity times second moment of area, in N mm². */
    readonly stiffness: number;
    /** From the top of the section down to the neutral axis. */
    readonly neutralAxis: number;
    readonly strips: readonly Strip[];
}

/**
 * The transformed section: each strip counts by its modulus, `y = Σ E A y / Σ E A`, `E I = Σ E (b h³ / 12 + A (y_i - y)²)`.
 * Wood Handbook FPL-GTR-282, chapter 9 (mechanics of built-up members).
 * Strips that are not glued to the others add what they have by themselves.
 * @param strips at least one that is glued, each with some width, height and modulus
 */
export function transformedSection(strips: readonly Strip[]): Section {
    let [weight, moment] = [0, 0];
    for (const { width, height, below, modulus, loose } of strips) {
        if (loose) continue;
        weight += modulus * width * height;
        moment += modulus * width * height * (below + height / 2);
    }
    const neutralAxis = moment / weight;
    let stiffness = 0;
    for (const { width, height, below, modulus, loose } of strips) {
        const off = loose ? 0 : below + height / 2 - neutralAxis;
        stiffness += modulus * ((width * height ** 3) / 12 + width * height * off ** 2);
    }
    return { stiffness, neutralAxis, strips };
}

/** The greatest stress in a strip under a bending moment (N mm), in megapascals: `M y E / (E I)` at its face further from the middle. */
export function bendingStress({ stiffness, neutralAxis }: Section, { below, height, modulus, loose }: Strip, moment: number): number {
    const furthest = loose ? height / 2 : Math.max(Math.abs(below - neutralAxis), Math.abs(below + height - neutralAxis));
    return (Math.abs(moment) * furthest * modulus) / stiffness;
}
