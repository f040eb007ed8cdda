/**
 * From what a job costs to what is asked for it.
 *
 * Overhead is a share of materials and labour together. A margin is the share of the price that is profit, as the trade uses the word: at a
 * margin of 20 % what costs 80 is sold for 100. (A markup is the share that is added: 25 % here.) Tax comes on the price.
 * Every amount is a whole number of hundredths of the currency, rounded at its own line, so that the lines add up as they are printed.
 */
import { Rational } from '../quantity/index.js';

export interface Shares {
    /** Each as a part of one; none where the text states none. */
    readonly overhead?: Rational;
    readonly margin?: Rational;
    readonly tax?: Rational;
}

/** Amounts in one currency. */
export interface PriceBuildUp {
    readonly materials: Rational;
    readonly labor: Rational;
    readonly overhead: Rational;
    /** Materials, labour and overhead. */
    readonly cost: Rational;
    readonly profit: Rational;
    /** Before tax. */
    readonly price: Rational;
    readonly tax: Rational;
    readonly total: Rational;
}

/**
 * The price of a job.
 * @throws RangeError if the margin is not below the whole price: no price is high enough for it
 */
export function priceBuildUp(materials: Rational, labor: Rational, { overhead, margin, tax }: Shares): PriceBuildUp {
    if (margin && margin.compare(Rational.one) >= 0) throw new RangeError('a margin is less than the whole price');
    const direct = materials.plus(labor);
    const over = overhead ? toCent(direct.times(overhead)) : Rational.zero;
    const cost = direct.plus(over);
    const price = margin ? toCent(cost.dividedBy(Rational.one.minus(margin))) : cost;
    const taxed = tax ? toCent(price.times(tax)) : Rational.zero;
    return { materials, labor, overhead: over, cost, profit: price.minus(cost), price, tax: taxed, total: price.plus(taxed) };
}

/** To the hundredth, a half goes up. */
function toCent(amount: Rational): Rational {
    return amount.roundedTo(Rational.of(1, 100));
}
