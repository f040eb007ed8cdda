/**
 * Exact fractions. Knows numbers only: no units, no text but digits.
 *
 * Most sizes of casework fit in safe integers, so a fraction is kept as two of them; only when a result would not fit does it
 * become a pair of BigInts, and it comes back as soon as it fits again. Each value therefore has one form, and equality is a
 * comparison of fields.
 */

const largestSafe = Number.MAX_SAFE_INTEGER;
const largestSafeBig = BigInt(largestSafe);

function isSafe(value: number): boolean {
    return value <= largestSafe && value >= -largestSafe;
}

const largestInt32 = 2 ** 31 - 1;

/** Of a number from zero and one above zero. The second loop stays within 32 bits, where a remainder is an integer instruction. */
function greatestCommonDivisor(a: number, b: number): number {
    let larger = a;
    let smaller = b;
    while (larger > largestInt32 && smaller !== 0) {
        const rest = larger % smaller;
        larger = smaller;
        smaller = rest;
    }
    if (smaller === 0) return larger;
    if (smaller > largestInt32) return greatestCommonDivisor(smaller, larger);
    let above = larger | 0;
    let below = smaller | 0;
    while (below !== 0) {
        const rest = (above % below) | 0;
        above = below;
        below = rest;
    }
    return above;
}

function greatestCommonDivisorBig(a: bigint, b: bigint): bigint {
    while (b !== 0n) {
        const rest = a % b;
        a = b;
        b = rest;
    }
    return a < 0n ? -a : a;
}

function bitLength(positive: bigint): number {
    return positive.toString(16).length * 4;
}

/** An exact fraction: immutable, reduced, with a denominator above zero. */
export class Rational {
    static readonly zero: Rational = new Rational(0, 1, undefined, undefined);
    static readonly one: Rational = new Rational(1, 1, undefined, undefined);

    private readonly small: number;
    private readonly smallBelow: number;
    private readonly big: bigint | undefined;
    private readonly bigBelow: bigint | undefined;

    private constructor(small: number, smallBelow: number, big: bigint | undefined, bigBelow: bigint | undefined) {
        this.small = small;
        this.smallBelow = smallBelow;
        this.big = big;
        this.bigBelow = bigBelow;
    }

    /**
     * The fraction `numerator / denominator`, reduced.
     * @throws RangeError if the denominator is zero, or a number is not an integer.
     */
    static of(numerator: number | bigint, denominator: number | bigint = 1): Rational {
        if (typeof numerator === 'number' && typeof denominator === 'number' && isSafe(numerator) && isSafe(denominator)) {
            if (!Number.isInteger(numerator) || !Number.isInteger(denominator)) {
                throw new RangeError(`a fraction is made of integers, not of ${numerator} and ${denominator}`);
            }
            if (denominator === 0) throw new RangeError('a fraction has no denominator of zero');
            return denominator < 0 ? Rational.reduced(-numerator, -denominator) : Rational.reduced(numerator, denominator);
        }
        return Rational.reducedBig(BigInt(numerator), BigInt(denominator));
    }

    /**
     * Reads an integer, a decimal number or a fraction: `-2`, `1.25`, `3/4`. Nothing else, and no unit.
     * @throws SyntaxError if the text is none of these; RangeError if its denominator is zero.
     */
    static parse(text: string): Rational {
        const found = /^(-?)([0-9]+)(?:\/([0-9]+)|\.([0-9]+))?$/.exec(text);
        if (!found) throw new SyntaxError(`\`${text}\` is not a number such as -2, 1.25 or 3/4`);
        const [, sign, whole = '', below, decimals = ''] = found;
        const above = `${sign}${whole}${decimals}`;
        if (above.length < 16 && (below ?? decimals).length < 15)
            return Rational.of(Number(above), below === undefined ? 10 ** decimals.length : Number(below));
        return Rational.reducedBig(BigInt(above), below === undefined ? 10n ** BigInt(decimals.length) : BigInt(below));
    }

    /** Both arguments are safe integers, the denominator above zero. */
    private static reduced(numerator: number, denominator: number): Rational {
        if (denominator === 1) return new Rational(numerator + 0, 1, undefined, undefined);
        if (numerator === 0) return Rational.zero;
        const common = greatestCommonDivisor(numerator < 0 ? -numerator : numerator, denominator);
        return new Rational(numerator / common, denominator / common, undefined, undefined);
    }

    private static reducedBig(numerator: bigint, denominator: bigint): Rational {
        if (denominator === 0n) throw new RangeError('a fraction has no denominator of zero');
        const common = greatestCommonDivisorBig(numerator, denominator);
        const by = denominator < 0n ? -common : common;
        const above = numerator / by;
        const below = denominator / by;
        if (above <= largestSafeBig && above >= -largestSafeBig && below <= largestSafeBig) {
            return new Rational(Number(above), Number(below), undefined, undefined);
        }
        return new Rational(Number.NaN, Number.NaN, above, below);
    }

    /** What stands above the line, with the sign; it has no factor in common with the denominator. */
    get numerator(): bigint {
        return this.big ?? BigInt(this.small);
    }

    /** What stands below the line: above zero. */
    get denominator(): bigint {
        return this.bigBelow ?? BigInt(this.smallBelow);
    }

    /** The exact sum. */
    plus(other: Rational): Rational {
        if (this.big === undefined && other.big === undefined) {
            if (this.smallBelow === other.smallBelow) {
                const sum = this.small + other.small;
                if (isSafe(sum)) return Rational.reduced(sum, this.smallBelow);
            } else {
                const left = this.small * other.smallBelow;
                const right = other.small * this.smallBelow;
                const below = this.smallBelow * other.smallBelow;
                const sum = left + right;
                if (isSafe(left) && isSafe(right) && isSafe(below) && isSafe(sum)) return Rational.reduced(sum, below);
            }
        }
        const below = this.denominator;
        const otherBelow = other.denominator;
        return Rational.reducedBig(this.numerator * otherBelow + other.numerator * below, below * otherBelow);
    }

    /** The exact difference. */
    minus(other: Rational): Rational {
        if (this.big === undefined && other.big === undefined) {
            if (this.smallBelow === other.smallBelow) {
                const difference = this.small - other.small;
                if (isSafe(difference)) return Rational.reduced(difference, this.smallBelow);
            } else {
                const left = this.small * other.smallBelow;
                const right = other.small * this.smallBelow;
                const below = this.smallBelow * other.smallBelow;
                const difference = left - right;
                if (isSafe(left) && isSafe(right) && isSafe(below) && isSafe(difference)) return Rational.reduced(difference, below);
            }
        }
        const below = this.denominator;
        const otherBelow = other.denominator;
        return Rational.reducedBig(this.numerator * otherBelow - other.numerator * below, below * otherBelow);
    }

    /** The exact product. */
    times(other: Rational): Rational {
        if (this.big === undefined && other.big === undefined) {
            const above = this.small * other.small;
            const below = this.smallBelow * other.smallBelow;
            if (isSafe(above) && isSafe(below)) return Rational.reduced(above, below);
        }
        return Rational.reducedBig(this.numerator * other.numerator, this.denominator * other.denominator);
    }

    /** The exact quotient. @throws RangeError if the other is zero. */
    dividedBy(other: Rational): Rational {
        if (this.big === undefined && other.big === undefined && other.small !== 0) {
            const above = this.small * other.smallBelow;
            const below = this.smallBelow * other.small;
            if (isSafe(above) && isSafe(below)) return below < 0 ? Rational.reduced(-above, -below) : Rational.reduced(above, below);
        }
        if (other.isZero()) throw new RangeError('division by zero');
        return Rational.reducedBig(this.numerator * other.denominator, this.denominator * other.numerator);
    }

    /** The same distance from zero, on its other side. */
    negated(): Rational {
        if (this.big === undefined) return new Rational(0 - this.small, this.smallBelow, undefined, undefined);
        return new Rational(Number.NaN, Number.NaN, -this.big, this.bigBelow);
    }

    /** The distance from zero. */
    absolute(): Rational {
        return this.sign() < 0 ? this.negated() : this;
    }

    /** -1 if this is the smaller, 0 if both are equal, 1 if this is the larger. */
    compare(other: Rational): -1 | 0 | 1 {
        if (this.big === undefined && other.big === undefined) {
            const left = this.small * other.smallBelow;
            const right = other.small * this.smallBelow;
            if (isSafe(left) && isSafe(right)) return left < right ? -1 : left > right ? 1 : 0;
        }
        const left = this.numerator * other.denominator;
        const right = other.numerator * this.denominator;
        return left < right ? -1 : left > right ? 1 : 0;
    }

    /** Whether both are the same value. */
    equals(other: Rational): boolean {
        if (this.big === undefined) return this.small === other.small && this.smallBelow === other.smallBelow;
        return this.big === other.big && this.bigBelow === other.bigBelow;
    }

    /** Whether this is 0. */
    isZero(): boolean {
        return this.small === 0;
    }

    /** -1 below zero, 1 above it. */
    sign(): -1 | 0 | 1 {
        if (this.big === undefined) return this.small < 0 ? -1 : this.small > 0 ? 1 : 0;
        return this.big < 0n ? -1 : 1;
    }

    /** Whether the denominator is 1. */
    isInteger(): boolean {
        return this.big === undefined ? this.smallBelow === 1 : this.bigBelow === 1n;
    }

    /** The largest integer that is not above this. */
    floor(): Rational {
        if (this.isInteger()) return this;
        if (this.big === undefined) {
            const rest = this.small % this.smallBelow;
            return Rational.of((this.small - rest) / this.smallBelow - (rest < 0 ? 1 : 0));
        }
        const below = this.denominator;
        return Rational.of(this.big / below - (this.big < 0n ? 1n : 0n));
    }

    /** The smallest integer that is not below this. */
    ceiling(): Rational {
        return this.isInteger() ? this : this.floor().plus(Rational.one);
    }

    /** The nearest integer; a half goes away from zero, so that -1/2 becomes -1. */
    rounded(): Rational {
        if (this.isInteger()) return this;
        if (this.sign() < 0) return this.negated().rounded().negated();
        if (this.big === undefined) {
            const rest = this.small % this.smallBelow;
            return Rational.of((this.small - rest) / this.smallBelow + (rest * 2 >= this.smallBelow ? 1 : 0));
        }
        const below = this.denominator;
        return Rational.of((this.big * 2n + below) / (below * 2n));
    }

    /**
     * The nearest multiple of a step; a half goes away from zero.
     * @throws RangeError if the step is zero.
     */
    roundedTo(step: Rational): Rational {
        return this.dividedBy(step).rounded().times(step);
    }

    /** Whether numerator or denominator needs more than this many bits, for a bound on the work that a long calculation may cause. */
    isLongerThan(bits: number): boolean {
        if (this.big === undefined) return bits < 53 && Math.max(Math.abs(this.small), this.smallBelow) >= 2 ** bits;
        const above = this.big < 0n ? -this.big : this.big;
        return above >> BigInt(bits) !== 0n || this.denominator >> BigInt(bits) !== 0n;
    }

    /** The nearest floating-point number. */
    toNumber(): number {
        if (this.big === undefined) return this.small / this.smallBelow;
        if (this.big < 0n) return -this.negated().toNumber();
        const below = this.denominator;
        // A quotient of at least 64 bits whose last bit says "and a little more": its conversion then rounds as the fraction would.
        const shift = Math.max(0, 68 - bitLength(this.big) + bitLength(below));
        const above = this.big << BigInt(shift);
        const quotient = above / below;
        const kept = above % below === 0n ? quotient : quotient | 1n;
        const steps = Math.trunc(shift / 2);
        return Number(kept) / 2 ** steps / 2 ** (shift - steps);
    }

    /** `3/4`, or `-2` for an integer: what `parse` reads. */
    toString(): string {
        return this.isInteger() ? `${this.numerator}` : `${this.numerator}/${this.denominator}`;
    }
}
