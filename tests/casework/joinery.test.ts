/** Slots, holes and fasteners of whole designs as places in space, against geometry by hand, published sizes and facts of the trade. */
import type { Casework } from 'casewright-shared/casework';
import { type Feature, joineryOf } from 'casewright-shared/joinery';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const inch = 25.4;

/** A case of two sides and one shelf, 12in up, joined as is said; the sides may be laminated of two panels. */
async function shelved(joint: string, { sides = 'side Left, Right', more = '' } = {}): Promise<Casework> {
    const { casework, findings } = await analyseText(`material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
bought Peg { hole 5mm wide 10mm deep }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    ${sides}
    shelf Low at 12in
    join Low to every side with { ${joint} }
    ${more}
}
`);
    expect(findings.filter(({ severity }) => severity === 'error').map(({ message }) => message)).toEqual([]);
    return casework;
}

const laminated = 'side Left, Right layers 2';
const on = (casework: Casework, part: string, does: Feature['does']) =>
    (joineryOf(casework).byPart.get(`Bookcase.${part}`)?.features ?? []).filter((feature) => feature.does === does);

describe('pocket holes', () => {
    it('of a board 3/4in thick run 1.4489in along the axis and 1.3995in along the face, and open in an oval of 1.449in', async () => {
        // plain geometry: (t/2)/sin 15, (t/2)/tan 15, and d/sin 15 for a bore of 3/8in
        const [pocket] = on(await shelved('pocket #8 x 1 1/4in count 3'), 'Low', 'pocket');
        const [tip] = on(await shelved('pocket #8 x 1 1/4in count 3'), 'Low', 'clearance hole');
        if (pocket?.solid.is !== 'cylinder' || tip?.solid.is !== 'cylinder') throw new Error('both are holes');
        expect((pocket.depth + tip.depth) / inch).toBeCloseTo(1.4489, 4);
        const { start, direction, diameter, length } = pocket.solid;
        const outside = length - pocket.depth;
        const mouth = { x: start.x + outside * direction.x, z: start.z + outside * direction.z };
        expect(mouth.z).toBeCloseTo(12 * inch - 0.75 * inch, 9); // on the underside
        expect(Math.abs(mouth.x - 0.75 * inch) / inch).toBeCloseTo(1.3995, 4);
        expect((Math.asin(direction.z) * 180) / Math.PI).toBeCloseTo(15, 9);
        expect(diameter / Math.sin(Math.asin(direction.z)) / inch).toBeCloseTo(1.449, 3);
    });

    it('leave the end in the middle of its thickness', async () => {
        const [tip] = on(await shelved('pocket 1 1/4in count 3'), 'Low', 'clearance hole');
        if (tip?.solid.is !== 'cylinder') throw new Error('it is a hole');
        const { start, direction, length } = tip.solid;
        expect([start.x + length * direction.x, start.z + length * direction.z]).toEqual([
            expect.closeTo(0.75 * inch, 9),
            expect.closeTo((12 - 0.375) * inch, 9),
        ]);
    });

    it('take a screw of 2in into a laminated side of 1 1/2in without breaking through; one of 3/4in it breaks through', async () => {
        // common practice, no source
        const stays = async (sides: string) => {
            const { fasteners } = joineryOf(await shelved('pocket 2in count 3', { sides }));
            return fasteners.map(({ length, passes }) => length! < passes.at(-1)!.leaves);
        };
        const laminatedStays = await stays(laminated);
        expect(laminatedStays).toEqual(Array.from({ length: 6 }, () => true));
        expect(await stays('side Left, Right')).toEqual(Array.from({ length: 6 }, () => false));
    });

    it('know in which layer of a laminated side the screw ends: the outer one, which is the first', async () => {
        const { fasteners } = joineryOf(await shelved('pocket 2in count 1', { sides: laminated }));
        expect(fasteners.map(({ passes }) => passes.at(-1)?.layer)).toEqual([0, 0]);
        const short = joineryOf(await shelved('pocket 1 1/4in count 1', { sides: laminated }));
        expect(short.fasteners.map(({ passes }) => passes.at(-1)?.layer)).toEqual([1, 1]);
    });
});

describe('screws', () => {
    it('have the shank of ASME B18.6.1 and the root of NDS-2018, Table L3 (#10, read)', async () => {
        const { fasteners } = joineryOf(await shelved('screw #10 x 2in count 2'));
        expect(fasteners[0]!.shank! / inch).toBeCloseTo(0.19, 9);
        expect(fasteners[0]!.rolledRoot! / inch).toBeCloseTo(0.152, 9);
    });

    it('go through the face of the side into the end of the shelf', async () => {
        const casework = await shelved('screw #8 x 2in count 2 inset 2in');
        const [first] = joineryOf(casework).fasteners;
        expect(first?.head).toEqual({ x: 0, y: 2 * inch, z: expect.closeTo((12 - 0.375) * inch, 9) });
        expect(first?.passes.map(({ part, stretch, intoEdge }) => [part, stretch.to - stretch.from, intoEdge])).toEqual([
            ['Bookcase.Left', expect.closeTo(0.75 * inch, 9), false],
            ['Bookcase.Low', expect.closeTo(1.25 * inch, 9), true],
        ]);
        expect(on(casework, 'Left', 'clearance hole')).toHaveLength(2);
        expect(on(casework, 'Low', 'pilot hole').map(({ depth }) => depth)).toEqual(
            Array.from({ length: 4 }, () => expect.closeTo(1.25 * inch, 9)),
        );
    });

    it('of one piece for panels are bored by the sizes that the text gives', async () => {
        const casework = await shelved('panelScrew 7mm x 50mm count 2 pilot 5mm');
        const [wide] = on(casework, 'Left', 'clearance hole');
        const [narrow] = on(casework, 'Low', 'pilot hole');
        expect([wide, narrow].map((one) => one?.solid.is === 'cylinder' && one.solid.diameter)).toEqual([7, 5]);
    });
});

describe('biscuits', () => {
    it.each([
        ['#0', 8, 54.26],
        ['#10', 10, 60],
        ['#20', 12.3, 65.69],
    ])('%s: a cutter of 100mm plunged %d mm leaves a chord of %d mm', async (size, depth, chord) => {
        // 2 sqrt(50^2 - (50 - d)^2); the depths are trade sizes, from memory
        const [slot] = on(await shelved(`biscuit ${size} count 2 inset 2 1/2in`), 'Left', 'biscuit slot');
        if (slot?.solid.is !== 'segment') throw new Error('it is sawn by a disc');
        const { radius, depth: deep } = slot.solid;
        expect(deep).toBe(depth);
        expect(2 * Math.sqrt(radius ** 2 - (radius - deep) ** 2)).toBeCloseTo(chord, 2);
    });

    it('lie half in either part, at the same place seen from both, and alike left and right', async () => {
        const casework = await shelved('biscuit #20 count 2 inset 2 1/2in');
        const middles = (part: string) =>
            on(casework, part, 'biscuit slot').map(({ solid }) => (solid.is === 'segment' ? [solid.middle.y, solid.middle.z] : []));
        expect(middles('Left')).toEqual([
            [2.5 * inch, expect.closeTo(11.625 * inch, 9)],
            [expect.closeTo(8.5 * inch, 9), expect.closeTo(11.625 * inch, 9)],
        ]);
        expect(middles('Right')).toEqual(middles('Left'));
        expect(middles('Low')).toEqual([...middles('Left'), ...middles('Right')]);
    });
});

describe('layouts', () => {
    const places = async (joint: string) => {
        const { fasteners } = joineryOf(await shelved(joint));
        return fasteners.slice(0, fasteners.length / 2).map(({ head }) => head.y / inch);
    };

    it('by count without an inset stand half a space from the ends', async () => {
        expect(await places('screw #8 x 2in count 2')).toEqual([expect.closeTo(2.75, 9), expect.closeTo(8.25, 9)]);
    });

    it('by greatest spacing are even: 11in with insets of 1in is 9in, in three spaces of 3in', async () => {
        expect(await places('screw #8 x 2in spacing 4in inset 1in')).toEqual([1, 4, 7, 10].map((at) => expect.closeTo(at, 9)));
    });

    it('at a pitch are exact, and the same to both sides of the middle', async () => {
        expect(await places('screw #8 x 2in pitch 2in inset 1in')).toEqual([1.5, 3.5, 5.5, 7.5, 9.5].map((at) => expect.closeTo(at, 9)));
    });

    it('that do not fit are not made, and say so', async () => {
        const { fasteners, unplaced } = joineryOf(await shelved('screw #8 x 2in count 2 inset 6in'));
        expect(fasteners).toEqual([]);
        expect(unplaced[0]?.because).toContain('does not fit');
    });
});

describe('what is let in', () => {
    it('a dado is as wide as the shelf and as deep as it says; the shelf is longer by that at each end', async () => {
        const casework = await shelved('dado 1/4in deep');
        const [dado] = on(casework, 'Left', 'dado');
        if (dado?.solid.is !== 'box') throw new Error('it is a box');
        const { least, most } = dado.solid.box;
        expect([least.x / inch, most.x / inch, (most.z - least.z) / inch]).toEqual([0.5, 0.75, 0.75].map((at) => expect.closeTo(at, 9)));
        const { box } = casework.parts.get('Bookcase.Low')!;
        expect((box.most.x - box.least.x) / inch).toBeCloseTo(28.5 + 0.5, 9);
    });

    it('a dado less wide leaves a tongue on the shelf, with a rabbet in the face that is said', async () => {
        const casework = await shelved('dado 1/4in wide 1/4in deep face top');
        const [shoulder] = on(casework, 'Low', 'shoulder');
        expect(shoulder?.side).toBe('top');
        expect(shoulder!.depth / inch).toBeCloseTo(0.5, 9);
        expect(on(casework, 'Low', 'tongue')).toHaveLength(2);
    });

    it('a tongue stands in the middle, between two shoulders', async () => {
        const casework = await shelved('tongue 1/4in thick 3/8in long');
        expect(on(casework, 'Low', 'shoulder').map(({ depth }) => depth / inch)).toEqual(
            Array.from({ length: 4 }, () => expect.closeTo(0.25, 9)),
        );
        expect(on(casework, 'Left', 'groove')[0]!.depth / inch).toBeCloseTo(0.375, 9);
    });

    it('a loose tenon has a mortise in either part, half as deep as it is long', async () => {
        const casework = await shelved('looseTenon 8mm thick 40mm wide 30mm long count 2');
        expect([...on(casework, 'Left', 'mortise'), ...on(casework, 'Right', 'mortise')].map(({ depth }) => depth)).toEqual([
            15, 15, 15, 15,
        ]);
        expect(on(casework, 'Low', 'mortise')).toHaveLength(4);
    });

    it('a dowel has 1mm of room at each end of it', async () => {
        const casework = await shelved('dowel 8mm x 30mm count 2 into 10mm');
        expect(on(casework, 'Left', 'dowel hole').map(({ depth }) => depth)).toEqual([11, 11]);
        expect(on(casework, 'Low', 'dowel hole').map(({ depth }) => depth)).toEqual([21, 21, 21, 21]);
    });

    it('pins stand under the shelf in rows at the pitch', async () => {
        const holes = on(await shelved('rest on Peg count 2 inset 37mm pitch 32mm up 2 down 1'), 'Left', 'pin hole');
        const heights = holes.map(({ solid }) => (solid.is === 'cylinder' ? solid.start.z - (11.25 * inch - 2.5) : Number.NaN));
        expect(heights.slice(0, 4)).toEqual([-32, 0, 32, 64].map((at) => expect.closeTo(at, 9)));
        expect(holes).toHaveLength(8);
        expect(holes[0]?.solid.is === 'cylinder' && holes[0].solid.start.y).toBeCloseTo(37, 9);
    });
});
