/** What holds the ends of shelves, from the text to load over design value, against figures worked out by hand from the publications. */
import { type HeldEnd, heldEnds, heldVerdict } from 'casewright-shared/strength';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const poundForce = 4.4482216152605;

/** A rack of red oak 1in thick, 31in wide, with one shelf 10in deep that carries 40 lb/ft2; `said` is how it is joined. */
async function endsOf(said: string, more: { readonly shelf?: string; readonly before?: string } = {}): Promise<readonly HeldEnd[]> {
    const text = `use casewright.species
use casewright.panels
material Oak : lumber { species RedOak   planed 1in   density 0.001 lb/ft3 }
material Chip like Particleboard { thickness 1in }
bought Pin { hole 1/4in wide 1/2in deep   carries 25lb }
bought Bracket { carries 75lb per pair }
${more.before ?? ''}
case Rack of Oak {
    width 32in   height 36in   depth 10in
    side Left, Right
    shelf Low ${more.shelf ?? 'at 12in'}
    join Low to every side with { ${said} }
    load 40 lb/ft2 on Low
}
`;
    const { casework } = await analyseText(text);
    return heldEnds(casework);
}

async function firstOf(said: string, more: { readonly shelf?: string; readonly before?: string } = {}) {
    const [end] = await endsOf(said, more);
    if (!end) throw new Error('nothing holds the shelf');
    return { end, holds: end.holds, force: end.force / poundForce };
}

it('both ends carry half: 40 lb/ft2 on 30in by 10in are 83.33 lb', async () => {
    // Statics; the wood is given next to no weight.
    const ends = await endsOf('screw #8 x 3in count 2 inset 2in');
    expect(ends.map(({ end }) => end)).toEqual(['left', 'right']);
    for (const { force } of ends) expect(force / poundForce).toBeCloseTo(83.333 / 2, 1);
});

describe('screws across their length', () => {
    it('number 8 in end grain of red oak, 2in deep: mode IV, 120.4 lb by 0.9 and 0.67', async () => {
        // NDS-2018, Equation 12.3-6: D² / Rd √(2 Fem Fyb / 6) with D 0.131 in, G 0.67, Fyb 90 ksi; it does not hang on the thickness.
        const bearing = 16600 * 0.67 ** 1.84;
        const modeIV = (0.131 ** 2 / 2.2) * Math.sqrt((2 * bearing * 90000) / 6);
        const { holds } = await firstOf('screw #8 x 3in count 2 inset 2in');
        expect(holds).toHaveLength(1);
        const [hold] = holds;
        if (hold?.is !== 'known' || hold.by.is !== 'shear') throw new Error('no shear');
        expect(hold.by.mode).toBe('IV');
        expect(hold.by.yieldLoad / poundForce).toBeCloseTo(modeIV, 2);
        expect(modeIV).toBeCloseTo(120.4, 1);
        expect(hold.capacity / poundForce).toBeCloseTo(2 * modeIV * 0.9 * 0.67, 1);
    });

    it('less than six shanks deep they count for nothing', async () => {
        const { end, holds } = await firstOf('screw #8 x 1 3/4in count 2 inset 2in');
        expect(holds).toMatchObject([
            { is: 'unpublished', because: 'they go in less than 6 times their thickness, and count for nothing' },
        ]);
        expect(heldVerdict(end)).toBe('not known');
    });

    it('nails by their own thickness', async () => {
        // NDS-2018: 0.148 in, Fyb 90 ksi, both boards G 0.67; mode IV again, in end grain for years.
        const { holds } = await firstOf('nail 0.148in x 3in count 3 inset 2in');
        const bearing = 16600 * 0.67 ** 1.84;
        const modeIV = (0.148 ** 2 / 2.2) * Math.sqrt((2 * bearing * 90000) / 6);
        const [hold] = holds;
        expect(hold?.is === 'known' && hold.capacity / poundForce).toBeCloseTo(3 * modeIV * 0.9 * 0.67, 1);
    });
});

describe('without a published value', () => {
    it.each([
        ['glue', 'glue', 'no design value is published for a glue line that is made in a shop'],
        ['biscuit #20 count 2 inset 2in', 'biscuits', 'no design value is published for it'],
        ['dowel 8mm x 40mm count 2 inset 2in', 'glued dowels', 'no design value is published for it'],
        ['pocket #8 x 1 1/4in count 2 inset 2in', '2 pocket screws #8', 'no design value is published for screws in slanted pockets'],
        [
            'nail 2in count 2 inset 2in',
            '2 nails',
            'nothing says how thick they are: `nail 2.5mm x 40mm`, or a `fastener` with its `diameter`',
        ],
        [
            'screw 4mm x 60mm count 2 inset 2in',
            '2 screws 4mm',
            'nothing says the diameter between their threads: `rolledRoot` of a `fastener`',
        ],
    ])('%s', async (said, what, because) => {
        const { end, holds } = await firstOf(said);
        expect(holds).toContainEqual(expect.objectContaining({ is: 'unpublished', because }));
        expect(holds.map((hold) => hold.what)).toContain(what);
        expect(heldVerdict(end)).toBe('not known');
    });

    it('screws in the edge of a panel', async () => {
        const { holds } = await firstOf('screw #8 x 3in count 2 inset 2in', { shelf: 'at 12in of Chip' });
        expect(holds).toMatchObject([{ is: 'unpublished', because: 'none is published for them in the edge of Chip' }]);
    });

    it('glue beside screws that are too weak alone: what holds is not known', async () => {
        const { end } = await firstOf('screw #6 x 2 1/2in count 1   glue');
        const overloaded = { ...end, force: 1e6 };
        expect(heldVerdict(overloaded)).toBe('not known');
        expect(heldVerdict({ ...overloaded, holds: end.holds.filter(({ is }) => is === 'known') })).toBe('fails');
    });
});

describe('what it lies on', () => {
    it('the ledge of a dado: 10in by 1/4in of red oak at 1,010 psi over 1.67', async () => {
        // Wood Handbook FPL-GTR-282, Table 5-3b; ASTM D245 (from memory).
        const { end, holds } = await firstOf('dado 1/4in deep   glue');
        const ledge = holds.find(({ what }) => what === 'the ledge of the dado');
        expect(ledge?.is === 'known' && ledge.capacity / poundForce).toBeCloseTo((1010 / 1.67) * 10 * 0.25, 0);
        expect(heldVerdict(end)).toBe('holds');
    });

    it('of a panel nothing is published', async () => {
        const { holds } = await firstOf('dado 1/4in deep', { shelf: 'at 12in of Chip' });
        expect(holds).toMatchObject([{ is: 'unpublished', because: 'of Chip no strength across its faces is published' }]);
    });

    it('pins and brackets carry what they say, each or by the pair', async () => {
        const pins = await firstOf('rest on Pin count 2 inset 2in');
        expect(pins.holds.map((hold) => hold.is === 'known' && hold.capacity / poundForce)).toEqual([expect.closeTo(50, 6)]);
        const brackets = await firstOf('rest on Bracket count 2');
        expect(brackets.holds.map((hold) => hold.is === 'known' && hold.capacity / poundForce)).toEqual([expect.closeTo(75, 6)]);
    });

    it('a pin that does not say what it carries is not guessed at', async () => {
        const { holds } = await firstOf('rest on Peg count 2 inset 2in', { before: 'bought Peg { hole 1/4in wide 1/2in deep }' });
        expect(holds).toMatchObject([{ is: 'unpublished', because: 'nothing says what Peg `carries`' }]);
    });
});

it('a board that hangs from what stands on it is held by the pull of its screws, which in end grain counts for nothing', async () => {
    const text = (grain: string) => `use casewright.species
material Oak : lumber { species RedOak   planed 1in }
case Hung of Oak {
    width 32in   height 24in   depth 10in
    shelf Low at 1in
    side Left, Right { grain ${grain} }
    join every side to Low with { screw #8 x 2in count 3 inset 2in }
    load 40 lb/ft2 on Low
}
`;
    const [along] = heldEnds((await analyseText(text('length'))).casework);
    expect(along).toMatchObject({ way: 'under', holds: [{ is: 'unpublished' }] });
    // NDS-2018, Equation 12.2-2: 2,850 G² D for each inch, 1in of thread in the side, for years 0.9.
    const [across] = heldEnds((await analyseText(text('width'))).casework);
    const [hold] = across?.holds ?? [];
    expect(hold?.is === 'known' && hold.capacity / poundForce).toBeCloseTo(3 * 2850 * 0.67 ** 2 * 0.164 * 1 * 0.9, 1);
});

it('a shelf over a post gives its ends what lies between them and the post', async () => {
    const { casework } = await analyseText(`use casewright.species
material Oak : lumber { species RedOak   planed 1in   density 0.001 lb/ft3 }
case Rack of Oak {
    width 62in   height 36in   depth 10in
    side Left, Right
    shelf Low at 12in
    divider Post below Low clear 20in, rest
    join Low to every side with { screw #8 x 3in count 4 inset 2in }
    join Post to Low with { screw #8 x 2in count 2 }
    load 40 lb/ft2 on Low
}
`);
    const forces = heldEnds(casework).map(({ force }) => force / poundForce);
    // Statics: 20in and 39in by 10in at 40 lb/ft2, half of each.
    expect(forces[0]).toBeCloseTo((20 * 10 * 40) / 144 / 2, 1);
    expect(forces[1]).toBeCloseTo((39 * 10 * 40) / 144 / 2, 1);
});
