/** Sound designs of every order and division: nothing overlaps, what is divided adds up exactly, and a mirror image is one. */

import type { Casework, Part } from 'casewright-shared/casework';
import { boxOverlap } from 'casewright-shared/geometry';
import { Rational, real } from 'casewright-shared/quantity';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { analyseText } from './analysed.js';
import { measureAt, quantityOf } from './sizes.js';
import { stock } from './stock.js';

interface Drawn {
    readonly width: number;
    readonly height: number;
    readonly material: string;
    /** In what order the boards of the box are written. */
    readonly order: readonly string[];
    /** The widths of the bays, as shares, and how many shelves stand in each. */
    readonly bays: readonly { readonly share: number; readonly shelves: number }[];
    readonly joint: string;
    readonly isBackFirst: boolean;
    readonly edge: string;
}

const drawn: fc.Arbitrary<Drawn> = fc.record({
    width: fc.integer({ min: 30 * 16, max: 90 * 16 }),
    height: fc.integer({ min: 20 * 16, max: 90 * 16 }),
    material: fc.constantFrom('Ply', 'Half', 'Metric'),
    order: fc.shuffledSubarray(['top', 'bottom', 'side Left, Right'], { minLength: 3 }),
    bays: fc.array(fc.record({ share: fc.integer({ min: 1, max: 4 }), shelves: fc.integer({ min: 0, max: 4 }) }), {
        minLength: 1,
        maxLength: 4,
    }),
    joint: fc.constantFrom('Dado', 'Glued', 'Gap'),
    isBackFirst: fc.boolean(),
    edge: fc.constantFrom('Band', 'Nose'),
});

function textOf({ width, height, material, order, bays, joint, isBackFirst, edge }: Drawn): string {
    const names = bays.map((_, index) => `Bay${index + 1}`);
    const shares = bays.map(({ share }) => share).join(', ');
    const box = order.map((words) =>
        words.startsWith('side') && !isBackFirst ? `${words} { edge back rabbet 1/4in deep for back }` : words,
    );
    const posts = bays.length > 1 ? [`divider Post[${bays.length - 1}] above bottom clear ${shares} as ${names.join(', ')}`] : [];
    const shelves = bays.flatMap(({ shelves: count }, index) => {
        if (count === 0) return [];
        const where = bays.length > 1 ? `in ${names[index]} ` : 'above bottom ';
        return [`shelf Tier${index + 1}[${count}] ${where}clear equal { edge front ${edge} }`];
    });
    return `${stock}
        project "Drawn" { build 1 C
            build 1 C mirrored as M }
        case C of ${material} {
            width ${width}/16in; height ${height}/16in; depth 12in
            ${[...(isBackFirst ? ['back of Quarter'] : []), ...box, ...posts, ...shelves, ...(isBackFirst ? [] : ['back of Quarter'])].join('\n            ')}
            join every shelf to every side, every divider with ${joint}
        }`;
}

it('nothing overlaps, stands out or is lost, in whatever order it is written', async () => {
    await fc.assert(
        fc.asyncProperty(drawn, async (design) => {
            const { findings, casework } = await analyseText(textOf(design));
            const errors = findings.filter(({ code, severity }) => severity === 'error' && !code.startsWith('MAT'));
            expect(errors.map(({ message }) => message)).toEqual([]);
            expect(casework.unplaced?.size).toBe(0);
            expect(overlaps(casework, design.joint === 'Dado')).toEqual([]);
        }),
        { seed: 77, numRuns: 60 },
    );
}, 120_000);

it('bays and posts fill the room between the sides exactly', async () => {
    await fc.assert(
        fc.asyncProperty(drawn, async (design) => {
            fc.pre(design.bays.length > 1);
            const { casework } = await analyseText(textOf(design));
            const size = (path: string) => measureAt(casework, path).quantity.value;
            const openings = design.bays.map((_, index) => size(`C.Bay${index + 1}.width`));
            const posts = design.bays.slice(1).map((_, index) => size(`C.Post[${index + 1}].thickness`));
            const filled = [...openings, ...posts].reduce((sum, one) => real.add(sum, one), Rational.zero as number | Rational);
            const room = real.subtract(size('C.width'), real.multiply(size('C.Left.thickness'), Rational.of(2)));
            expect(real.compare(filled, room)).toBe(0);
            // and each bay is as many times a share as it has shares
            const shares = design.bays.map(({ share }, index) => real.divide(openings[index] ?? 0, Rational.of(share)));
            expect(shares.every((one) => real.compare(one, shares[0] ?? 0) === 0)).toBe(true);
        }),
        { seed: 78, numRuns: 30 },
    );
}, 120_000);

it('joints and edges change what is cut by what they say, and a mirrored build has the same sizes', async () => {
    const added = { Dado: '1/4in', Gap: '1/16in', Glued: undefined };
    await fc.assert(
        fc.asyncProperty(drawn, async (design) => {
            const { casework } = await analyseText(textOf(design));
            const each = added[design.joint as keyof typeof added];
            const more = each === undefined ? 0 : (design.joint === 'Gap' ? -2 : 2) * real.toNumber(quantityOf(each).value);
            const edge = real.toNumber(quantityOf(design.edge === 'Band' ? '1/8in' : '3/4in').value);
            for (const shelf of partsOf(casework, 'C').filter(({ kind }) => kind === 'shelf')) {
                expect(number(shelf.sizes.finished.length)).toBeCloseTo(number(shelf.sizes.opening.length) + more, 9);
                expect(number(shelf.sizes.core.width)).toBeCloseTo(number(shelf.sizes.finished.width) - edge, 9);
            }
            for (const part of partsOf(casework, 'C')) {
                const image = casework.parts.get(part.path.replace('C.', 'M.'));
                expect(image && number(image.sizes.core.length)).toBe(number(part.sizes.core.length));
                expect(image?.box.least.x).toBeCloseTo((design.width * 25.4) / 16 - part.box.most.x, 6);
            }
        }),
        { seed: 79, numRuns: 40 },
    );
}, 120_000);

function number(measure: { readonly quantity: { readonly value: Parameters<typeof real.toNumber>[0] } } | undefined): number {
    return measure ? real.toNumber(measure.quantity.value) : Number.NaN;
}

function partsOf(casework: Casework, build: string): readonly Part[] {
    return [...casework.parts.values()].filter(({ path }) => path.startsWith(`${build}.`));
}

/** Pairs of parts of one build that share wood; a shelf in its dado, and a back in its rabbet, are no such pair. */
function overlaps(casework: Casework, areShelvesLetIn: boolean): readonly string[] {
    const isLetIn = ({ kind }: Part) => kind === 'back' || (areShelvesLetIn && kind === 'shelf');
    const parts = partsOf(casework, 'C');
    return parts.flatMap((a, index) =>
        parts.slice(index + 1).flatMap((b) => {
            const isSide = (part: Part) => part.kind === 'side' || part.kind === 'divider';
            const isMeant = (isLetIn(a) && isSide(b)) || (isLetIn(b) && isSide(a));
            return !isMeant && boxOverlap(a.box, b.box) ? [`${a.path} and ${b.path}`] : [];
        }),
    );
}
