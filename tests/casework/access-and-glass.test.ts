/** What the public comes to, by published heights, and panes of glass by their published weight. */
import { panesIn } from 'casewright-shared/strength';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const pound = 0.45359237;

const stand = (inside: string, project = 'accessible yes; build 1 Stand') => `use casewright.panels
material Mdf like FibreboardThreeQuarter
bought Pin { hole 5mm wide 10mm deep   carries 20kg }
project "P" { ${project} }
case Stand of Mdf {
    width 36in   height 84in   depth 16in
    anchor 80in high
    side Left, Right
    ${inside}
}
`;
const found = async (text: string, group: string) =>
    (await analyseText(text)).findings.filter(({ code }) => code.startsWith(group)).map(({ code, found: what }) => `${code} ${what}`);

describe('reach, 15in to 48in over the floor', () => {
    // 2010 ADA Standards for Accessible Design, 308.2.1 and 308.3.1.
    const shelfAt = (height: string) => stand(`shelf One at ${height}\n join One to every side with { glue }`);

    it.each([
        ['14 7/8in', ['ACC-001 14 7/8in']],
        ['15in', []],
        ['48in', []],
        ['48 1/8in', ['ACC-001 48 1/8in']],
    ])('a shelf at %s', async (height, expected) => expect(await found(shelfAt(height), 'ACC')).toEqual(expected));

    it('is not asked of what the public does not come to', async () => {
        expect(await found(shelfAt('60in').replace('accessible yes', ''), 'ACC')).toEqual([]);
        expect(await found(shelfAt('60in').replace('accessible yes', 'accessible no'), 'ACC')).toEqual([]);
    });

    it('several shelves of a case are said once', async () => {
        const text = stand('shelf One at 60in\n shelf Two at 70in\n join every shelf to every side with { glue }');
        expect(await found(text, 'ACC')).toHaveLength(1);
    });
});

describe('what stands out between 27in and 80in', () => {
    // 2010 ADA Standards for Accessible Design, 307.2 (from memory): at most 4in.
    const shelf = (height: string, past: string) =>
        stand(`shelf One at ${height} { edge front at ${past} past case }\n join One to every side with { glue }`);

    it.each([
        ['40in', '4in', []],
        ['40in', '4 1/8in', ['ACC-002 4 1/8in']],
        // its underside is 3/4in lower: at 27in a cane finds it
        ['27 3/4in', '6in', []],
        ['28in', '6in', ['ACC-002 6in']],
    ])('a shelf at %s, %s past the case', async (height, past, expected) =>
        expect(await found(shelf(height, past), 'ACC-002')).toEqual(expected),
    );

    it('over the heads nothing is found', async () => expect(await found(shelf('82in', '6in'), 'ACC-002')).toEqual([]));
});

describe('panes of glass', () => {
    const pane = (material: string) =>
        stand(
            `shelf One at 40in of ${material}\n join One to every side with { gap 1/16in at each end   rest on Pin count 2 inset 2in }`,
            'build 1 Stand',
        );

    it.each([
        // ASTM E1300, density 2,500 kg/m3 (from memory): 6mm weighs 15.0 kg/m2, a full 1/4in 3.25 lb/ft2.
        ['TemperedGlass6', 15.0, 'kg'],
        ['TemperedGlassQuarter', 3.25, 'lb'],
    ])('of %s weigh %d to their area', async (material, weight, unit) => {
        const { casework } = await analyseText(pane(material));
        const [one] = panesIn(casework);
        if (one?.mass === undefined) throw new Error('no pane');
        const area = one.length * one.width;
        const perArea = unit === 'kg' ? (one.mass / area) * 1e6 : (one.mass / pound / area) * (12 * 25.4) ** 2;
        expect(perArea).toBeCloseTo(weight, 2);
        expect(one.glazing).toBe('tempered');
    });

    it('are found where nothing says that they are safe', async () => {
        expect(await found(pane('TemperedGlassQuarter'), 'GLS')).toEqual([]);
        const annealed = pane('Window').replace('bought', 'material Window like ClearGlass { thickness 1/4in }\nbought');
        expect(await found(annealed, 'GLS')).toEqual(['GLS-001 annealed']);
        const unsaid = pane('Window').replace('bought', 'material Window : glass { thickness 1/4in }\nbought');
        expect(await found(unsaid, 'GLS')).toEqual(['GLS-001 nothing said']);
    });

    it('sag as a plate of 71.7 GPa at once and no further in years', async () => {
        const text = pane('TemperedGlassQuarter').replace('join One', 'load 5 lb/ft2 on One\n join One');
        const { casework, findings } = await analyseText(text);
        expect(findings.filter(({ code }) => code === 'STR-004')).toEqual([]);
        const { knownShelves } = await import('casewright-shared/strength');
        const [one] = knownShelves(casework);
        expect(one && one.sagInYears / one.sagAtOnce).toBeCloseTo(1, 9);
    });
});
