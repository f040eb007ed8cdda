/** One step of a joint, evaluated: its sizes by their words, how often it is made, and where. */
import { dimension, formatQuantity, usualStyle } from '../../quantity/index.js';
import type { Expression, Step } from '../design/design.js';
import type { JointLength, JointStep } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { wordOf } from './edges.js';
import { evaluate, evaluateCount, evaluateMeasure, expectWorkLength } from './evaluate.js';
import { isFaceName } from './kinds.js';
import { cutSize } from './reserves.js';
import type { Scope } from './scope.js';

const cuts: ReadonlySet<string> = new Set(['dado', 'groove', 'rabbet']);
/** Steps whose value is a diameter and a length. */
const rods: ReadonlySet<string> = new Set(['screw', 'pocket', 'panelScrew', 'nail', 'dowel', 'bolt']);
const lengthWords: readonly JointLength[] = ['wide', 'deep', 'thick', 'long', 'pitch', 'into', 'bore', 'seat', 'pilot', 'head', 'hole'];

export function jointStepOf(construction: Construction, step: Step, scope: Scope): JointStep {
    const length = (name: string): Measure | undefined => {
        const value = step.options.find((one) => one.name === name)?.value;
        const least = name === 'inset' ? 'nothing' : 'more';
        return value && expectWorkLength(construction, evaluateMeasure(construction, value, scope), value.span, name, least);
    };
    const counted = (name: string): number | undefined => {
        const value = step.options.find((one) => one.name === name)?.value;
        return value && evaluateCount(construction, value, scope, 0);
    };
    const [count, up, down] = [counted('count'), counted('up'), counted('down')];
    const diameter = diameterOf(construction, step, scope);
    const size = wordOf(construction, step.value, scope) ?? (diameter && formatQuantity(diameter.quantity, usualStyle('inch', 64)).text);
    const face = wordOf(construction, step.options.find((one) => one.name === 'face')?.value, scope);
    const on = step.on && evaluate(construction, step.on, scope);
    const lengths = lengthsOf(construction, step, scope, length);
    return {
        does: step.does,
        amount: amountOf(construction, step, scope),
        spacing: length('spacing'),
        inset: length('inset'),
        span: step.span,
        ...(size === undefined ? {} : { size }),
        ...(count === undefined ? {} : { count }),
        ...(diameter ? { diameter } : {}),
        ...(lengths ? { lengths } : {}),
        ...(face !== undefined && isFaceName(face) ? { face } : {}),
        ...(on?.is === 'thing' ? { on: on.declaration.id } : {}),
        ...(up === undefined ? {} : { up }),
        ...(down === undefined ? {} : { down }),
    };
}

/** The lengths that go with words, in the value and in the options; undefined where there are none. */
function lengthsOf(
    construction: Construction,
    step: Step,
    scope: Scope,
    option: (name: string) => Measure | undefined,
): JointStep['lengths'] | undefined {
    const found: Partial<Record<JointLength, Measure>> = {};
    for (const word of lengthWords) {
        const measure = isOption(step, word) ? option(word) : inValue(construction, step, word, scope);
        if (measure) found[word] = measure;
    }
    return Object.keys(found).length === 0 ? undefined : found;
}

function isOption(step: Step, word: JointLength): boolean {
    return step.options.some(({ name }) => name === word);
}

function inValue(construction: Construction, step: Step, word: JointLength, scope: Scope): Measure | undefined {
    const { value } = step;
    if (cuts.has(step.does)) return word === 'wide' || word === 'deep' ? cutSize(construction, step, scope, word) : undefined;
    const expression = value?.is === 'dimensions' ? value.items.find((item) => item.word === word)?.value : undefined;
    const measure = expression && evaluateMeasure(construction, expression, scope);
    if (!expression || (word === 'thick' && measure?.quantity.dimension === dimension.none)) return measure;
    return expectWorkLength(construction, measure, expression.span, step.does);
}

/** The first of `3.5mm x 25mm`, which says of a screw what `#8` does. */
function diameterOf(construction: Construction, { does, value }: Step, scope: Scope): Measure | undefined {
    const [first, ...others] = rods.has(does) && value?.is === 'by' ? value.parts : [];
    if (!first || others.length === 0) return undefined;
    const found = evaluate(construction, first, scope);
    return found?.is === 'measure' ? expectWorkLength(construction, found.measure, first.span, does) : undefined;
}

/** The length in a step's value: `1 1/4in`, or that of `#8 x 1 1/4in`, or the depth of a cut. */
function amountOf(construction: Construction, step: Step, scope: Scope): Measure | undefined {
    const { value } = step;
    if (!value) return undefined;
    if (cuts.has(step.does)) return cutSize(construction, step, scope, 'deep');
    const expression: Expression | undefined =
        value.is === 'by' ? value.parts.at(-1) : value.is === 'dimensions' ? value.items[0]?.value : value;
    if (!expression || expression.is === 'tradeSize' || expression.is === 'word') return undefined;
    const found = evaluate(construction, expression, scope);
    if (found?.is !== 'measure' || found.measure.quantity.dimension !== dimension.length) return undefined;
    const least = step.does === 'gap' ? 'nothing' : 'more';
    return expectWorkLength(construction, found.measure, expression.span, step.does, least);
}
