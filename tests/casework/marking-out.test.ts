/** The marking-out schedule of whole designs, against places that are plain by hand. */
import { documentKinds } from 'casewright-shared/documents';
import { joineryOf } from 'casewright-shared/joinery';
import { quantity, real, unitNamed } from 'casewright-shared/quantity';
import { describe, expect, it } from 'vitest';
import { analyseFile } from './analysed.js';

async function scheduleOf(name: string) {
    const { casework } = await analyseFile(new URL(`../../examples/${name}/${name}.case`, import.meta.url).pathname);
    const kind = documentKinds.find((one) => one.kind === 'joinery')!;
    const document = kind.make(casework, { locate: () => ({ file: '', line: 1, column: 1 }), findings: [] });
    if (document?.is !== 'sheet') throw new Error('the schedule is a sheet');
    const group = (heading: string) => document.sheet.groups.find((one) => one.heading === heading)!;
    const row = (on: string, meets: string) => group(on).rows.find(({ enters }) => enters?.is === 'text' && enters.text === meets)!;
    const inches = (on: string, meets: string, column: string) => {
        const cell = row(on, meets)[column];
        return cell?.is === 'amount' ? real.toNumber(quantity.valueIn(cell.amount.quantity, unitNamed('in'))) : undefined;
    };
    const words = (on: string, meets: string, column: string) => {
        const cell = row(on, meets)[column];
        return cell?.is === 'text' ? cell.text : undefined;
    };
    const { contacts, features } = joineryOf(casework);
    /** Where biscuits are slotted in a part for another, in mm from the back of the part: from the features themselves. */
    const centres = (on: string, meets: string) =>
        features.flatMap(({ does, part, cause, solid }) => {
            const contact = cause.is === 'joint' ? contacts.get(cause.joint) : undefined;
            const both = [contact?.enters, contact?.receives].map((path) => path?.split('.').at(-1));
            const isWanted = does === 'biscuit slot' && part.endsWith(`.${on}`) && both.includes(meets);
            return isWanted && solid.is === 'segment' ? [solid.middle.y - casework.parts.get(part)!.box.least.y] : [];
        });
    return { sheet: document.sheet, group, inches, words, centres };
}

describe('marking out the display case', async () => {
    const { group, inches, words, centres } = await scheduleOf('kiln-lane');

    it('has the two lines of a shelf from the bottom of the side: the floor is 4in high and 3/4in thick', () => {
        expect(inches('Left', 'Floor', 'low')).toBeCloseTo(3.25, 9);
        expect(inches('Left', 'Floor', 'high')).toBeCloseTo(4, 9);
        expect(words('Left', 'Floor', 'datum')).toBe('bottom');
    });

    it('has the crown half an inch under the top of a side of 66in', () => {
        expect(inches('Left', 'Crown', 'low')).toBeCloseTo(66 - 0.5 - 0.75, 9);
        expect(inches('Left', 'Crown', 'high')).toBeCloseTo(66 - 0.5, 9);
    });

    it('marks the right side on its left face at the same heights as the left side on its right face', () => {
        const [left, right] = [group('Left').rows, group('Right').rows];
        expect(words('Left', 'Tier[2]', 'side')).toBe('right face');
        expect(words('Right', 'Tier[2]', 'side')).toBe('left face');
        expect(right.map(({ low, high }) => [low, high])).toEqual(left.map(({ low, high }) => [low, high]));
    });

    it('has the two biscuits of the floor 2 1/2in from its ends, from the back of the side', () => {
        // the floor begins where the panel of the back ends, which is 0.205in thick (its actual thickness), and lies in the sides' rabbets
        expect(words('Left', 'Floor', 'fasteners')).toMatch(/^biscuits 2 23\/32in shy, 14 7\/8in full$/);
        const [first, last] = centres('Left', 'Floor');
        expect(first).toBeCloseTo((0.205 + 2.5) * 25.4, 9);
        // the same slots in the end of the floor, from its own back: 2 1/2in, and so far from its front
        const [own, ownLast] = centres('Floor', 'Left');
        expect(own).toBeCloseTo(2.5 * 25.4, 9);
        expect(ownLast! - own!).toBeCloseTo(last! - first!, 9);
    });

    it('lists each shelf by itself: under the curve they are not equally deep, and so are slotted at other places', () => {
        for (const shelf of ['Tier[1]', 'Tier[2]', 'Tier[3]']) expect(group(shelf)?.rows.length).toBeGreaterThan(0);
    });
});

it('lists the parts that are marked alike once', async () => {
    const { sheet } = await scheduleOf('reading-wall');
    expect(sheet.groups.some(({ heading }) => heading.includes('..'))).toBe(true);
    const headings = sheet.groups.map(({ heading }) => heading);
    expect(new Set(headings).size).toBe(headings.length);
});

describe('marking out the wash-stand', async () => {
    const { inches, words } = await scheduleOf('tarn-house');

    it('sends to its form for a bent kick, whose ends lie askew', () => {
        expect(inches('Left', 'kick', 'low')).toBeUndefined();
        expect(words('Left', 'kick', 'datum')).toBe('take it from its form');
    });
});

describe.each(['kiln-lane', 'reading-wall', 'tarn-house', 'ferry-steps'])('marking out %s', async (name) => {
    const { sheet } = await scheduleOf(name);

    it('has no line outside the part that is marked, and no second line before the first', () => {
        const lines = sheet.groups.flatMap(({ heading, rows }) =>
            rows.flatMap(({ low, high }) => (low?.is === 'amount' && high?.is === 'amount' ? [{ heading, low, high }] : [])),
        );
        expect(lines.length).toBeGreaterThan(3);
        for (const { heading, low, high } of lines) {
            const [first, second] = [low, high].map(({ amount }) => real.toNumber(amount.quantity.value));
            expect({ heading, inOrder: -1e-6 < first! && first! < second! }).toEqual({ heading, inOrder: true });
        }
    });
});
