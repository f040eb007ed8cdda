/**
 * Sizes that must close on a printed total. Rounded one by one, three openings of 927 1/3mm print 927, 927, 927 and make 2781; the
 * total prints 2782. Rounded together they make what the total says.
 */
import { Rational } from './rational.js';
import { type Real, real } from './real.js';

/** Remainders of approximate values that differ by less than this part of a step count as equal. */
const equalRemainders = Rational.of(1, 1_000_000);

interface Share {
    readonly index: number;
    readonly steps: bigint;
    readonly remainder: Rational;
}

/**
 * Rounds values to multiples of a step so that they add up to their rounded sum.
 *
 * Each goes down to a multiple; the steps that are then missing go to the largest remainders (the largest remainder method of
 * apportionment). Among equal remainders they are spread evenly along the row, in its order: of three equal sizes that miss one
 * step the middle gets it, of three that miss two the outer ones, of two that miss one the first. No size is off by a whole step.
 *
 * @param values finite values in the unit of the step, in the order in which they stand.
 * @param step what the printed sizes are multiples of, above zero (`printingStep` of a style).
 * @throws RangeError if a value is not finite or the step is not above zero.
 */
export function roundTogether(values: readonly Real[], step: Rational): readonly Rational[] {
    if (step.sign() <= 0) throw new RangeError('sizes are rounded to a step above zero');
    const inSteps = values.map((value) => real.divide(value, step));
    const remainderOf = inSteps.every(real.isExact) ? exactRemainder : nearRemainder;
    const shares = inSteps.map((value, index): Share => {
        const down = real.floor(value);
        return {
            index,
            steps: typeof down === 'number' ? BigInt(down) : down.numerator,
            remainder: remainderOf(real.subtract(value, down)),
        };
    });
    const total = real.round(inSteps.reduce(real.add, Rational.zero));
    const wanted = typeof total === 'number' ? BigInt(total) : total.numerator;
    const missing = Number(wanted - shares.reduce((sum, share) => sum + share.steps, 0n));
    const raised = raisedShares(shares, missing);
    return shares.map(({ index, steps }) => Rational.of(raised.has(index) ? steps + 1n : steps).times(step));
}

function exactRemainder(rest: Real): Rational {
    return typeof rest === 'number' ? nearRemainder(rest) : rest;
}

/** Once one value of a row is approximate, all its remainders are compared only so closely. */
function nearRemainder(rest: Real): Rational {
    return Rational.of(Math.round(real.toNumber(rest) / equalRemainders.toNumber())).times(equalRemainders);
}

/** Which shares get one step more: the `missing` largest remainders. */
function raisedShares(shares: readonly Share[], missing: number): ReadonlySet<number> {
    const sorted = [...shares].sort((a, b) => b.remainder.compare(a.remainder) || a.index - b.index);
    const limit = sorted[missing - 1];
    const raised = new Set<number>();
    if (!limit) return raised;
    const above = sorted.filter((share) => share.remainder.compare(limit.remainder) > 0);
    const equal = sorted.filter((share) => share.remainder.equals(limit.remainder));
    for (const share of above) raised.add(share.index);
    const left = missing - above.length;
    // The even spread: the share at which the rounded running count goes up by one.
    const count = (upTo: number): number => Math.round((upTo * left) / equal.length);
    equal.forEach((share, position) => {
        if (count(position + 1) > count(position)) raised.add(share.index);
    });
    return raised;
}
