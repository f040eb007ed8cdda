/** Sums, products and comparisons of measures, with messages when dimensions do not agree. */

import { tolerance } from '../../geometry/index.js';
import { type Dimension, describeDimension, dimension, type Quantity, quantity, type Real, real } from '../../quantity/index.js';
import type { BinaryOperator, Expression } from '../design/design.js';
import type { Measure } from '../model/measure.js';
import { type Construction, spanKey } from './construction.js';
import { derived } from './measures.js';

type Binary = Extract<Expression, { is: 'binary' }>;
export type Arithmetic = '+' | '-' | '*' | '/' | '±';

/** The result of an operator on two measures; a mismatch is reported at the operand that is wrong. */
export function combine(construction: Construction, operator: Arithmetic, left: Measure, right: Measure, at: Binary): Measure | undefined {
    const result = operator === '±' ? deviate(construction, left, right, at) : compute(operator, left.quantity, right.quantity);
    if (!result) return reportMismatch(construction, operator, left, right, at);
    return derived(result, { kind: 'operation', about: [operator], span: at.span }, [left, right]);
}

function compute(operator: Exclude<Arithmetic, '±'>, a: Quantity, b: Quantity): Quantity | undefined {
    switch (operator) {
        case '+':
            return quantity.add(a, b);
        case '-':
            return quantity.subtract(a, b);
        case '*':
            return quantity.multiply(a, b);
        case '/':
            return quantity.divide(a, b);
    }
}

/** `0.720in ± 0.010in`: one source of deviation, named by where it is stated. */
function deviate(construction: Construction, left: Measure, right: Measure, at: Binary): Quantity | undefined {
    if (left.quantity.dimension !== right.quantity.dimension) return undefined;
    const limit = quantity.absolute(right.quantity).value;
    const id = sourceAt(construction, spanKey(at.span), limit);
    construction.deviate({ id, minus: limit, plus: limit });
    return quantity.deviating(left.quantity, id);
}

/** The words that state it, and the limit too where the same words state another elsewhere, through a parameter for one. */
function sourceAt({ deviations }: Construction, words: string, limit: Real): string {
    const known = deviations.get(words);
    return known && real.compare(known.plus, limit) !== 0 ? `${words}±${real.toNumber(limit)}` : words;
}

function reportMismatch(construction: Construction, operator: Arithmetic, left: Measure, right: Measure, at: Binary): undefined {
    if (operator === '/') {
        return construction.report('UNI-004', {
            span: at.right.span,
            message: 'this divides by zero',
            hint: 'a size divided by nothing is no size; check how the divisor comes about',
            found: '0',
            needed: 'a number that is not zero',
        });
    }
    const [a, b] = [left.quantity.dimension, right.quantity.dimension];
    const verb = operator === '-' ? 'is taken from' : operator === '±' ? 'is the tolerance of' : 'is added to';
    const bare = b === dimension.none ? at.right : a === dimension.none ? at.left : undefined;
    return construction.report('UNI-003', {
        span: (bare ?? at.right).span,
        message: `${describeDimension(b)} ${verb} ${describeDimension(a)}`,
        found: describeDimension(bare === at.left ? a : b),
        needed: describeDimension(bare === at.left ? b : a),
        ...mend(bare, bare === at.left ? b : a),
    });
}

/** A bare number beside a length: offer the two units. */
function mend(bare: Expression | undefined, needed: Dimension): { readonly hint: string } | object {
    if (needed !== dimension.length) return {};
    if (bare?.is === 'measure') return { hint: `give it a unit: ${bare.text}in or ${bare.text}mm` };
    const fraction = bare?.is === 'binary' && bare.operator === '/' && [bare.left, bare.right];
    const [above, below] = fraction || [];
    return above?.is === 'measure' && below?.is === 'measure' ? { hint: `give it a unit: ${above.text}/${below.text}in` } : {};
}

/** Whether the nominal values compare so. Approximate values are equal within the geometry tolerance. */
export function compareMeasures(
    construction: Construction,
    operator: BinaryOperator,
    left: Measure,
    right: Measure,
    at: Binary,
): boolean | undefined {
    const [a, b] = [left.quantity, right.quantity];
    if (a.dimension !== b.dimension) {
        return construction.report('UNI-003', {
            span: at.span,
            message: `${describeDimension(a.dimension)} is compared with ${describeDimension(b.dimension)}`,
            found: describeDimension(b.dimension),
            needed: describeDimension(a.dimension),
            ...mend(b.dimension === dimension.none ? at.right : at.left, b.dimension === dimension.none ? a.dimension : b.dimension),
        });
    }
    return holds(operator, differenceOf(a, b));
}

/** `a - b` as a number; 0 where approximate values differ by no more than the tolerance. */
export function differenceOf(a: Quantity, b: Quantity): number {
    const difference = real.subtract(a.value, b.value);
    const number = real.toNumber(difference);
    return !real.isExact(difference) && Math.abs(number) <= tolerance.geometry ? 0 : number;
}

export function holds(operator: BinaryOperator, difference: number): boolean | undefined {
    switch (operator) {
        case '<=':
            return difference <= 0;
        case '>=':
            return difference >= 0;
        case '<':
            return difference < 0;
        case '>':
            return difference > 0;
        case '=':
            return difference === 0;
        case '!=':
            return difference !== 0;
        default:
            return undefined;
    }
}
