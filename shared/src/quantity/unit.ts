/**
 * The units of the language: the one table from which reading, printing, hints and the grammar's number token all come.
 *
 * Base units are mm, kg, s, the degree and the unit of a currency, so every factor but the radian's is an exact fraction.
 */
import { currencyOf, type Dimension, dimension } from './dimension.js';
import { Rational } from './rational.js';
import { type Real, real } from './real.js';

/** A unit that may be written after a number, plain (`in`) or compound (`lb/ft2`). */
export interface Unit {
    /** The spelling that is printed; it can be read back. */
    readonly symbol: string;
    /** What it is called in a sentence, in the singular. */
    readonly name: string;
    readonly dimension: Dimension;
    /** How many base units one of this unit is. A number for the radian only. */
    readonly factor: Real;
    /** Which of the two systems it belongs to; undefined for units common to both (degrees, hours, money, percent). */
    readonly system: 'inch' | 'mm' | undefined;
    /** Whether it is printed with a space after the number (`25 lb/ft2`, but `3/4in`). */
    readonly spaced: boolean;
    /** All spellings that are read: letters, or a mark such as `"`. */
    readonly symbols: readonly string[];
    /** Spellings that people use and the language refuses, for a hint; without regard to capitals. */
    readonly mistakenFor: readonly string[];
}

const metre = Rational.of(1000);
const inch = Rational.of(127, 5);
const foot = inch.times(Rational.of(12));
const pound = Rational.of(45359237n, 100000000n);
/** Standard gravity, 9.80665 m/s², in mm/s². */
const gravity = Rational.of(980665, 100);
const poundForce = pound.times(gravity);
const pascal = Rational.of(1, 1000);
const hour = Rational.of(3600);
const gallon = inch.times(inch).times(inch).times(Rational.of(231));

function unit(
    symbols: readonly string[],
    name: string,
    of: Dimension,
    factor: Real,
    system: 'inch' | 'mm' | undefined,
    mistakenFor: readonly string[] = [],
): Unit {
    const tight = of === dimension.length || of === dimension.mass || of === dimension.angle || of === dimension.none;
    return { symbol: symbols[0] ?? name, name, dimension: of, factor, system, spaced: !tight, symbols, mistakenFor };
}

function money(currency: string, name: string, mistakenFor: readonly string[]): Unit {
    return unit([currency], name, dimension.money(currency), Rational.one, undefined, mistakenFor);
}

/*
 * Sources of the factors. Inch, foot, yard and pound: the international yard and pound agreement of 1959 (1 yd = 0.9144 m,
 * 1 lb = 0.45359237 kg). Pound-force: the pound under standard gravity, 9.80665 m/s² (3rd CGPM, 1901). Board foot: 144 cubic
 * inches (Wood Handbook FPL-GTR-282, glossary). Gallon: the US liquid gallon of 231 cubic inches (NIST Handbook 44, Appendix C,
 * from memory), of four quarts.
 */
/** Every plain unit, in the order in which the grammar's token tries them. */
export const units: readonly Unit[] = [
    unit(['in', '"', '″'], 'inch', dimension.length, inch, 'inch', ['inch', 'inches', 'ins']),
    unit(['ft', "'", '′'], 'foot', dimension.length, foot, 'inch', ['foot', 'feet']),
    unit(['yd'], 'yard', dimension.length, inch.times(Rational.of(36)), 'inch', ['yard', 'yards', 'yds']),
    unit(['mil'], 'mil', dimension.length, inch.dividedBy(Rational.of(1000)), 'inch', ['mils', 'thou']),
    unit(['mm'], 'millimetre', dimension.length, Rational.one, 'mm', ['millimetre', 'millimetres', 'millimeter', 'millimeters', 'mms']),
    unit(['cm'], 'centimetre', dimension.length, Rational.of(10), 'mm', ['centimetre', 'centimetres', 'centimeter', 'centimeters', 'cms']),
    unit(['um', 'µm'], 'micrometre', dimension.length, Rational.of(1, 1000), 'mm', ['micron', 'microns', 'micrometre', 'micrometres']),
    unit(['m'], 'metre', dimension.length, metre, 'mm', ['metre', 'metres', 'meter', 'meters']),
    unit(['lbf'], 'pound-force', dimension.force, poundForce, 'inch', ['lbsf']),
    unit(['lb'], 'pound', dimension.mass, pound, 'inch', ['lbs', 'pound', 'pounds', 'lbm']),
    unit(['oz'], 'ounce', dimension.mass, pound.dividedBy(Rational.of(16)), 'inch', ['ounce', 'ounces']),
    unit(['kg'], 'kilogram', dimension.mass, Rational.one, 'mm', ['kilogram', 'kilograms', 'kilo', 'kilos', 'kgs']),
    unit(['g'], 'gram', dimension.mass, Rational.of(1, 1000), 'mm', ['gram', 'grams', 'gm']),
    unit(['kN'], 'kilonewton', dimension.force, Rational.of(1_000_000), 'mm', ['kilonewton', 'kilonewtons']),
    unit(['N'], 'newton', dimension.force, metre, 'mm', ['newton', 'newtons']),
    unit(['psi'], 'pound-force per square inch', dimension.pressure, poundForce.dividedBy(inch.times(inch)), 'inch'),
    unit(['psf'], 'pound-force per square foot', dimension.pressure, poundForce.dividedBy(foot.times(foot)), 'inch'),
    unit(['kPa'], 'kilopascal', dimension.pressure, pascal.times(Rational.of(1000)), 'mm', ['kilopascal', 'kilopascals']),
    unit(['MPa'], 'megapascal', dimension.pressure, pascal.times(Rational.of(1_000_000)), 'mm', ['megapascal', 'megapascals']),
    unit(['GPa'], 'gigapascal', dimension.pressure, pascal.times(Rational.of(1_000_000_000)), 'mm', ['gigapascal', 'gigapascals']),
    unit(['Pa'], 'pascal', dimension.pressure, pascal, 'mm', ['pascal', 'pascals']),
    unit(['°', 'deg'], 'degree', dimension.angle, Rational.one, undefined, ['degree', 'degrees', 'degs']),
    unit(['rad'], 'radian', dimension.angle, 180 / Math.PI, undefined, ['radian', 'radians', 'rads']),
    {
        ...unit(['bdft'], 'board foot', dimension.volume, inch.times(inch).times(inch).times(Rational.of(144)), 'inch', [
            'bf',
            'fbm',
            'boardfoot',
            'boardfeet',
        ]),
    },
    unit(['gal'], 'gallon', dimension.volume, gallon, 'inch', ['gallon', 'gallons', 'gals']),
    unit(['qt'], 'quart', dimension.volume, gallon.dividedBy(Rational.of(4)), 'inch', ['quart', 'quarts', 'qts']),
    unit(['litre', 'litres'], 'litre', dimension.volume, Rational.of(1_000_000), 'mm', ['liter', 'liters', 'ltr']),
    money('USD', 'US dollar', ['dollar', 'dollars', 'usdollar']),
    money('EUR', 'euro', ['euro', 'euros']),
    money('GBP', 'pound sterling', ['sterling']),
    money('CAD', 'Canadian dollar', []),
    money('AUD', 'Australian dollar', []),
    unit(['hour', 'hours'], 'hour', dimension.time, hour, undefined, ['h', 'hr', 'hrs']),
    unit(['minute', 'minutes'], 'minute', dimension.time, Rational.of(60), undefined, ['min', 'mins']),
    unit(['day', 'days'], 'day', dimension.time, hour.times(Rational.of(24)), undefined),
    unit(['week', 'weeks'], 'week', dimension.time, hour.times(Rational.of(24 * 7)), undefined, ['wk', 'wks']),
    unit(['%'], 'percent', dimension.none, Rational.of(1, 100), undefined, ['percent', 'pct']),
];

const isWord = (symbol: string): boolean => /^[A-Za-z]+$/.test(symbol);

/** The spelling for a place where a mark cannot stand, such as inside a compound: `deg` for a degree. */
function inLetters(of: Unit): string {
    return of.symbols.find(isWord) ?? of.symbol;
}

/** Every unit that is written in letters, each spelling once, in the order of the table. No name in a design may equal one of these. */
export const unitWords: readonly string[] = units.flatMap((each) => each.symbols.filter(isWord));

const isLengthOrMass = ({ dimension: of }: Unit): boolean => of === dimension.length || of === dimension.mass;

/** How lengths and masses are often misspelt in letters: after a number and a space they are read with it, to be told how they are written. */
export const misspeltUnitWords: readonly string[] = [
    ...units.filter(isLengthOrMass).flatMap((each) => each.mistakenFor.filter((word) => word !== 'foot')), // may be a name: `board foot`
    'IN',
    'FT',
    'MM',
    'CM',
];

const bySymbol = new Map<string, Unit>(units.flatMap((each) => each.symbols.map((symbol) => [symbol, each] as const)));
bySymbol.set('board foot', unitNamed('bdft')).set('board feet', unitNamed('bdft'));

const byMistake = new Map<string, Unit>(
    units.flatMap((each) => [...each.mistakenFor, ...each.symbols, each.name].map((word) => [word.toLowerCase(), each] as const)).reverse(),
);

/**
 * The plain unit with this symbol.
 * @throws RangeError if the table has none: for symbols that stand in the program, not for what a user wrote (that is `readUnit`).
 */
export function unitNamed(symbol: string): Unit {
    const found = units.find((each) => each.symbols.includes(symbol));
    if (!found) throw new RangeError(`the table of units has no \`${symbol}\``);
    return found;
}

const powers: Readonly<Record<string, number>> = { '': 1, '2': 2, '²': 2, '3': 3, '³': 3, '4': 4 };
/** A longer quotient measures nothing, and its factor would only grow. */
const mostParts = 4;
const compounds = new Map<string, Unit>();

/**
 * Reads a unit as it stands after a number or after `per`: a word or mark of the table, a power (`mm2`, `ft³`), a quotient of such
 * (`lb/ft2`, `in/ft`; four parts at most), or `board foot`. Undefined if any of its words is unknown.
 */
export function readUnit(text: string): Unit | undefined {
    const plain = bySymbol.get(text) ?? compounds.get(text);
    if (plain) return plain;
    const parts = text.split('/', mostParts + 1).map((part) => /^([A-Za-z]+)([234²³]?)$/.exec(part));
    if (parts.length > mostParts) return undefined;
    let made: Unit | undefined;
    for (const part of parts) {
        const base = part ? bySymbol.get(part[1] ?? '') : undefined;
        if (!part || !base) return undefined;
        const power = powerOf(base, powers[part[2] ?? ''] ?? 1);
        made = made ? quotientOf(made, power) : power;
    }
    if (!made) return undefined;
    const known = compounds.get(made.symbol) ?? made;
    compounds.set(text, known).set(known.symbol, known);
    return known;
}

function powerOf(base: Unit, exponent: number): Unit {
    if (exponent === 1) return base;
    let of = base.dimension;
    let factor = base.factor;
    for (let i = 1; i < exponent; i++) {
        of = of.times(base.dimension);
        factor = real.multiply(factor, base.factor);
    }
    const words = exponent === 2 ? 'square ' : exponent === 3 ? 'cubic ' : '';
    const name = words ? words + base.name : `${base.name} to the fourth power`;
    return compound(inLetters(base) + exponent, name, of, factor, base.system);
}

function quotientOf(above: Unit, below: Unit): Unit {
    const system =
        above.system === undefined || above.system === below.system ? below.system : below.system === undefined ? above.system : undefined;
    return compound(
        `${inLetters(above)}/${inLetters(below)}`,
        `${above.name} per ${below.name}`,
        above.dimension.dividedBy(below.dimension),
        real.divide(above.factor, below.factor),
        system,
    );
}

function compound(symbol: string, name: string, of: Dimension, factor: Real, system: 'inch' | 'mm' | undefined): Unit {
    return { symbol, name, dimension: of, factor, system, spaced: of !== dimension.none, symbols: [symbol], mistakenFor: [] };
}

/**
 * The unit that a user most likely meant by a word that is none: `inch` for `in`, `lbs/sqft` for `lb/ft2`, `MM` for `mm`.
 * Undefined when there is no good guess.
 */
export function guessUnit(text: string): Unit | undefined {
    const parts = text.split('/').map((part) => {
        const found = /^(sq|cu)?([A-Za-z]+?)([234²³]?)$/.exec(part);
        const base = found ? (byMistake.get(found[0].toLowerCase()) ?? byMistake.get(found[2]?.toLowerCase() ?? '')) : undefined;
        if (!found || !base) return undefined;
        return base.symbol + (found[1] === 'sq' ? '2' : found[1] === 'cu' ? '3' : (found[3] ?? ''));
    });
    return parts.includes(undefined) ? undefined : readUnit(parts.join('/'));
}

const usual = new Map<Dimension, readonly [inch: string, mm: string]>([
    [dimension.length, ['in', 'mm']],
    [dimension.area, ['ft2', 'm2']],
    [dimension.volume, ['ft3', 'm3']],
    [dimension.mass, ['lb', 'kg']],
    [dimension.force, ['lbf', 'N']],
    [dimension.pressure, ['psi', 'MPa']],
    [dimension.areaLoad, ['lb/ft2', 'kg/m2']],
    [dimension.lineLoad, ['lb/ft', 'kg/m']],
    [dimension.density, ['lb/ft3', 'kg/m3']],
    [dimension.angle, ['deg', 'deg']],
    [dimension.time, ['hour', 'hour']],
    [dimension.force.dividedBy(dimension.length), ['lbf/ft', 'N/m']],
]);

const perUnit = new Map<Dimension, readonly [inch: string, mm: string]>([
    [dimension.none, ['', '']],
    [dimension.length, ['/ft', '/m']],
    [dimension.area, ['/ft2', '/m2']],
    [dimension.volume, ['/bdft', '/m3']],
    [dimension.mass, ['/lb', '/kg']],
    [dimension.time, ['/hour', '/hour']],
]);

/**
 * The unit in which a shop that works in this system would say such a quantity; for money, a price by length, area, volume, mass
 * or time. Undefined for a plain number and for dimensions that nobody writes.
 */
export function usualUnit(of: Dimension, system: 'inch' | 'mm'): Unit | undefined {
    const index = system === 'inch' ? 0 : 1;
    const symbols = usual.get(of);
    if (symbols) return readUnit(symbols[index]);
    const currency = currencyOf(of);
    const suffix = currency && perUnit.get(dimension.money(currency).dividedBy(of));
    return suffix === undefined ? undefined : readUnit(currency + suffix[index]);
}
