import { describe, expect, test } from 'vitest';
import { board, bookcase, caseworkOf, edgeOf, findingsOf, property, type StepWords, shown, thingOf } from './casework-of.js';

const things = [
    thingOf('species', 'BlackWalnut', 'hardwood'),
    thingOf('material', 'Walnut', 'lumber', { species: property.thing('BlackWalnut') }),
    thingOf('material', 'WalnutVeneer', 'veneer', { species: property.thing('BlackWalnut') }),
    thingOf('material', 'Ply', 'plywood', { thickness: property.measure('3/4in') }),
];
const walnut = 'hand-made.case#Walnut';
const veneer = 'hand-made.case#WalnutVeneer';
const ply = 'hand-made.case#Ply';

const shelf = (steps: readonly StepWords[], recipeAt?: number) => {
    const part = board(4, 'shelf', 'Low', ['0.72in', '29.28in'], ['0in', '11in'], ['11.28in', '12in']);
    return caseworkOf({ parts: [{ ...part, edges: [edgeOf(5, 'front', steps, recipeAt)] }], things });
};

describe('EDG-001 band-narrower-than-panel', () => {
    test.each([
        ['3/4in', 0],
        ['0.72in', 0],
        ['0.7197in', 0],
        ['0.7195in', 1],
    ])('a nosing %s high on a board of 0.72in', (high, count) => {
        expect(findingsOf('EDG-001', shelf([{ does: 'nosing', amount: '3/4in', width: high, material: walnut }]))).toHaveLength(count);
    });

    test('counts all layers of the board', () => {
        const part = board(4, 'top', 'top', ['0in', '30in'], ['0in', '11in'], ['34.56in', '36in']);
        const edge = edgeOf(5, 'front', [{ does: 'nosing', amount: '3/4in', width: '3/4in', material: walnut }]);
        expect(findingsOf('EDG-001', caseworkOf({ parts: [{ ...part, edges: [edge] }], things }))).toEqual([
            'Case.top: the nosing on the front edge of `top` is 3/4in high and the board is 1.44in thick: 0.69in stays bare',
        ]);
    });

    test('without a height it is as high as its edge', () => {
        expect(findingsOf('EDG-001', shelf([{ does: 'nosing', amount: '3/4in', material: walnut }]))).toEqual([]);
    });
});

describe('EDG-002 band-too-thin (common practice, no source)', () => {
    test.each([
        ['1/8in', walnut, 0],
        ['1/32in', walnut, 0],
        ['0.79mm', walnut, 1],
        ['0.6mm', veneer, 0],
        ['1/64in', veneer, 0],
        ['0.3mm', veneer, 1],
    ])('a band of %s of %s', (amount, material, count) => {
        expect(findingsOf('EDG-002', shelf([{ does: 'band', amount, material }]))).toHaveLength(count);
    });

    test('stands at the band itself, wherever its edging is declared', () => {
        const [finding] = shown(shelf([{ does: 'band', amount: '1/64in', material: walnut }], 60));
        expect(finding).toMatchObject({ code: 'EDG-002', span: { start: 600 }, found: '1/64in', needed: 'at least 1/32in' });
    });
});

describe('EDG-003 end-grain-showing (common practice, no source: the top edge is banded before the front edge)', () => {
    const lipped: readonly StepWords[] = [{ does: 'band', amount: '1/8in', material: walnut }];
    const side = (...names: readonly ('front' | 'top' | 'bottom' | 'back')[]) => {
        const part = board(4, 'side', 'Left', ['0in', '0.72in'], ['0in', '11in'], ['0in', '36in']);
        return caseworkOf({ parts: [{ ...part, edges: names.map((name, index) => edgeOf(5 + index, name, lipped)) }], things });
    };

    test.each([
        [['top', 'front'], 0],
        [['bottom', 'top', 'front'], 0],
        [['front', 'top'], 1],
        [['bottom', 'front', 'top'], 1],
        [['front', 'back'], 0],
    ] as const)('%s', (names, count) => {
        expect(findingsOf('EDG-003', side(...names))).toHaveLength(count);
    });

    test('an edge that is only rounded has no end to show', () => {
        const part = board(4, 'side', 'Left', ['0in', '0.72in'], ['0in', '11in'], ['0in', '36in']);
        const edges = [edgeOf(5, 'front', lipped), edgeOf(6, 'top', [{ does: 'round', amount: '1/8in' }])];
        expect(findingsOf('EDG-003', caseworkOf({ parts: [{ ...part, edges }], things }))).toEqual([]);
    });

    test('the ends of a shelf are its left and right edges', () => {
        const part = board(4, 'top', 'top', ['0in', '30in'], ['0in', '11in'], ['35in', '36in']);
        const edges = [edgeOf(5, 'front', lipped), edgeOf(6, 'left', lipped)];
        expect(findingsOf('EDG-003', caseworkOf({ parts: [{ ...part, edges }], things }))).toEqual([
            'Case.top: the left edge of `top` is banded after its front edge, so the end of that band shows at the front',
        ]);
    });
});

describe('EDG-004 rabbet-too-deep and EDG-008 rabbet-leaves-little (a third of the nominal thickness: common practice, no source)', () => {
    const codes = (amount: string) => {
        const part = board(4, 'side', 'Left', ['0in', '0.72in'], ['0in', '11in'], ['0in', '36in']);
        const layer = {
            material: ply,
            thickness: part.sizes.finished.thickness,
            grain: 'length' as const,
            size: part.sizes.finished,
            box: undefined,
            span: part.span,
        };
        const edges = [edgeOf(5, 'back', [{ does: 'rabbet', amount, for: 'Case.back' }])];
        return shown(caseworkOf({ parts: [{ ...part, layers: [layer], edges }], things })).map(({ code }) => code);
    };

    // Two thirds of 3/4in are 1/2in; the board measures 0.72in.
    test.each([
        ['3/8in', []],
        ['1/2in', []],
        ['0.51in', ['EDG-008']],
        ['0.7in', ['EDG-008']],
        ['0.72in', ['EDG-004']],
        ['3/4in', ['EDG-004']],
    ])('a rabbet %s deep', (amount, expected) => {
        expect(codes(amount)).toEqual(expected);
    });
});

describe('EDG-006 rabbet-narrower-than-back', () => {
    test.each([
        ['0.205in', 0],
        ['1/4in', 0],
        ['3/16in', 1],
    ])('a rabbet %s wide for a back of 0.205in', (width, count) => {
        const side = board(1, 'side', 'Left', ['0in', '0.72in'], ['0in', '11in'], ['0in', '36in']);
        const back = board(2, 'back', 'back', ['0.345in', '29.28in'], ['0in', '0.205in'], ['0in', '36in']);
        const edges = [edgeOf(5, 'back', [{ does: 'rabbet', amount: '0.375in', width, for: 'Case.back' }])];
        expect(findingsOf('EDG-006', caseworkOf({ parts: [{ ...side, edges }, back] }))).toHaveLength(count);
    });
});

describe('EDG-007 round-larger-than-edge', () => {
    const band = (amount: string): StepWords => ({ does: 'band', amount, material: walnut });
    const round = (amount: string): StepWords => ({ does: 'round', amount });

    test.each([
        [[band('1/8in'), round('1/8in')], 0],
        [[band('1/8in'), round('3/16in')], 1],
        [[round('0.36in')], 0],
        [[round('3/8in')], 1],
        // The round is done first, on the bare board: the band comes over it.
        [[round('3/16in'), band('1/8in')], 0],
    ] as const)('%j', (steps, count) => {
        expect(findingsOf('EDG-007', shelf([...steps]))).toHaveLength(count);
    });

    test('a band of an earlier statement for the same edge counts', () => {
        const part = board(4, 'shelf', 'Low', ['0.72in', '29.28in'], ['0in', '11in'], ['11.28in', '12in']);
        const edges = [edgeOf(5, 'front', [band('1/8in')], 60), edgeOf(6, 'front', [round('3/16in')], 70)];
        const [finding] = shown(caseworkOf({ parts: [{ ...part, edges }], things }));
        expect(finding).toMatchObject({ code: 'EDG-007', span: { start: 60 } });
    });
});

test('parts of an array that share the words of a mistake give one finding', () => {
    const parts = bookcase([10, 20, 30]).map((part) =>
        part.kind === 'shelf' ? { ...part, edges: [edgeOf(5, 'front', [{ does: 'round', amount: '3/8in' }])] } : part,
    );
    expect(findingsOf('EDG-007', caseworkOf({ parts }))).toHaveLength(1);
});
