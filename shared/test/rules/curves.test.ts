import { describe, expect, test } from 'vitest';
import type { CurveModel } from '../../src/casework/index.js';
import { arcCurve, type Interval, lineCurve, point } from '../../src/geometry/index.js';
import { board, caseworkOf, edgeOf, findingsOf, property, spanOf, thingOf } from './casework-of.js';

function sweep(curve: CurveModel['curve'], used: Interval): CurveModel {
    return {
        path: 'Case.Sweep',
        name: 'Sweep',
        assembly: 'Case',
        over: 'height',
        curve,
        pieces: [],
        joints: [],
        used,
        parts: ['Case.Left'],
        span: spanOf(8),
        nameSpan: spanOf(8),
    };
}

describe('CRV-001 curve-too-short', () => {
    const line = lineCurve(point(100, 300), point(900, 200));
    const found = (from: number, to: number) => {
        if (!line.ok) throw new Error(line.refusal.reason);
        return findingsOf('CRV-001', caseworkOf({ parts: [], curves: [sweep(line.curve, { from, to })] }));
    };

    test('a curve that is followed within its ends', () => {
        expect(found(100, 900)).toEqual([]);
        expect(found(200, 800)).toEqual([]);
    });

    test('past its upper end, and before its lower one', () => {
        expect(found(100, 914.4)).toEqual([
            'Case.Left: `Sweep` ends at 35.433in, and is followed up to 36in of the height: past its end it keeps its last depth',
        ]);
        expect(found(0, 900)).toEqual([
            'Case.Left: `Sweep` begins at 3.937in, and is followed from 0in of the height: past its end it keeps its last depth',
        ]);
    });
});

// NDS-2018 section 5.3.8 (from memory): t/R at most 1/100 for hardwoods, 1/125 for other softwoods, R to the inside face.
describe('CRV-003 band-too-stiff, against NDS-2018 section 5.3.8 (from memory)', () => {
    const things = [
        thingOf('species', 'BlackWalnut', 'hardwood'),
        thingOf('species', 'WhitePine', 'softwood'),
        thingOf('material', 'Walnut', 'lumber', { species: property.thing('BlackWalnut') }),
        thingOf('material', 'Pine', 'lumber', { species: property.thing('WhitePine') }),
        thingOf('material', 'Ply', 'plywood', { species: property.thing('BlackWalnut') }),
    ];
    /** A front with the given radius at its face, bellied out or hollow. */
    const found = (radius: number, thickness: string, material: string, way: 'out' | 'in' = 'out') => {
        const chord = 600;
        const rise = radius - Math.sqrt(radius ** 2 - (chord / 2) ** 2);
        const arc = arcCurve(point(0, 300), point(chord, 300), way === 'out' ? rise : -rise);
        if (!arc.ok) throw new Error(arc.refusal.reason);
        const side = board(1, 'side', 'Left', ['0mm', '18mm'], ['0mm', '400mm'], ['0mm', '600mm'], { frontCurve: 'Case.Sweep' });
        const edges = [edgeOf(5, 'front', [{ does: 'band', amount: thickness, material: `hand-made.case#${material}` }])];
        const curves = [sweep(arc.curve, { from: 0, to: chord })];
        return findingsOf('CRV-003', caseworkOf({ parts: [{ ...side, edges }], curves, things }));
    };

    test('hardwood: a hundred times its thickness, measured on the inside of the bend', () => {
        expect(found(606, '6mm', 'Walnut')).toEqual([]);
        expect(found(605, '6mm', 'Walnut')).toHaveLength(1);
        expect(found(600, '6mm', 'Walnut', 'in')).toEqual([]);
        expect(found(599, '6mm', 'Walnut', 'in')).toHaveLength(1);
    });

    test('softwood: a hundred and twenty-five times', () => {
        expect(found(756, '6mm', 'Pine')).toEqual([]);
        expect(found(755, '6mm', 'Pine')).toHaveLength(1);
    });

    test('says the strain t/2R (facts of geometry) and its limit', () => {
        expect(found(400, '6mm', 'Walnut')).toEqual([
            'Case.Left: the band of 6mm on the front edge of `Left` is bent to a radius of 15 1/2in: that stretches it by 0.76 %, and dry hardwood takes 0.5 %',
        ]);
    });

    test('no limit is known for what is not solid wood', () => {
        expect(found(400, '6mm', 'Ply')).toEqual([]);
        expect(found(400, '6mm', 'Unknown')).toEqual([]);
    });
});
