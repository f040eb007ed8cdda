/** How one document prints its quantities: in which system, how finely, with or without the unit. */
import type { Casework, Measure, Size } from '../casework/index.js';
import {
    dimension,
    formatLength,
    formatNumber,
    formatQuantity,
    type LengthStyle,
    type Quantity,
    quantity,
    Rational,
    readUnit,
    real,
    sayMeasure,
    type Unit,
    usualStyle,
} from '../quantity/index.js';
import type { DocumentOptions } from './document-options.js';
import type { Amount, Cell } from './sheet.js';

/** The finest fraction of an inch that a shop document prints. Common practice, no source. */
const finestFraction = 32;

/** The words for a size that is printed but not exact, for the head of a sheet. */
const fullAndShy = '"full" is a little over what is printed, "shy" a little under';

export interface PrintStyle {
    readonly system: 'inch' | 'mm';
    /** The unit of the sizes: `in` or `mm`. */
    readonly sizeUnit: Unit;
    /** The unit of what is bought by length, by area and by volume. */
    readonly runUnit: Unit;
    readonly areaUnit: Unit;
    readonly volumeUnit: Unit;
    /** How sizes are printed, in a sentence without a stop. */
    readonly explanation: string;
}

/** The style that a document's options ask for, or that of the project, or inches. */
export function printStyle(casework: Casework, options: Pick<DocumentOptions, 'units'>): PrintStyle {
    const units = options.units ?? casework.project?.units ?? 'in';
    return units === 'in'
        ? style('inch', ['in', 'ft', 'ft2', 'bdft'], `inches, to the nearest 1/${finestFraction}; ${fullAndShy}`)
        : style('mm', ['mm', 'm', 'm2', 'm3'], `millimetres, to one decimal; ${fullAndShy}`);
}

function style(system: 'inch' | 'mm', symbols: readonly [string, string, string, string], explanation: string): PrintStyle {
    const [sizeUnit, runUnit, areaUnit, volumeUnit] = symbols.map(unitOf);
    return { system, sizeUnit: sizeUnit!, runUnit: runUnit!, areaUnit: areaUnit!, volumeUnit: volumeUnit!, explanation };
}

function unitOf(symbol: string): Unit {
    const unit = readUnit(symbol);
    if (!unit) throw new RangeError(`the table of units has no \`${symbol}\``);
    return unit;
}

function columnStyle({ system }: PrintStyle): LengthStyle {
    return system === 'inch'
        ? { system, denominator: finestFraction, mark: 'none' }
        : { system, decimals: 1, zeros: 'dropped', mark: 'none' };
}

/** A size for a column whose heading has the unit. */
export function sizeAmount(measure: Measure, print: PrintStyle): Amount {
    return { quantity: measure.quantity, printed: formatLength(measure.quantity, columnStyle(print)) };
}

/** A length that came through a curve, in millimetres, for a column whose heading has the unit. */
export function lengthAmount(millimetres: number, print: PrintStyle): Amount {
    return { quantity: quantity.of(millimetres, unitOf('mm')), printed: formatLength(millimetres, columnStyle(print)) };
}

/** A part's or a piece's size as a cell; what is not known of it stays unknown. */
export function sizeCell(size: Size, print: PrintStyle): Cell {
    const amount = (measure: Measure | undefined) => measure && sizeAmount(measure, print);
    return { is: 'size', length: amount(size.length), width: amount(size.width), thickness: amount(size.thickness) };
}

/** A total in the unit of its column, with fixed decimals; totals are said to be rounded by their sheet, not one by one. */
export function totalCell(total: Quantity | undefined, unit: Unit, decimals: number): Cell {
    if (!total) return { is: 'unknown' };
    const text = formatNumber(quantity.valueIn(total, unit), { decimals, zeros: 'kept' });
    return { is: 'amount', amount: { quantity: total, printed: { text, exact: false, off: undefined } } };
}

/** A size within a sentence, in the document's system and with its unit: `1/8in`, `7/32in full`, `2.4mm`. */
export function inWords(measure: Measure | undefined, { system }: PrintStyle): string {
    if (!measure) return '?';
    const of = measure.quantity;
    if (of.dimension !== dimension.length) return formatQuantity(of, usualStyle(system, finestFraction)).text;
    // A tenth of a millimetre is finer than what a sentence is about, so there full and shy would only be noise.
    if (system === 'mm') return formatLength(of, { system, decimals: 1, zeros: 'dropped' }).text;
    const fine = formatLength(of, { system, denominator: 2 * finestFraction });
    return fine.exact ? fine.text : sayMeasure(formatLength(of, { system, denominator: finestFraction }));
}

/**
 * A length in millimetres within a sentence: `7/32in full`, `2.4mm`.
 * @param rounding `down` for a limit that must not be passed: to a 64th of an inch, or a tenth of a millimetre
 */
export function lengthInWords(millimetres: number, print: PrintStyle, rounding: 'nearest' | 'down' = 'nearest'): string {
    if (rounding === 'nearest') return inWords(asMeasure(quantity.of(millimetres, unitOf('mm'))), print);
    const parts = print.system === 'inch' ? 64 : 10;
    const unit = print.sizeUnit;
    const whole = Math.floor((millimetres * parts) / real.toNumber(unit.factor) + 1e-9);
    return inWords(asMeasure(quantity.of(Rational.of(whole, parts), unit)), print);
}

/** An area in square millimetres within a sentence: `13.3 ft2`, `1.24 m2`. */
export function areaInWords(squareMillimetres: number, { system }: PrintStyle): string {
    return system === 'inch'
        ? `${formatNumber(squareMillimetres / 304.8 ** 2, { decimals: 1, zeros: 'kept' })} ft2`
        : `${formatNumber(squareMillimetres / 1e6, { decimals: 2, zeros: 'kept' })} m2`;
}

function asMeasure(of: Quantity): Measure {
    return { quantity: of, why: { kind: 'operation', about: [], inputs: [] } };
}

/** What is bought by its size keeps the size it was written with, in a document of either system: a 1 1/4in screw, a 48in sheet. */
export function asBought(measure: Measure, { system }: PrintStyle): string {
    return formatQuantity(measure.quantity, usualStyle(system, 2 * finestFraction)).text;
}
