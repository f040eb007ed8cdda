/** A kick that is bent to a bow: what it is cut from, and the form that it is bent round, worked out by hand from the circle. */
import { documentKinds } from 'casewright-shared/documents';
import { distanceToRun } from 'casewright-shared/geometry';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';
import { inchesAt } from './sizes.js';
import { stock } from './stock.js';

const inch = 25.4;
const design = (kick: string, rise = 'out 3in', shop = '') => `${stock}${shop}
project "Bent" { build C }
case C of Ply {
    width 48in
    height 34in
    depth Bow
    curve Bow of depth over width {
        from 19in at left
        to   19in at right
        arc  ${rise}
    }
    side Left, Right
    bottom at 4in
    kick ${kick}
}
`;
/** Chord 48in, rise 3in: a radius of (24^2 + 3^2) / (2 x 3) = 97 1/2in about (24in, -75 1/2in). Two and a half inches behind it: 95in. */
const front = (x: number) => Math.sqrt(95 ** 2 - (x - 24) ** 2) - 75.5;

async function formOf(text: string) {
    const analysis = await analyseText(text);
    const { casework } = analysis;
    const locate = analysis.locate.bind(analysis);
    const made = documentKinds.find(({ kind }) => kind === 'templates')?.make(casework, { units: 'in', locate, findings: [] });
    const drawings = made?.is === 'drawings' ? made.drawings : [];
    return { casework, drawing: drawings.find(({ title }) => title.startsWith('Bending form')), drawings };
}

describe('a kick of two layers behind a bow', () => {
    const text = design('of Half layers 2 at 2 1/2in behind Bow');

    it('is cut as long as the way round its front and an inch more at each end, or what the shop says', async () => {
        const round = 95 * 2 * Math.asin(23.25 / 95);
        const { casework } = await formOf(text);
        expect(inchesAt(casework, 'C.kick.length')).toBeCloseTo(round, 6);
        expect(inchesAt(casework, 'C.kick.rough.length')).toBeCloseTo(round + 2, 6);
        const { casework: other } = await formOf(design('of Half layers 2 at 2 1/2in behind Bow', 'out 3in', 'shop { bentLong 3in }\n'));
        expect(inchesAt(other, 'C.kick.rough.length')).toBeCloseTo(round + 6, 6);
    });

    it('has a form for its back face, a circle of 94in; the front is that of 95in', async () => {
        const { drawing } = await formOf(text);
        const [form, outer] = (['core', 'finished'] as const).map((role) => drawing?.lines.find((line) => line.role === role)?.runs ?? []);
        // the straight edge is 3in behind the ends of the form, at 1/4in outside of the case
        const base = Math.sqrt(94 ** 2 - 24.25 ** 2) - 75.5 - 3;
        for (let x = 0; x <= 48; x += 2) {
            const at = (depth: number) => ({ x: (x - 0.75) * inch, y: (base - depth) * inch });
            const back = at(Math.sqrt(94 ** 2 - (x - 24) ** 2) - 75.5);
            expect(Math.min(...form!.map((run) => distanceToRun(back, run)))).toBeLessThan(0.002);
            expect(Math.min(...outer!.map((run) => distanceToRun(at(front(x)), run)))).toBeLessThan(0.002);
        }
    });

    it('is told how to be bent: figures from the middle, layers, springback', async () => {
        const { drawing } = await formOf(text);
        const words = (drawing?.texts ?? []).map((one) => one.text.trim());
        // 94in - 75 1/2in less 12.316in (the straight edge): 6.185in
        expect(Math.sqrt(94 ** 2 - 24.25 ** 2) - 78.5).toBeCloseTo(12.318, 2);
        expect(words).toContain('middle: 6 3/16in shy');
        const said = words.join(' ');
        expect(said).toContain('bending form: 2 layers, 1in together, 3 1/4in wide');
        expect(said).toContain('the back face of the board lies on it');
        expect(said).toContain('2 layers glued in the bend go back by 1/4 of it');
        expect(said).toContain('Bend a sample piece');
    });
});

it('a kick in a hollow lies with its front on the form', async () => {
    const { drawing } = await formOf(design('of Half at 2 1/2in behind Bow', 'in 3in'));
    const said = (drawing?.texts ?? []).map((one) => one.text.trim()).join(' ');
    expect(said).toContain('the front face of the board lies on it');
    expect(said).toContain('A single board keeps its bend only where it is fastened');
});

it('a straight kick has no form', async () => {
    const { drawings } = await formOf(
        design('at 2 1/2in behind Bow').replace('depth Bow', 'depth 19in').replace('behind Bow', 'behind bottom.front'),
    );
    expect(drawings.filter(({ title }) => title.startsWith('Bending form'))).toEqual([]);
});
