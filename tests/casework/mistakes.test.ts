/** Mistakes in designs: none throws, each has one finding at its words, and what is healthy keeps its sizes. */
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';
import { expectSizes } from './sizes.js';
import { caseWith, stock } from './stock.js';

/** The errors of a text as code and words, and sizes that are there all the same. */
async function expectErrors(
    text: string,
    errors: readonly (readonly [string, string])[],
    sizes: Readonly<Record<string, string>> = {},
): Promise<void> {
    const analysis = await analyseText(text);
    const found = analysis.findings.filter(({ severity }) => severity === 'error').map(({ code, span }) => [code, analysis.textAt(span)]);
    expect(found).toEqual(errors);
    expectSizes(analysis.casework, sizes);
}

const deck = { 'C.Deck.length': '38 1/2in', 'C.Left.length': '60in' };
/** A case with two sides, a shelf, and a mistake. */
const withDeck = (words: string): string => caseWith(`side Left, Right\nshelf Deck at 30in\n${words}`);

describe('counts and repeats', () => {
    it.each([
        ['a group of a billion', 'shelf Tier[1000000000] clear equal', 'PLC-009', '1000000000'],
        ['a repeat of a billion', 'repeat i in 1..1000000000 { shelf Tier at i * 1in }', 'PLC-009', '1..1000000000'],
        ['repeats in repeats that make nothing', 'repeat i in 1..5000 {\nrepeat j in 1..5000 { let x = 1in }\n}', 'PLC-009', '1..5000'],
        ['a count below zero', 'shelf Tier[-1] clear equal', 'UNI-006', '-1'],
        ['half a part', 'shelf Tier[1.5] clear equal', 'UNI-006', '1.5'],
        ['a count with a unit', 'shelf Tier[2in] clear equal', 'UNI-003', '2in'],
        ['a repeat over half a turn', 'repeat i in 1..2.5 { shelf Tier at i * 1in }', 'UNI-006', '1..2.5'],
        ['a repeat over no range', 'repeat i in 3 { shelf Tier at i * 1in }', 'UNI-006', '3'],
        ['sixty layers', 'shelf Thick at 10in layers 60', 'PLC-009', 'layers 60'],
        ['no layers', 'shelf Thick at 10in layers 0', 'UNI-006', '0'],
    ])('%s', (_, words, code, at) => expectErrors(withDeck(words), [[code, at]], deck));

    it('after one that is too large the others are built', () =>
        expectErrors(
            withDeck(
                'repeat i in 1..1000000000 { shelf Tier at i * 1in }\nrepeat i in 1..2 { shelf Low at i * 10in }\nshelf Many[99999] clear equal\nshelf Last at 50in',
            ),
            [
                ['PLC-009', '1..1000000000'],
                ['PLC-009', '99999'],
            ],
            { ...deck, 'C.Low[2].upper': '20in', 'C.Last.length': '38 1/2in' },
        ));

    it('a repeat that runs backwards makes nothing', () => expectErrors(withDeck('repeat i in 5..1 { shelf Tier at i * 1in }'), [], deck));

    it('a count that hangs on a size that joints may change is refused; one that hangs on the case is not', async () => {
        await expectErrors(
            withDeck('divider Post[floor(Deck.length / 12in)] above Deck clear equal\njoin Deck to every side with Dado'),
            [['PLC-007', 'floor(Deck.length / 12in)']],
            { 'C.Deck.length': '39in' },
        );
        await expectErrors(withDeck('divider Post[floor(width / 12in)] above Deck clear equal\njoin Deck to every side with Dado'), [], {
            'C.Deck.length': '39in',
            'C.Post[3].length': '30in',
        });
    });

    it('a condition that hangs on a part further down is refused, and what stands before it is built', () =>
        expectErrors(
            caseWith(
                `side Left, Right { edge back rabbet 1/4in deep for back }
                divider Post at 10in as West, East
                shelf Deck at 30in
                if Post.depth > 11in { shelf Low in West at 10in }
                if West.depth > 11in { shelf High in West at 50in }
                back of Quarter`.replace('shelf Deck at 30in', 'shelf Deck in West at 30in'),
            ),
            [
                ['PLC-007', 'Post.depth > 11in'],
                ['PLC-007', 'West.depth > 11in'],
            ],
            { 'C.Post.depth': '11 3/4in', 'C.West.Deck.depth': '11 3/4in' },
        ));
});

describe('names and indices', () => {
    it.each([
        ['an index of zero', 'shelf Tier[3] above Deck clear equal\nrequire Tier[0].clear > 1in', 'NAM-010', '0'],
        ['an index past the last', 'shelf Tier[3] above Deck clear equal\nrequire Tier[9].clear > 1in', 'NAM-010', '9'],
        ['an index of a single part', 'require Deck[2].clear > 1in', 'NAM-010', '2'],
        ['a part of none', 'shelf Tier[0] above Deck clear equal\nrequire Tier[1].clear > 1in', 'NAM-010', 'Tier'],
        ['a size of a group', 'shelf Tier[3] above Deck clear equal\nrequire Tier.clear > 1in', 'NAM-009', 'Tier'],
        ['a face that it does not have', 'shelf Low at 2in above Deck.inner', 'NAM-009', 'inner'],
        ['a name of nothing', 'shelf Low at 2in above Dekc', 'NAM-001', 'Dekc'],
        ['a part named twice', 'shelf Deck at 10in', 'NAM-002', 'Deck'],
        ['an edge that it does not have', 'shelf Low at 10in { edge top Band }', 'EDG-005', 'top'],
        ['no side of the room', 'leave upstairs 1in for scribe', 'PLC-010', 'upstairs'],
        ['no function', 'shelf Low at cube(2in)', 'NAM-001', 'cube'],
        ['a face of a side that may be either', 'side Third above Deck at 20in\nrequire Third.inner > 1in', 'NAM-009', 'inner'],
    ])('%s', (_, words, code, at) => expectErrors(withDeck(words), [[code, at]], deck));
});

describe('sizes', () => {
    it.each([
        ['zero as a divisor', 'shelf Low at 10in / 0', 'UNI-004', '0'],
        ['a divisor that comes to zero', 'shelf Low at 10in / (3 - 3)', 'UNI-004', '3 - 3'],
        ['a length by a length', 'shelf Low at 2in * 3in', 'UNI-003', '2in * 3in'],
        ['a number without a unit', 'shelf Low at 10', 'UNI-001', '10'],
        ['a sum of unlike things', 'shelf Low at 10in + 2', 'UNI-003', '2'],
        ['the root of less than nothing', 'shelf Low at 1in * sqrt(0 - 4)', 'UNI-003', 'sqrt(0 - 4)'],
        ['rounding to nothing', 'shelf Low at round(10in, 0in)', 'UNI-003', 'round(10in, 0in)'],
        ['a stated size of nothing', 'shelf Low at 10in depth 0in', 'PLC-002', '0in'],
        ['a stated size below nothing', 'shelf Low at 10in depth -4in', 'PLC-002', '-4in'],
        ['a thickness below nothing', 'shelf Low at 10in thickness -1in', 'PLC-002', '-1in'],
        ['a list where one size is needed', 'rail Low at front height 1in, 2in', 'NAM-007', '1in, 2in'],
        ['a part that depends on itself', 'shelf Low at Low.upper', 'PLC-007', 'Low'],
        ['parts that depend on one another', 'shelf Low at 10in below High\nshelf High at 10in above Low', 'PLC-007', 'Low'],
        ['a let that depends on itself', 'let x = y + 1in\nlet y = x + 1in\nshelf Low at x', 'PLC-007', 'x'],
        ['a part without a place', 'shelf Low', 'PLC-001', 'Low'],
        ['a part that is only placed the other way', 'shelf Low at left', 'PLC-001', 'Low'],
        ['a back after a shelf that goes to the wall', 'back', 'PLC-001', 'back'],
        ['work on an edge of a case', 'edge front { band 1/8in of Ply }', 'NAM-013', 'edge'],
        ['two places one above the other', 'shelf Low at 4in, 6in', 'PLC-006', '6in'],
        ['a word of everyday speech for a place', 'shelf Low at half', 'PLC-010', 'half'],
        ['a text for a place', 'shelf Low at "here"', 'PLC-010', '"here"'],
        ['an edge word for a place', 'shelf Low at 10in past Deck', 'PLC-010', '10in past Deck'],
        ['one place too few', 'shelf Low[3] at 10in, 20in', 'PLC-006', 'Low'],
        ['what this edition does not compute with', 'require Deck.mass > 1lb', 'PRP-007', 'mass'],
    ])('%s', (_, words, code, at) => expectErrors(withDeck(words), [[code, at]], deck));

    it('a chain of thousands of sizes is refused once', async () => {
        const lets = Array.from({ length: 5000 }, (_, index) => `let a${index} = a${index + 1} + 1in`).join('\n');
        const analysis = await analyseText(`${lets}\nlet a5000 = 1in\n${withDeck('shelf Low at a0')}`);
        expect(analysis.casework.problems.map(({ code, span }) => [code, analysis.textAt(span)])).toEqual([['PLC-007', 'a0']]);
        expectSizes(analysis.casework, deck);
    });

    it('a row of thousands is placed from either end', () =>
        expectErrors(
            caseWith('side Left, Right\nshelf Tier[2000] of Thin clear equal\nrequire Tier[1999].upper > 1in').replace(
                'case C',
                'material Thin : plywood { thickness 1/64in   sheet 48in x 96in }\ncase C',
            ),
            [],
            {
                // 60in less 2000 shelves of 1/64in, in 2001 shares: 28 3/4in / 2001
                'C.Tier[2000].thickness': '1/64in',
            },
        ));

    it('another size may be named in any order, even through joints', () =>
        expectErrors(
            withDeck(
                'shelf Low at 10in length Deck.length - 1in\nrail Front at front height Deck.thickness * 2 length Low.length above Deck\njoin Deck to every side with Dado',
            ),
            [],
            { 'C.Deck.length': '39in', 'C.Low.length': '38in', 'C.Front.length': '38in', 'C.Front.width': '1 1/2in' },
        ));
});

describe('shares', () => {
    it.each([
        ['longer than the room', 'clear 20in, 20in, 1', 'clear 20in, 20in, 1'],
        ['leaving some over', 'clear 1in, 2in, 3in', 'clear 1in, 2in, 3in'],
        ['one too few', 'clear 1in, 2in', '1in, 2in'],
        ['one too many', 'clear 1, 1, 1, 1', '1, 1, 1, 1'],
        ['a length below zero', 'clear 1in, -2in, 1', '-2in'],
        ['a share of nothing', 'clear 1in, 0, 1', '0'],
    ])('%s', (_, shares, at) => expectErrors(withDeck(`shelf Tier[2] above Deck ${shares}`), [['PLC-006', at]], deck));

    it.each([
        ['in the units of the case, in fractions', caseWith('side Left, Right\nshelf Tier[2] clear 40in, 30 3/4in, 1'), '12 1/4in'],
        [
            'in millimetres',
            `${stock}case C of Metric { width 1m; height 500mm; depth 300mm\n side Left, Right\n shelf Tier[2] clear 300mm, 220mm, 1 }`,
            '56mm',
        ],
    ])('say what is too much %s', async (_, text, amount) => {
        const { problems } = (await analyseText(text)).casework;
        expect(problems.map(({ message }) => message)).toEqual([`the lengths and parts here are ${amount} longer than the room for them`]);
    });

    it('name as many openings as there are', () =>
        expectErrors(withDeck('shelf Tier[2] above Deck clear equal as P, Q'), [['PLC-006', 'P, Q']], deck));
});

describe('materials, designs and cases', () => {
    it('a part without a material, and one of a material without a thickness', () =>
        expectErrors(
            `${stock}material Unmeasured : plywood { sheet 48in x 96in }
            case C { width 40in; height 60in; depth 12in
                side Left, Right of Ply
                shelf Deck of Ply at 30in
                shelf Low at 10in
                shelf Odd of Unmeasured at 50in
            }`,
            [
                ['MAT-001', 'Low'],
                ['MAT-005', 'Unmeasured'],
            ],
            deck,
        ));

    it('materials that are like one another in a circle', () =>
        expectErrors(
            `${withDeck('shelf Low of Round at 10in')}material Round like Other { price 1 USD per sheet }\nmaterial Other like Round { price 2 USD per sheet }`,
            [['PLC-007', 'Round']],
            deck,
        ));

    it('a case without a height', () =>
        expectErrors(
            `${stock}case C of Ply { width 40in; depth 12in\n side Left, Right }\ncase D of Ply { width 40in; height 60in; depth 12in\n side Left, Right }`,
            [['PLC-011', 'C']],
            {
                'D.Left.length': '60in',
                'C.width': '40in',
            },
        ));

    it('a case of less than nothing', () =>
        expectErrors(`${stock}case C of Ply { width -40in; height 0in; depth 12in\n side Left, Right }`, [
            ['PLC-002', '-40in'],
            ['PLC-002', '0in'],
        ]));

    it('a case that contains itself, directly or through another', async () => {
        await expectErrors(
            `${stock}case C of Ply { width 40in; height 60in; depth 12in\n side Left, Right\n case Inner of C }`,
            [['PLC-007', 'C']],
            { 'C.Left.length': '60in' },
        );
        await expectErrors(
            `${stock}case A of Ply { side Left, Right\n case Inner of B }\ncase B of Ply { side Left, Right\n case Inner of A }\ncase C { width 40in; height 60in; depth 12in\n case First of A }`,
            [['PLC-007', 'A']],
            { 'C.First.Inner.Left.length': '60in' },
        );
    });

    it('a parameter without a value, and one that is not there', () =>
        expectErrors(
            `${stock}case Box(tall: Length) of Ply { side Left, Right\n shelf Low at tall }
            case C { width 40in; height 60in; depth 12in
                case One of Box width 20in
                case Two of Box(tall = 4in, broad = 3in) { edge left at One.right }
            }`,
            [
                ['PRP-004', 'case One of Box width 20in'],
                ['NAM-009', 'broad'],
            ],
            { 'C.Two.Low.upper': '4in', 'C.One.Left.length': '60in' },
        ));

    it('an empty case, and one with nothing in it but a sentence', async () => {
        await expectErrors(`${stock}case C { width 40in; height 60in; depth 12in }`, [], { 'C.width': '40in' });
        await expectErrors(`${stock}case C { width 40in; height 60in; depth 12in\n require width > 30in }`, [], { 'C.width': '40in' });
    });

    it('a curved case in another is built by itself only', () =>
        expectErrors(
            `${stock}case Show of Ply { width 20in; height 60in; depth Belly
                curve Belly of depth over height {
                    from 12in at bottom
                    to 10in at top
                }
                side Left, Right
            }
            case C { width 40in; height 60in; depth 12in\n case One of Show }`,
            [['PRP-007', 'Show']],
        ));

    it('cases that are given one width for two', () =>
        expectErrors(
            `${stock}case Box of Ply { side Left, Right }\ncase C { width 40in; height 60in; depth 12in\n case Two[2] of Box width 20in }`,
            [['PLC-006', '20in']],
        ));
});

describe('curves', () => {
    const under = (curve: string, words: string) =>
        `${stock}case C of Ply { width 40in; height 60in; depth Line\n curve Line of depth over height {\n${curve}\n}\n side Left, Right\n ${words} }`;

    it.each([
        ['that fold back', 'from 18in at bottom\nto 12in at top\narc out 80in', 'arc out 80in'],
        ['of too small a radius', 'from 18in at bottom\nto 12in at top\nradius out 10in', 'radius out 10in'],
        ['with both ends at one place', 'from 18in at bottom\nto 12in at bottom', 'to 12in at bottom'],
    ])('%s', (_, curve, at) => expectErrors(under(curve, 'shelf Deck at 30in'), [['CRV-002', at]], { 'C.width': '40in' }));

    it('that need what needs them', () =>
        expectErrors(under('from 18in at bottom\nto Deck.width at top', 'shelf Deck at 30in'), [['PLC-007', 'C']], { 'C.height': '60in' }));

    it('that nothing straight can stand across', () =>
        expectErrors(
            under('from 18in at bottom\nto 12in at top', 'rail Low at front height 3in\nshelf Deck at 30in'),
            [['PLC-001', 'Low']],
            {
                'C.Deck.length': '38 1/2in',
            },
        ));
});

describe('what is asked of an opening or a case of which a side is not known', () => {
    it('is not called missing: only its cause is told', async () => {
        const opening =
            'side Left at left\nside Right at right of Odd\ndivider Post at 9in as Near, Wide\nrequire Wide.width >= 3in because "x"';
        await expectErrors(`material Odd : plywood { sheet 48in x 96in }${caseWith(opening)}`, [['MAT-005', 'Odd']]);
        await expectErrors(caseWith('side Left, Right\nrequire C.height >= 3in because "x"').replace('height 60in', ''), [
            ['PLC-011', 'C'],
        ]);
    });
});

describe('an edge that a part does not have', () => {
    it('is near another one, which is offered', async () => {
        const { findings } = await analyseText(withDeck('shelf Low at 9in { edge frnt Band }'));
        const [found] = findings.filter(({ severity }) => severity === 'error');
        expect(found).toMatchObject({
            code: 'EDG-005',
            message: 'a shelf has no `frnt` edge; did you mean `front`?',
            fix: { text: 'front' },
        });
    });
});

describe('joints', () => {
    it('between parts that do not meet', () =>
        expectErrors(withDeck('shelf Low at 10in\njoin Deck to Low with Glued'), [['PLC-008', 'Low']], deck));

    it('of one pair by two rules of one width', () =>
        expectErrors(withDeck('join Deck to Left with Dado\njoin Left to Deck with Glued'), [['PRP-003', 'join Left to Deck with Glued']], {
            'C.Deck.length': '38 3/4in',
        }));

    it('with a depth that is no length leave the size unknown, not as it was', async () => {
        const { parts } = (await analyseText(withDeck('join Deck to every side with { dado 3 deep }'))).casework;
        expect(parts.get('C.Deck')?.sizes.opening.length).toBeDefined();
        expect(parts.get('C.Deck')?.sizes.finished.length).toBeUndefined();
        expect(parts.get('C.Deck')?.sizes.finished.width).toBeDefined();
    });
});
