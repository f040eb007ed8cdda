/**
 * Expressions to values. Arithmetic is checked by dimension; what is wrong is reported where it is written, and is unknown from then on.
 */
import { describeDimension, dimension, formatNumber, type Quantity, quantity, real } from '../../quantity/index.js';
import type { Declaration, DesignDeclaration, Expression, LetDeclaration, Span } from '../design/design.js';
import type { Measure } from '../model/measure.js';
import { combine, compareMeasures } from './arithmetic.js';
import type { CaseBuild } from './case-build.js';
import { Cell } from './cell.js';
import type { Construction } from './construction.js';
import { allParts, withDescendants } from './descendants.js';
import { DoubleCurve, type FrontLine } from './front-line.js';
import { callFunction } from './functions.js';
import { isFaceName } from './kinds.js';
import { derived, literal } from './measures.js';
import { itemOf, memberOf, memberOfRoom } from './members.js';
import type { PlacedPart } from './placed-part.js';
import type { Room } from './room.js';
import { Scope } from './scope.js';
import { describeValue, type Value } from './value.js';

/** What an expression amounts to in a scope; undefined where it is unknown, which has been reported. */
export function evaluate(construction: Construction, expression: Expression, scope: Scope): Value | undefined {
    const value = evaluateFresh(construction, expression, scope);
    if (value?.is === 'measure') construction.note(expression.span, value.measure);
    return value;
}

function evaluateFresh(construction: Construction, expression: Expression, scope: Scope): Value | undefined {
    switch (expression.is) {
        case 'measure':
            return { is: 'measure', measure: literal(expression.quantity, expression.text, expression.span) };
        case 'word':
            return sizeOfCase(expression.word, scope) ?? { is: 'word', word: expression.word };
        case 'text':
            return { is: 'text', text: expression.text };
        case 'truth':
            return { is: 'truth', value: expression.value };
        case 'tradeSize':
            return { is: 'tradeSize', text: expression.text };
        case 'name':
            return evaluateName(construction, expression, scope);
        case 'member': {
            const receiver = evaluate(construction, expression.receiver, scope);
            return receiver && memberOf(construction, receiver, expression);
        }
        case 'item': {
            const receiver = evaluate(construction, expression.receiver, scope);
            const index = evaluate(construction, expression.index, scope);
            return receiver && index && itemOf(construction, receiver, index, expression);
        }
        case 'call':
            return callFunction(construction, expression, scope);
        case 'binary':
            return evaluateBinary(construction, expression, scope);
        case 'unary':
            return evaluateUnary(construction, expression, scope);
        case 'conditional': {
            const condition = evaluateTruth(construction, expression.condition, scope);
            if (condition === undefined) return undefined;
            return evaluate(construction, condition ? expression.then : expression.otherwise, scope);
        }
        case 'range': {
            const first = evaluateMeasure(construction, expression.first, scope);
            const last = evaluateMeasure(construction, expression.last, scope);
            return first && last && { is: 'range', first, last };
        }
        default:
            return undefined;
    }
}

function evaluateName(construction: Construction, expression: Extract<Expression, { is: 'name' }>, scope: Scope): Value | undefined {
    const bound = scope.lookup(expression.id);
    if (bound) return bound();
    const declaration = construction.design.declarations.get(expression.id);
    switch (declaration?.is) {
        case 'let':
            construction.asks(declaration.id);
            return letOfFile(construction, declaration);
        case 'fact':
            if (declaration.kind === 'curve' && scope.build) return { is: 'curve', law: scope.build.curve(declaration) };
            return { is: 'thing', declaration };
        case 'recipe':
            return { is: 'thing', declaration };
        case 'design': {
            const build = enclosing(scope.build, declaration);
            return build ? { is: 'case', build } : { is: 'thing', declaration };
        }
        case 'part': {
            const parts = partsElsewhere(declaration, scope.build);
            if (parts.length > 0) return { is: 'parts', parts, name: expression.name };
            // `at back` is the side of the room where this build leaves the back out
            if (declaration.unnamed && isFaceName(declaration.name)) return { is: 'word', word: declaration.name };
            return reportNotBuilt(construction, expression);
        }
        case 'opening':
            return openingElsewhere(construction, expression, scope);
        default:
            return undefined;
    }
}

/** The case that a name means inside of it: one that is being built of that design. */
function enclosing(build: CaseBuild | undefined, design: DesignDeclaration): CaseBuild | undefined {
    return build && (build.declaration === design ? build : enclosing(build.parent, design));
}

/** `width`, `height` and `depth` by themselves are those of the case. */
function sizeOfCase(word: string, scope: Scope): Value | undefined {
    return scope.build && (word === 'width' || word === 'height' || word === 'depth') ? memberOfRoom(scope.build.room, word) : undefined;
}

/** A part that is named in another block of the case, in a case in it, or in one further out. */
function partsElsewhere(declaration: Declaration, build: CaseBuild | undefined): readonly PlacedPart[] {
    for (let one = build; one; one = one.parent) {
        const found = allParts(one).filter((part) => part.declaration === declaration);
        if (found.length > 0) return found;
    }
    return [];
}

/** An opening that is named in another block of the case, or in another case. */
function openingElsewhere(construction: Construction, expression: Extract<Expression, { is: 'name' }>, scope: Scope): Value | undefined {
    let found: readonly Room[] = [];
    for (let one = scope.build; one && found.length === 0; one = one.parent) {
        found = withDescendants(one).flatMap(({ openings }) => openings.filter((room) => room.opening === expression.id));
    }
    const [room, ...others] = found;
    if (!room) return reportNotBuilt(construction, expression);
    if (others.length === 0) return { is: 'opening', room };
    return construction.report('NAM-009', {
        span: expression.span,
        message: `there are ${others.length + 1} openings \`${expression.name}\`, and nothing here says which`,
        hint: 'speak of it in the block that makes it',
        needed: 'one opening',
    });
}

function reportNotBuilt(construction: Construction, expression: Extract<Expression, { is: 'name' }>): undefined {
    return construction.report('NAM-009', {
        span: expression.span,
        message: `\`${expression.name}\` is not built where this stands`,
        hint: 'it is declared in a block that this build leaves out, or further in',
    });
}

const letsOfFiles = new WeakMap<Construction, Map<string, Cell<Value>>>();

function letOfFile(construction: Construction, declaration: LetDeclaration): Value | undefined {
    let lets = letsOfFiles.get(construction);
    if (!lets) {
        lets = new Map();
        letsOfFiles.set(construction, lets);
    }
    let cell = lets.get(declaration.id);
    if (!cell) {
        cell = letCell(construction, declaration, new Scope(undefined));
        lets.set(declaration.id, cell);
    }
    return cell.value;
}

/** The value of a `let`, computed when first asked for. */
export function letCell(construction: Construction, declaration: LetDeclaration, scope: Scope): Cell<Value> {
    return new Cell(construction, declaration.name, declaration.nameSpan, () => {
        const value = evaluate(construction, declaration.value, scope);
        if (value?.is !== 'measure') return value;
        const says = { kind: 'let' as const, about: [declaration.name], span: declaration.nameSpan };
        const measure = derived(value.measure.quantity, says, [value.measure]);
        construction.note(declaration.nameSpan, measure);
        return { is: 'measure', measure };
    });
}

function evaluateBinary(construction: Construction, expression: Extract<Expression, { is: 'binary' }>, scope: Scope): Value | undefined {
    const { operator } = expression;
    if (operator === 'and' || operator === 'or') {
        const left = evaluateTruth(construction, expression.left, scope);
        const right = evaluateTruth(construction, expression.right, scope);
        if (left === undefined || right === undefined) return undefined;
        return { is: 'truth', value: operator === 'and' ? left && right : left || right };
    }
    const left = placeAsMeasure(evaluate(construction, expression.left, scope));
    const right = placeAsMeasure(evaluate(construction, expression.right, scope));
    if (!left || !right) return undefined;
    if (left.is === 'curve' && right.is === 'curve' && operator === '+') return bothCurves(construction, expression, left.law, right.law);
    if (left.is !== 'measure' || right.is !== 'measure') return evaluateOther(construction, expression, left, right);
    if (operator === '+' || operator === '-' || operator === '*' || operator === '/' || operator === '±') {
        const measure = combine(construction, operator, left.measure, right.measure, expression);
        return measure && { is: 'measure', measure };
    }
    const value = compareMeasures(construction, operator, left.measure, right.measure, expression);
    return value === undefined ? undefined : { is: 'truth', value };
}

/** `Sweep + Bow`: a front that is curved both ways. */
function bothCurves(
    construction: Construction,
    expression: Extract<Expression, { is: 'binary' }>,
    left: FrontLine,
    right: FrontLine,
): Value | undefined {
    if (left.over === 'height' && right.over === 'width') return { is: 'curve', law: new DoubleCurve(left, right) };
    if (left.over === 'width' && right.over === 'height') return { is: 'curve', law: new DoubleCurve(right, left) };
    const found = left.over === right.over && left.over !== 'both' ? `two curves over the ${left.over}` : 'more than two curves';
    return construction.report('UNI-003', {
        span: expression.span,
        message: `${found} cannot be put together: a front has one curve over its height and one over its width`,
        hint: 'name one of each, such as `depth Sweep + Bow`',
        found,
        needed: 'a curve over the height and one over the width',
    });
}

/** A face stands for how far it is from where its axis begins. */
function placeAsMeasure(value: Value | undefined): Value | undefined {
    if (value?.is !== 'face') return value;
    const measure = value.spot()?.measure;
    return measure && { is: 'measure', measure };
}

/** Words and truths may be compared for being the same; nothing else that is no measure may be computed with. */
function evaluateOther(
    construction: Construction,
    expression: Extract<Expression, { is: 'binary' }>,
    left: Value,
    right: Value,
): Value | undefined {
    const { operator } = expression;
    if (operator === '=' || operator === '!=') {
        const [a, b] = [plainValue(left), plainValue(right)];
        if (a !== undefined && b !== undefined) return { is: 'truth', value: (a === b) === (operator === '=') };
    }
    const [wrong, at] = left.is === 'measure' ? [right, expression.right] : [left, expression.left];
    return construction.report('UNI-003', {
        span: at.span,
        message: `${describeValue(wrong)} stands where a number is needed`,
        found: describeValue(wrong),
        needed: 'a number or a measure',
        ...hintFor(wrong),
    });
}

function hintFor(wrong: Value): { readonly hint?: string } {
    if (wrong.is === 'parts')
        return { hint: `name one of its sizes, such as \`${wrong.name}${wrong.parts.length > 1 ? '[1]' : ''}.thickness\`` };
    if (wrong.is === 'stage') return { hint: `name one of them, such as \`${wrong.part.name}.${wrong.stage}.width\`` };
    return {};
}

function plainValue(value: Value): string | boolean | undefined {
    if (value.is === 'truth') return value.value;
    if (value.is === 'word') return value.word;
    if (value.is === 'text') return value.text;
    return value.is === 'thing' ? value.declaration.id : undefined;
}

function evaluateUnary(construction: Construction, expression: Extract<Expression, { is: 'unary' }>, scope: Scope): Value | undefined {
    if (expression.operator === 'not') {
        const value = evaluateTruth(construction, expression.operand, scope);
        return value === undefined ? undefined : { is: 'truth', value: !value };
    }
    const operand = evaluateMeasure(construction, expression.operand, scope);
    if (!operand) return undefined;
    const says = { kind: 'operation' as const, about: ['-'], span: expression.span };
    return { is: 'measure', measure: derived(quantity.negate(operand.quantity), says, [operand]) };
}

/** The measure that an expression amounts to; anything else is reported. */
export function evaluateMeasure(construction: Construction, expression: Expression, scope: Scope): Measure | undefined {
    const value = evaluate(construction, expression, scope);
    if (!value) return isNoValue(expression) ? reportNoMeasure(construction, expression.span, 'a list') : undefined;
    if (value.is === 'measure') return value.measure;
    if (value.is === 'face') return value.spot()?.measure;
    return reportNoMeasure(construction, expression.span, describeValue(value), hintFor(value));
}

/** Expressions that are several values, or a way to divide a length: they stand where the text asks for them, and are not evaluated as one. */
function isNoValue({ is }: Expression): boolean {
    return is === 'list' || is === 'by' || is === 'dimensions' || is === 'interval' || is === 'upTo' || is === 'shares' || is === 'series';
}

function reportNoMeasure(construction: Construction, span: Span, found: string, hint: { readonly hint?: string } = {}): undefined {
    return construction.report('NAM-007', {
        span,
        message: `${found} stands where one measure is needed`,
        found,
        needed: 'a measure',
        ...hint,
    });
}
/** Yes or no; anything else is reported. */
export function evaluateTruth(construction: Construction, expression: Expression, scope: Scope): boolean | undefined {
    const value = evaluate(construction, expression, scope);
    if (!value || value.is === 'truth') return value?.value;
    return construction.report('NAM-007', {
        span: expression.span,
        message: `${describeValue(value)} stands where a condition is needed`,
        found: describeValue(value),
        needed: 'a comparison, such as `width > 40in`, or yes or no',
    });
}

/** The measure if it has the dimension; otherwise it is reported and unknown. */
export function expectDimension(
    construction: Construction,
    measure: Measure | undefined,
    needed: Quantity['dimension'],
    span: Span,
): Measure | undefined {
    if (!measure || measure.quantity.dimension === needed) return measure;
    const found = describeDimension(measure.quantity.dimension);
    const wanted = describeDimension(needed);
    if (measure.quantity.dimension === dimension.none && needed === dimension.length) {
        const { kind, about } = measure.why;
        const number = kind === 'literal' ? about[0] : formatNumber(measure.quantity.value, { decimals: 6, zeros: 'dropped' });
        return construction.report('UNI-001', {
            span,
            message: `\`${number}\` has no unit: a length is needed here`,
            hint: `${number}`.endsWith('%')
                ? `a part of a length is a product, such as \`height * ${number}\``
                : `write \`${number}in\` or \`${number}mm\``,
            found,
            needed: wanted,
        });
    }
    const example = needed === dimension.length ? 'such as `12in` or `300mm`' : needed === dimension.none ? 'such as `3`' : undefined;
    return construction.report('UNI-003', {
        span,
        message: `${wanted} is needed here; this is ${found}`,
        ...(example ? { hint: `write ${wanted}, ${example}` } : {}),
        found,
        needed: wanted,
    });
}

export function expectLength(construction: Construction, measure: Measure | undefined, span: Span): Measure | undefined {
    return expectDimension(construction, measure, dimension.length, span);
}

/**
 * A length of work that is done: how thick a strip is, how deep a cut. It is above nothing; `least` is `nothing` where none at all is
 * meant too, as of a gap.
 */
export function expectWorkLength(
    construction: Construction,
    measure: Measure | undefined,
    span: Span,
    does: string,
    least: 'more' | 'nothing' = 'more',
): Measure | undefined {
    const length = expectLength(construction, measure, span);
    if (!length) return undefined;
    const sign = real.sign(length.quantity.value);
    if (sign > 0 || (sign === 0 && least === 'nothing')) return length;
    return construction.report('PLC-002', {
        span,
        message: least === 'more' ? `\`${does}\` is given a length that is not above zero` : `\`${does}\` is given a length below zero`,
        hint: sign < 0 ? 'take the `-` away: a size has no direction' : `write how much, or take \`${does}\` out`,
        needed: least === 'more' ? 'a length above zero' : 'zero, or a length above it',
    });
}

/** A whole number from `least` up, for counts. */
export function evaluateCount(construction: Construction, expression: Expression, scope: Scope, least: number): number | undefined {
    const measure = expectDimension(construction, evaluateMeasure(construction, expression, scope), dimension.none, expression.span);
    if (!measure) return undefined;
    const value = real.toNumber(measure.quantity.value);
    if (Number.isInteger(value) && value >= least) return value;
    const found = formatNumber(measure.quantity.value, { decimals: 6, zeros: 'dropped' });
    return construction.report('UNI-006', {
        span: expression.span,
        message: `${found} is no count`,
        found,
        needed: `a whole number from ${least} up`,
        ...hintOfCount(expression, value, least),
    });
}

function hintOfCount(expression: Expression, value: number, least: number): { readonly hint?: string } {
    const below = Math.max(Math.floor(value), least);
    if (Number.isInteger(value)) return value < least ? { hint: `write \`${least}\` or more, or take it out` } : {};
    if (expression.is !== 'measure') return { hint: 'use `ceil(...)` or `floor(...)` to make a whole number of it' };
    return { hint: below === Math.ceil(value) ? `write \`${below}\`` : `write \`${below}\` or \`${Math.ceil(value)}\`` };
}
