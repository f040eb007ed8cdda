import type { Span } from '../design/design.js';
import type { Edge, EdgeStep } from './casework.js';

/** Where a step of an edge is said: its own words where they stand at the edge, or else the edge that uses the recipe. */
export function wordsAt(edge: Pick<Edge, 'span'>, { span }: EdgeStep): Span {
    const isInPlace = span.file === edge.span.file && span.start >= edge.span.start && span.end <= edge.span.end;
    return isInPlace ? span : edge.span;
}
