/** What things cost: prices as the text states them, and amounts of money in whole cents. */
import type { Casework, Measure } from '../../casework/index.js';
import { type Quantity, quantity, Rational, real } from '../../quantity/index.js';

/** `118 USD per sheet` */
export interface Price {
    readonly amount: Measure;
    readonly per: string;
}

/** The price of a material or another thing; undefined where none is stated. */
export function priceOf(casework: Casework, id: string): Price | undefined {
    const value = casework.things.get(id)?.properties.get('price');
    return value?.is === 'rate' ? { amount: value.amount, per: value.per } : undefined;
}

/** So many at a price, to the cent; a half goes up. */
export function costOf(count: Rational | number, { amount }: Price): Quantity {
    return toCents(quantity.scale(amount.quantity, count));
}

function toCents(of: Quantity): Quantity {
    const cents = Math.floor(real.toNumber(of.value) * 100 + 0.5 + 1e-9);
    return quantity.inBaseUnits(Rational.of(cents, 100), of.dimension, of.unit);
}

/** Sums of money, one for each currency, in the order in which these come. */
export function sumsOf(costs: readonly Quantity[]): readonly Quantity[] {
    const sums: Quantity[] = [];
    for (const cost of costs) {
        const index = sums.findIndex(({ dimension }) => dimension === cost.dimension);
        const sum = sums[index];
        if (sum) sums[index] = quantity.add(sum, cost) ?? sum;
        else sums.push(cost);
    }
    return sums;
}
