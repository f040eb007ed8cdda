/** Money in a table. */
import { type Quantity, quantity, type Rational, unitNamed } from '../../quantity/index.js';
import { sayMoney } from '../purchase/price.js';
import type { Cell } from '../sheet.js';

export function moneyCell(of: Quantity | undefined): Cell {
    if (!of) return { is: 'unknown' };
    return { is: 'amount', amount: { quantity: of, printed: { text: sayMoney(of), exact: true, off: undefined } } };
}

/** So many of a currency, by its three letters. */
export function moneyOf(amount: Rational, currency: string): Quantity {
    return quantity.of(amount, unitNamed(currency));
}
