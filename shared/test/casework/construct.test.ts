/** Casework from designs that no text would give: whatever stands where a value is looked for, nothing throws. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Casework, construct, type Design, type Expression, lookUp, type Statement } from '../../src/casework/index.js';
import { real } from '../../src/quantity/index.js';
import { call, designOf, measure, name, part, place, ply, property, span, word } from './design-by-hand.js';

const sides = () => part('side', ['Left', 'Right']);

function inches(design: Design, path: string): number {
    const found = lookUp(construct(design), path);
    return found.ok ? real.toNumber(found.measure.quantity.value) / 25.4 : Number.NaN;
}

describe('a design by hand', () => {
    it('is built: a shelf between two sides of 3/4in is 38 1/2in long', () => {
        const design = designOf([sides(), part('shelf', ['Deck'], { at: [place(measure('30in'))] })]);
        expect(inches(design, 'C.Deck.length')).toBeCloseTo(38.5, 12);
        expect(inches(design, 'Deck.upper')).toBeCloseTo(30, 12);
    });

    it('is a function of the design: the same one twice is the same casework', () => {
        const design = designOf([sides(), part('shelf', ['Tier'], { properties: [property('clear', word('equal'))] }, measure('3'))]);
        const [once, twice] = [construct(design), construct(design)];
        expect([...once.parts.values()]).toEqual([...twice.parts.values()]);
        const inWords = ({ pieces }: Casework) => pieces.map((piece) => ({ ...piece, edges: piece.edges, alike: piece.alike }));
        expect(inWords(once)).toEqual(inWords(twice));
        expect(once).not.toBe(twice);
    });

    it('keeps the values of words only when it is asked to', () => {
        const design = designOf([sides()]);
        expect(construct(design).values.size).toBe(0);
        expect(construct(design, { keepValues: true }).values.size).toBeGreaterThan(0);
    });

    it('tells a part that is lost from one that is not there', () => {
        const casework = construct(designOf([sides(), part('shelf', ['Lost'])]));
        expect(casework.problems.map(({ code }) => code)).toEqual(['PLC-001']);
        expect(lookUp(casework, 'C.Lost.length')).toEqual({ ok: false, reached: 'C.Lost.length', unknown: true });
        expect(lookUp(casework, 'C.Other.length')).toMatchObject({ ok: false, missing: 'Other.length' });
    });
});

describe('anything where a value is looked for', () => {
    const leaf: fc.Arbitrary<Expression> = fc.oneof(
        fc.constantFrom('0', '1', '3', '0.5', '1000000000', '3/4in', '0in', '12in', '40in', '900mm', '15deg', '2.5lb', '7%').map(measure),
        fc.constantFrom('equal', 'rest', 'middle', 'top', 'front', 'width', 'case', 'wall', 'floor', 'nowhere').map(word),
        fc.constantFrom(ply.id, 'by-hand.case#C', 'by-hand.case#C.Left', 'by-hand.case#C.Odd', 'by-hand.case#C.None').map(name),
        fc.constant(0).map((): Expression => ({ is: 'broken', span: span() })),
        fc.boolean().map((value): Expression => ({ is: 'truth', value, span: span() })),
        fc.constant(0).map((): Expression => ({ is: 'text', text: 'a text', span: span() })),
        fc.constant(0).map((): Expression => ({ is: 'tradeSize', text: '#20', span: span() })),
    );
    const { expression } = fc.letrec<{ expression: Expression }>((tie) => ({
        expression: fc.oneof(
            { depthSize: 'small', withCrossShrink: true },
            leaf,
            fc
                .tuple(fc.constantFrom('+', '-', '*', '/', '±', '<', '>=', '=', '!=', 'and', 'or'), tie('expression'), tie('expression'))
                .map(([operator, left, right]): Expression => ({ is: 'binary', operator, left, right, span: span() })),
            fc
                .tuple(fc.constantFrom('-', 'not'), tie('expression'))
                .map(([operator, operand]): Expression => ({ is: 'unary', operator, operand, span: span() })),
            fc
                .tuple(
                    tie('expression'),
                    fc.constantFrom('length', 'width', 'clear', 'middle', 'core', 'inner', 'upper', 'area', 'at', 'foo'),
                )
                .map(([receiver, member]): Expression => ({ is: 'member', receiver, member, span: span(), memberSpan: span() })),
            fc
                .tuple(tie('expression'), tie('expression'))
                .map(([receiver, index]): Expression => ({ is: 'item', receiver, index, span: span() })),
            fc
                .tuple(fc.constantFrom('min', 'round', 'sqrt', 'tan', 'cube'), fc.array(tie('expression'), { maxLength: 3 }))
                .map(([of, all]) => call(word(of), ...all)),
            fc.tuple(tie('expression'), tie('expression')).map(([receiver, value]) => call(receiver, value)),
            fc.tuple(tie('expression'), tie('expression')).map(([first, last]): Expression => ({ is: 'range', first, last, span: span() })),
            fc.array(tie('expression'), { minLength: 1, maxLength: 3 }).map((items): Expression => ({ is: 'list', items, span: span() })),
            fc.array(tie('expression'), { minLength: 1, maxLength: 3 }).map((parts): Expression => ({ is: 'by', parts, span: span() })),
            fc
                .tuple(tie('expression'), tie('expression'), tie('expression'))
                .map(([condition, then, otherwise]): Expression => ({ is: 'conditional', condition, then, otherwise, span: span() })),
            tie('expression').map((target): Expression => ({ is: 'upTo', target, span: span() })),
            tie('expression').map((target): Expression => ({ is: 'every', target, except: [], span: span() })),
            fc
                .tuple(tie('expression'), tie('expression'))
                .map(([origin, all]): Expression => ({ is: 'shares', origin, sizes: all, span: span() })),
        ),
    }));

    /** The odd value as a place, a size, a count, shares, a material, in a sentence, around statements, and as a size of the case. */
    const slots: Readonly<Record<string, (odd: Expression) => Design>> = {
        place: (odd) => designOf([sides(), part('shelf', ['Odd'], { at: [place(odd)] })]),
        relation: (odd) =>
            designOf([
                sides(),
                part('shelf', ['Odd'], { at: [{ distance: measure('1in'), relation: 'above', target: odd, span: span() }] }),
            ]),
        edge: (odd) =>
            designOf([
                {
                    ...sides(),
                    phrases: { ...sides().phrases, edges: [{ edges: [{ name: 'front', span: span() }], at: [place(odd)], span: span() }] },
                },
            ]),
        size: (odd) => designOf([sides(), part('rail', ['Odd'], { properties: [property('height', odd), property('layers', odd)] })]),
        thickness: (odd) => designOf([sides(), part('top', ['Odd'], { properties: [property('thickness', odd)] })]),
        count: (odd) => designOf([sides(), part('shelf', ['Odd'], { properties: [property('clear', word('equal'))] }, odd)]),
        shares: (odd) => designOf([sides(), part('shelf', ['Odd'], { properties: [property('clear', odd)] }, measure('2'))]),
        material: (odd) => designOf([sides(), part('top', ['Odd'], { of: odd })]),
        design: (odd) => designOf([sides(), part('case', ['Odd'], { of: odd, properties: [property('width', odd)] })]),
        room: (odd) =>
            designOf([
                sides(),
                part('shelf', ['Odd'], { room: { relation: 'above', target: odd, span: span() }, at: [place(measure('4in'))] }),
            ]),
        inside: (odd) =>
            designOf([sides(), { is: 'in', selectors: [odd], statements: [part('shelf', ['Odd'])], span: span() } satisfies Statement]),
        // biome-ignore lint/suspicious/noThenProperty: plain data; nobody awaits a statement
        condition: (odd) => designOf([sides(), { is: 'if', condition: odd, then: [part('top', ['Odd'])], otherwise: [], span: span() }]),
        repeat: (odd) => {
            const index = { is: 'index', id: 'by-hand.case#C.i', name: 'i', span: span(), nameSpan: span() } as const;
            return designOf([sides(), { is: 'repeat', index, range: odd, statements: [part('top', ['Odd'])], span: span() }]);
        },
        requirement: (odd) => designOf([sides(), { is: 'require', condition: odd, span: span() }]),
        sentence: (odd) =>
            designOf([
                sides(),
                {
                    is: 'join',
                    left: [odd],
                    right: [name('by-hand.case#C.Left')],
                    joint: { steps: [], span: span() },
                    onSite: false,
                    span: span(),
                },
            ]),
        described: (odd) => designOf([sides(), { is: 'every', selectors: [odd], phrases: { ...sides().phrases }, span: span() }]),
        leave: (odd) =>
            designOf([
                {
                    ...sides(),
                    phrases: {
                        ...sides().phrases,
                        leaves: [{ faces: [{ name: 'back', span: span() }], size: odd, for: odd, span: span() }],
                    },
                },
                part('shelf', ['Odd'], { at: [place(measure('9in'))] }),
            ]),
        width: (odd) => designOf([sides()], { width: odd }),
        depth: (odd) => designOf([sides()], { depth: odd }),
    };

    it.each(Object.keys(slots))('as a %s', (slot) => {
        fc.assert(
            fc.property(expression, (odd) => {
                const casework = construct(slots[slot]?.(odd) as Design, { keepValues: true });
                for (const part of casework.parts.values()) expect(Object.values(part.box.least).every(Number.isFinite)).toBe(true);
                expect(casework.problems.every(({ message, span: words }) => message.length > 0 && words.end > words.start)).toBe(true);
            }),
            { seed: 4, numRuns: 150 },
        );
    });
});
