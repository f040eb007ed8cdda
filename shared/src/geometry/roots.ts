import { tolerance } from './tolerance.js';

/** More steps than bisection alone needs to go from any bracket of doubles to its last place. */
const stepLimit = 120;

/**
 * The root of a function that rises from at most zero at `low` to at least zero at `high`.
 *
 * Newton's steps, replaced by halving of the bracket whenever a step leaves it or does not shrink fast enough, so it always ends.
 * @param value the function
 * @param slope its derivative; zero, infinite or NaN only cost a halving
 * @param start where to begin
 * @returns the root, or the end of the bracket nearest to it when the function does not change sign in it
 */
export function risingRoot(value: (t: number) => number, slope: (t: number) => number, low: number, high: number, start: number): number {
    let below = low;
    let above = high;
    let t = start >= low && start <= high ? start : (low + high) / 2;
    let lastStep = high - low;
    for (let count = 0; count < stepLimit; count++) {
        const found = value(t);
        if (found === 0) {
            return t;
        }
        if (found > 0) {
            above = t;
        } else {
            below = t;
        }
        const change = slope(t);
        let next = t - found / change;
        if (!Number.isFinite(change) || !(next >= below && next <= above) || Math.abs(next - t) > lastStep / 2) {
            next = (below + above) / 2;
        }
        lastStep = Math.abs(next - t);
        t = next;
        if (lastStep <= tolerance.convergence * Math.max(Math.abs(t), high - low)) {
            return t;
        }
    }
    return t;
}
