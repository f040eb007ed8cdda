/** Quantities of every dimension as text, in the unit they were written in or in the one that the shop's system uses. */
import { baseUnitSymbol, currencyOf, dimension } from './dimension.js';
import {
    deviationFrom,
    formatLength,
    type InchStyle,
    type LengthStyle,
    type MillimetreStyle,
    nearestMultiple,
    type PrintedMeasure,
} from './format-length.js';
import { decimalStep, enoughDecimals, formatNumber, type NumberStyle } from './format-number.js';
import { type Quantity, quantity } from './quantity.js';
import { real } from './real.js';
import { type Unit, usualUnit } from './unit.js';

/** How a project prints its quantities. */
export interface QuantityStyle {
    /** The shop's system: inches and pounds, or millimetres and kilograms. */
    readonly system: 'inch' | 'mm';
    /** Whether a quantity that was written in a unit keeps it, or all go by the system. */
    readonly units: 'as written' | 'of the system';
    readonly inch: InchStyle;
    readonly mm: MillimetreStyle;
    /** Everything but lengths and money. A value that would print as 0 and is not gets more decimals. */
    readonly number: NumberStyle;
}

/** Lengths to a fraction of an inch and a tenth of a millimetre, other numbers to two decimals, each in the unit it was written in. */
export function usualStyle(system: 'inch' | 'mm', denominator: number): QuantityStyle {
    return {
        system,
        units: 'as written',
        inch: { system: 'inch', denominator },
        mm: { system: 'mm', decimals: 1, zeros: 'dropped' },
        number: { decimals: 2, zeros: 'dropped' },
    };
}

/**
 * A quantity as text. Money has two decimals; a dimension that has no unit of its own is printed in base units.
 * @throws RangeError if the style's denominator is no whole number from 1, or its decimals are not 0 to 12.
 */
export function formatQuantity(of: Quantity, style: QuantityStyle): PrintedMeasure {
    if (of.dimension === dimension.length) return formatLength(of, lengthStyleFor(of, style));
    const unit = unitFor(of, style);
    const value = unit ? quantity.valueIn(of, unit) : of.value;
    const isMoney = currencyOf(of.dimension) !== undefined;
    const wanted: NumberStyle = isMoney ? { decimals: 2, zeros: 'kept' } : style.number;
    const decimals = enoughDecimals(value, wanted.decimals);
    const digits = formatNumber(value, { ...wanted, decimals });
    const text = digits + suffixOf(of, unit, digits);
    if (!real.isFinite(value)) return { text, exact: false, off: undefined };
    const step = decimalStep(decimals);
    return { text, ...deviationFrom(value, nearestMultiple(value, step), step.toNumber() * 1e-6) };
}

function lengthStyleFor(of: Quantity, style: QuantityStyle): LengthStyle {
    const system = style.units === 'as written' && of.unit?.dimension === dimension.length ? of.unit.system : style.system;
    return system === 'mm' ? style.mm : style.inch;
}

function unitFor(of: Quantity, style: QuantityStyle): Unit | undefined {
    if (style.units === 'as written' && of.unit?.dimension === of.dimension) return of.unit;
    if (of.unit?.dimension === dimension.none && of.dimension === dimension.none) return of.unit;
    return usualUnit(of.dimension, style.system);
}

function suffixOf(of: Quantity, unit: Unit | undefined, digits: string): string {
    if (!unit) {
        const symbol = baseUnitSymbol(of.dimension);
        return symbol === '' ? '' : ` ${symbol}`;
    }
    const plural = `${unit.symbol}s`;
    const symbol = digits !== '1' && unit.symbols.includes(plural) ? plural : unit.symbol;
    return unit.spaced ? ` ${symbol}` : symbol;
}
