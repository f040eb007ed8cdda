/**
 * A size and how it came about. Every number that a person sees is a Measure; none is anonymous.
 * Unknown is written `undefined`: it spreads silently, and only its origin is reported.
 */
import type { Quantity } from '../../quantity/index.js';
import type { Span } from '../design/design.js';

export interface Measure {
    readonly quantity: Quantity;
    readonly why: Derivation;
}

/** How a value came about. Walking `inputs` always ends at a literal, a default or a row of a catalogue. */
export interface Derivation {
    readonly kind: DerivationKind;
    /** What the sentence of the kind speaks of: names, words and texts, never a sentence. See `sentence.ts`. */
    readonly about: readonly string[];
    readonly inputs: readonly Measure[];
    /** Where the text says it; absent only for defaults. */
    readonly span?: Span;
    /** The path of the slot it fills: `PotteryCase.Tier[2].depth`. */
    readonly path?: string;
}

export type DerivationKind =
    /** written in the text: [as it is written] */
    | 'literal'
    /** a property of a thing: [property, thing] */
    | 'property'
    /** a value nobody wrote: [what, where it comes from] */
    | 'default'
    /** [name] */
    | 'parameter'
    | 'let'
    | 'index'
    /** [operator or function] */
    | 'operation'
    /** a face of a room or part: [face, owner] */
    | 'face'
    /** distance between two faces: [from, to] */
    | 'between'
    /** a part runs until it meets an earlier one: [face, owner, why it runs there] */
    | 'stops'
    /** a share of what a list divides: [share, of shares, what is divided] */
    | 'share'
    /** layers added up: [count, material] */
    | 'thickness'
    /** a curve at a place: [curve, where] */
    | 'curve'
    /** taken off or added by a joint: [joint, end] */
    | 'joint'
    /** [treatment, edge] */
    | 'edge'
    /** finished, core or rough size of a part: [stage, direction, part] */
    | 'stage'
    /** something kept free: [for what] */
    | 'reserve'
    /** measured on parts: [what] */
    | 'measured';
