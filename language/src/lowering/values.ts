// What a property, step or option is given, against what it takes. Knows shapes of values: no single property.
import { type Expression as DesignExpression, type Span, vocabulary } from 'casewright-shared/casework';
import { currencyOf, dimension } from 'casewright-shared/quantity';
import type { AstNode } from 'langium';
import type * as Ast from '../generated/ast.js';
import { lowerExpression, type Wanted } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { reportNotBuilt } from './not-built.js';
import { asRate } from './rates.js';
import { type Asking, reportMisfit, reportMissingUnit, takes } from './value-messages.js';
import { listWords, nearestWord } from './words.js';

type Shape = vocabulary.Shape;

/** Lowers a value and checks that it is of the shape that is asked for; what is not is reported, and is broken from then on. */
export function lowerValue(file: FileLowering, asking: Asking, node: Ast.Expression, around: Span): DesignExpression {
    const { shape } = asking;
    const chosen = lowerChoice(file, asking, node);
    if (chosen) {
        return chosen;
    }
    if (shape.is === 'newName') {
        return { is: 'word', word: node.$type === 'Reference' ? node.target.$refText : '', span: file.span(node) };
    }
    const size = tradeSize(file, shape, node);
    if (size) {
        return size;
    }
    const value = lowerExpression(file, node, around, wantedFor(shape));
    const per = ratesOf(shape);
    return checked(file, asking, per.length > 0 ? asRate(value, per) : value, node);
}

export function checked(file: FileLowering, asking: Asking, value: DesignExpression, node: AstNode): DesignExpression {
    const wrong = misfit(file, asking.shape, value);
    if (!wrong) {
        return value;
    }
    if (isFromWallToWall(wrong.at)) {
        reportNotBuilt(file, node, 'wall to wall', wrong.at.span);
        return { is: 'broken', span: value.span };
    }
    if (wrong.unit) {
        reportMissingUnit(file, asking.shape, wrong.at);
    } else {
        reportMisfit(file, asking, wrong.at);
    }
    return { is: 'broken', span: value.span };
}

/** Sizes that a site gives are for a later edition. */
function isFromWallToWall(value: DesignExpression): boolean {
    return value.is === 'interval' && value.first.is === 'word' && value.first.word === 'wall';
}

/** `grain length`: the words of a choice come before declared names. */
function lowerChoice(file: FileLowering, asking: Asking, node: Ast.Expression): DesignExpression | undefined {
    const words = asking.shape.is === 'choice' ? asking.shape.of : undefined;
    if (!words || node.$type !== 'Reference' || !node.target?.$refText) {
        return undefined;
    }
    const span = file.span(node);
    const word = node.target.$refText;
    if (words.includes(word)) {
        return { is: 'word', word, span };
    }
    const target = file.target(node.target);
    if (target && (target.sort === 'let' || target.sort === 'parameter')) {
        return { is: 'name', id: file.id(target), name: target.name, span };
    }
    const near = nearestWord(word, words);
    file.report('PRP-005', span, {
        message: `\`${asking.name}\` is ${listWords(words)}, not \`${word}\`${near ? `; did you mean \`${near}\`?` : ''}`,
        found: `\`${word}\``,
        needed: listWords(words),
        ...(near ? { fix: { title: `write \`${near}\``, span, text: near, safe: false } } : {}),
    });
    return { is: 'broken', span };
}

/** `rough 4/4` is the name of a size, and no division. */
function tradeSize(file: FileLowering, shape: Shape, node: Ast.Expression): DesignExpression | undefined {
    if (!takes(shape, 'tradeSize')) {
        return undefined;
    }
    if (node.$type === 'Binary' && node.operator === '/' && isWholeNumber(node.left) && isWholeNumber(node.right)) {
        return { is: 'tradeSize', text: `${node.left.text}/${node.right.text}`, span: file.span(node) };
    }
    if (node.$type === 'Reference' && /^[A-Z][0-9]+$/.test(node.target?.$refText ?? '') && !node.target.ref) {
        return { is: 'tradeSize', text: node.target.$refText, span: file.span(node) };
    }
    return undefined;
}

function isWholeNumber(node: Ast.Expression | undefined): node is Ast.Literal {
    return node?.$type === 'Literal' && /^[0-9]+$/.test(node.text ?? '');
}

function wantedFor(shape: Shape): Wanted {
    const kinds = kindsOf(shape);
    if (shape.is === 'thing') {
        return { words: noWords, kinds };
    }
    if (ratesOf(shape).length > 0) {
        return { words: wordsOfRates };
    }
    return { ...(kinds.length > 0 ? { kinds } : {}), ...(takes(shape, 'shares') ? { plainNumbers: true } : {}) };
}
const noWords: ReadonlySet<string> = new Set();
/** After a stroke, also where another of them is needed: that is said of the whole rate. Units need not be named. */
const wordsOfRates: ReadonlySet<string> = new Set(['sheet', 'each', 'pair', 'hour']);

/** What the rates of a shape are for. */
function ratesOf(shape: Shape): readonly string[] {
    return shape.is === 'rate' ? shape.per : shape.is === 'either' ? shape.of.flatMap(ratesOf) : [];
}

function kindsOf(shape: Shape): readonly string[] {
    return shape.is === 'thing' ? shape.kinds : shape.is === 'either' ? shape.of.flatMap(kindsOf) : [];
}

// ---------------------------------------------------------------- whether a value fits

interface Misfit {
    readonly at: DesignExpression;
    /** A bare number where a measure is needed. */
    readonly unit?: true;
}

/** Which part of a value does not fit a shape; undefined if it fits, or if only computing can tell. */
function misfit(file: FileLowering, shape: Shape, value: DesignExpression): Misfit | undefined {
    if (value.is === 'broken' || (value.is === 'worded' && value.word.is === 'broken')) {
        return undefined;
    }
    const no: Misfit = { at: value };
    switch (shape.is) {
        case 'quantity':
            return shape.dimension !== 'none' && isPlainFraction(value)
                ? { at: value, unit: true }
                : misfitOfNumber(file, value, shape.dimension);
        case 'count':
            return misfitOfNumber(file, value, 'none');
        case 'sizes':
            if (value.is !== 'by' || value.parts.length !== shape.count) {
                return value.is === 'name' && isComputed(file, value) ? undefined : no;
            }
            return first(value.parts, (part) => misfitOfNumber(file, part, shape.dimension));
        case 'sizeByLength':
            if (value.is === 'by') {
                const [size, length, ...more] = value.parts;
                if (more.length > 0 || !size || !length) {
                    return no;
                }
                return (
                    (size.is === 'tradeSize' ? undefined : misfitOfNumber(file, size, 'length')) ?? misfitOfNumber(file, length, 'length')
                );
            }
            return value.is === 'tradeSize' ? undefined : misfitOfNumber(file, value, 'length');
        case 'dimensions':
            if (value.is !== 'dimensions') {
                return no;
            }
            return first(value.items, (item) =>
                shape.words.includes(firstWord(item.word)) ? misfitOfNumber(file, item.value, shape.dimension) : no,
            );
        case 'interval':
            if (value.is !== 'interval') {
                return misfitOfNumber(file, value, shape.dimension);
            }
            return misfitOfNumber(file, value.first, shape.dimension) ?? misfitOfNumber(file, value.last, shape.dimension);
        case 'shares':
            return value.is === 'measure' || value.is === 'unary' || value.is === 'binary'
                ? misfitOfNumber(file, value, 'length') // one number alone is no share of anything
                : misfitOfShares(file, value);
        case 'text':
            return value.is === 'text' || isChosen(file, value) ? undefined : no;
        case 'truth':
            return value.is === 'truth' || isChosen(file, value) ? undefined : no;
        case 'tradeSize':
            return value.is === 'tradeSize' || isChosen(file, value) ? undefined : no;
        case 'choice':
            return value.is === 'word' && shape.of.includes(value.word) ? undefined : isChosen(file, value) ? undefined : no;
        case 'thing':
            return isThing(file, value, shape.kinds) || isChosen(file, value) ? undefined : no;
        case 'both':
            return value.is === 'binary' &&
                value.operator === '+' &&
                [value.left, value.right].every((one) => isThing(file, one, [shape.kind]))
                ? undefined
                : no;
        case 'rate':
            return value.is === 'rate' && shape.per.includes(value.per) ? misfitOfAmount(file, shape.of, value.amount) : no;
        case 'worded':
            if (value.is === 'worded') {
                return value.word.is === 'word' && shape.words.includes(value.word.word)
                    ? misfit(file, shape.value, value.value)
                    : { at: value.word };
            }
            return shape.optional ? misfit(file, shape.value, value) : no;
        case 'points':
            return value.is === 'points' && value.points.length <= (shape.most ?? Number.POSITIVE_INFINITY)
                ? first(value.points, ({ depth }) => misfitOfNumber(file, depth, 'length'))
                : no;
        case 'list':
            return value.is === 'list' ? first(value.items, (item) => misfit(file, shape.of, item)) : misfit(file, shape.of, value);
        case 'either': {
            const misfits = shape.of.map((one) => misfit(file, one, value));
            return misfits.includes(undefined) ? undefined : (misfits.find((one) => one?.unit) ?? no);
        }
        case 'newName':
        case 'block':
            return undefined;
        case 'nothing':
            return no;
    }
}

function first<T>(items: readonly T[], check: (item: T) => Misfit | undefined): Misfit | undefined {
    for (const item of items) {
        const found = check(item);
        if (found) {
            return found;
        }
    }
    return undefined;
}

/** `each edge` is the word `each`. */
function firstWord(word: string): string {
    return word.split(' ')[0] ?? word;
}

/** A value whose dimension is only known by computing it. */
function isComputed(file: FileLowering, value: DesignExpression): boolean {
    switch (value.is) {
        case 'member':
        case 'item':
        case 'call':
        case 'binary':
        case 'unary':
        case 'conditional':
            return true;
        case 'name': {
            const name = file.nameOf(value.id);
            return name !== undefined && (name.sort === 'let' || name.sort === 'parameter' || name.sort === 'index');
        }
        default:
            return false;
    }
}

/** A value that may turn out to be no measure: of a name, or of an `if`. */
function isChosen(file: FileLowering, value: DesignExpression): boolean {
    return isComputed(file, value) && value.is !== 'binary' && value.is !== 'unary' && value.is !== 'item';
}

function isThing(file: FileLowering, value: DesignExpression, kinds: readonly string[]): boolean {
    const name = value.is === 'name' ? file.nameOf(value.id) : undefined;
    return name !== undefined && (name.sort === 'fact' || name.sort === 'recipe' || name.sort === 'design') && kinds.includes(name.kind);
}

function misfitOfNumber(file: FileLowering, value: DesignExpression, needed: vocabulary.DimensionName | undefined): Misfit | undefined {
    if (value.is === 'measure') {
        const isBare = value.quantity.dimension === dimension.none && !value.text.endsWith('%');
        return isBare && needed !== undefined && needed !== 'none' ? { at: value, unit: true } : undefined;
    }
    if (value.is === 'unary' && value.operator === '-') {
        return misfitOfNumber(file, value.operand, needed);
    }
    if (value.is === 'binary' && (value.operator === '±' || value.operator === '+' || value.operator === '-')) {
        return misfitOfNumber(file, value.left, needed) ?? misfitOfNumber(file, value.right, needed);
    }
    if (value.is === 'word') {
        return value.word in vocabulary.sizesOfParts ? undefined : { at: value };
    }
    return isComputed(file, value) || value.is === 'broken' ? undefined : { at: value };
}

/** What a rate is of. */
function misfitOfAmount(file: FileLowering, of: 'money' | 'mass' | 'time', value: DesignExpression): Misfit | undefined {
    if (value.is !== 'measure') {
        return misfitOfNumber(file, value, undefined);
    }
    const { dimension: found } = value.quantity;
    const fits = of === 'money' ? currencyOf(found) !== undefined : found === dimension[of];
    return fits ? undefined : { at: value };
}

/** `13/16` without a unit. */
function isPlainFraction(value: DesignExpression): boolean {
    const isPlain = (side: DesignExpression) => side.is === 'measure' && side.quantity.dimension === dimension.none;
    return value.is === 'binary' && value.operator === '/' && isPlain(value.left) && isPlain(value.right);
}

function misfitOfShares(file: FileLowering, value: DesignExpression): Misfit | undefined {
    switch (value.is) {
        case 'list':
            return first(value.items, (item) => misfitOfShares(file, item));
        case 'word':
            return value.word in vocabulary.shareWords ? undefined : misfitOfNumber(file, value, 'none');
        case 'upTo':
        case 'series':
            return undefined;
        case 'shares':
            return misfitOfShares(file, value.sizes);
        default:
            return misfitOfNumber(file, value, 'none');
    }
}
