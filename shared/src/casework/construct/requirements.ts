/** What the designer asks for: it holds, it fails, or it holds as drawn but not when everything is at its worst. */
import { quantity, real, worstCase } from '../../quantity/index.js';
import type { Expression, Span } from '../design/design.js';
import type { Path, Requirement } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { differenceOf, holds } from './arithmetic.js';
import type { Construction } from './construction.js';
import { evaluate, evaluateTruth } from './evaluate.js';
import type { Scope } from './scope.js';

type Require = { readonly condition: Expression; readonly because?: string; readonly span: Span };
type Answer = Requirement['answer'];

export function judge(construction: Construction, said: Require, scope: Scope, assembly: Path | undefined): Requirement {
    const verdict = judgeExpression(construction, said.condition, scope);
    return {
        ...verdict,
        span: said.span,
        ...(said.because === undefined ? {} : { because: said.because }),
        ...(assembly === undefined ? {} : { assembly }),
    };
}

type Verdict = Pick<Requirement, 'answer' | 'left' | 'right' | 'operator'>;
const severity: readonly Answer[] = ['holds', 'unknown', 'depends', 'fails'];

function judgeExpression(construction: Construction, condition: Expression, scope: Scope): Verdict {
    if (condition.is === 'binary' && condition.operator === 'and') {
        const [a, b] = [judgeExpression(construction, condition.left, scope), judgeExpression(construction, condition.right, scope)];
        return severity.indexOf(a.answer) >= severity.indexOf(b.answer) ? a : b;
    }
    if (condition.is === 'binary' && condition.operator === 'or') {
        const [a, b] = [judgeExpression(construction, condition.left, scope), judgeExpression(construction, condition.right, scope)];
        return either(a, b);
    }
    if (condition.is === 'binary' && holds(condition.operator, 0) !== undefined) return judgeComparison(construction, condition, scope);
    const truth = evaluateTruth(construction, condition, scope);
    return { answer: truth === undefined ? 'unknown' : truth ? 'holds' : 'fails', left: undefined, right: undefined, operator: '' };
}

/** One of two is enough; if one is unknown it may be the one that holds. */
function either(a: Verdict, b: Verdict): Verdict {
    const order: readonly Answer[] = ['holds', 'depends', 'unknown', 'fails'];
    return order.indexOf(a.answer) <= order.indexOf(b.answer) ? a : b;
}

function judgeComparison(construction: Construction, condition: Extract<Expression, { is: 'binary' }>, scope: Scope): Verdict {
    const { operator } = condition;
    const truth = evaluateTruth(construction, condition, scope);
    const [left, right] = [measureOf(construction, condition.left, scope), measureOf(construction, condition.right, scope)];
    if (truth === undefined) return { answer: 'unknown', left, right, operator };
    if (!left || !right) return { answer: truth ? 'holds' : 'fails', left, right, operator };
    if (!truth) return { answer: 'fails', left, right, operator };
    return { answer: holdsAtWorst(construction, operator, left, right) ? 'holds' : 'depends', left, right, operator };
}

/** Already evaluated once for the comparison, so nothing is reported a second time. */
function measureOf(construction: Construction, expression: Expression, scope: Scope): Measure | undefined {
    const value = evaluate(construction, expression, scope);
    if (value?.is === 'measure') return value.measure;
    return value?.is === 'face' ? value.spot()?.measure : undefined;
}

function holdsAtWorst(
    construction: Construction,
    operator: '<=' | '>=' | '<' | '>' | '=' | '!=' | string,
    left: Measure,
    right: Measure,
): boolean {
    const difference = quantity.subtract(left.quantity, right.quantity);
    if (!difference?.deviations || operator === '=' || operator === '!=') return true;
    const { minus, plus } = worstCase(difference, construction.deviations);
    const nominal = differenceOf(left.quantity, right.quantity);
    const worst = operator === '<=' || operator === '<' ? nominal + real.toNumber(plus) : nominal - real.toNumber(minus);
    return holds(operator as '<', worst) === true;
}
