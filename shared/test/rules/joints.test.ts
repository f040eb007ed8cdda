import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxBetween, boxContact, boxOverlap } from '../../src/geometry/index.js';
import { neighboursIn } from '../../src/rules/inspection/neighbours.js';
import { board, bookcase, caseworkOf, edgeOf, findingsOf, jointOf, property, shown, thingOf } from './casework-of.js';

describe('JNT-001 joint-through-stock and JNT-003 dado-too-deep (a third of the nominal thickness: common practice, no source)', () => {
    const ply = thingOf('material', 'Ply', 'plywood', { thickness: property.measure('3/4in') });
    const codes = (depth: string) => {
        const [left, right, shelf] = bookcase([12]);
        const layer = {
            material: ply.id,
            thickness: left!.sizes.finished.thickness,
            grain: 'length' as const,
            size: left!.sizes.finished,
            box: undefined,
            span: left!.span,
        };
        const joints = [jointOf(7, 'Tier[1]', 'Left', [['dado', depth]]), jointOf(8, 'Tier[1]', 'Right', [])];
        const parts = [{ ...left!, layers: [layer] }, right!, shelf!];
        // these parts only touch: that a dado has no place in them is another matter
        const found = shown(caseworkOf({ parts, joints, things: [ply] })).map(({ code }) => code);
        return found.filter((code) => code !== 'JNT-019');
    };

    test.each([
        ['1/4in', []],
        ['0.26in', ['JNT-003']],
        ['0.71in', ['JNT-003']],
        ['0.72in', ['JNT-001']],
        ['3/4in', ['JNT-001']],
    ])('a dado %s deep in a board of 0.72in that is called 3/4in', (depth, expected) => {
        expect(codes(depth)).toEqual(expected);
    });
});

describe('JNT-002 touching-without-joint', () => {
    test('one note a part, at the part written later, with all that it touches', () => {
        expect(findingsOf('JNT-002', caseworkOf({ parts: bookcase([12]) }))).toEqual([
            'Case.Tier[1]: `Tier[1]` touches `Left` and `Right`, and no joint is named between them',
        ]);
    });

    test('a joint covers its pair and no other', () => {
        const joints = [jointOf(7, 'Tier[1]', 'Left', [])];
        expect(findingsOf('JNT-002', caseworkOf({ parts: bookcase([12]), joints }))).toEqual([
            'Case.Tier[1]: `Tier[1]` touches `Right`, and no joint is named between them',
        ]);
    });

    test('a part in a rabbet made for it touches its host', () => {
        const [left] = bookcase([]);
        const back = board(6, 'back', 'back', ['0.36in', '29in'], ['0in', '0.205in'], ['0in', '36in']);
        const edges = [edgeOf(5, 'back', [{ does: 'rabbet', amount: '0.36in', for: 'Case.back' }])];
        expect(findingsOf('JNT-002', caseworkOf({ parts: [{ ...left!, edges }, back] }))).toHaveLength(1);
    });

    test('parts of two cases go by their paths; a joint of the cases covers their parts', () => {
        const right = board(1, 'side', 'A.Right', ['0in', '1in'], ['0in', '11in'], ['0in', '36in'], { name: 'Right', assembly: 'Case.A' });
        const left = board(2, 'side', 'B.Left', ['1in', '2in'], ['0in', '11in'], ['0in', '36in'], { name: 'Left', assembly: 'Case.B' });
        const casework = caseworkOf({ parts: [right, left] });
        const [whole] = casework.assemblies;
        const assemblies = [whole!, ...['A', 'B'].map((name) => ({ ...whole!, path: `Case.${name}`, name, inside: 'Case' }))];
        expect(findingsOf('JNT-002', { ...casework, assemblies })).toEqual([
            'Case.B.Left: `Case.B.Left` touches `Case.A.Right`, and no joint is named between them',
        ]);
        expect(findingsOf('JNT-002', { ...casework, assemblies, joints: [jointOf(7, 'A', 'B', [])] })).toEqual([]);
    });

    test('parts that meet at an edge only do not touch', () => {
        const corner = board(6, 'shelf', 'Corner', ['0.72in', '29.28in'], ['11in', '12in'], ['11.28in', '12in']);
        const [left] = bookcase([]);
        expect(findingsOf('JNT-002', caseworkOf({ parts: [left!, corner] }))).toEqual([]);
    });

    test('is silent while part of the text could not be read: the join may be what is missing', () => {
        const problem = { code: 'TXT-001', span: { file: 'hand-made.case', start: 0, end: 1 }, message: 'x', related: [] };
        expect(findingsOf('JNT-002', caseworkOf({ parts: bookcase([12]) }), { reading: [problem] })).toEqual([]);
    });

    test('runs over what is built, not between two keystrokes', () => {
        expect(findingsOf('JNT-002', caseworkOf({ parts: bookcase([12]) }), { phase: 'sizes' })).toEqual([]);
    });
});

describe('neighbours', () => {
    const side = fc.integer({ min: 0, max: 8 });
    const corner = fc.tuple(side, side, side);
    const box = fc
        .tuple(corner, corner)
        .filter(([a, b]) => a.every((value, index) => value !== b[index]))
        .map(([[x, y, z], [u, v, w]]) => boxBetween({ x, y, z }, { x: u, y: v, z: w }));

    test('the sweep finds exactly the pairs that touch or overlap when each is compared with each', () => {
        fc.assert(
            fc.property(fc.array(box, { maxLength: 24 }), (boxes) => {
                const parts = boxes.map((box, index) => ({
                    ...board(index, 'shelf', `P${index}`, ['0mm', '1mm'], ['0mm', '1mm'], ['0mm', '1mm']),
                    box,
                }));
                const found = neighboursIn(caseworkOf({ parts }))
                    .filter(({ earlier, later }) => boxOverlap(earlier.box, later.box) ?? boxContact(earlier.box, later.box))
                    .map(({ earlier, later }) => `${earlier.name} ${later.name}`);
                const expected = parts.flatMap((later, index) =>
                    parts
                        .slice(0, index)
                        .filter((earlier) => boxOverlap(earlier.box, later.box) ?? boxContact(earlier.box, later.box))
                        .map((earlier) => `${earlier.name} ${later.name}`),
                );
                expect(found).toEqual(expected);
            }),
        );
    });
});
