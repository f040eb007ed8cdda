/** How hardwood is measured and sold. All lengths in millimetres. */

const inch = 25.4;
const foot = 12 * inch;

/**
 * Board feet of one board: thickness in inches by width in inches by length in feet over 12, in which less than an inch of thickness counts as an
 * inch (rules of the National Hardwood Lumber Association, from memory; USDA Wood Handbook, FPL-GTR-282, glossary).
 */
export function boardFeet({ thickness, width, length }: { thickness: number; width: number; length: number }): number {
    return (Math.max(1, thickness / inch) * (width / inch) * (length / foot)) / 12;
}

/**
 * The surface measure of a hardwood board in whole square feet: width in inches, with its fraction, by whole feet of length over 12, to the nearest
 * foot. Halves go up and down in turn, so the caller says which one this is (rules of the National Hardwood Lumber Association, from memory).
 */
export function surfaceMeasure(width: number, length: number, halfGoesUp: boolean): number {
    const exact = ((width / inch) * Math.floor(length / foot + 1e-9)) / 12;
    const below = Math.floor(exact + 1e-9);
    const rest = exact - below;
    if (Math.abs(rest - 0.5) < 1e-9) return below + (halfGoesUp ? 1 : 0);
    return rest > 0.5 ? below + 1 : below;
}

/**
 * The share of a board's surface that is clear wood in the cuttings of its grade, at least (National Hardwood Lumber Association, rules for the
 * measurement and inspection of hardwood: standard grades, in twelfths of the surface measure).
 */
const yieldOfGrade: Readonly<Record<string, number>> = {
    FAS: 10 / 12,
    'No. 1 Common': 8 / 12,
    'No. 2A Common': 6 / 12,
    'No. 3A Common': 4 / 12,
    'No. 3B Common': 3 / 12,
};

/** Undefined for a grade that is not one of these. */
export function clearYield(grade: string): number | undefined {
    return yieldOfGrade[grade];
}
