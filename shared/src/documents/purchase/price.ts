/** What things cost: prices as the text states them, and amounts of money in whole cents. */
import type { Casework, Measure, Thing } from '../../casework/index.js';
import {
    currencyOf,
    dimension,
    formatNumber,
    formatQuantity,
    type Quantity,
    quantity,
    Rational,
    type Real,
    readUnit,
    real,
    type Unit,
    usualStyle,
} from '../../quantity/index.js';

/** `118 USD per sheet` */
export interface Price {
    readonly amount: Measure;
    readonly per: string;
    /** For how many of these, where it is not for one: `4 USD per 100`. */
    readonly count?: number;
}

/** The price of a material or another thing; undefined where none is stated. */
export function priceOf(casework: Casework, id: string): Price | undefined {
    return rateIn(casework.things.get(id), 'price');
}

/** A property that is a rate. */
export function rateIn(thing: Thing | undefined, name: string): Price | undefined {
    const value = thing?.properties.get(name);
    if (value?.is !== 'rate') return undefined;
    const { amount, per, count } = value;
    return { amount, per, ...(count === undefined ? {} : { count }) };
}

/** The unit that a price is for where it is one of length, area or volume: a board foot has two spellings. */
export function unitOfPrice({ per }: Price): Unit | undefined {
    return readUnit(per === 'board foot' ? 'bdft' : per);
}

/** So many at a price, to the cent; a half goes up. */
export function costOf(count: Real, { amount, count: many = 1 }: Price): Quantity {
    const exact = quantity.nominal(quantity.scale(amount.quantity, real.divide(count, Rational.of(many))));
    return quantity.round(exact, cent(exact)) ?? exact;
}

function cent({ dimension: of, unit }: Quantity): Quantity {
    return quantity.inBaseUnits(Rational.of(1, 100), of, unit);
}

/** Sums of money, one for each currency, in the order in which these come. */
export function sumsOf(costs: readonly Quantity[]): readonly Quantity[] {
    const sums: Quantity[] = [];
    for (const cost of costs) {
        const index = sums.findIndex(({ dimension: of }) => of === cost.dimension);
        const sum = sums[index];
        if (sum) sums[index] = quantity.add(sum, cost) ?? sum;
        else sums.push(cost);
    }
    return sums;
}

/** `118.00 USD` */
export function sayMoney(of: Quantity): string {
    return formatQuantity(of, usualStyle('inch', 32)).text;
}

/** `118.00 USD per sheet`; a price that is finer than a cent with all that it states. */
export function sayPrice({ amount, per, count }: Price): string {
    const { quantity: of } = amount;
    const rounded = quantity.round(of, cent(of));
    const isWhole = rounded !== undefined && real.compare(rounded.value, of.value) === 0;
    const finer = `${formatNumber(of.value, { decimals: 6, zeros: 'dropped' })} ${currencyOf(of.dimension) ?? ''}`;
    return `${isWhole ? sayMoney(of) : finer} per ${count ?? per}`;
}

/** Whether a price is for a volume. */
export function isByVolume(unit: Unit | undefined): unit is Unit {
    return unit?.dimension === dimension.volume;
}
