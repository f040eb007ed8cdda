/**
 * Lengths as a shop reads them: fractions of an inch, feet and inches, decimal inches, millimetres. A size is rounded here and
 * nowhere before, and what is printed says whether it is the true size, a little under it (`full`) or a little over it (`shy`).
 */
import { decimalStep, formatNumber, type NumberStyle } from './format-number.js';
import type { Quantity } from './quantity.js';
import { Rational } from './rational.js';
import { type Real, real } from './real.js';
import { unitNamed } from './unit.js';

/** How the unit is shown: `in` and `mm`, the marks `"` (an inch only), or nothing, for a table whose heading says it. */
export type UnitMark = 'letters' | 'marks' | 'none';

/** Fractions of an inch, down to `1/denominator`. */
export interface InchFractionStyle {
    readonly system: 'inch';
    /** The finest fraction, such as 32 or 64: any whole number from 1. */
    readonly denominator: number;
    /** Whether 12in and more are printed as feet and inches, `5'10 1/2"`; otherwise all in inches. */
    readonly feet?: 'from 12in';
    readonly mark?: UnitMark;
}

/** Decimal inches, or millimetres. */
export interface DecimalStyle<System extends 'inch' | 'mm' = 'inch' | 'mm'> {
    readonly system: System;
    readonly decimals: number;
    /** Kept if not said. */
    readonly zeros?: NumberStyle['zeros'];
    readonly mark?: UnitMark;
}

export type InchStyle = InchFractionStyle | DecimalStyle<'inch'>;
export type MillimetreStyle = DecimalStyle<'mm'>;
export type LengthStyle = InchFractionStyle | DecimalStyle;

/** The trade's words for a true size a little over (`full`) or a little under (`shy`) the one printed. */
export type Off = 'full' | 'shy';

export interface PrintedMeasure {
    readonly text: string;
    /** Whether the printed value is the true one. Never for an approximate value. */
    readonly exact: boolean;
    /** Undefined if the value is exact, or approximate and not visibly off. By size: a negative value goes by its distance from zero. */
    readonly off: Off | undefined;
}

/** An approximate length nearer than this to the printed one, in mm, is not called full or shy: the difference is rounding in the arithmetic. */
const noise = 1e-6;

const inch = Rational.of(127, 5);

/**
 * The smallest difference in mm that a style shows, for rounding sizes together.
 * @throws RangeError if the style's denominator is no whole number from 1, or its decimals are not 0 to 12.
 */
export function printingStep(style: LengthStyle): Rational {
    if ('decimals' in style) return style.system === 'inch' ? decimalStep(style.decimals).times(inch) : decimalStep(style.decimals);
    if (!Number.isInteger(style.denominator) || style.denominator < 1) {
        throw new RangeError(`the finest fraction of an inch is 1 over a whole number, not over ${style.denominator}`);
    }
    return inch.dividedBy(Rational.of(style.denominator));
}

/** A length as the nearest fraction of an inch. `whole` and `numerator` count from zero up; `negative` has the sign. */
export interface TradeFraction {
    readonly negative: boolean;
    readonly whole: bigint;
    /** Zero for a whole number of inches; otherwise reduced, `numerator / denominator` below 1. */
    readonly numerator: bigint;
    readonly denominator: bigint;
    /** The length that it says, in mm. */
    readonly value: Rational;
    readonly exact: boolean;
    readonly off: Off | undefined;
}

/**
 * The fraction of an inch that is nearest to a length in mm, a half away from zero.
 * @throws RangeError if the denominator is no whole number from 1, or the value is not finite.
 */
export function nearestTradeFraction(length: Real, denominator: number): TradeFraction {
    const step = printingStep({ system: 'inch', denominator });
    const value = nearestMultiple(length, step);
    const inches = value.absolute().dividedBy(inch);
    const whole = inches.floor();
    const part = inches.minus(whole);
    return {
        negative: value.sign() < 0,
        whole: whole.numerator,
        numerator: part.numerator,
        denominator: part.denominator,
        value,
        ...deviationFrom(length, value),
    };
}

/** The multiple of a step that is printed for a value: exact, because it is what the reader will take. */
export function nearestMultiple(value: Real, step: Rational): Rational {
    if (typeof value !== 'number') return value.roundedTo(step);
    return Rational.of(real.toNumber(real.round(real.multiply(value, Rational.one.dividedBy(step))))).times(step);
}

/** How a true value differs from the one that is printed for it. */
export function deviationFrom(
    value: Real,
    printed: Rational,
    tolerance: Real = noise,
): { readonly exact: boolean; readonly off: Off | undefined } {
    if (typeof value !== 'number') {
        const order = value.absolute().compare(printed.absolute());
        return { exact: order === 0, off: order > 0 ? 'full' : order < 0 ? 'shy' : undefined };
    }
    const difference = Math.abs(value) - Math.abs(printed.toNumber());
    const seen = Math.abs(difference) > real.toNumber(tolerance);
    return { exact: false, off: seen ? (difference > 0 ? 'full' : 'shy') : undefined };
}

/**
 * A length as text, rounded once, a half away from zero. Every text but one without a mark can be read back.
 * @param length a quantity whose dimension is a length, or a value in mm.
 * @throws RangeError if the style's denominator is no whole number from 1, or its decimals are not 0 to 12.
 */
export function formatLength(length: Real | Quantity, style: LengthStyle): PrintedMeasure {
    const value = typeof length === 'object' && 'dimension' in length ? length.value : length;
    if (!real.isFinite(value)) return { text: formatNumber(value, { decimals: 0, zeros: 'kept' }), exact: false, off: undefined };
    if (!('decimals' in style)) return formatFraction(value, style);
    const printed = nearestMultiple(value, printingStep(style));
    const unit = unitNamed(style.system === 'inch' ? 'in' : 'mm');
    const digits = formatNumber(real.divide(printed, unit.factor), { decimals: style.decimals, zeros: style.zeros ?? 'kept' });
    const mark = style.mark === 'none' ? '' : style.mark === 'marks' && style.system === 'inch' ? '"' : unit.symbol;
    return { text: digits + mark, ...deviationFrom(value, printed) };
}

function formatFraction(value: Real, style: InchFractionStyle): PrintedMeasure {
    const nearest = nearestTradeFraction(value, style.denominator);
    const sign = nearest.negative ? '-' : '';
    const { exact, off } = nearest;
    const inFeet = style.feet !== undefined && nearest.whole >= 12n;
    if (!inFeet) {
        const mark = style.mark === 'none' ? '' : style.mark === 'marks' ? '"' : 'in';
        return { text: sign + inchesInWords(nearest.whole, nearest) + mark, exact, off };
    }
    const feet = nearest.whole / 12n;
    const rest = nearest.whole % 12n;
    return { text: `${sign}${feet}'${inchesAfterFeet(rest, nearest)}`, exact, off };
}

/** `3/4`, `1 1/4`, `2`, and `0` only if there is nothing else. */
function inchesInWords(whole: bigint, { numerator, denominator }: TradeFraction): string {
    if (numerator === 0n) return `${whole}`;
    return whole === 0n ? `${numerator}/${denominator}` : `${whole} ${numerator}/${denominator}`;
}

/** `5'`, `5'10"`, and `5'0 1/2"`, since `5'1/2"` is easily misread. */
function inchesAfterFeet(whole: bigint, { numerator, denominator }: TradeFraction): string {
    if (numerator !== 0n) return `${whole} ${numerator}/${denominator}"`;
    return whole === 0n ? '' : `${whole}"`;
}

/** The text with its `full` or `shy`, as it is said at the bench: `13 5/32in full`. */
export function sayMeasure(printed: PrintedMeasure): string {
    return printed.off ? `${printed.text} ${printed.off}` : printed.text;
}
