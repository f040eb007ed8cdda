/** Why a curve cannot be drawn, in words: what is wrong, and what mends it. */
import type { CurveRefusal } from '../../geometry/index.js';

export interface SaidRefusal {
    readonly message: string;
    readonly hint: string;
    readonly found?: string;
    readonly needed?: string;
}

/**
 * @param name of the curve
 * @param along `height` or `width`: what its places are measured along
 * @param length a length in the units of the case
 */
export function sayRefusal(
    refusal: CurveRefusal,
    name: string,
    along: 'height' | 'width',
    length: (millimetres: number) => string,
): SaidRefusal {
    const where = (x: number) => `at ${length(x)} of the ${along}`;
    switch (refusal.reason) {
        case 'rise-too-great':
            return {
                message: `\`${name}\` folds back on itself with a rise of ${length(Math.abs(refusal.rise))}`,
                hint: `${length(Math.abs(refusal.greatest))} is the greatest rise between these ends`,
                found: length(Math.abs(refusal.rise)),
                needed: `a rise of at most ${length(Math.abs(refusal.greatest))}`,
            };
        case 'radius-too-small':
            return {
                message: `a circle with a radius of ${length(Math.abs(refusal.radius))} does not reach from end to end of \`${name}\``,
                hint: `${length(refusal.least)} is the least radius between these ends`,
                found: length(Math.abs(refusal.radius)),
                needed: `a radius of at least ${length(refusal.least)}`,
            };
        case 'zero-chord':
        case 'upright-chord':
            return {
                message: `both ends of this piece of \`${name}\` are at one place, ${where(refusal.at.x)}`,
                hint: 'give its ends places of their own, such as `at bottom` and `at top`',
                found: where(refusal.at.x),
                needed: 'two places',
            };
        case 'folds-back':
            return {
                message: `\`${name}\` would stand upright ${where(refusal.at.x)}, and fold back from there: it would have two depths at one place`,
                hint: 'move the points apart along it, or let them differ less in depth',
                found: where(refusal.at.x),
                needed: `a line that goes on along the ${along}`,
            };
        case 'points-out-of-order':
            return {
                message: `this point of \`${name}\` is ${where(refusal.at.x)}, and does not go on from the one before it`,
                hint: 'write the points in the order in which they lie from its beginning to its end',
                found: where(refusal.at.x),
                needed: 'a place between the points before and after it',
            };
        case 'no-fair-line':
            return {
                message: `no fair line was found through the points of \`${name}\``,
                hint: 'a batten would kink: take fewer points, or points that change direction less',
                found: 'points that turn too sharply',
                needed: 'points that a batten can go through',
            };
        case 'pieces-apart':
            return {
                message: `the pieces of \`${name}\` do not meet ${where(refusal.at.x)}: ${length(refusal.gap)} is between them`,
                hint: 'let each piece end where the next begins',
                found: length(refusal.gap),
                needed: 'no gap',
            };
        case 'cusp':
            return {
                message: `the line parallel to \`${name}\` has a sharp point ${where(refusal.at.x)}: \`${name}\` bends there with a radius of ${length(refusal.radius)}, no more than the distance between them`,
                hint: 'let the curve bend less there, or take a lesser distance',
                found: `a radius of ${length(refusal.radius)}`,
                needed: 'a radius greater than the distance',
            };
        case 'too-few-points':
        case 'no-pieces':
        case 'offset-leaves-span':
        case 'out-of-range':
            return {
                message: `no such curve can be drawn between the ends of \`${name}\``,
                hint: 'check the sizes of its ends and its rise',
            };
    }
}
