/** The functions of the language, and `Curve.at(place)`. */
import { describeDimension, type Quantity, quantity } from '../../quantity/index.js';
import type { Expression } from '../design/design.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { evaluate, evaluateMeasure, expectLength } from './evaluate.js';
import { derived } from './measures.js';
import type { Scope } from './scope.js';
import type { Value } from './value.js';

type Call = Extract<Expression, { is: 'call' }>;

/** One argument, and for the rounding functions a step: `round(x, 1/8in)`. */
const rounding: Readonly<Record<string, (a: Quantity, step?: Quantity) => Quantity | undefined>> = {
    round: quantity.round,
    ceil: quantity.ceiling,
    floor: quantity.floor,
};
const ofOne: Readonly<Record<string, (a: Quantity) => Quantity | undefined>> = {
    sqrt: quantity.squareRoot,
    sin: quantity.sine,
    cos: quantity.cosine,
    tan: quantity.tangent,
};
const ofMany: Readonly<Record<string, (a: Quantity, b: Quantity) => Quantity | undefined>> = {
    min: quantity.minimum,
    max: quantity.maximum,
};

export function callFunction(construction: Construction, call: Call, scope: Scope): Value | undefined {
    if (call.receiver.is === 'member' && call.receiver.member === 'at') return curveAt(construction, call, call.receiver.receiver, scope);
    const name = call.receiver.is === 'word' ? call.receiver.word : undefined;
    if (name === undefined || !(name in rounding || name in ofOne || name in ofMany)) {
        return construction.report('NAM-001', {
            span: call.receiver.span,
            message: `${name ? `\`${name}\`` : 'this'} is no function`,
            hint: `the functions are ${[...Object.keys(ofMany), ...Object.keys(rounding), ...Object.keys(ofOne)].join(', ')}, and \`at\` of a curve`,
        });
    }
    const inputs: Measure[] = [];
    for (const argument of call.arguments) {
        const measure = evaluateMeasure(construction, argument.value, scope);
        if (!measure) return undefined;
        inputs.push(measure);
    }
    const result = apply(name, inputs);
    if (!result) return reportArguments(construction, call, name, inputs);
    return { is: 'measure', measure: derived(result, { kind: 'operation', about: [name], span: call.span }, inputs) };
}

function apply(name: string, inputs: readonly Measure[]): Quantity | undefined {
    const [first, second] = inputs;
    if (!first) return undefined;
    const many = ofMany[name];
    if (many) return inputs.slice(1).reduce<Quantity | undefined>((best, next) => best && many(best, next.quantity), first.quantity);
    const round = rounding[name];
    if (round) return inputs.length > 2 ? undefined : round(first.quantity, second?.quantity);
    return inputs.length > 1 ? undefined : ofOne[name]?.(first.quantity);
}

function reportArguments(construction: Construction, call: Call, name: string, inputs: readonly Measure[]): undefined {
    const found = inputs.map((input) => describeDimension(input.quantity.dimension)).join(', ') || 'nothing';
    const needed =
        name in ofMany
            ? 'one or more values of one dimension'
            : name in rounding
              ? 'a plain number, or a measure and the step to round it to, such as `round(x, 1/8in)`'
              : name === 'sqrt'
                ? 'a number or an area that is not below zero'
                : 'an angle';
    return construction.report('UNI-003', { span: call.span, message: `\`${name}\` needs ${needed}; it is given ${found}`, found, needed });
}

function curveAt(construction: Construction, call: Call, receiver: Expression, scope: Scope): Value | undefined {
    const curve = evaluate(construction, receiver, scope);
    const [argument, ...more] = call.arguments;
    if (curve?.is !== 'curve' || !argument || more.length > 0) {
        if (!curve) return undefined;
        return construction.report('UNI-003', {
            span: call.span,
            message: '`at` samples a curve at one place',
            hint: 'write it so: `Sweep.at(29in)`',
        });
    }
    if (curve.law.over === 'both') {
        return construction.report('UNI-003', {
            span: call.span,
            message: `\`${curve.law.name}\` has a depth only at a height and a place of the width together`,
            hint: 'sample each of the two curves, and add what they give',
        });
    }
    const place = expectLength(construction, evaluateMeasure(construction, argument.value, scope), argument.value.span);
    const measure = place && curve.law.at(place, 'the place asked for');
    return measure && { is: 'measure', measure };
}
