/** Cuts by machine set-up, against fences and depths that are plain by hand, and facts of the trade. */
import type { Casework } from 'casewright-shared/casework';
import { documentKinds } from 'casewright-shared/documents';
import { joineryOf, type SetUp, setUpsOf } from 'casewright-shared/joinery';
import { describe, expect, it } from 'vitest';
import { analyseFile, analyseText } from './analysed.js';

const inch = 25.4;

/** A case of two sides and one shelf, its underside 11 1/4in up, joined as is said. */
async function shelved(joint: string): Promise<Casework> {
    const { casework, findings } = await analyseText(`material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
bought Peg { hole 5mm wide 10mm deep }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { ${joint} }
}
`);
    expect(findings.filter(({ severity }) => severity === 'error').map(({ message }) => message)).toEqual([]);
    return casework;
}

const only = (casework: Casework, does: SetUp['tooling']['does']) => setUpsOf(casework).filter(({ tooling }) => tooling.does === does);
const namesOf = ({ cuts }: SetUp['places'][number]) => cuts.map(({ part, side }) => `${part.name} ${side}`);

function groupsOf(casework: Casework) {
    const made = documentKinds
        .find(({ kind }) => kind === 'joinery')!
        .make(casework, { locate: () => ({ file: '', line: 1, column: 1 }), findings: [] });
    if (made?.is !== 'sheet') throw new Error('it is a sheet');
    return made.sheet.groups;
}

describe('a set-up of a machine', () => {
    it('holds the dowel holes of both ends of a shelf: the fence stands half the thickness from the face', async () => {
        const [deep, shallow] = only(await shelved('dowel 8mm x 40mm count 2 inset 2in into 10mm'), 'dowel hole');
        // 30mm and 10mm of the dowel, and 1mm of room at each end of it
        expect([deep, shallow].map((one) => [one?.tooling.wide, one?.tooling.depth])).toEqual([
            [8, 31],
            [8, 11],
        ]);
        expect(deep?.places).toHaveLength(1);
        expect(deep?.places[0]?.fence).toEqual({ from: 'bottom', axis: 'z', distance: expect.closeTo(0.375 * inch, 9) });
        expect(namesOf(deep!.places[0]!)).toEqual(['Low left', 'Low right']);
        expect(deep?.places[0]?.cuts[0]).toMatchObject({ from: 'back', at: [expect.closeTo(2 * inch, 9), expect.closeTo(9 * inch, 9)] });
        // in the sides on the middle line of the shelf: 12in less 3/8in
        expect(shallow?.places[0]?.fence).toMatchObject({ from: 'bottom', distance: expect.closeTo(11.625 * inch, 9) });
        expect(namesOf(shallow!.places[0]!)).toEqual(['Left right', 'Right left']);
    });

    it('sets a fence for a dado to the line that is nearer to it, and both sides are cut at it', async () => {
        const [dado] = only(await shelved('dado 1/4in deep'), 'dado');
        expect(dado?.tooling).toMatchObject({ wide: expect.closeTo(0.75 * inch, 9), depth: expect.closeTo(0.25 * inch, 9) });
        expect(dado?.places[0]?.fence).toMatchObject({ from: 'bottom', distance: expect.closeTo(11.25 * inch, 9) });
        expect(dado?.places[0]?.cuts.map(({ count, runs }) => [count, runs])).toEqual([
            [1, []],
            [1, []],
        ]);
    });

    it('bores a hole through where the tool leaves on the other side', async () => {
        const casework = await shelved('screw #8 x 2in count 2');
        expect(only(casework, 'clearance hole').map(({ tooling }) => tooling.depth)).toEqual([undefined]);
        expect(only(casework, 'pilot hole').map(({ tooling }) => tooling.depth)).toEqual([expect.closeTo(1.25 * inch, 9)]);
    });

    it('sets the pocket-hole jig to the stock, its collar by the seat: 1.4489in along the axis less half an inch', async () => {
        // (t/2)/sin 15 for t = 3/4in, plain geometry
        const [pocket] = only(await shelved('pocket #8 x 1 1/4in count 3'), 'pocket');
        expect(pocket?.tooling.pocket).toEqual({ stock: expect.closeTo(0.75 * inch, 9), seat: expect.closeTo(0.5 * inch, 9) });
        expect(pocket!.tooling.depth! / inch).toBeCloseTo(1.4489 - 0.5, 4);
        // the tip of the bit bores the rest: it is no set-up of its own
        expect(only(await shelved('pocket #8 x 1 1/4in count 3'), 'clearance hole')).toEqual([]);
    });

    it('measures rows of pins from the edge to which they are the nearer', async () => {
        const [pins] = only(await shelved('rest on Peg count 4 inset 37mm pitch 32mm up 1 down 1'), 'pin hole');
        const fences = pins!.places.map(({ fence }) => [fence?.from, fence?.distance.toFixed(3)]);
        expect(fences).toContainEqual(['back', '37.000']);
        expect(fences).toContainEqual(['front', '37.000']);
        const heights = pins!.places.flatMap(({ cuts }) => cuts.map(({ at }) => at.map((place) => place.toFixed(3))));
        const middle = 11.25 * inch - 2.5;
        expect(new Set(heights.map((each) => each.join()))).toEqual(
            new Set([[middle - 32, middle, middle + 32].map((place) => place.toFixed(3)).join()]),
        );
    });

    it('tilts the saw by 45 degrees for a mitre of two boards of one thickness', async () => {
        const { casework } = await analyseText(`material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
case Box of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    top Lid from left of Left to right of Right
    join Lid to every side with { mitre }
}
`);
        const mitres = only(casework, 'mitre');
        expect(mitres.map(({ tooling }) => tooling.tilt)).toEqual(mitres.map(() => expect.closeTo(45, 9)));
        expect(mitres.length).toBeGreaterThan(0);
    });
});

describe.each(['kiln-lane', 'reading-wall', 'tarn-house', 'ferry-steps'])('the set-ups of %s', async (name) => {
    const { casework } = await analyseFile(new URL(`../../examples/${name}/${name}.case`, import.meta.url).pathname);

    it('have every cut once, but for tongues and the tips of pockets', () => {
        const { features } = joineryOf(casework);
        const wanted = features.filter(
            ({ does, solid }) =>
                does !== 'tongue' &&
                !(solid.is === 'cylinder' && does !== 'pocket' && Math.max(...Object.values(solid.direction).map(Math.abs)) < 0.999),
        );
        const listed = setUpsOf(casework).flatMap(({ places }) => places.flatMap(({ cuts }) => cuts.map(({ count }) => count)));
        expect(listed.reduce((sum, count) => sum + count, 0)).toBe(wanted.length);
        expect(wanted.length).toBeGreaterThan(20);
    });

    it('have one group each in the document, none of them twice', () => {
        const headings = groupsOf(casework)
            .map(({ heading }) => heading)
            .filter((heading) => heading.startsWith('Set-up: '));
        expect(headings.length).toBeGreaterThan(2);
        expect(new Set(headings).size).toBe(headings.length);
    });
});

describe('bits', () => {
    it('for a #8 screw: 11/64in clears its shank of 0.164in, 7/64in is the pilot for soft wood', async () => {
        // common practice, no source
        const headings = groupsOf(await shelved('screw #8 x 2in count 2')).map(({ heading }) => heading);
        expect(headings).toContain('Set-up: drill 11/64in, clearance holes through');
        expect(headings).toContain('Set-up: drill 7/64in, pilot holes 1 1/4in deep');
    });

    it('of whole millimetres stay what they are in a document in inches', async () => {
        const headings = groupsOf(await shelved('dowel 8mm x 40mm count 2')).map(({ heading }) => heading);
        expect(headings.some((heading) => heading.startsWith('Set-up: drill 8mm, dowel holes'))).toBe(true);
    });
});
