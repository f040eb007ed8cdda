// `41 USD/sheet` for `41 USD per sheet`. Knows rates and their two spellings: nothing of what they are for.
import type { Expression as DesignExpression } from 'casewright-shared/casework';
import { quantity, Rational, readUnit } from 'casewright-shared/quantity';

/** A rate that is written with a stroke, as the same with `per`; any other value as it is. */
export function asRate(value: DesignExpression, per: readonly string[]): DesignExpression {
    if (value.is === 'binary' && value.operator === '/' && value.left.is === 'measure' && value.right.is === 'word') {
        return { is: 'rate', amount: value.left, per: value.right.word, span: value.span };
    }
    const stroke = value.is === 'measure' ? value.text.lastIndexOf('/') : -1;
    if (value.is !== 'measure' || stroke < 0) return value;
    const unit = readUnit(value.text.slice(stroke + 1).trim());
    const word = unit && per.find((one) => readUnit(one) === unit);
    if (!unit || word === undefined) return value;
    const amount = quantity.multiply(value.quantity, quantity.of(Rational.one, unit));
    return { is: 'rate', amount: { ...value, quantity: amount, text: value.text.slice(0, stroke).trim() }, per: word, span: value.span };
}
