/** The lines of the purchase list. */
import type { Quantity, Real } from '../../quantity/index.js';
import { type Row, textCell } from '../sheet.js';
import { costOf, type Price, sayMoney, sayPrice } from './price.js';

/** A line of the list, with what it costs where that is known. */
export interface Line {
    readonly row: Row;
    readonly cost?: Quantity;
    /** What it is called where it is said that it has no price. */
    readonly unpriced?: string;
}

export interface Lines {
    readonly heading: string;
    readonly lines: readonly Line[];
    readonly notes: readonly string[];
    /** What has to be bought besides and is not in the lines, each as the end of a sentence. */
    readonly unknown?: readonly string[];
}

/**
 * The line with its price and its cost.
 * @param count how many of what the price is for; undefined where the price is for another measure than what is bought
 */
export function priced(row: Row, name: string, price: Price | undefined, count: Real | undefined): Line {
    if (!price) return { row, unpriced: name };
    const stated = { ...row, price: textCell(sayPrice(price)) };
    if (count === undefined) return { row: stated, unpriced: `${name} (its price is per ${price.per})` };
    const cost = costOf(count, price);
    const printed = { text: sayMoney(cost), exact: true, off: undefined };
    return { row: { ...stated, cost: { is: 'amount', amount: { quantity: cost, printed } } }, cost };
}
