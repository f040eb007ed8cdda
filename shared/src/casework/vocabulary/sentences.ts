/** Sentences that read like properties and go on to the end of their line. */
import { type Properties, property, shape } from './row.js';

export const sentences: Properties = {
    cut: property(shape.nothing, 'Takes a shape out.', 'cut hole 2in wide at middle', {
        clauses: ['at', 'of', 'for', 'on'],
        repeats: true,
        sentence: true,
        built: false,
    }),
    match: property(shape.nothing, 'Parts whose figure runs on.', 'match Near, Far from one sheet', {
        clauses: ['from'],
        repeats: true,
        sentence: true,
        built: false,
    }),
};
