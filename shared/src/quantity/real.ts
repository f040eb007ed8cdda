/**
 * A value that is exact, or that is approximate and says so by its type. A number stands for a value that came through a curve, a
 * root or trigonometry; whatever is computed with it is a number again. Nothing here turns a number back into a Rational.
 */
import type { Rational } from './rational.js';

/** An exact fraction, or a number that is approximate. */
export type Real = Rational | number;

/** Above this many bits a fraction is given up for a number, so that no text can make the arithmetic arbitrarily slow. */
const mostExactBits = 1024;

function kept(value: Rational): Real {
    return value.isLongerThan(mostExactBits) ? value.toNumber() : value;
}

/** The nearest floating-point number. */
function toNumber(value: Real): number {
    return typeof value === 'number' ? value : value.toNumber();
}

/** Whether the value is a fraction, and not a number that is only near it. */
function isExact(value: Real): value is Rational {
    return typeof value !== 'number';
}

/** Whether the value is 0, exactly or as a number. */
function isZero(value: Real): boolean {
    return typeof value === 'number' ? value === 0 : value.isZero();
}

/** False for the infinities and for what is not a number, which only approximate arithmetic can give. */
function hasFiniteValue(value: Real): boolean {
    return typeof value !== 'number' || Number.isFinite(value);
}

/** The sum, exact if both are. */
function add(a: Real, b: Real): Real {
    return typeof a === 'number' || typeof b === 'number' ? toNumber(a) + toNumber(b) : kept(a.plus(b));
}

/** The difference, exact if both are. */
function subtract(a: Real, b: Real): Real {
    return typeof a === 'number' || typeof b === 'number' ? toNumber(a) - toNumber(b) : kept(a.minus(b));
}

/** The product, exact if both are. */
function multiply(a: Real, b: Real): Real {
    return typeof a === 'number' || typeof b === 'number' ? toNumber(a) * toNumber(b) : kept(a.times(b));
}

/** The quotient, exact if both are. @throws RangeError if the divisor is zero, exact or approximate; ask `isZero` first. */
function divide(a: Real, b: Real): Real {
    if (isZero(b)) throw new RangeError('division by zero');
    return typeof a === 'number' || typeof b === 'number' ? toNumber(a) / toNumber(b) : kept(a.dividedBy(b));
}

/** The same distance from zero, on its other side. */
function negate(value: Real): Real {
    return typeof value === 'number' ? 0 - value : value.negated();
}

/** The distance from zero. */
function absolute(value: Real): Real {
    return typeof value === 'number' ? Math.abs(value) : value.absolute();
}

/** -1 below zero, 1 above it; 0 for zero and for what is not a number. */
function sign(value: Real): -1 | 0 | 1 {
    if (typeof value !== 'number') return value.sign();
    return value < 0 ? -1 : value > 0 ? 1 : 0;
}

/** Exact if both are; of approximate values only the numbers are compared: for "equal" use `equalWithin`. */
function compare(a: Real, b: Real): -1 | 0 | 1 {
    if (typeof a !== 'number' && typeof b !== 'number') return a.compare(b);
    const left = toNumber(a);
    const right = toNumber(b);
    return left < right ? -1 : left > right ? 1 : 0;
}

/** Whether two values differ by no more than a tolerance. */
function equalWithin(a: Real, b: Real, tolerance: Real): boolean {
    return compare(absolute(subtract(a, b)), tolerance) <= 0;
}

/** The smaller; the first if both are equal. */
function minimum(a: Real, b: Real): Real {
    return compare(b, a) < 0 ? b : a;
}

/** The larger; the first if both are equal. */
function maximum(a: Real, b: Real): Real {
    return compare(b, a) > 0 ? b : a;
}

/** The largest integer that is not above the value, approximate if the value is. */
function floor(value: Real): Real {
    return typeof value === 'number' ? Math.floor(value) : value.floor();
}

/** The smallest integer that is not below the value, approximate if the value is. */
function ceiling(value: Real): Real {
    return typeof value === 'number' ? Math.ceil(value) + 0 : value.ceiling();
}

/** The nearest integer; a half goes away from zero. */
function round(value: Real): Real {
    if (typeof value !== 'number') return value.rounded();
    return value < 0 ? 0 - Math.round(-value) : Math.round(value);
}

/** The nearest multiple of a step, exact or approximate as the value is; a half goes away from zero. */
function roundTo(value: Real, step: Rational): Real {
    return multiply(round(divide(value, step)), step);
}

/** Arithmetic of values that are exact or approximate. */
export const real = {
    toNumber,
    isExact,
    isZero,
    isFinite: hasFiniteValue,
    add,
    subtract,
    multiply,
    divide,
    negate,
    absolute,
    sign,
    compare,
    equalWithin,
    minimum,
    maximum,
    floor,
    ceiling,
    round,
    roundTo,
} as const;
