import { describe, expect, it, test } from 'vitest';
import { amountOf, type LibraryFact, pairOf, readLibrary, textOf, wordOf } from './library-reader.js';

const panels = readLibrary('casewright.panels');
const boards = [...panels.values()].filter(({ family }) => family !== 'glass');
const panes = [...panels.values()].filter(({ family }) => family === 'glass');

function panelNamed(name: string): LibraryFact {
    const found = panels.get(name);
    if (!found) {
        throw new Error(`the library has no panel ${name}`);
    }
    return found;
}

/** Bending strength and stiffness in MPa, internal bond in MPa, screws in N; undefined where the library must be silent. */
type Grade = readonly [
    name: string,
    rupture: number | undefined,
    elasticity: number | undefined,
    bond: number | undefined,
    screwFace?: number,
    screwEdge?: number,
];

/** Each with its name, for the title of its test. */
const byName = (grades: readonly Grade[]): readonly { readonly name: string; readonly grade: Grade }[] =>
    grades.map((grade) => ({ name: grade[0], grade }));

function expectGrade([name, rupture, elasticity, bond, screwFace, screwEdge]: Grade): void {
    const panel = panelNamed(name);
    expect(amountOf(panel, 'modulusOfRupture', 'MPa')).toBe(rupture);
    expect(amountOf(panel, 'modulusOfElasticity', 'MPa')).toBe(elasticity);
    expect(amountOf(panel, 'internalBond', 'MPa')).toBe(bond);
    expect(amountOf(panel, 'screwFace', 'N')).toBe(screwFace);
    expect(amountOf(panel, 'screwEdge', 'N')).toBe(screwEdge);
}

describe('sheet sizes (common practice, no source), width by length', () => {
    const inInches: readonly (readonly [string, number, number])[] = [
        ['HardwoodPlywood', 48, 96],
        ['SoftwoodPlywood', 48, 96],
        ['Hardboard', 48, 96],
        ['Fibreboard', 49, 97],
        ['FibreboardThreeQuarter', 49, 97],
        ['Particleboard', 49, 97],
    ];
    test.each(inInches)('%s is %d by %d inches', (name, width, length) => {
        expect(pairOf(panelNamed(name), 'sheet', 'in')).toEqual([width, length]);
    });

    const inMillimetres: readonly (readonly [string, number, number])[] = [
        ['HardwoodPlywoodMetric', 1220, 2440],
        ['BirchPlywood', 1525, 1525],
        ['BirchPlywoodLong', 1525, 3050],
        ['FibreboardMetric', 2070, 2800],
        ['ParticleboardMetric', 2070, 2800],
        ['ParticleboardP2Metric18', 2070, 2800],
    ];
    test.each(inMillimetres)('%s is %d by %d mm', (name, width, length) => {
        expect(pairOf(panelNamed(name), 'sheet', 'mm')).toEqual([width, length]);
    });

    it('gives plywood a grain, and boards of fibres and chips none', () => {
        for (const panel of boards) {
            expect(wordOf(panel, 'grain'), panel.name).toBe(panel.family === 'plywood' ? 'length' : undefined);
        }
    });
});

describe('actual thickness, only where a standard gives its tolerance', () => {
    const known: readonly (readonly [string, number, number, string])[] = [
        // ANSI A208.2-2009: panel average within 0.005 in of the thickness specified.
        ['FibreboardThreeQuarter', 0.75, 0.005, 'ANSI A208.2-2009'],
        ['FibreboardHalf', 0.5, 0.005, 'ANSI A208.2-2009'],
        ['FibreboardQuarter', 0.25, 0.005, 'ANSI A208.2-2009'],
        // NIST PS 1 (2009, 2019), from memory: sanded, up to 3/4 in, within 1/64 in.
        ['SoftwoodPlywoodFiveEighths', 0.625, 1 / 64, 'NIST PS 1'],
        ['SoftwoodPlywood23ThirtySeconds', 23 / 32, 1 / 64, 'NIST PS 1'],
        ['SoftwoodPlywoodThreeQuarter', 0.75, 1 / 64, 'NIST PS 1'],
    ];
    test.each(known)('%s is %d ± %d in: %s', (name, nominal, tolerance, standard) => {
        const panel = panelNamed(name);
        expect(amountOf(panel, 'thickness', 'in')).toBe(nominal);
        expect(pairOf(panel, 'actual', 'in')).toEqual([nominal, tolerance]);
        expect(textOf(panel, 'actualSource')).toContain(standard);
    });

    it('is silent elsewhere', () => {
        const given = [...panels.values()].filter((panel) => panel.properties.has('actual')).map((panel) => panel.name);
        expect(given.sort()).toEqual(known.map(([name]) => name).sort());
    });
});

describe('nominal densities (common practice, no source)', () => {
    const ranges: readonly (readonly [string, number, number])[] = [
        ['Particleboard', 45, 45],
        ['Fibreboard', 46, 50],
        ['SoftwoodPlywood', 34, 36],
        ['HardwoodPlywood', 37, 43],
        ['BirchPlywood', 37, 43],
        ['Hardboard', 55, 65],
    ];
    test.each(ranges)('%s weighs %d to %d lb/ft3, and says that it has no source', (name, least, most) => {
        const density = amountOf(panelNamed(name), 'density', 'lb/ft3');
        expect(density).toBeGreaterThanOrEqual(least);
        expect(density).toBeLessThanOrEqual(most);
        expect(textOf(panelNamed(name), 'source')).toContain('common practice, no source');
    });
});

describe('softwood plywood: APA Panel Design Specification (2008), Table 4B', () => {
    // EI in lb in2 for a foot of width, along and across; the moment of inertia of a foot of width is the cube of the thickness, in in4.
    test.each([
        ['SoftwoodPlywoodFiveEighths', 5 / 8, 230_000, 48_500],
        ['SoftwoodPlywood23ThirtySeconds', 23 / 32, 320_000, 90_500],
        ['SoftwoodPlywoodThreeQuarter', 3 / 4, 355_000, 115_000],
    ])('%s', (name, thickness, along, across) => {
        const panel = panelNamed(name);
        expect(amountOf(panel, 'thickness', 'in')).toBe(thickness);
        expect(amountOf(panel, 'modulusAlong', 'psi')).toBe(Math.round(along / thickness ** 3));
        expect(amountOf(panel, 'modulusAcross', 'psi')).toBe(Math.round(across / thickness ** 3));
        expect(wordOf(panel, 'statistic')).toBe('design');
    });
});

describe('particleboard', () => {
    const of1999: readonly Grade[] = [
        ['ParticleboardM1Of1999', 11, 1725, 0.4],
        ['ParticleboardMSOf1999', 12.5, 1900, 0.4, 900, 800],
        ['ParticleboardM2Of1999', 14.5, 2250, 0.45, 1000, 900],
        ['ParticleboardM3Of1999', 16.5, 2750, 0.55, 1100, 1000],
        ['ParticleboardH1Of1999', 16.5, 2400, 0.9, 1800, 1325],
        ['ParticleboardH2Of1999', 20.5, 2400, 0.9, 1900, 1550],
        ['ParticleboardH3Of1999', 23.5, 2750, 1, 2000, 1550],
        ['ParticleboardLD1Of1999', 3, 550, 0.1, 400],
        ['ParticleboardLD2Of1999', 5, 1025, 0.15, 550],
    ];
    test.each(byName(of1999))('$name: ANSI A208.1-1999, averages; M-2 read, the others from memory', ({ name, grade }) => {
        expectGrade(grade);
        const panel = panelNamed(name);
        expect(wordOf(panel, 'statistic')).toBe('average');
        expect(textOf(panel, 'source')).toMatch(
            name === 'ParticleboardM2Of1999' ? /^ANSI A208\.1-1999; / : /^ANSI A208\.1-1999 \(from memory\)/,
        );
    });

    it('M-2 of 1999 is 2,103 psi and 326,300 psi, screws 225 and 202 lb: the same limits in inch-pound units', () => {
        const panel = panelNamed('ParticleboardM2Of1999');
        expect(amountOf(panel, 'modulusOfRupture', 'psi')).toBeCloseTo(2103, 0);
        expect(Math.abs(amountOf(panel, 'modulusOfElasticity', 'psi')! - 326_300)).toBeLessThan(100);
        expect(amountOf(panel, 'screwFace', 'lbf')).toBeCloseTo(225, 0);
        expect(amountOf(panel, 'screwEdge', 'lbf')).toBeCloseTo(202, 0);
    });

    it('M-2 of the later editions is a minimum of 290,000 psi (ANSI A208.1-2009, -2016); what was not read is not given', () => {
        expectGrade(['Particleboard', undefined, 2000, undefined]);
        const panel = panelNamed('Particleboard');
        expect(Math.abs(amountOf(panel, 'modulusOfElasticity', 'psi')! - 290_000)).toBeLessThan(100);
        expect(amountOf(panel, 'sideHardness', 'lbf')).toBeCloseTo(500, 0);
        expect(wordOf(panel, 'statistic')).toBe('minimum');
    });

    const p2: readonly (readonly [number, number, number, number, number])[] = [
        [12, 11, 13, 1800, 0.4],
        [18, 11, 13, 1600, 0.35],
        [25, 10.5, 11.5, 1500, 0.3],
        [30, 9.5, 10, 1350, 0.25],
    ];
    test.each(p2)('P2, %d mm: EN 312:2010 (from memory) and EN 312:2003', (thickness, of2010, of2003, elasticity, bond) => {
        const name = `ParticleboardP2Metric${thickness}`;
        expectGrade([name, of2010, elasticity, bond]);
        expectGrade([`${name}Of2003`, of2003, elasticity, bond]);
        expect(amountOf(panelNamed(name), 'thickness', 'mm')).toBe(thickness);
        expect(textOf(panelNamed(name), 'strengthSource')).toContain('EN 312:2010');
        expect(textOf(panelNamed(`${name}Of2003`), 'strengthSource')).toContain('EN 312:2003');
    });

    test.each([
        [18, 16, 2400, 0.45],
        [25, 14, 2150, 0.4],
        [30, 12, 1900, 0.35],
    ])('P5, %d mm: EN 312', (thickness, rupture, elasticity, bond) => {
        expectGrade([`ParticleboardP5Metric${thickness}`, rupture, elasticity, bond]);
        expect(amountOf(panelNamed(`ParticleboardP5Metric${thickness}`), 'thickness', 'mm')).toBe(thickness);
    });
});

describe('fibreboard', () => {
    it('is 0.52 million psi and 5,200 psi on the average: Wood Handbook FPL-GTR-282, Table 12-1, from memory', () => {
        const panel = panelNamed('Fibreboard');
        expect(amountOf(panel, 'modulusOfElasticity', 'psi')).toBe(520_000);
        expect(amountOf(panel, 'modulusOfRupture', 'psi')).toBe(5200);
        expect(Math.abs(amountOf(panel, 'modulusOfElasticity', 'GPa')! - 3.59)).toBeLessThan(0.005);
        expect(Math.abs(amountOf(panel, 'modulusOfRupture', 'MPa')! - 35.85)).toBeLessThan(0.005);
        expect(wordOf(panel, 'statistic')).toBe('average');
    });

    const of2002: readonly Grade[] = [
        ['FibreboardHDOf2002', 34.5, 3450, 0.75, 1555, 1335],
        ['FibreboardMDOf2002', 24, 2400, 0.6, 1445, 1110],
        ['FibreboardThickMDOf2002', 24, 2400, 0.55, 1335, 1000],
        ['FibreboardLDOf2002', 14, 1400, 0.3, 780, 670],
    ];
    test.each(byName(of2002))('$name: ANSI A208.2-1994 and -2002, from memory', ({ grade }) => expectGrade(grade));

    const of2009: readonly Grade[] = [
        ['FibreboardGrade130', undefined, 2160, undefined],
        ['FibreboardGrade210', 18.9, undefined, 0.32],
        ['FibreboardGrade220', 28.9, undefined, 0.54],
        ['FibreboardGrade230', 28.9, undefined, 0.9],
    ];
    test.each(byName(of2009))('$name: ANSI A208.2-2009; what was not read is not given', ({ name, grade }) => {
        expectGrade(grade);
        expect(wordOf(panelNamed(name), 'statistic')).toBe('minimum');
    });

    it('has the same limits in inch-pound units: ANSI A208.2-2009', () => {
        const psi = (name: string, property: string): number => amountOf(panelNamed(name), property, 'psi')!;
        expect(Math.abs(psi('FibreboardGrade130', 'modulusOfElasticity') - 313_000)).toBeLessThan(500);
        expect(Math.abs(psi('FibreboardGrade210', 'modulusOfRupture') - 2741)).toBeLessThan(1);
        expect(Math.abs(psi('FibreboardGrade220', 'modulusOfRupture') - 4192)).toBeLessThan(1);
        expect(Math.abs(psi('FibreboardGrade210', 'internalBond') - 46)).toBeLessThan(0.5);
        expect(Math.abs(psi('FibreboardGrade220', 'internalBond') - 78)).toBeLessThan(0.5);
        expect(Math.abs(psi('FibreboardGrade230', 'internalBond') - 131)).toBeLessThan(0.5);
    });

    test.each([
        [6, 23, 2700, 0.65],
        [9, 23, 2700, 0.65],
        [12, 22, 2500, 0.6],
        [18, 20, 2200, 0.55],
        [25, 18, 2100, 0.55],
        [38, 17, 1900, 0.5],
    ])('%d mm: EN 622-5, from memory', (thickness, rupture, elasticity, bond) => {
        const name = `FibreboardMetric${thickness}`;
        expectGrade([name, rupture, elasticity, bond]);
        expect(amountOf(panelNamed(name), 'thickness', 'mm')).toBe(thickness);
        expect(wordOf(panelNamed(name), 'statistic')).toBe('minimum');
        expect(textOf(panelNamed(name), 'strengthSource')).toMatch(/^EN 622-5.* \(from memory\)$/);
    });
});

describe('panes', () => {
    test.each(panes)(
        '$name has the density and stiffness of soda-lime glass (ASTM E1300, from memory), and says whether it is tempered',
        (pane) => {
            expect(amountOf(pane, 'density', 'kg/m3')).toBe(2500);
            expect(amountOf(pane, 'modulusOfElasticity', 'MPa')).toBe(71_700);
            expect(textOf(pane, 'source')).toMatch(/^ASTM E1300.* \(from memory\)$/);
            expect(wordOf(pane, 'glazing')).toBe(pane.name.startsWith('Tempered') ? 'tempered' : 'annealed');
            expect(pane.properties.has('price')).toBe(false);
        },
    );

    it('are known in inches and in millimetres', () => {
        expect(panes.map(({ name }) => name)).toEqual([
            'ClearGlass',
            'TemperedGlassQuarter',
            'TemperedGlassThreeEighths',
            'TemperedGlass6',
            'TemperedGlass8',
            'TemperedGlass10',
        ]);
    });
});

describe('every board', () => {
    test.each(boards)('$name says what it is and where its values come from, and leaves the price to the shop', (panel) => {
        expect(panel.kind).toBe('material');
        expect(panel.family).toMatch(/^(plywood|fibreboard|particleboard|hardboard)$/);
        expect(panel.doc).toMatch(/^[A-Z].+\.$/);
        expect(textOf(panel, 'source')).toMatch(/common practice, no source/);
        expect(pairOf(panel, 'sheet', 'mm')).toBeDefined();
        expect(panel.properties.has('price')).toBe(false);
    });

    it('says for its strengths, wherever it is known, what they are and where they come from', () => {
        for (const panel of boards) {
            const hasStrength = ['modulusOfElasticity', 'modulusAlong', 'modulusOfRupture'].some((property) =>
                panel.properties.has(property),
            );
            const source = `${textOf(panel, 'strengthSource') ?? ''} ${textOf(panel, 'source') ?? ''}`;
            expect(/Wood Handbook|ANSI|EN |APA/.test(source), panel.name).toBe(hasStrength || panel.properties.has('actual'));
            expect(wordOf(panel, 'statistic') !== undefined, panel.name).toBe(hasStrength && !panel.name.endsWith('Of2002'));
        }
    });
});
