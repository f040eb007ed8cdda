/** The cuts of the joinery as figures for programs: against places by hand, and both hands against each other. */
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { Casework } from 'casewright-shared/casework';
import { documentKinds } from 'casewright-shared/documents';
import { writeDocument } from 'casewright-shared/writers';
import { describe, expect, it } from 'vitest';
import { analyseFile, analyseText } from './analysed.js';

const inch = 25.4;
const schema = JSON.parse(readFileSync(new URL('../../shared/schema/sheet.schema.json', import.meta.url), 'utf8'));
const validate = new Ajv2020({ strict: true, strictTypes: false, allowUnionTypes: true, allErrors: true }).compile(schema);

interface Cut {
    readonly part: string;
    readonly hand: 'left' | 'right' | null;
    readonly side: string;
    readonly does: string;
    readonly meets: string | null;
    readonly depth: number;
    readonly frame: { readonly u: string; readonly v: string; readonly turns: string };
    readonly shape: Readonly<Record<string, unknown>>;
}

async function cutsOf(casework: Casework): Promise<readonly Cut[]> {
    const kind = documentKinds.find((one) => one.kind === 'joinery')!;
    const document = kind.make(casework, { locate: () => ({ file: '', line: 1, column: 1 }), findings: [] });
    const data = JSON.parse((await writeDocument(document!, 'json')) as string);
    validate(data);
    expect(validate.errors).toBe(null);
    return data.features;
}

async function shelved(joint: string): Promise<readonly Cut[]> {
    const { casework, findings } = await analyseText(`material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { ${joint} }
}
`);
    expect(findings.filter(({ severity }) => severity === 'error').map(({ message }) => message)).toEqual([]);
    return cutsOf(casework);
}

describe('a cut in figures', () => {
    it('a dowel hole in a side: up from the bottom, forward from the back, square into the inner face', async () => {
        const cuts = await shelved('dowel 8mm x 40mm count 2 inset 2in into 10mm');
        const first = cuts.find(({ part, side }) => part.endsWith('.Left') && side === 'right');
        expect(first).toMatchObject({
            hand: 'left',
            does: 'dowel hole',
            meets: 'Bookcase.Low',
            depth: 11,
            frame: { u: 'bottom', v: 'back', turns: 'with the clock' },
            shape: { is: 'hole', start: [11.625 * inch, 2 * inch, 0], direction: [0, 0, 1], diameter: 8, length: 11 },
        });
    });

    it('a biscuit slot in the end of a shelf lies in the middle of its thickness', async () => {
        const cuts = await shelved('biscuit #20 count 2 inset 2 1/2in');
        const [first] = cuts.filter(({ part, side }) => part.endsWith('.Low') && side === 'left');
        expect(first?.shape).toMatchObject({
            is: 'disc slot',
            middle: [2.5 * inch, expect.closeTo(0.375 * inch, 6), 0],
            along: [1, 0, 0],
            direction: [0, 0, 1],
        });
        expect(first?.frame).toMatchObject({ u: 'back', v: 'bottom' });
    });

    it('a pocket goes into the wood by the sine of 15 degrees', async () => {
        const [pocket] = (await shelved('pocket 1 1/4in count 1')).filter(({ does }) => does === 'pocket');
        const [cosine, sine] = [Math.cos(Math.PI / 12), Math.sin(Math.PI / 12)];
        // bored from the underside of the shelf, at its left end first: towards the left
        expect(pocket?.shape).toMatchObject({ direction: [-cosine, 0, sine].map((each) => expect.closeTo(each, 5)) });
    });
});

describe.each(['kiln-lane', 'tarn-house', 'ferry-steps'])('both hands of %s', async (name) => {
    const { casework } = await analyseFile(new URL(`../../examples/${name}/${name}.case`, import.meta.url).pathname);
    const cuts = await cutsOf(casework);
    const ofHand = (hand: 'left' | 'right') =>
        cuts.filter((cut) => cut.hand === hand && (cut.side === 'left' || cut.side === 'right') && cut.does !== 'rabbet');

    it('have equal figures on their inner faces, and turn in opposite ways', () => {
        const [left, right] = [ofHand('left'), ofHand('right')];
        expect(left.length).toBeGreaterThan(3);
        const figures = (cut: Cut) => JSON.stringify([cut.does, cut.meets, cut.depth, cut.frame.u, cut.frame.v, cut.shape]);
        expect(right.map(figures).sort()).toEqual(left.map(figures).sort());
        // looking at the inner face of a left side, its bottom to its top is up and its back to its front is to the right
        expect(new Set(left.map(({ side, frame }) => `${side}, ${frame.turns}`))).toEqual(new Set(['right, with the clock']));
        expect(new Set(right.map(({ side, frame }) => `${side}, ${frame.turns}`))).toEqual(new Set(['left, against the clock']));
    });
});
