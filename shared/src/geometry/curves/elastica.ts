import { risingRoot } from '../roots.js';
import { tolerance } from '../tolerance.js';

/** Complete elliptic integrals of one modulus. */
export interface CompleteEllipticIntegrals {
    /** Of the first kind, K. */
    readonly first: number;
    /** Of the second kind, E. */
    readonly second: number;
}

/**
 * Complete elliptic integrals by the arithmetic-geometric mean (Abramowitz and Stegun, 17.6, from memory).
 * @param modulus k, at least 0
 * @param complement sqrt(1 - k^2), above 0: given apart since it cannot be had from a modulus near 1 without loss
 */
export function completeEllipticIntegrals(modulus: number, complement: number): CompleteEllipticIntegrals {
    let mean = 1;
    let geometric = complement;
    let difference = modulus;
    let weight = 0.5;
    let sum = weight * difference * difference;
    while (Math.abs(difference) > tolerance.convergence * mean) {
        difference = (mean - geometric) / 2;
        const next = (mean + geometric) / 2;
        geometric = Math.sqrt(mean * geometric);
        mean = next;
        weight *= 2;
        sum += weight * difference * difference;
    }
    const first = Math.PI / (2 * mean);
    return { first, second: first * (1 - sum) };
}

/**
 * The shape of a uniform strip whose ends a string pulls together, for a strip of length 1.
 *
 * Elastica with pinned ends: with k = sin(end angle / 2), chord = 2E/K - 1, rise = k/K, load / Euler load = (2K/pi)^2, greatest
 * curvature, at the middle, 4kK (Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., section 2.7, for half the strip).
 */
export interface BowShape {
    /** Angle between the strip's end and the string. */
    readonly endAngle: number;
    readonly modulus: number;
    readonly integrals: CompleteEllipticIntegrals;
    /** Length of the string over that of the strip; negative once the ends have crossed. */
    readonly chord: number;
    /** From string to mid-strip, over the length of the strip. */
    readonly rise: number;
    /** Pull of the string over the load at which the straight strip first buckles, pi^2 B / length^2 (B the flexural rigidity). */
    readonly loadRatio: number;
    /** Curvature at the middle times the length of the strip. */
    readonly greatestCurvature: number;
}

/**
 * The bow whose ends stand at an angle to the string.
 * @param endAngle at least 0, under pi
 */
export function bowShapeOfEndAngle(endAngle: number): BowShape {
    const modulus = Math.sin(endAngle / 2);
    const integrals = completeEllipticIntegrals(modulus, Math.cos(endAngle / 2));
    return {
        endAngle,
        modulus,
        integrals,
        chord: (2 * integrals.second) / integrals.first - 1,
        rise: modulus / integrals.first,
        loadRatio: ((2 * integrals.first) / Math.PI) ** 2,
        greatestCurvature: 4 * modulus * integrals.first,
    };
}

/**
 * The bow with a given rise over its string.
 * @param riseOverChord at least 0; every such bow exists, though past an end angle of a right angle it leans back over its string
 */
export function bowShapeOfRise(riseOverChord: number): BowShape {
    return bowShapeOfEndAngle(endAngleOfRise(riseOverChord));
}

/** Past this end angle the rise of a strip of given length falls again: its greatest is that of 117 degrees. */
const steepestEndAngle = (110 * Math.PI) / 180;

/**
 * The bow of a given rise in a strip of given length: the string is shortened until the strip rises so far.
 * @param riseOverLength rise over the length of the strip
 * @returns undefined where the rise is not above zero, or so great that the strip leans far back over its string
 */
export function bowShapeOfRiseInStrip(riseOverLength: number): BowShape | undefined {
    const steepest = bowShapeOfEndAngle(steepestEndAngle);
    if (!(riseOverLength > 0 && riseOverLength <= steepest.rise)) {
        return undefined;
    }
    const excess = (angle: number) => bowShapeOfEndAngle(angle).rise - riseOverLength;
    const slope = (angle: number) => {
        const { integrals } = bowShapeOfEndAngle(angle);
        const complement = Math.cos(angle / 2);
        // d(k/K)/dk = (2K - E/k'^2)/K^2, and dk/d(angle) = k'/2.
        return ((2 * integrals.first - integrals.second / complement ** 2) / integrals.first ** 2) * (complement / 2);
    };
    return bowShapeOfEndAngle(risingRoot(excess, slope, 0, steepestEndAngle, Math.min(Math.PI * riseOverLength, 1)));
}

/** The end angle, under that at which the ends meet, where k = ratio (2E - K): rise over chord, written without its pole. */
function endAngleOfRise(ratio: number): number {
    const excess = (angle: number) => {
        const { modulus, integrals } = bowShapeOfEndAngle(angle);
        return modulus - ratio * (2 * integrals.second - integrals.first);
    };
    const slope = (angle: number) => {
        const { modulus, integrals } = bowShapeOfEndAngle(angle);
        const complement = Math.cos(angle / 2);
        // d(2E - K)/dk = (2E - K - E/k'^2)/k, and dk/d(angle) = k'/2.
        const change = modulus === 0 ? 0 : (2 * integrals.second - integrals.first - integrals.second / complement ** 2) / modulus;
        return ((1 - ratio * change) * complement) / 2;
    };
    const pastMeeting = 2.29;
    return risingRoot(excess, slope, 0, pastMeeting, Math.min(Math.PI * ratio, 1));
}
