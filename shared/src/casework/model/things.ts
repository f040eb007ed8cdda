/** What parts are made of and made with: things as the text states them, and the workshop. */
import type { Span } from '../design/design.js';
import type { Measure } from './measure.js';

/** A material, species, goods or other thing, evaluated. */
export interface Thing {
    readonly id: string;
    readonly kind: string;
    readonly name: string;
    readonly family?: string;
    readonly properties: ReadonlyMap<string, ThingValue>;
    readonly span: Span;
    readonly nameSpan: Span;
    readonly doc?: string;
}
export type ThingValue =
    | { readonly is: 'measure'; readonly measure: Measure; readonly span: Span }
    | { readonly is: 'measures'; readonly measures: readonly Measure[]; readonly words: readonly string[]; readonly span: Span }
    /** `sheet 48in x 96in, 60in x 60in` */
    | { readonly is: 'sizes'; readonly sizes: readonly (readonly Measure[])[]; readonly span: Span }
    | { readonly is: 'word'; readonly word: string; readonly span: Span }
    | { readonly is: 'text'; readonly text: string; readonly span: Span }
    | { readonly is: 'truth'; readonly value: boolean; readonly span: Span }
    | { readonly is: 'thing'; readonly id: string; readonly name: string; readonly span: Span }
    /** `4 USD per 100` is per `each`, with the count 100. */
    | { readonly is: 'rate'; readonly amount: Measure; readonly per: string; readonly count?: number; readonly span: Span }
    | { readonly is: 'block'; readonly properties: ReadonlyMap<string, ThingValue>; readonly span: Span };

/** The workshop's own figures, or the defaults for them. */
export interface Shop {
    /** Added all round a laminated blank, and along an edge that is routed to a template. */
    readonly oversize: Measure;
    /** What a band or nosing is left long at each end, and over each face. */
    readonly bandLong: Measure;
    readonly bandOver: Measure;
    /** What a board that is bent is left long at each end. */
    readonly bentLong: Measure;
    readonly kerf: Measure;
    /** Taken off each edge of a sheet before anything is cut from it; undefined where the shop does not say. */
    readonly trim: Measure | undefined;
    /** What the shop says of its cauls; undefined where it says nothing. */
    readonly caul?: Caul;
    /** How many clamps it says that it has, of all sorts together; undefined where it says nothing of them. */
    readonly clamps?: number;
    readonly thing?: Thing;
}

/** A strip that is bent to draw a curve. */
export interface Batten {
    readonly thickness: Measure | undefined;
    readonly width: Measure | undefined;
    readonly length: Measure | undefined;
    /** Declaration id of its wood. */
    readonly species: string | undefined;
    readonly span: Span;
}

/** A bearer across a panel that presses it while its glue sets, with a clamp at each end. */
export interface Caul {
    readonly height: Measure | undefined;
    readonly width: Measure | undefined;
    /** Declaration id of its wood. */
    readonly species: string | undefined;
    readonly spacing: Measure | undefined;
    /** Of the clamp at each end. */
    readonly force: Measure | undefined;
    readonly span: Span;
}
