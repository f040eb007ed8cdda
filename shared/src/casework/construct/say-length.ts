/** Measures in messages: in the project's units, or else in those that the case is written in. */
import { dimension, formatLength, formatQuantity, type Quantity, real, usualStyle } from '../../quantity/index.js';
import type { Expression } from '../design/design.js';
import type { CaseBuild } from './case-build.js';

/** A quantity in the unit it was written in, a length without one as the case has them. */
export function sayIn(build: CaseBuild, of: Quantity): string {
    if (of.dimension !== dimension.length) return formatQuantity(of, usualStyle('inch', 64)).text;
    const { unit, value } = of;
    return sayMillimetres(real.toNumber(value), unit?.system === undefined ? isMetric(build.outermost) : unit.system === 'mm');
}

/** A length in millimetres as the shop says it: in 1/64in where that is all of it, otherwise in decimals. */
export function sayLength(build: CaseBuild, millimetres: number): string {
    return sayMillimetres(millimetres, isMetric(build.outermost));
}

function sayMillimetres(millimetres: number, inMillimetres: boolean): string {
    if (inMillimetres) return formatLength(millimetres, { system: 'mm', decimals: 2, zeros: 'dropped' }).text;
    const fraction = formatLength(millimetres, { system: 'inch', denominator: 64 });
    return fraction.off === undefined ? fraction.text : formatLength(millimetres, { system: 'inch', decimals: 3, zeros: 'dropped' }).text;
}

/** Read from the words alone: a message must not ask for a size that may be the one that is wrong. */
function isMetric(build: CaseBuild): boolean {
    const { project } = build.construction.design;
    if (project) {
        const units = project.properties.find((one) => one.name === 'units')?.value;
        return units?.is === 'word' && units.word === 'mm';
    }
    const { parameters, phrases } = build.declaration;
    const said = [...phrases.properties.map((one) => one.value), ...parameters.map((one) => one.value)];
    return said.map(systemOf).find((system) => system !== undefined) === 'mm';
}

/** The units of the first length in an expression. */
function systemOf(expression: Expression | undefined): 'inch' | 'mm' | undefined {
    switch (expression?.is) {
        case 'measure':
            return expression.quantity.unit?.system;
        case 'binary':
            return systemOf(expression.left) ?? systemOf(expression.right);
        case 'unary':
            return systemOf(expression.operand);
        default:
            return undefined;
    }
}
