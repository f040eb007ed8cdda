/** Which shares of a price can be meant. */
import { Rational } from '../quantity/index.js';
import type { Shares } from './price-build-up.js';

/** What a share stays under: a margin and a tax under all of the price, an overhead under ten times its cost. */
export function limitOfShare(name: keyof Shares): Rational {
    return name === 'overhead' ? Rational.of(10) : Rational.one;
}

/** Whether a share, as a part of one, can be meant; `tax 8` without its percent sign is 800 %. */
export function isShare(name: keyof Shares, share: Rational): boolean {
    return share.sign() >= 0 && share.compare(limitOfShare(name)) < 0;
}
