/**
 * What kind of thing a quantity measures: a product of powers of length, mass, time, angle and money. Counts, ratios and shares
 * are plain numbers. There is one object for each dimension, so equal dimensions are identical (`===`).
 */

/** Each currency is a dimension of its own: dollars and euros do not add up. */
export type BaseDimension = 'length' | 'mass' | 'time' | 'angle' | `money:${string}`;

const interned = new Map<string, Dimension>();

/** A product of powers of base dimensions. Get one from `dimension` or from arithmetic; there is no public constructor. */
export class Dimension {
    readonly key: string;
    readonly exponents: ReadonlyMap<BaseDimension, number>;
    private readonly products = new Map<Dimension, Dimension>();
    private readonly quotients = new Map<Dimension, Dimension>();

    private constructor(key: string, exponents: ReadonlyMap<BaseDimension, number>) {
        this.key = key;
        this.exponents = exponents;
    }

    /** The one dimension with these exponents; exponents of zero do not count. */
    static of(exponents: Iterable<readonly [BaseDimension, number]>): Dimension {
        const present = [...exponents].filter(([, exponent]) => exponent !== 0).sort(([a], [b]) => (a < b ? -1 : 1));
        const key = present.map(([base, exponent]) => `${base}^${exponent}`).join(' ');
        const known = interned.get(key);
        if (known) return known;
        const made = new Dimension(key, new Map(present));
        interned.set(key, made);
        return made;
    }

    /** The dimension of a product. */
    times(other: Dimension): Dimension {
        return this.combined(other, 1, this.products);
    }

    /** The dimension of a quotient. */
    dividedBy(other: Dimension): Dimension {
        return this.combined(other, -1, this.quotients);
    }

    private combined(other: Dimension, direction: 1 | -1, cache: Map<Dimension, Dimension>): Dimension {
        const known = cache.get(other);
        if (known) return known;
        const sum = new Map(this.exponents);
        for (const [base, exponent] of other.exponents) sum.set(base, (sum.get(base) ?? 0) + direction * exponent);
        const made = Dimension.of(sum);
        cache.set(other, made);
        return made;
    }
}

const none = Dimension.of([]);
const length = Dimension.of([['length', 1]]);
const mass = Dimension.of([['mass', 1]]);
const time = Dimension.of([['time', 1]]);
const angle = Dimension.of([['angle', 1]]);
const area = length.times(length);
const volume = area.times(length);
const force = mass.times(length).dividedBy(time.times(time));

/** The dimensions that have a name in the trade. */
export const dimension = {
    none,
    length,
    area,
    volume,
    mass,
    time,
    angle,
    force,
    pressure: force.dividedBy(area),
    areaLoad: mass.dividedBy(area),
    lineLoad: mass.dividedBy(length),
    density: mass.dividedBy(volume),
    /** Money of one currency, by its three letters (ISO 4217). */
    money: (currency: string): Dimension => Dimension.of([[`money:${currency}`, 1]]),
} as const;

/** The dimension of a product: a length by a length is an area. */
export function multiplyDimensions(a: Dimension, b: Dimension): Dimension {
    return a.times(b);
}

/** The dimension of a quotient: a mass by an area is a load per area. */
export function divideDimensions(a: Dimension, b: Dimension): Dimension {
    return a.dividedBy(b);
}

/** The dimension whose square this is (a length for an area), or undefined if there is none. */
export function dimensionRoot2(of: Dimension): Dimension | undefined {
    const halves = [...of.exponents].map(([base, exponent]) => [base, exponent / 2] as const);
    return halves.every(([, exponent]) => Number.isInteger(exponent)) ? Dimension.of(halves) : undefined;
}

const perLength = none.dividedBy(length);

const words = new Map<Dimension, string>([
    [none, 'a plain number'],
    [length, 'a length'],
    [area, 'an area'],
    [volume, 'a volume'],
    [mass, 'a mass'],
    [time, 'a time'],
    [angle, 'an angle'],
    [force, 'a force'],
    [dimension.pressure, 'a pressure'],
    [dimension.areaLoad, 'a load per area'],
    [dimension.lineLoad, 'a load per length'],
    [dimension.density, 'a density'],
    [force.times(length), 'a moment of force'],
    [force.dividedBy(length), 'a force per length'],
    [angle.dividedBy(length), 'an angle per length'],
    [perLength, 'a number per length'],
    [none.dividedBy(area), 'a number per area'],
    [none.dividedBy(time), 'a number per time'],
    [length.dividedBy(time), 'a speed'],
]);

const baseUnits: Readonly<Record<string, string>> = { length: 'mm', mass: 'kg', time: 's', angle: '°' };

function powerMark(exponent: number): string {
    return exponent === 1 ? '' : exponent === 2 ? '²' : exponent === 3 ? '³' : `^${exponent}`;
}

/** The base units of a dimension as a product: `kg·mm²/s²`; empty for a plain number. */
export function baseUnitSymbol(of: Dimension): string {
    const symbol = ([base, exponent]: readonly [BaseDimension, number]): string =>
        (baseUnits[base] ?? base.slice('money:'.length)) + powerMark(Math.abs(exponent));
    const above = [...of.exponents].filter(([, exponent]) => exponent > 0).map(symbol);
    const below = [...of.exponents].filter(([, exponent]) => exponent < 0).map(symbol);
    return above.length + below.length === 0 ? '' : [above.join('·') || '1', ...below].join('/');
}

/** The one currency in which a dimension counts money, if it is an amount or a price of one currency. */
export function currencyOf(of: Dimension): string | undefined {
    const money = [...of.exponents].filter(([base]) => base.startsWith('money:'));
    return money.length === 1 && money[0]?.[1] === 1 ? money[0][0].slice('money:'.length) : undefined;
}

/** The dimension in a maker's words, with its article: `a length`, `a load per area`, `a price in USD per area`. */
export function describeDimension(of: Dimension): string {
    const word = words.get(of);
    if (word) return word;
    const currency = currencyOf(of);
    if (currency) {
        const per = dimension.money(currency).dividedBy(of);
        if (per === none) return `an amount of money in ${currency}`;
        const perWord = words.get(per);
        if (perWord) return `a price in ${currency} per ${perWord.replace(/^an? /, '')}`;
    }
    return `a quantity in ${baseUnitSymbol(of)}`;
}
