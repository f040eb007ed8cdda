/** The wash-stand of the examples, whose front is bowed in plan: its sizes worked out by hand from the circle. */
import { describe, expect, it } from 'vitest';
import { analyseFile } from './analysed.js';
import { inchesAt } from './sizes.js';

const example = new URL('../../examples/tarn-house/tarn-house.case', import.meta.url).pathname;

/**
 * Chord 42in, rise 2 1/2in: the radius is (21² + 2.5²) / (2 x 2.5) = 89.45in, and the middle of the circle lies
 * 17 + 2.5 - 89.45 = -69.95in from the wall, halfway across.
 */
const depthAt = (x: number, radius = 89.45) => Math.sqrt(radius ** 2 - (x - 21) ** 2) - 69.95;
/** Sides of one sheet are 0.72in thick. */
const sheet = 0.72;

describe('the wash-stand with a bowed front', async () => {
    const { casework, findings } = await analyseFile(example);
    const inches = (path: string) => inchesAt(casework, `WashStand.${path}`);

    it('is sound', () => expect(findings).toEqual([]));

    it('shelves fit between the sides: 42 - 2 x 0.72 = 40.56in', () => {
        expect(inches('Linen[1].length')).toBeCloseTo(40.56, 9);
        expect(inches('bottom.length')).toBeCloseTo(40.56, 9);
    });

    it('a shelf is deepest halfway across: 17 + 2.5 less the back of 0.205 is 19.295in', () => {
        expect(inches('Linen[1].width')).toBeCloseTo(19.295, 9);
        expect(inches('Linen[1].core.width')).toBeCloseTo(19.295 - 0.125, 6);
    });

    it('a side is 17in deep outside, 17.17in inside, and bevelled by the slope between', () => {
        expect(inches('Left.front.left')).toBeCloseTo(17, 9);
        expect(inches('Left.front.right')).toBeCloseTo(depthAt(sheet), 9);
        expect(depthAt(sheet)).toBeCloseTo(17.17, 2);
        const degrees = (Math.atan((depthAt(sheet) - 17) / sheet) * 180) / Math.PI;
        expect(Number(casework.parts.get('WashStand.Left')?.front?.bevel.quantity.value)).toBeCloseTo(degrees, 9);
    });

    it('the top stands an inch past the sides and the bow: 44in by 20 1/2in, on a circle of 90.45in', () => {
        expect(inches('top.length')).toBeCloseTo(44, 9);
        expect(inches('top.width')).toBeCloseTo(20.5, 9);
        const line = casework.curves.find(({ parts }) => parts.includes('WashStand.top'))?.curve;
        expect((line?.valueAt(0).value ?? 0) / 25.4).toBeCloseTo(depthAt(0, 90.45), 6);
    });

    it('the openings: 9in, and half of what is left for each of the others', () => {
        // from the upper face of the bottom, at 4in, to the lower face of the top, 33 - 0.72: two shelves and three openings
        const rest = (33 - sheet - 4 - 2 * sheet - 9) / 2;
        expect(inches('bottom.clear')).toBeCloseTo(9, 9);
        expect(inches('Linen[1].clear')).toBeCloseTo(rest, 9);
        expect(inches('Linen[2].clear')).toBeCloseTo(rest, 9);
    });

    it('the kick is bent to a circle of 86.95in, 2 R asin(20.28 / R) long, and cut an inch longer at each end', () => {
        const round = 2 * 86.95 * Math.asin(20.28 / 86.95);
        expect(inches('kick.length')).toBeCloseTo(round, 6);
        expect(inches('kick.rough.length')).toBeCloseTo(round + 2, 6);
        expect(inches('kick.width')).toBeCloseTo(4 - sheet, 9);
        expect(inches('kick.thickness')).toBeCloseTo(3 * 0.205, 9);
    });

    it('the band round the front of a shelf is as long as the arc: 2 R asin(20.28 / R)', () => {
        const band = casework.pieces.find(({ part, role }) => part === 'WashStand.Linen[1]' && role === 'band');
        const length = Number(band?.finished.length?.quantity.value) / 25.4;
        expect(length).toBeCloseTo(2 * 89.45 * Math.asin(20.28 / 89.45), 4);
    });
});
