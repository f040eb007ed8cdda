/**
 * What the deviations of a quantity amount to, given the limits of their sources: when everything is at its worst, what is likely,
 * and who contributes most.
 */
import type { Quantity, SourceId } from './quantity.js';
import { Rational } from './rational.js';
import { type Real, real } from './real.js';

/** One stated tolerance on one piece, in base units: the true value lies from `minus` below to `plus` above the nominal. Neither is below zero. */
export interface DeviationSource {
    readonly id: SourceId;
    readonly minus: Real;
    readonly plus: Real;
}

/** Limits around a nominal value, both counted from zero up. */
export interface Limits {
    readonly minus: Real;
    readonly plus: Real;
}

/** How far one source alone moves a quantity. */
export interface Contribution extends Limits {
    readonly source: DeviationSource;
    /** Its part of the whole worst-case range, from 0 to 1. */
    readonly share: number;
}

const none: Limits = { minus: Rational.zero, plus: Rational.zero };

function effectOf(effect: Real, source: DeviationSource): Limits {
    return real.sign(effect) < 0
        ? { minus: real.multiply(real.negate(effect), source.plus), plus: real.multiply(real.negate(effect), source.minus) }
        : { minus: real.multiply(effect, source.minus), plus: real.multiply(effect, source.plus) };
}

function sourceIn(sources: ReadonlyMap<SourceId, DeviationSource>, id: SourceId): DeviationSource {
    const source = sources.get(id);
    if (!source) throw new RangeError(`no source of deviation is called ${id}`);
    return source;
}

/**
 * The limits when every source is at its worst at once: exact sums for exact effects.
 * @throws RangeError if the table lacks a source of the quantity.
 */
export function worstCase(of: Quantity, sources: ReadonlyMap<SourceId, DeviationSource>): Limits {
    if (!of.deviations) return none;
    let { minus, plus } = none;
    for (const [id, effect] of of.deviations) {
        const moved = effectOf(effect, sourceIn(sources, id));
        minus = real.add(minus, moved.minus);
        plus = real.add(plus, moved.plus);
    }
    return { minus, plus };
}

/**
 * The limits that independent sources are likely to keep: the root of the sum of the squares, each side for itself. Approximate.
 * @throws RangeError if the table lacks a source of the quantity.
 */
export function likelyCase(
    of: Quantity,
    sources: ReadonlyMap<SourceId, DeviationSource>,
): { readonly minus: number; readonly plus: number } {
    let minus = 0;
    let plus = 0;
    for (const [id, effect] of of.deviations ?? []) {
        const moved = effectOf(effect, sourceIn(sources, id));
        minus += real.toNumber(moved.minus) ** 2;
        plus += real.toNumber(moved.plus) ** 2;
    }
    return { minus: Math.sqrt(minus), plus: Math.sqrt(plus) };
}

/**
 * The source with the widest effect, the first of equal ones; undefined if the quantity does not deviate.
 * @throws RangeError if the table lacks a source of the quantity.
 */
export function largestContributor(of: Quantity, sources: ReadonlyMap<SourceId, DeviationSource>): Contribution | undefined {
    let largest: (Limits & { readonly source: DeviationSource; readonly width: Real }) | undefined;
    let whole: Real = Rational.zero;
    for (const [id, effect] of of.deviations ?? []) {
        const source = sourceIn(sources, id);
        const moved = effectOf(effect, source);
        const width = real.add(moved.minus, moved.plus);
        whole = real.add(whole, width);
        if (!largest || real.compare(width, largest.width) > 0) largest = { ...moved, source, width };
    }
    if (!largest || real.isZero(whole)) return undefined;
    return { source: largest.source, minus: largest.minus, plus: largest.plus, share: real.toNumber(real.divide(largest.width, whole)) };
}
