/** What is done to a part: joints, bands and nosings, layers and their tolerances, first cuts. Sizes worked out by hand. */
import { type Casework, type Piece, sayQuantity, sayTolerance } from 'casewright-shared/casework';
import { likelyCase, real, worstCase } from 'casewright-shared/quantity';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';
import { expectSizes, measureAt, quantityOf } from './sizes.js';
import { caseWith, stock } from './stock.js';

async function built(text: string): Promise<Casework> {
    return (await analyseText(text)).casework;
}

/** Finished and first-cut lengths of strips, by their names. */
function stripsOf({ pieces }: Casework): Readonly<Record<string, string>> {
    const strips = pieces.filter(({ role }) => role === 'band' || role === 'nosing');
    return Object.fromEntries(strips.map((piece) => [piece.name, `${lengthOf(piece, 'finished')}, first cut ${lengthOf(piece, 'rough')}`]));
}
function lengthOf(piece: Piece, stage: 'finished' | 'rough'): string {
    const { length } = piece[stage];
    return length ? sayQuantity(length.quantity, 'inch') : 'unknown';
}

describe('joints', () => {
    it('a dado makes a shelf longer by its depth at each end: 38 1/2in and twice 1/4in', async () =>
        expectSizes(await built(caseWith('side Left, Right\nshelf Deck at 20in\njoin Deck to every side with Dado')), {
            'C.Deck.opening.length': '38 1/2in',
            'C.Deck.length': '39in',
            'C.Deck.left': '1/2in',
            'C.Deck.right': '39 1/2in',
            'C.Deck.depth': '12in',
        }));

    it('a gap makes it shorter at each end, and nowhere else', async () =>
        expectSizes(
            await built(caseWith('back of Quarter\nside Left, Right\nshelf Deck at 20in with Gap\njoin back to every side with Glued')),
            {
                'C.Deck.length': '38 3/8in',
                'C.Deck.left': '13/16in',
                'C.Deck.width': '11 3/4in',
            },
        ));

    it('a tenon makes a rail longer by its length at each end', async () =>
        expectSizes(await built(caseWith('side Left, Right\nrail Low at front height 3in\njoin Low to every side with Tenon')), {
            'C.Low.length': '39 1/2in',
            'C.Low.width': '3in',
        }));

    it('an end that no joint speaks of is left as it is', async () =>
        expectSizes(
            await built(caseWith('side Left, Right\nshelf Deck at 20in\njoin Deck to Left with Dado\njoin Deck to Right with Glued')),
            {
                'C.Deck.length': '38 3/4in',
                'C.Deck.right': '39 1/4in',
            },
        ));

    it('the narrower rule holds: by name before by kind, whichever of the two parts is named first', async () =>
        expectSizes(
            await built(
                caseWith(
                    'side Left, Right\nshelf A at 20in\nshelf B at 30in\njoin every shelf to every side with Dado\njoin A to Left with Glued\njoin Right to B with Glued',
                ),
            ),
            { 'C.A.length': '38 3/4in', 'C.B.length': '38 3/4in' },
        ));

    it('a board that is let in sizes others that are as long as it is', async () =>
        expectSizes(
            await built(
                caseWith(
                    'side Left, Right\nshelf A at 20in\npanel P at 3in length A.thickness * 8 width A.length - 1in above A\njoin A to every side with Dado',
                ),
            ),
            { 'C.A.length': '39in', 'C.P.width': '38in', 'C.P.length': '6in' },
        ));
});

describe('bands and nosings', () => {
    it('come off the finished size: 12in less 1/8in, or less a nosing of 3/4in', async () =>
        expectSizes(
            await built(caseWith('side Left, Right { edge front Band }\nshelf Deck at 20in { edge front Nose   edge back Band }')),
            {
                'C.Left.core.width': '11 7/8in',
                'C.Left.width': '12in',
                'C.Deck.core.width': '11 1/8in',
                'C.Deck.core.length': '38 1/2in',
            },
        ));

    // The top edge is banded before the front edge, so that the front band covers its end: common practice, no source.
    it('are cut in the order of work: one glued on later covers the ends of those before it', async () => {
        const casework = await built(
            caseWith('side Left, Right { edge top, front Band }\nshelf Deck at 20in { edge front, left, right Band }'),
        );
        expect(stripsOf(casework)).toEqual({
            // 12in less the front band; then the front: 60in less the top band, and over its end
            'Left, top band': '11 7/8in, first cut 12 7/8in',
            'Left, front band': '60in, first cut 61in',
            'Right, top band': '11 7/8in, first cut 12 7/8in',
            'Right, front band': '60in, first cut 61in',
            // the front between the side bands: 38 1/2in less two; the sides over the end of the front one: 12in
            'Deck, front band': '38 1/4in, first cut 39 1/4in',
            'Deck, left band': '12in, first cut 13in',
            'Deck, right band': '12in, first cut 13in',
        });
        expect(casework.pieces.find(({ name }) => name === 'Left, front band')?.notes).toEqual([
            ['glue on after the top strip, and cover its end'],
        ]);
    });

    it('a nosing hangs below its shelf, so it is cut to fit between the sides that the shelf goes into', async () =>
        expect(
            stripsOf(
                await built(
                    caseWith(`side Left, Right
                        shelf Housed at 20in { edge front Nose }
                        shelf Loose at 30in with Gap { edge front Nose }
                        shelf Banded at 40in { edge front Band }
                        join Housed, Banded to every side with Dado`),
                ),
            ),
        ).toEqual({
            'Housed, front nosing': '38 1/2in, first cut 39 1/2in',
            'Loose, front nosing': '38 3/8in, first cut 39 3/8in',
            // a band is no higher than its board, and goes into the dado with it
            'Banded, front band': '39in, first cut 40in',
        }));

    it('nosings on three sides: the front covers the ends of those at the sides, or they its own', async () => {
        const top = (edges: string) => `${stock}case C of Ply { width 40in; height 60in; depth 12in\n top { edge ${edges} Nose }\n }`;
        expect(stripsOf(await built(top('left, right, front')))).toEqual({
            'top, left nosing': '11 1/4in, first cut 12 1/4in',
            'top, right nosing': '11 1/4in, first cut 12 1/4in',
            'top, front nosing': '40in, first cut 41in',
        });
        expect(stripsOf(await built(top('front, left, right')))).toEqual({
            'top, front nosing': '38 1/2in, first cut 39 1/2in',
            'top, left nosing': '12in, first cut 13in',
            'top, right nosing': '12in, first cut 13in',
        });
    });

    it('take off what is not known where their thickness is not: the core is unknown, not whole', async () => {
        const { parts } = await built(caseWith('side Left, Right { edge front { band of Oak } }\nshelf Deck at 20in'));
        expect(parts.get('C.Left')?.sizes.finished.width).toBeDefined();
        expect(parts.get('C.Left')?.sizes.core.width).toBeUndefined();
        expect(parts.get('C.Left')?.sizes.rough.width).toBeUndefined();
        expect(parts.get('C.Deck')?.sizes.core.width).toBeDefined();
    });
});

describe('layers', () => {
    // Two layers of 3/4in make 1 1/2in: common practice, no source.
    it('add up, by what a caliper reads', async () =>
        expectSizes(
            await built(`${stock}
                material Veneered : plywood { thickness 3/4in   actual 0.72in   sheet 48in x 96in   grain length }
                case C { width 40in; height 60in; depth 12in
                    side Left, Right of Ply layers 2
                    shelf Deck of Veneered layers 3 at 20in
                }`),
            {
                'C.Left.thickness': '1 1/2in',
                'C.Deck.thickness': '2.16in',
                'C.Deck.length': '37in',
                // each layer is first cut 1/4in larger all round, and all are trimmed as one
                'C.Deck.rough.length': '37 1/2in',
                'C.Deck.rough.width': '12 1/2in',
            },
        ));

    it('a layer stops short for the back; a part like another exchanges a layer and keeps the rest', async () => {
        const casework = await built(`${stock}
            case C { width 40in; height 60in; depth 12in
                side Wall at left {
                    layer Outer of Ply
                    layer Inner of Half { leave back 1/4in for back }
                    edge front Band
                }
                side Show at right like Wall { layer Outer of Quarter }
                back of Quarter
                shelf Deck of Ply at 20in
            }`);
        expectSizes(casework, {
            'C.Wall.thickness': '1 1/4in',
            'C.Show.thickness': '3/4in',
            // the back goes into both inner layers
            'C.back.width': '39in',
            'C.Deck.length': '38in',
            'C.Show.core.width': '11 7/8in',
        });
        const [outer, inner] = casework.parts.get('C.Show')?.layers ?? [];
        expect([outer?.name, outer?.material, inner?.name, inner?.material]).toEqual([
            'Outer',
            'design.case#Quarter',
            'Inner',
            'design.case#Half',
        ]);
        // 11 7/8in less what is left free
        expect(inner?.size.width && real.compare(inner.size.width.quantity.value, quantityOf('11 5/8in').value)).toBe(0);
        // outer to inner: on the right side the outer layer is the rightmost
        expect([outer?.box?.most.x, inner?.box?.least.x]).toEqual([40 * 25.4, 39.25 * 25.4]);
    });

    it('a thickness of its own is that of its one layer; a board of several has none but theirs', async () => {
        const analysis = await analyseText(caseWith('side Left, Right { thickness 1in }\nshelf Deck at 20in { layers 2\n thickness 1in }'));
        expectSizes(analysis.casework, { 'C.Left.thickness': '1in', 'C.Deck.thickness': '1 1/2in', 'C.Deck.length': '38in' });
        expect(analysis.casework.parts.get('C.Left')?.layers[0]?.thickness).toEqual(
            analysis.casework.parts.get('C.Left')?.sizes.core.thickness,
        );
        expect(analysis.casework.problems.map(({ code, span }) => [code, analysis.textAt(span)])).toEqual([['PRP-003', 'thickness 1in']]);
    });
});

describe('tolerances', () => {
    const measured = `${stock}
        material Panel : plywood { thickness 3/4in   actual 0.720in ± 0.010in   sheet 48in x 96in   grain length }`;

    it('four layers of 0.720 ± 0.010in in 40in leave 37.12in, ±0.040in at worst and ±0.020in likely', async () => {
        const casework = await built(`${measured}
            case C of Panel { width 40in; height 60in; depth 12in
                side Left, Right layers 2
                shelf Deck at 20in
            }`);
        // 40in less 4 x 0.720in; 4 x 0.010in at worst, the root of 4 x 0.010in squared likely
        expectSizes(casework, { 'C.Deck.length': '37.12in' });
        const deck = measureAt(casework, 'C.Deck.length');
        const [worst, likely] = [worstCase(deck.quantity, casework.deviations), likelyCase(deck.quantity, casework.deviations)];
        expect([worst.minus, worst.plus, likely.minus, likely.plus].map((one) => real.toNumber(one) / 25.4)).toEqual([
            expect.closeTo(0.04, 12),
            expect.closeTo(0.04, 12),
            expect.closeTo(0.02, 12),
            expect.closeTo(0.02, 12),
        ]);
        expect(deck.quantity.deviations?.size).toBe(4);
        expect(sayTolerance(deck, casework, 'inch')).toBe('worst ±0.040in, likely ±0.020in');
        expect(sayTolerance(measureAt(casework, 'C.Deck.thickness'), casework, 'inch')).toBe(
            'worst ±0.010in, likely ±0.010in; all of it from C.Deck',
        );
    });

    it('what is on both sides of a difference cancels: the bay between two shelves of shares has only their own', async () => {
        const casework = await built(`${measured}
            case C of Panel { width 40in; height 60in; depth 12in
                side Left, Right
                shelf Tier[2] clear 20in, 1, 1
            }`);
        expect(measureAt(casework, 'C.Tier[1].lower').quantity.deviations).toBeUndefined();
        // (60in - 20in - two shelves) / 2: half of each of their deviations
        const effects = [...(measureAt(casework, 'C.Tier[1].clear').quantity.deviations?.values() ?? [])].map(real.toNumber);
        expect(effects).toEqual([-0.5, -0.5]);
    });

    it('a thickness that is twice a measured one deviates twice as much', async () => {
        const casework = await built(`${stock}
            let sheet = 0.36in ± 0.005in
            material Doubled : plywood { thickness 3/4in   actual sheet * 2   sheet 48in x 96in }
            case C of Doubled { width 40in; height 60in; depth 12in\n side Left, Right }`);
        const { quantity } = measureAt(casework, 'C.Left.thickness');
        expect(real.toNumber(worstCase(quantity, casework.deviations).plus) / 25.4).toBeCloseTo(0.01, 12);
    });

    it.each([
        ['Deck.length >= 37in', 'holds'],
        ['Deck.length >= 37.1in', 'depends'],
        ['Deck.length <= 37.12in', 'depends'],
        ['Deck.length >= 37.2in', 'fails'],
        ['Deck.length > 37in and Deck.length > 37.1in', 'depends'],
        ['Deck.length > 38in or Deck.length > 37.1in', 'depends'],
        ['Deck.length > 38in or Deck.length > 37in', 'holds'],
        ['Deck.upper = 20in', 'holds'],
    ])('%s: %s', async (condition, answer) => {
        const { requirements } = await built(`${measured}
            case C of Panel { width 40in; height 60in; depth 12in
                side Left, Right layers 2
                shelf Deck at 20in
                require ${condition}
            }`);
        expect(requirements.map((one) => one.answer)).toEqual([answer]);
    });
});

describe('a bookcase of 1910', () => {
    // Source: H. H. Windsor, Mission Furniture: How to Make It, Part 2 (Popular Mechanics Company, Chicago, 1910), "A Bookcase", list of
    // material: top 3/4 by 15 by 31 1/4in, sides 3/4 by 14 by 50in, bottom and bottom rail 28 3/4in long, rail 4in wide, shelves
    // 1/2in thick and 28 1/2in long on pegs, backing 29 3/4in wide in rabbets of the sides. Of these the test states the overall size, the
    // thicknesses, the overhangs of the top (1/2in and 1in), rabbets 1/2in deep, and 1/8in of play at each end of a shelf.
    it('comes out at the sizes of its list of material', async () => {
        const casework = await built(`${stock}
            material Backing : plywood { thickness 3/8in   sheet 48in x 96in   grain length }
            case Mission of Oak { width 30 1/4in; height 50 3/4in; depth 14in
                top { edge left, right at 1/2in past case   edge front at 1in past case }
                side Left, Right { edge back rabbet 1/2in deep for back }
                bottom at 4 3/4in
                rail Bottom height 4in below bottom
                shelf Tier[3] of Half at 16in, 28in, 40in with { rest on Pin   gap 1/8in at each end   loose }
                back of Backing
            }`);
        expectSizes(casework, {
            'Mission.top.length': '31 1/4in',
            'Mission.top.width': '15in',
            'Mission.Left.length': '50in',
            'Mission.Left.width': '14in',
            'Mission.bottom.length': '28 3/4in',
            'Mission.Bottom.length': '28 3/4in',
            'Mission.Bottom.width': '4in',
            'Mission.Tier[2].length': '28 1/2in',
            'Mission.Tier[2].thickness': '1/2in',
            'Mission.back.width': '29 3/4in',
        });
    });
});
