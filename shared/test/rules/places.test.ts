import { describe, expect, test } from 'vitest';
import { arcCurve, point } from '../../src/geometry/index.js';
import { type BoardWords, board, bookcase, caseworkOf, edgeOf, findingsOf, jointOf, measure, spanOf } from './casework-of.js';

/** The fit tolerance is 0.01 mm: 0.0003937in. */
const underTolerance = '0.0003in';
const overTolerance = '0.0005in';

describe('PLC-003 parts-overlap', () => {
    const shelf = (bottom: string, top: string) => board(4, 'shelf', 'Extra', ['0.72in', '29.28in'], ['0in', '11in'], [bottom, top]);

    test('parts that touch do not overlap', () => {
        expect(findingsOf('PLC-003', caseworkOf({ parts: [...bookcase([12]), shelf('12in', '12.72in')] }))).toEqual([]);
    });

    test('an overlap under the fit tolerance is touching, one over it is not', () => {
        const lapping = (by: string) =>
            caseworkOf({ parts: [board(5, 'side', 'Extra', ['0in', by], ['0in', '11in'], ['0in', '36in']), ...bookcase([])] });
        // The board is as thick as the overlap, so that only the overlap decides.
        const beside = (from: string) =>
            caseworkOf({ parts: [...bookcase([]), board(5, 'divider', 'Extra', [from, '2in'], ['0in', '11in'], ['0in', '36in'])] });
        expect(findingsOf('PLC-003', lapping('0in'))).toEqual([]);
        expect(findingsOf('PLC-003', beside('0.7197in'))).toEqual([]);
        expect(findingsOf('PLC-003', beside('0.7195in'))).toHaveLength(1);
    });

    test('says by how much, in the units of the design, and which part was written before it', () => {
        const casework = caseworkOf({ parts: [...bookcase([12]), shelf('11.78in', '12.5in')] });
        expect(findingsOf('PLC-003', casework)).toEqual([
            'Case.Extra: `Extra` and `Tier[1]` claim the same wood: they overlap by 0.22in in the height',
        ]);
        const metric = { title: 'x', units: 'mm', notes: [] } as const;
        expect(findingsOf('PLC-003', { ...casework, project: metric })).toEqual([
            'Case.Extra: `Extra` and `Tier[1]` claim the same wood: they overlap by 5.59mm in the height',
        ]);
    });

    test('parts that cross are said to cross: no distance mends that', () => {
        const post = board(4, 'divider', 'Post', ['14in', '14.72in'], ['0in', '11in'], ['0in', '36in']);
        expect(findingsOf('PLC-003', caseworkOf({ parts: [...bookcase([12]), post] }))).toEqual([
            'Case.Post: `Post` and `Tier[1]` cross: each goes through the other',
        ]);
    });

    const intoSide = board(4, 'shelf', 'Extra', ['0.47in', '29.28in'], ['0in', '11in'], ['11in', '11.72in']);

    test('a dado makes room for what it adds to the shelf, and for no more', () => {
        const dado = (adds: string) => [{ ...jointOf(5, 'Extra', 'Left', [['dado', adds]]), adds: measure(adds) }];
        const casework = (adds: string) => caseworkOf({ parts: [...bookcase([]), intoSide], joints: dado(adds) });
        expect(findingsOf('PLC-003', casework('1/4in'))).toEqual([]);
        expect(findingsOf('PLC-003', casework('1/8in'))).toEqual([
            'Case.Extra: `Extra` and `Left` claim the same wood: they overlap by 1/8in across the width',
        ]);
        expect(findingsOf('PLC-003', caseworkOf({ parts: [...bookcase([]), intoSide] }))).toHaveLength(1);
    });

    test('a rabbet makes room for the part it is cut for, as deep as it is, and for no other', () => {
        const rabbeted = (depth: string, part: string) => {
            const [left, right] = bookcase([]);
            const back = board(6, 'back', 'back', ['0.345in', '29.28in'], ['0in', '0.205in'], ['0in', '36in']);
            const cut = edgeOf(7, 'back', [{ does: 'rabbet', amount: depth, width: '0.205in', for: part }]);
            return caseworkOf({ parts: [{ ...left!, edges: [cut] }, right!, back] });
        };
        expect(findingsOf('PLC-003', rabbeted('0.375in', 'Case.back'))).toEqual([]);
        expect(findingsOf('PLC-003', rabbeted('0.25in', 'Case.back'))).toHaveLength(1);
        expect(findingsOf('PLC-003', rabbeted('0.375in', 'Case.other'))).toHaveLength(1);
    });

    test('a layer that stops short makes room', () => {
        const [left, right] = bookcase([]);
        const layer = (from: string, to: string, back: string) => ({
            material: undefined,
            thickness: undefined,
            grain: 'length' as const,
            size: left!.sizes.finished,
            box: board(0, 'side', 'layer', [from, to], [back, '11in'], ['0in', '36in']).box,
            span: spanOf(7),
        });
        const back = board(6, 'back', 'back', ['0.36in', '29.28in'], ['0in', '0.205in'], ['0in', '36in']);
        const of = (step: string) =>
            caseworkOf({ parts: [{ ...left!, layers: [layer('0in', '0.36in', '0in'), layer('0.36in', '0.72in', step)] }, right!, back] });
        expect(findingsOf('PLC-003', of('0.25in'))).toEqual([]);
        expect(findingsOf('PLC-003', of('0in'))).toHaveLength(1);
    });

    test('a part that follows a curve is only as deep as the curve is beside the other part', () => {
        const outcome = arcCurve(point(0, 400), point(900, 200), 20);
        if (!outcome.ok) throw new Error(outcome.refusal.reason);
        const follows: BoardWords = { frontCurve: 'Case.Sweep' };
        const side = board(1, 'side', 'Left', ['0mm', '18mm'], ['0mm', '400mm'], ['0mm', '900mm'], follows);
        const rail = (height: string, top: string) => board(2, 'kick', 'rail', ['0mm', '600mm'], ['330mm', '350mm'], [height, top]);
        const curves = [
            {
                path: 'Case.Sweep',
                name: 'Sweep',
                assembly: 'Case',
                over: 'height' as const,
                curve: outcome.curve,
                pieces: [],
                joints: [],
                used: { from: 0, to: 900 },
                parts: ['Case.Left'],
                span: spanOf(8),
                nameSpan: spanOf(8),
            },
        ];
        const of = (height: string, top: string) => findingsOf('PLC-003', caseworkOf({ parts: [side, rail(height, top)], curves }));
        expect(of('0mm', '100mm')).toHaveLength(1);
        expect(of('700mm', '800mm')).toEqual([]);
    });

    test('parts of two cases do not share a corner and are not compared', () => {
        const [left, right] = bookcase([]);
        const other = { ...left!, path: 'Other.Left', assembly: 'Other' };
        expect(findingsOf('PLC-003', caseworkOf({ parts: [left!, right!, other] }))).toEqual([]);
    });

    test('a part whose size is unknown has its mistake elsewhere', () => {
        const unknown = shelf('11.78in', '12.5in');
        const sizes = { ...unknown.sizes, finished: { ...unknown.sizes.finished, length: undefined } };
        expect(findingsOf('PLC-003', caseworkOf({ parts: [...bookcase([12]), { ...unknown, sizes }] }))).toEqual([]);
    });
});

describe('PLC-002 no-size-left', () => {
    const between = { bottom: { name: 'the floor', stopped: false }, top: { name: 'Floor.lower', stopped: true } };

    test('a part with nothing left, and between what it runs', () => {
        const flat = board(4, 'kick', 'kick', ['0.72in', '29.28in'], ['8in', '8.72in'], ['0in', '0in']);
        const of = { ...flat, bounds: { ...flat.bounds, ...between } };
        expect(findingsOf('PLC-002', caseworkOf({ parts: [...bookcase([]), of] }))).toEqual([
            'Case.kick: nothing is left of `kick`: its height comes out as 0in, between `the floor` and `Floor.lower`',
        ]);
    });

    test('below nothing', () => {
        const flat = board(4, 'kick', 'kick', ['0.72in', '29.28in'], ['8in', '8.72in'], ['0.5in', '0.25in']);
        expect(findingsOf('PLC-002', caseworkOf({ parts: [...bookcase([]), flat] }))).toEqual([
            'Case.kick: nothing is left of `kick`: its height comes out as -1/4in',
        ]);
    });

    test.each([
        [underTolerance, 1],
        [overTolerance, 0],
    ])('a size of %s', (size, count) => {
        const thin = board(4, 'kick', 'kick', ['0.72in', '29.28in'], ['8in', '8.72in'], ['0in', size]);
        expect(findingsOf('PLC-002', caseworkOf({ parts: [...bookcase([]), thin] }))).toHaveLength(count);
    });

    test('bands that take all of the core', () => {
        const narrow = board(4, 'shelf', 'Lip', ['0.72in', '29.28in'], ['0in', '0.25in'], ['8in', '8.72in']);
        const core = { ...narrow.sizes.finished, width: measure('0in') };
        const edges = [
            { ...edgeOf(5, 'front', [{ does: 'band', amount: '1/8in' }]), takesOff: measure('1/8in') },
            { ...edgeOf(6, 'back', [{ does: 'band', amount: '1/8in' }]), takesOff: measure('1/8in') },
        ];
        const part = { ...narrow, sizes: { ...narrow.sizes, core }, edges };
        expect(findingsOf('PLC-002', caseworkOf({ parts: [part] }))).toEqual([
            'Case.Lip: nothing is left of `Lip` inside its bands: they take 1/8in and 1/8in of its 1/4in',
        ]);
    });
});

describe('PLC-004 part-outside-case', () => {
    const room = board(0, 'shelf', 'room', ['0in', '30in'], ['0in', '11in'], ['0in', '36in']).box;
    const shelf = (front: string, past: BoardWords['past'] = []) =>
        board(4, 'shelf', 'High', ['0.72in', '29.28in'], ['0in', front], ['34in', '34.72in'], { past });

    test.each([
        ['11in', 0],
        ['11.0003in', 0],
        ['11.0005in', 1],
    ])('a front at %s in a case 11in deep', (front, count) => {
        expect(findingsOf('PLC-004', caseworkOf({ parts: [shelf(front)], room }))).toHaveLength(count);
    });

    test('names the face and the distance', () => {
        expect(findingsOf('PLC-004', caseworkOf({ parts: [shelf('12 1/2in')], room }))).toEqual([
            'Case.High: `High` stands 1 1/2in out of the front of `Case`',
        ]);
    });

    test('an edge that is placed past something stands out on purpose; the others do not', () => {
        expect(findingsOf('PLC-004', caseworkOf({ parts: [shelf('12 1/2in', ['front'])], room }))).toEqual([]);
        expect(findingsOf('PLC-004', caseworkOf({ parts: [shelf('12 1/2in', ['left'])], room }))).toHaveLength(1);
    });
});

describe('PLC-005 shelf-order', () => {
    test('rising shelves are in order', () => {
        expect(findingsOf('PLC-005', caseworkOf({ parts: bookcase([10, 20, 30]) }))).toEqual([]);
    });

    test('a shelf below the one counted before it; one finding for a group', () => {
        expect(findingsOf('PLC-005', caseworkOf({ parts: bookcase([30, 20, 10]) }))).toEqual([
            'Case.Tier[2]: `Tier[2]` lies at 20in, below `Tier[1]` at 30in: the shelves of a group are counted from the bottom up',
        ]);
    });

    test('shelves of different groups may lie as they like', () => {
        const [left, right, first, second] = bookcase([30, 10]);
        const other = { ...second!, path: 'Case.Other[1]', name: 'Other[1]' };
        expect(findingsOf('PLC-005', caseworkOf({ parts: [left!, right!, first!, other] }))).toEqual([]);
    });
});
