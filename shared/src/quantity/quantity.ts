/**
 * Quantities: a value with a dimension, and how it moves when what it was computed from deviates.
 *
 * Each quantity carries the first-order effect of every source of deviation it depends on (one stated tolerance on one piece), so a
 * source that cancels is gone: `t - t` is 0 ± 0, which arithmetic of intervals cannot say. The limits themselves stand in a table
 * of sources (deviation.ts).
 *
 * No function here throws. An operation that may be refused has exactly one reason for it and returns undefined then: the
 * dimensions differ (add, subtract, compare, minimum, maximum), the divisor is zero (divide), the argument is no angle (sine,
 * cosine, tangent), there is no such root (squareRoot), the step is zero or of another dimension, or a measure has none (floor,
 * ceiling, round).
 */
import { type Dimension, dimension, dimensionRoot2 } from './dimension.js';
import { Rational } from './rational.js';
import { type Real, real } from './real.js';
import type { Unit } from './unit.js';

/** Names one stated tolerance on one piece: the same sheet in two layers is two sources. */
export type SourceId = string;

/** By how much a value changes for each unit of a source's deviation; undefined if it depends on none. Never an empty map. */
export type Deviations = ReadonlyMap<SourceId, Real> | undefined;

/** A value in the base units of its dimension (mm, kg, s, degrees, currency unit and products of these). */
export interface Quantity {
    readonly dimension: Dimension;
    readonly value: Real;
    readonly deviations: Deviations;
    /** The unit it was written in, or that of the first operand that had one: for printing only. */
    readonly unit?: Unit | undefined;
}

function make(of: Dimension, value: Real, deviations: Deviations, unit: Unit | undefined): Quantity {
    return { dimension: of, value, deviations, unit };
}

/** So many of a unit: `quantity.of(Rational.of(3, 4), unitNamed('in'))`. */
function of(value: Real, unit: Unit): Quantity {
    return make(unit.dimension, real.multiply(value, unit.factor), undefined, unit);
}

/** A value given in base units; the unit, if any, is the one to print it in. */
function inBaseUnits(value: Real, ofDimension: Dimension, unit?: Unit): Quantity {
    return make(ofDimension, value, undefined, unit);
}

/** A plain number: a count, a ratio, a share. */
function plain(value: Real): Quantity {
    return make(dimension.none, value, undefined, undefined);
}

/** The same quantity, which now also deviates one for one with a source; `0.720in ± 0.010in` is such a quantity. */
function deviating(from: Quantity, source: SourceId): Quantity {
    const one: Deviations = new Map([[source, Rational.one]]);
    return make(from.dimension, from.value, combined(from.deviations, Rational.one, one, Rational.one), from.unit);
}

/** The same quantity without its deviations. */
function nominal(from: Quantity): Quantity {
    return from.deviations ? make(from.dimension, from.value, undefined, from.unit) : from;
}

/** The same quantity, to be printed in another unit of its dimension. */
function writtenIn(from: Quantity, unit: Unit): Quantity {
    return make(from.dimension, from.value, from.deviations, unit);
}

/** How many of a unit it is. The unit has the dimension of the quantity. */
function valueIn(from: Quantity, unit: Unit): Real {
    return real.divide(from.value, unit.factor);
}

function isOne(factor: Real): boolean {
    return factor === Rational.one || (typeof factor !== 'number' && factor.equals(Rational.one));
}

const minusOne = Rational.of(-1);

/** `a * byA + b * byB`, source by source; what cancels is left out. */
function combined(a: Deviations, byA: Real, b: Deviations, byB: Real): Deviations {
    if (!a && !b) return undefined;
    if (!b && isOne(byA)) return a;
    if (!a && isOne(byB)) return b;
    if (a === b && isOne(byA) && byB === minusOne) return undefined;
    const sum = scaled(a, byA);
    if (b) {
        for (const [source, effect] of b) {
            const moved = isOne(byB) ? effect : real.multiply(effect, byB);
            const before = sum.get(source);
            const both = before === undefined ? moved : real.add(before, moved);
            if (real.isZero(both)) sum.delete(source);
            else sum.set(source, both);
        }
    }
    return sum.size === 0 ? undefined : sum;
}

/** A copy in which every effect is so many times as large; none at all where that is zero. */
function scaled(deviations: Deviations, by: Real): Map<SourceId, Real> {
    if (!deviations || real.isZero(by)) return new Map();
    if (isOne(by)) return new Map(deviations);
    const all = new Map<SourceId, Real>();
    for (const [source, effect] of deviations) all.set(source, real.multiply(effect, by));
    return all;
}

const one = plain(Rational.one);

/** The sum, or undefined if the dimensions differ. */
function add(a: Quantity, b: Quantity): Quantity | undefined {
    if (a.dimension !== b.dimension) return undefined;
    return make(
        a.dimension,
        real.add(a.value, b.value),
        combined(a.deviations, Rational.one, b.deviations, Rational.one),
        a.unit ?? b.unit,
    );
}

/** The difference, or undefined if the dimensions differ. What both depend on cancels. */
function subtract(a: Quantity, b: Quantity): Quantity | undefined {
    if (a.dimension !== b.dimension) return undefined;
    return make(
        a.dimension,
        real.subtract(a.value, b.value),
        combined(a.deviations, Rational.one, b.deviations, minusOne),
        a.unit ?? b.unit,
    );
}

/** The same size with the other sign. */
function negate(a: Quantity): Quantity {
    return make(a.dimension, real.negate(a.value), combined(a.deviations, minusOne, undefined, Rational.one), a.unit);
}

/** The product; a plain number leaves the unit of the other as it is. */
function multiply(a: Quantity, b: Quantity): Quantity {
    const deviations = a.deviations || b.deviations ? combined(a.deviations, b.value, b.deviations, a.value) : undefined;
    const unit = b.dimension === dimension.none ? a.unit : a.dimension === dimension.none ? b.unit : undefined;
    return make(a.dimension.times(b.dimension), real.multiply(a.value, b.value), deviations, unitFor(a, b, unit));
}

/** A percentage of a percentage, or a count times a percentage, is a plain number. */
function unitFor(a: Quantity, b: Quantity, unit: Unit | undefined): Unit | undefined {
    return a.dimension === dimension.none && b.dimension === dimension.none ? undefined : unit;
}

/** The quotient, or undefined if the divisor is zero. */
function divide(a: Quantity, b: Quantity): Quantity | undefined {
    if (real.isZero(b.value)) return undefined;
    const value = real.divide(a.value, b.value);
    let deviations: Deviations;
    if (a.deviations || b.deviations) {
        const inverse = real.divide(Rational.one, b.value);
        deviations = combined(a.deviations, inverse, b.deviations, real.negate(real.multiply(value, inverse)));
    }
    const unit = b.dimension === dimension.none ? a.unit : undefined;
    return make(a.dimension.dividedBy(b.dimension), value, deviations, unitFor(a, b, unit));
}

/** So many times the quantity. */
function scale(a: Quantity, factor: Real): Quantity {
    return make(a.dimension, real.multiply(a.value, factor), combined(a.deviations, factor, undefined, Rational.one), a.unit);
}

/** The order of the nominal values, or undefined if the dimensions differ. */
function compare(a: Quantity, b: Quantity): -1 | 0 | 1 | undefined {
    return a.dimension === b.dimension ? real.compare(a.value, b.value) : undefined;
}

/** The one with the smaller nominal value, with its deviations; the first if both are equal. */
function minimum(a: Quantity, b: Quantity): Quantity | undefined {
    const order = compare(b, a);
    return order === undefined ? undefined : order < 0 ? b : a;
}

/** The one with the larger nominal value, with its deviations; the first if both are equal. */
function maximum(a: Quantity, b: Quantity): Quantity | undefined {
    const order = compare(b, a);
    return order === undefined ? undefined : order > 0 ? b : a;
}

/** The size without its sign. */
function absolute(a: Quantity): Quantity {
    return real.sign(a.value) < 0 ? negate(a) : a;
}

/** A step function has no first-order effect, so a rounded quantity has no deviations. */
function stepped(roundStep: (value: Real) => Real): (a: Quantity, step?: Quantity) => Quantity | undefined {
    return (a, step = one) => {
        if (a.dimension !== step.dimension || real.isZero(step.value)) return undefined;
        const value = real.multiply(roundStep(real.divide(a.value, step.value)), step.value);
        return make(a.dimension, value, undefined, step.unit);
    };
}

/** The square root, always approximate; undefined for a value below zero or a dimension that is no square. */
function squareRoot(a: Quantity): Quantity | undefined {
    const root = dimensionRoot2(a.dimension);
    const value = Math.sqrt(real.toNumber(a.value));
    if (!root || Number.isNaN(value)) return undefined;
    return make(root, value, value === 0 ? undefined : combined(a.deviations, 0.5 / value, undefined, Rational.one), undefined);
}

const radiansInDegree = Math.PI / 180;

/** A function of an angle with its derivative by the radian. */
function trigonometric(value: (radians: number) => number, slope: (radians: number) => number): (a: Quantity) => Quantity | undefined {
    return (a) => {
        if (a.dimension !== dimension.angle) return undefined;
        const radians = real.toNumber(a.value) * radiansInDegree;
        const deviations = a.deviations && combined(a.deviations, slope(radians) * radiansInDegree, undefined, Rational.one);
        return make(dimension.none, value(radians), deviations, undefined);
    };
}

/** Arithmetic of quantities. */
export const quantity = {
    of,
    inBaseUnits,
    plain,
    deviating,
    nominal,
    writtenIn,
    valueIn,
    add,
    subtract,
    multiply,
    divide,
    negate,
    scale,
    compare,
    minimum,
    maximum,
    absolute,
    /** Down to a multiple of a step; without one a plain number goes down to an integer. */
    floor: stepped(real.floor),
    /** Up to a multiple of a step; without one a plain number goes up to an integer. */
    ceiling: stepped(real.ceiling),
    /** To the nearest multiple of a step, a half away from zero; without one a plain number goes to the nearest integer. */
    round: stepped(real.round),
    squareRoot,
    /** Of an angle: approximate. Undefined for anything else; so for `cosine` and `tangent`. */
    sine: trigonometric(Math.sin, Math.cos),
    cosine: trigonometric(Math.cos, (radians) => -Math.sin(radians)),
    tangent: trigonometric(Math.tan, (radians) => 1 / Math.cos(radians) ** 2),
} as const;
