/** The strength sheet: everything on it can be worked out again from what stands on it. */
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { documentKinds, type Group, type Row, type Sheet } from 'casewright-shared/documents';
import { writeDocument } from 'casewright-shared/writers';
import { describe, expect, it } from 'vitest';
import { allDesigns, analyseFile, analyseText } from './analysed.js';

const schema = JSON.parse(readFileSync(new URL('../../shared/schema/sheet.schema.json', import.meta.url), 'utf8'));
const validate = new Ajv2020({ strict: true, strictTypes: false, allowUnionTypes: true, allErrors: true }).compile(schema);
const options = { locate: () => ({ file: '', line: 1, column: 1 }), findings: [] };
const strength = documentKinds.find(({ kind }) => kind === 'strength')!;

async function sheetOf(text: string, units?: 'in' | 'mm'): Promise<Sheet> {
    const { casework } = await analyseText(text);
    const made = strength.make(casework, { ...options, ...(units ? { units } : {}) });
    if (made?.is !== 'sheet') throw new Error('there is no sheet');
    return made.sheet;
}

const calculations = (sheet: Sheet): readonly Group[] => sheet.groups.slice(1);
const textIn = (row: Row, key: string) => (row[key]?.is === 'text' ? row[key].text : '');
function numberOf({ rows }: Group, symbol: string): number {
    const cell = rows.find((row) => textIn(row, 'symbol') === symbol)?.value;
    if (cell?.is !== 'number') throw new Error(`there is no ${symbol}`);
    return cell.number;
}

const stand = (shelf: string, load: string) => `
use casewright.species
use casewright.panels
material Mdf like FibreboardThreeQuarter
material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }
goods Box { size 8in wide 10in deep 6in high   mass 12lb }
case Stand of Mdf {
    width 36in
    height 40in
    depth 12in
    side Left, Right
    ${shelf}
    join every shelf to every side with { glue }
    ${load}
}
`;

describe('a sheet in inches', () => {
    // The same 34 1/2in of 3/4in fibreboard as in the beam formula 5 w L⁴ / 384 E I (Wood Handbook FPL-GTR-282, Table 9-1), worked out here
    // from E = 520,000 psi, 12in deep, 40 lb/ft2 and 48 lb/ft3.
    it('has the load, the section and the sag of a plain shelf', async () => {
        const [group] = calculations(await sheetOf(stand('shelf Low at 12in', 'load 40 lb/ft2 on Low')));
        const [span, along, rigidity] = [34.5, (40 * 12) / 144 + (12 * 0.75 * 48) / 1728, (520_000 * 12 * 0.75 ** 3) / 12];
        expect(numberOf(group!, 'L')).toBeCloseTo(span, 9);
        expect(numberOf(group!, 'w')).toBeCloseTo(along, 6);
        expect(numberOf(group!, 'EI')).toBeCloseTo(rigidity, 3);
        expect(numberOf(group!, 's')).toBeCloseTo((5 * along * span ** 4) / (384 * rigidity), 6);
        expect(numberOf(group!, 's max')).toBeCloseTo(span / 144, 9);
        expect(numberOf(group!, 'M')).toBeCloseTo((along * span ** 2) / 8, 4);
        expect(numberOf(group!, 'f')).toBeCloseTo((6 * along * span ** 2) / 8 / (12 * 0.75 ** 2), 4);
        // Eurocode 5, Table 3.2: 1 + 2.25
        expect(numberOf(group!, 's years')).toBeCloseTo(3.25 * numberOf(group!, 's'), 6);
        expect(group!.rows.map((row) => textIn(row, 'verdict')).filter((word) => word !== '')).toEqual(['fails', 'to be noted', 'holds']);
    });

    it('has a load at the middle with its own formula, and goods by their number', async () => {
        const [point] = calculations(await sheetOf(stand('shelf Low at 12in', 'load 30 lb on Low')));
        const [own, rigidity] = [0.25, (520_000 * 12 * 0.75 ** 3) / 12];
        const sag = (30 * 34.5 ** 3) / (48 * rigidity) + (5 * own * 34.5 ** 4) / (384 * rigidity);
        expect(numberOf(point!, 's')).toBeCloseTo(sag, 6);
        expect(numberOf(point!, 'M')).toBeCloseTo((30 * 34.5) / 4 + (own * 34.5 ** 2) / 8, 4);
        const [goods] = calculations(await sheetOf(stand('shelf Low at 12in', 'hold Box on Low')));
        expect(numberOf(goods!, 'W1')).toBeCloseTo(48, 9);
        expect(numberOf(goods!, 'w1')).toBeCloseTo(48 / 34.5, 9);
    });

    it('says who decides, first of all', async () => {
        const sheet = await sheetOf(stand('shelf Low at 12in', 'load 40 lb/ft2 on Low'));
        expect(sheet.facts).toContainEqual({
            label: 'Who decides',
            text: expect.stringContaining('local codes and a licensed professional'),
        });
        expect(sheet.groups[0]).toMatchObject({ heading: 'Summary' });
        expect(sheet.groups[0]!.rows.map((row) => textIn(row, 'what'))).toEqual([
            'Low, carrying 40 lb/ft2: sag at once',
            'Low, carrying 40 lb/ft2: sag in years, as the eye sees it',
            'Low, carrying 40 lb/ft2: stress in Mdf',
            'Low, held at Left, Right: held',
            'Stand, standing by itself: tipping by a level push (not asked of it: it is under 27in high or under 30 lb)',
            'Stand, standing by itself: tipping by someone on a front edge (not asked of it: it is under 27in high or under 30 lb)',
            'Stand, kept square: bracing against racking',
        ]);
    });

    it('has nothing of a shelf of which nothing is known but that', async () => {
        const text = stand('shelf Low at 12in of Ply', 'load 40 lb/ft2 on Low').replace(
            'material Oak',
            'material Ply : plywood { thickness 3/4in }\nmaterial Oak',
        );
        const [group] = calculations(await sheetOf(text));
        expect(group!.rows).toHaveLength(1);
        expect(textIn(group!.rows[0]!, 'verdict')).toBe('not known');
        expect(textIn(group!.rows[0]!, 'figures')).toBe('nothing says how stiff Ply is');
    });

    it('takes shelves that are worked out alike as one', async () => {
        const sheet = await sheetOf(stand('shelf Tier[3] clear equal', 'load 10 lb/ft2 on every Tier'));
        expect(calculations(sheet).map(({ heading }) => heading)).toEqual([
            'Tier[1..3], carrying 10 lb/ft2',
            'Tier[1..3], held at Left, Right',
            'Stand, standing by itself',
            'Stand, kept square',
            'Stand, carried in one piece',
        ]);
    });
});

it('comes in millimetres with the same sag', async () => {
    const text = stand('shelf Low at 12in { edge front nosing 3/4in of Oak { high 1 1/2in } }', 'load 40 lb/ft2 on Low');
    const [[inches], [metric]] = [calculations(await sheetOf(text, 'in')), calculations(await sheetOf(text, 'mm'))];
    for (const symbol of ['L', 's', 's years', 'y']) expect(numberOf(metric!, symbol)).toBeCloseTo(numberOf(inches!, symbol) * 25.4, 6);
    // 1 psi is 0.006894757 MPa (NIST SP 811)
    expect(numberOf(metric!, 'E1') / numberOf(inches!, 'E1')).toBeCloseTo(0.006894757, 9);
    expect(numberOf(metric!, 'w') / numberOf(inches!, 'w')).toBeCloseTo(4.4482216 / 25.4, 6);
});

describe('what stands under a shelf carries with it', () => {
    const sagOf = async (shelf: string) => numberOf(calculations(await sheetOf(stand(shelf, 'load 40 lb/ft2 on Low')))[0]!, 's');

    // Transformed section (Wood Handbook FPL-GTR-282, chapter 9), worked out here: 12 x 3/4in of 520,000 psi over 3/4 x 3 1/4in of 1,820,000 psi.
    it('a rail that is glued under it is one section with it', async () => {
        const [core, rail] = [520_000 * 12 * 0.75, 1.82e6 * 0.75 * 3.25];
        const axis = (core * 0.375 + rail * 2.375) / (core + rail);
        const rigidity = core * (0.75 ** 2 / 12 + (0.375 - axis) ** 2) + rail * (3.25 ** 2 / 12 + (2.375 - axis) ** 2);
        const [group] = calculations(
            await sheetOf(
                stand(
                    'shelf Low at 4in\n kick of Oak at 2in behind Low.front\n join kick to Low, every side with { glue }',
                    'load 40 lb/ft2 on Low',
                ),
            ),
        );
        expect(numberOf(group!, 'EI')).toBeCloseTo(rigidity, 2);
    });

    it('one that is only screwed adds what it has by itself', async () => {
        const [group] = calculations(
            await sheetOf(
                stand(
                    'shelf Low at 4in\n kick of Oak at 2in behind Low.front\n join kick to Low, every side with { screw #8 x 1 1/4in count 4 }',
                    'load 40 lb/ft2 on Low',
                ),
            ),
        );
        expect(numberOf(group!, 'EI')).toBeCloseTo((520_000 * 12 * 0.75 ** 3) / 12 + (1.82e6 * 0.75 * 3.25 ** 3) / 12, 2);
    });

    it('a divider that only stands under it halves its span: its sag goes with the fourth power', async () => {
        const plain = await sagOf('shelf Low at 12in');
        const shared = await sagOf('shelf Low at 12in\n divider Post below Low at middle\n join Post to Low with { loose }');
        const half = (34.5 - 0.75) / 2;
        expect(shared / plain).toBeCloseTo((half / 34.5) ** 4, 6);
    });

    it('over a divider that it is joined to it runs on: -(w + w0) L² / 16 there, with the load on one side alone', async () => {
        const plain = await sagOf('shelf Low at 12in');
        const shared = await sagOf('shelf Low at 12in\n divider Post below Low at middle\n join Post to Low with { glue }');
        // Three moments for two equal spans (standard beam formulas, from memory); 40 lb/ft2 on 12in, and 48 lb/ft3 of fibreboard.
        const own = (12 * 0.75 * 48) / 1728;
        const loaded = (40 * 12) / 144 + own;
        const span = (34.5 - 0.75) / 2;
        const over = (-(loaded + own) * span ** 2) / 16;
        const sagAtPlace = (x: number) =>
            (loaded * x * (span ** 3 - 2 * span * x ** 2 + x ** 3)) / 24 + (over * x * (span ** 2 - x ** 2)) / (6 * span);
        const most = Math.max(...Array.from({ length: 4001 }, (_, index) => sagAtPlace((span * index) / 4000)));
        expect(shared / plain).toBeCloseTo(most / ((5 * loaded * 34.5 ** 4) / 384), 6);
    });
});

describe('what is not known is said', () => {
    const plywood = (more: string, words = 'shelf Low at 12in of Ply { edge front band 1/4in of Oak }') =>
        stand(words, 'load 20 lb/ft2 on Low').replace(
            'material Oak',
            `material Ply like HardwoodPlywood { thickness 3/4in   modulusAlong 1200000 psi ${more} }\nmaterial Oak`,
        );
    const verdictOf = ({ groups }: Sheet, ending: string) =>
        groups[0]!.rows
            .filter((row) => textIn(row, 'what').endsWith(ending))
            .map((row) => [textIn(row, 'figures'), textIn(row, 'verdict')]);

    it('a board without a known strength does not hold because its band does', async () => {
        const sheet = await sheetOf(plywood(''));
        expect(verdictOf(sheet, ': breaking')).toEqual([[expect.stringContaining('of Ply no strength is known'), 'not known']]);
        expect(verdictOf(sheet, ': stress in Oak band')).toEqual([]);
        const known = await sheetOf(plywood('modulusOfRupture 6000 psi'));
        expect(verdictOf(known, ': breaking')).toEqual([]);
        expect(verdictOf(known, ': stress in Ply')).toEqual([[expect.any(String), 'holds']]);
    });

    it('a modulus that the design states is from there, one that it inherits from the library', async () => {
        const sourceOf = async (text: string, what: string) => {
            const [group] = calculations(await sheetOf(text));
            return textIn(group!.rows.find((row) => textIn(row, 'what').startsWith(`Modulus of elasticity of ${what}`))!, 'source');
        };
        expect(await sourceOf(plywood(''), 'Ply')).toMatch(/^stated in .*:1$/);
        expect(await sourceOf(plywood('strengthSource "the mill"'), 'Ply')).toBe('the mill');
        expect(await sourceOf(plywood(''), 'Oak')).toContain('Wood Handbook FPL-GTR-282 (2021), Table 5-3b');
        const board = stand('shelf Low at 12in', 'load 20 lb/ft2 on Low');
        expect(await sourceOf(board, 'Mdf')).toContain('Wood Handbook FPL-GTR-282 (2021), Table 12-1');
        const weighed = board.replace('like FibreboardThreeQuarter', 'like FibreboardThreeQuarter { strengthSource "measured" }');
        expect(await sourceOf(weighed, 'Mdf')).toContain('Wood Handbook FPL-GTR-282 (2021), Table 12-1');
    });

    it('a board on edge under it counts where its stiffness is known, and the sheet says where it is not', async () => {
        const kick = 'shelf Low at 4in\n kick of Ply at 2in behind Low.front\n join kick to Low, every side with { glue }';
        const [known] = calculations(await sheetOf(plywood('', kick)));
        expect(known!.notes).toEqual([expect.stringContaining('Under it runs kick, which bends with it')]);
        const [unknown] = calculations(await sheetOf(plywood('', kick).replace('modulusAlong 1200000 psi', '')));
        expect(unknown!.notes).toEqual(['Under it runs kick, which is not counted on: nothing says how stiff Ply is.']);
    });

    it('one that is bent and glued up of layers carries as a straight one does', async () => {
        const bowed = (more: string) =>
            plywood(more, 'shelf Low at 4in\n kick of Ply layers 2 at 2in behind Bow\n join kick to Low, every side with { glue }').replace(
                'depth 12in',
                'depth Bow\n curve Bow of depth over width {\n from 12in at left\n to 12in at right\n arc out 1in\n }',
            );
        const [group] = calculations(await sheetOf(bowed('')));
        expect(group!.notes).toEqual(['Under it runs kick, which bends with it. That it may also stand on the floor is not counted on.']);
        expect(group!.rows.filter((row) => textIn(row, 'what').startsWith('kick: width'))).toHaveLength(2);
    });
});

describe('all designs', async () => {
    const sheetKinds = documentKinds.filter(({ formats }) => formats.includes('json') && formats.includes('csv'));

    it.each(await allDesigns())('$name: every sheet keeps the schema', async ({ path }) => {
        const { casework } = await analyseFile(path);
        for (const kind of sheetKinds) {
            const made = kind.make(casework, options);
            if (!made) continue;
            validate(JSON.parse((await writeDocument(made, 'json')) as string));
            expect(validate.errors, kind.kind).toBeNull();
        }
    });
});
