/**
 * The bookcase of the other tests with sides that follow a bow: 12in deep at the floor, 9in at the top, bellied by 3/4in. Bands of 1/8in
 * are on their fronts and tops.
 */
import type { Casework, Part } from '../../src/casework/index.js';
import { type BowCurve, bowCurve } from '../../src/geometry/index.js';
import { measure, span } from '../documents/casework-builder.js';
import { bookcase } from '../documents/sample-casework.js';

const inch = 25.4;

function bow(): BowCurve {
    const outcome = bowCurve({ x: 0, y: 12 * inch }, { x: 66 * inch, y: 9 * inch }, 0.75 * inch);
    if (!outcome.ok) throw new Error(outcome.refusal.reason);
    return outcome.curve;
}

export const sweep = bow();
const path = 'Bookcase.Sweep';
const sides = ['Bookcase.Left', 'Bookcase.Right'];

function bowed(part: Part): Part {
    const takesOff = measure('1/8in');
    const edges = part.edges.map((edge) => (edge.name === 'back' ? edge : { ...edge, takesOff }));
    return { ...part, frontCurve: path, edges };
}

export const bowedBookcase: Casework = {
    ...bookcase,
    parts: new Map([...bookcase.parts].map(([name, part]) => [name, sides.includes(name) ? bowed(part) : part])),
    curves: [
        {
            path,
            name: 'Sweep',
            assembly: 'Bookcase',
            over: 'height',
            curve: sweep,
            pieces: [],
            joints: [],
            used: sweep.span,
            parts: sides,
            span,
            nameSpan: span,
        },
    ],
};
