/** Arithmetic of measures: each result keeps how it came about. Unknown spreads. */
import { dimension, type Quantity, quantity, Rational, real } from '../../quantity/index.js';
import type { Span } from '../design/design.js';
import type { Derivation, DerivationKind, Measure } from '../model/measure.js';

type Maybe = Measure | undefined;

/** The words of a derivation without its inputs. */
export interface Says {
    readonly kind: DerivationKind;
    readonly about: readonly string[];
    readonly span?: Span | undefined;
}

export function derived(of: Quantity, says: Says, inputs: readonly Measure[]): Measure {
    const why: Derivation = says.span
        ? { kind: says.kind, about: says.about, inputs, span: says.span }
        : { kind: says.kind, about: says.about, inputs };
    return { quantity: of, why };
}

export function literal(of: Quantity, text: string, span: Span): Measure {
    return { quantity: of, why: { kind: 'literal', about: [text], inputs: [], span } };
}

/** A value that nobody wrote. `what` it is and `source`, where it comes from. */
export function assumed(of: Quantity, what: string, source: string): Measure {
    return { quantity: of, why: { kind: 'default', about: [what, source], inputs: [] } };
}

/** Zero millimetres. */
export const zeroLength: Quantity = quantity.inBaseUnits(Rational.zero, dimension.length);

export function plus(a: Maybe, b: Maybe, says: Says): Maybe {
    if (!a || !b) return undefined;
    const sum = quantity.add(a.quantity, b.quantity);
    return sum && derived(sum, says, [a, b]);
}

export function minus(a: Maybe, b: Maybe, says: Says): Maybe {
    if (!a || !b) return undefined;
    const difference = quantity.subtract(a.quantity, b.quantity);
    return difference && derived(difference, says, [a, b]);
}

export function times(a: Maybe, factor: Rational, says: Says): Maybe {
    return a && derived(quantity.scale(a.quantity, factor), says, [a]);
}

/** The same length the other way. */
export function negative(a: Measure): Measure {
    return derived(quantity.negate(a.quantity), { kind: 'operation', about: ['-'] }, [a]);
}

/** The sum of all, or unknown if one is; undefined for none. */
export function total(all: readonly Maybe[], says: Says): Maybe {
    const [first, ...rest] = all;
    if (!first) return undefined;
    let sum: Quantity | undefined = first.quantity;
    for (const one of rest) {
        if (!one || !sum) return undefined;
        sum = quantity.add(sum, one.quantity);
    }
    return sum && derived(sum, says, all as readonly Measure[]);
}

/** The same quantity with another reason in front of it. */
export function because(a: Maybe, says: Says): Maybe {
    return a && derived(a.quantity, says, [a]);
}

/** Millimetres (or base units) as a plain number; NaN for unknown. */
export function numberOf(a: Maybe): number {
    return a ? real.toNumber(a.quantity.value) : Number.NaN;
}

export function isPositive(a: Maybe): boolean {
    return a !== undefined && real.sign(a.quantity.value) > 0;
}

/** The smaller of two, the first if equal. */
export function smaller(a: Maybe, b: Maybe): Maybe {
    if (!a || !b) return undefined;
    return real.compare(b.quantity.value, a.quantity.value) < 0 ? b : a;
}
export function larger(a: Maybe, b: Maybe): Maybe {
    if (!a || !b) return undefined;
    return real.compare(b.quantity.value, a.quantity.value) > 0 ? b : a;
}
