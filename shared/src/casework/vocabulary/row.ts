/**
 * What a row of the vocabulary says. The vocabulary is data: checking, completion, hovers, the reference pages and the order of the
 * formatter all come from it, and none of them knows a word of its own.
 */
import type { dimension } from '../../quantity/index.js';

/** The dimensions that a row may ask for, by their names in the table of dimensions. */
export type DimensionName = Exclude<keyof typeof dimension, 'money'>;

/** What may stand after the name of a property, a step or an option. */
export type Shape =
    /** `3/4in`; `0.720in ± 0.010in` where a tolerance makes sense. A plain number has the dimension `none`. */
    | { readonly is: 'quantity'; readonly dimension: DimensionName; readonly tolerance?: true }
    /** A whole number. */
    | { readonly is: 'count' }
    /** `48in x 96in` */
    | { readonly is: 'sizes'; readonly dimension: DimensionName; readonly count: number }
    /** `#8 x 1 1/4in`, or one of the two. */
    | { readonly is: 'sizeByLength' }
    /** `9in wide 6in deep`: numbers, each with one of the words. */
    | { readonly is: 'dimensions'; readonly words: readonly string[]; readonly dimension: DimensionName }
    /** `5in to 9in wide` */
    | { readonly is: 'interval'; readonly dimension: DimensionName }
    /** `14in, rest, 14in`, `equal`, `from top 5in, 1, 1`: what is divided, in lengths and shares. */
    | { readonly is: 'shares' }
    | { readonly is: 'text' }
    | { readonly is: 'truth' }
    /** `#20`, `4/4`: the name of a size that is no measure. */
    | { readonly is: 'tradeSize' }
    | { readonly is: 'choice'; readonly of: readonly string[] }
    /** The name of a thing of one of these kinds. */
    | { readonly is: 'thing'; readonly kinds: readonly string[] }
    /** `Sweep + Bow`: two things of a kind in one. */
    | { readonly is: 'both'; readonly kind: string }
    /** A name that is given here, with what is said of it: `clamp Spring { count 24 }`. */
    | { readonly is: 'newName'; readonly properties: Properties }
    /** `118 USD per sheet`; of a mass `75lb per pair`; of a time `2 minutes per ft` */
    | { readonly is: 'rate'; readonly per: readonly string[]; readonly of: 'money' | 'mass' | 'time' }
    /** A word and a value: `out 1 1/8in`. The word may be missing if `optional`. */
    | { readonly is: 'worded'; readonly words: readonly string[]; readonly value: Shape; readonly optional?: true }
    /** `through 17in at 14in, 13in at 40in`: a word, and depths, each at its place along a curve. */
    | { readonly is: 'points'; readonly words: readonly string[]; readonly most?: number }
    | { readonly is: 'list'; readonly of: Shape }
    | { readonly is: 'either'; readonly of: readonly Shape[] }
    /** `{ doorway 32in x 80in  ceiling 8ft }` */
    | { readonly is: 'block'; readonly properties: Properties }
    /** The name alone says it all. */
    | { readonly is: 'nothing' };

/** Connectives that may go on from a property or step; others belong to the thing around it. */
export type ClauseWord = 'at' | 'of' | 'for' | 'on' | 'from';

export interface PropertyRow {
    readonly shape: Shape;
    /** One sentence, for hovers and the reference. */
    readonly doc: string;
    /** The property as it is written. */
    readonly example: string;
    readonly required?: true;
    /** The edition that brought it. */
    readonly since: number;
    readonly clauses?: readonly ClauseWord[];
    /** May be said more than once. */
    readonly repeats?: true;
    /** Goes on to the end of its line, whatever words stand there. */
    readonly sentence?: true;
    /** Read, but not used in this edition. */
    readonly built?: false;
}

/** Properties by name; their order is that of the formatter and of completion. */
export type Properties = Readonly<Record<string, PropertyRow>>;

/** A row of the first edition. */
export function property(shape: Shape, doc: string, example: string, more: Partial<PropertyRow> = {}): PropertyRow {
    return { shape, doc, example, since: 1, ...more };
}

export const shape = {
    length: { is: 'quantity', dimension: 'length' },
    lengthWithTolerance: { is: 'quantity', dimension: 'length', tolerance: true },
    angle: { is: 'quantity', dimension: 'angle' },
    ratio: { is: 'quantity', dimension: 'none' },
    mass: { is: 'quantity', dimension: 'mass' },
    force: { is: 'quantity', dimension: 'force' },
    pressure: { is: 'quantity', dimension: 'pressure' },
    density: { is: 'quantity', dimension: 'density' },
    volume: { is: 'quantity', dimension: 'volume' },
    time: { is: 'quantity', dimension: 'time' },
    count: { is: 'count' },
    text: { is: 'text' },
    truth: { is: 'truth' },
    tradeSize: { is: 'tradeSize' },
    shares: { is: 'shares' },
    nothing: { is: 'nothing' },
} as const satisfies Record<string, Shape>;

export const choice = (...of: readonly string[]): Shape => ({ is: 'choice', of });
export const thing = (...kinds: readonly string[]): Shape => ({ is: 'thing', kinds });
export const listOf = (of: Shape): Shape => ({ is: 'list', of });
export const either = (...of: readonly Shape[]): Shape => ({ is: 'either', of });
export const sizes = (count: number): Shape => ({ is: 'sizes', dimension: 'length', count });
export const dimensions = (...words: readonly string[]): Shape => ({ is: 'dimensions', dimension: 'length', words });
export const price = (...per: readonly string[]): Shape => ({ is: 'rate', per, of: 'money' });
export const timePer = (...per: readonly string[]): Shape => ({ is: 'rate', per, of: 'time' });
export const massPer = (...per: readonly string[]): Shape => ({ is: 'rate', per, of: 'mass' });
