/** Numbers as digits: fixed decimals, a half away from zero, never `-0`, and the same on every machine and in every locale. */
import { Rational } from './rational.js';
import { type Real, real } from './real.js';

/** How many decimals a number is printed with. */
export interface NumberStyle {
    /** Places after the point, 0 to 12. */
    readonly decimals: number;
    /** Whether zeros at the end of the decimals are printed (`0.720`) or not (`0.72`). */
    readonly zeros: 'kept' | 'dropped';
}

/** What stands for a value that is no number any more; approximate arithmetic can run out of range, exact arithmetic cannot. */
const outOfRange = 'out of range';

const mostDecimals = 12;

/** The smallest step that so many decimals show. */
export function decimalStep(decimals: number): Rational {
    if (!Number.isInteger(decimals) || decimals < 0 || decimals > mostDecimals) {
        throw new RangeError(`a number is printed with 0 to ${mostDecimals} decimals, not with ${decimals}`);
    }
    return Rational.of(1, 10 ** decimals);
}

/**
 * A value in digits.
 * @throws RangeError if the style asks for other than 0 to 12 decimals.
 */
export function formatNumber(value: Real, style: NumberStyle): string {
    const step = decimalStep(style.decimals);
    if (!real.isFinite(value)) return outOfRange;
    const steps = (typeof value === 'number' ? Rational.of(wholeSteps(value, style.decimals)) : value.dividedBy(step).rounded()).numerator;
    const digits = `${steps < 0n ? -steps : steps}`.padStart(style.decimals + 1, '0');
    const split = digits.length - style.decimals;
    const decimals = style.zeros === 'kept' ? digits.slice(split) : digits.slice(split).replace(/0+$/, '');
    return `${steps < 0n ? '-' : ''}${digits.slice(0, split)}${decimals === '' ? '' : `.${decimals}`}`;
}

/** An approximate value as a number of steps. `toFixed` rounds the binary value itself, a half away from zero. */
function wholeSteps(value: number, decimals: number): bigint {
    if (Math.abs(value) >= 1e21) return BigInt(value) * 10n ** BigInt(decimals);
    return BigInt(value.toFixed(decimals).replace('.', ''));
}

/** As many decimals as a style has, or more if a value that is not zero would be printed as 0 with them. */
export function enoughDecimals(value: Real, decimals: number): number {
    const size = Math.abs(real.toNumber(value));
    if (!(size > 0 && size < 0.5 * 10 ** -decimals)) return decimals;
    return Math.min(mostDecimals, 1 - Math.floor(Math.log10(size)));
}
