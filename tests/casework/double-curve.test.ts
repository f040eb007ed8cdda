/** The display case of the examples, whose front is curved over its height and bowed in plan: its sizes worked out by hand from two circles. */
import { type DocumentKind, documentKinds } from 'casewright-shared/documents';
import { describe, expect, it } from 'vitest';
import { analyseFile } from './analysed.js';
import { inchesAt } from './sizes.js';

const example = new URL('../../examples/ferry-steps/ferry-steps.case', import.meta.url).pathname;

/** Chord 32in, rise 2in: the radius is (16² + 2²) / (2 x 2) = 65in, and its middle lies 18 - 65 = -47in from the wall, halfway across. */
const bowAt = (x: number) => Math.sqrt(65 ** 2 - (x - 16) ** 2) - 47;
/** Upright at the floor and 4in back at 42in: (42² + 4²) / (2 x 4) = 222.5in. What comes off at a height is 222.5 less the other leg. */
const fallAt = (z: number) => 222.5 - Math.sqrt(222.5 ** 2 - z ** 2);
/** Boards of one sheet are 0.72in thick, the back is 0.205in. */
const sheet = 0.72;
const back = 0.205;
/** The inner face of the left side, seen from the middle of the bow: 16 - 0.72. */
const half = 15.28;
const degrees = (tangent: number) => (Math.atan(tangent) * 180) / Math.PI;

describe('the display case that is curved both ways', async () => {
    const { casework, findings } = await analyseFile(example);
    const inches = (path: string) => inchesAt(casework, `ModelCase.${path}`);
    const frontOf = (part: string) => casework.parts.get(`ModelCase.${part}`)?.front;
    /** How far the line of a part is from the wall, at a place along it. */
    const lineAt = (part: string, place: number) =>
        (casework.curves.find(({ parts }) => parts.includes(`ModelCase.${part}`))?.curve?.valueAt(place * 25.4).value ?? 0) / 25.4;
    const bandOf = (part: string) => {
        const band = casework.pieces.find((piece) => piece.part === `ModelCase.${part}` && piece.role === 'band');
        const size = (of: 'length' | 'width') => Number(band?.finished[of]?.quantity.value) / 25.4;
        return { length: size('length'), width: size('width') };
    };

    const options = { locate: () => ({ file: '', line: 1, column: 1 }), findings };
    const made = (wanted: DocumentKind['kind']) => documentKinds.find(({ kind }) => kind === wanted)?.make(casework, options);
    const groupsOf = (wanted: DocumentKind['kind']) => {
        const document = made(wanted);
        return document?.is === 'sheet' ? document.sheet.groups : [];
    };

    it('is sound', () => expect(findings).toEqual([]));

    it('the circles are those that the design says: 16in at the sides and 18in in the middle, and 4in less at the top', () => {
        expect(bowAt(0)).toBeCloseTo(16, 9);
        expect(bowAt(16)).toBe(18);
        expect(fallAt(42)).toBeCloseTo(4, 9);
    });

    it('three openings share what lies between the bottom and the top: (42 - 0.72 - 4 - 2 x 0.72) / 3 = 11.947in', () => {
        for (const under of ['bottom', 'Deck[1]', 'Deck[2]']) expect(inches(`${under}.clear`)).toBeCloseTo(35.84 / 3, 9);
        expect(inches('Deck[1].upper')).toBeCloseTo(16 + 2 / 3, 3);
        expect(inches('Deck[2].upper')).toBeCloseTo(4 + 2 * (35.84 / 3 + sheet), 9);
    });

    describe.each([
        ['Deck[1]', 4 + 35.84 / 3 + sheet],
        ['Deck[2]', 4 + 2 * (35.84 / 3 + sheet)],
        ['top', 42],
    ])('%s, bevelled', (part, upper) => {
        const lower = upper - sheet;

        it('is as deep as the sum of both curves at its deeper face, the lower one, and less by the fall at its upper one', () => {
            expect(inches(`${part}.depth`)).toBeCloseTo(18 - fallAt(lower) - back, 6);
            expect(inches(`${part}.front.lower`)).toBeCloseTo(18 - fallAt(lower) - back, 6);
            expect(inches(`${part}.front.upper`)).toBeCloseTo(18 - fallAt(upper) - back, 6);
            expect(inches(`${part}.length`)).toBeCloseTo(2 * half, 9);
        });

        it('follows the bow moved back by the fall, from its middle to its ends', () => {
            for (const x of [sheet, 4, 11, 16, 25, 32 - sheet]) expect(lineAt(part, x)).toBeCloseTo(bowAt(x) - fallAt(lower), 6);
        });

        it('is bevelled by the fall over its thickness in the middle, and square to its edge by less where the edge runs aslant', () => {
            const fall = (fallAt(upper) - fallAt(lower)) / sheet;
            const { least, greatest } = frontOf(part)?.along ?? {};
            expect(greatest?.degrees).toBeCloseTo(degrees(fall), 6);
            expect((greatest?.at ?? 0) / 25.4).toBeCloseTo(half, 6);
            // the radius to the end leans by asin(15.28 / 65), and so does the edge
            expect(least?.degrees).toBeCloseTo(degrees(fall * Math.cos(Math.asin(half / 65))), 6);
            expect(least?.at).toBe(0);
        });

        it('its band is as long as the arc, 2 R asin(15.28 / R), and as wide as the bevelled edge', () => {
            const band = bandOf(part);
            expect(band.length).toBeCloseTo(2 * 65 * Math.asin(half / 65), 6);
            expect(band.width).toBeCloseTo(Math.hypot(sheet, fallAt(upper) - fallAt(lower)), 6);
        });
    });

    it('the bottom is square in front: it stops at its shallower face, the upper one at 4in', () => {
        expect(frontOf('bottom')?.form).toBe('square');
        expect(inches('bottom.depth')).toBeCloseTo(18 - fallAt(4) - back, 6);
        expect(lineAt('bottom', sheet)).toBeCloseTo(bowAt(sheet) - fallAt(4), 6);
        expect(bandOf('bottom').length).toBeCloseTo(2 * 65 * Math.asin(half / 65), 6);
    });

    it('a side is 16in deep outside and 16.18in inside at the floor, and 4in less at the top', () => {
        expect(inches('Left.front.left')).toBeCloseTo(16, 9);
        expect(inches('Left.front.right')).toBeCloseTo(bowAt(sheet), 9);
        expect(bowAt(sheet)).toBeCloseTo(16.18, 2);
        expect(inches('Right.front.left')).toBeCloseTo(bowAt(sheet), 9);
        for (const side of ['Left', 'Right']) {
            expect(inches(`${side}.depth`)).toBeCloseTo(bowAt(sheet), 9);
            for (const height of [0, 10, 21, 35, 42]) expect(lineAt(side, height)).toBeCloseTo(bowAt(sheet) - fallAt(height), 6);
        }
    });

    it('the bevel of a side is that of the bow at the floor, where its edge is upright, and least at the top, where it leans most', () => {
        const slope = (bowAt(sheet) - 16) / sheet;
        const { least, greatest } = frontOf('Left')?.along ?? {};
        expect(greatest?.degrees).toBeCloseTo(degrees(slope), 6);
        expect(greatest?.at).toBe(0);
        expect(least?.degrees).toBeCloseTo(degrees(slope * Math.cos(Math.asin(42 / 222.5))), 6);
        expect((least?.at ?? 0) / 25.4).toBeCloseTo(42, 6);
    });

    it('its band is as long as the way up: 222.5 asin(42 / 222.5) = 42.25in', () => {
        expect(bandOf('Left').length).toBeCloseTo(222.5 * Math.asin(42 / 222.5), 6);
        expect(222.5 * Math.asin(42 / 222.5)).toBeCloseTo(42.25, 2);
    });

    it('its template and its offsets are those of the inner face, and say so: 0.178in further forward than the outer one, 3/16in shy', () => {
        expect(bowAt(sheet) - 16).toBeCloseTo(0.178, 3);
        const words = 'bevelled front: its lines are those of the inner face; at the outer face they lie 3/16in shy further back';
        const templates = made('templates');
        const legend = templates?.is === 'drawings' ? templates.drawings.find(({ title }) => title.includes('Left, Right')) : undefined;
        expect(legend?.texts.map(({ text }) => text.trim()).join(' ')).toContain(words);
        const sides = groupsOf('offsets').find(({ heading }) => heading.includes('Left, Right'));
        expect(sides?.notes).toEqual([
            'The edge is bevelled: depths are those of the inner face; the outer one is 3/16in shy less deep all along.',
            'Square to the edge the bevel is 13.7 degrees at 42in at the least, and 13.9 degrees at 0in from the bottom at the most.',
        ]);
    });

    it('the bottom, which is square, has no bevel among its offsets', () => {
        expect(groupsOf('offsets').find(({ heading }) => heading.includes('bottom:'))?.notes).toEqual([]);
    });

    it('the radius of a circle is printed as it is: 222 1/2in', () => {
        const sweep = groupsOf('curves').find(({ heading }) => heading.startsWith('Sweep: depth over height'));
        const row = sweep?.rows.find(({ what }) => what?.is === 'text' && what.text === 'Radius, everywhere');
        expect(row?.radius?.is === 'amount' && row.radius.amount.printed.text).toBe('222 1/2');
    });

    it('the kick is bent to a circle of 62.5in, upright behind the line at the floor', () => {
        expect(inches('kick.length')).toBeCloseTo(2 * 62.5 * Math.asin(half / 62.5), 6);
        expect(inches('kick.width')).toBeCloseTo(4 - sheet, 9);
    });
});
