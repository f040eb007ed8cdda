import { describe, expect, test } from 'vitest';
import type { Allowance, Casework, Declaration, Problem, Requirement } from '../../src/casework/index.js';
import { quantity, Rational, unitNamed } from '../../src/quantity/index.js';
import { runRules } from '../../src/rules/index.js';
import { bookcase, caseworkOf, findingsOf, measure, shown, spanOf } from './casework-of.js';

function allowance(place: number, rule: string, parts: readonly string[], more: Partial<Allowance> = {}): Allowance {
    return { rule, parts, assemblies: [], everywhere: false, because: 'seen', span: spanOf(place), ruleSpan: spanOf(place), ...more };
}

/** Three shelves in falling order: PLC-005 at Tier[2] and Tier[3]. Joined, so that nothing else is found. */
function falling(allowances: readonly Allowance[] = [], more: Partial<Omit<Casework, 'parts' | 'things'>> = {}): Casework {
    const parts = bookcase([30, 20, 10]);
    const joints = parts.flatMap(({ path, kind }) =>
        kind === 'shelf'
            ? ['Case.Left', 'Case.Right'].map((receives) => ({
                  enters: path,
                  receives,
                  recipe: '',
                  steps: [],
                  adds: undefined,
                  onSite: false,
                  touching: true,
                  span: spanOf(80),
              }))
            : [],
    );
    return caseworkOf({ parts, joints, allowances, ...more });
}

const codesOf = (casework: Casework) => shown(casework).map(({ code }) => code);

describe('allowances', () => {
    test('silence a warning on the parts named, and keep the reason with it', () => {
        const casework = falling([allowance(20, 'shelf-order', ['Case.Tier[2]', 'Case.Tier[3]'], { because: 'numbered from the top' })]);
        expect(codesOf(casework)).toEqual([]);
        expect(runRules(casework)).toMatchObject([{ code: 'PLC-005', part: 'Case.Tier[2]', allowed: 'numbered from the top' }]);
    });

    test('by code as well as by name', () => {
        expect(codesOf(falling([allowance(20, 'PLC-005', ['Case.Tier[2]', 'Case.Tier[3]'])]))).toEqual([]);
    });

    test('leave the other parts of the array', () => {
        const casework = falling([allowance(20, 'shelf-order', ['Case.Tier[2]'])]);
        expect(shown(casework)).toMatchObject([{ code: 'PLC-005', part: 'Case.Tier[3]' }]);
    });

    test('everywhere in their file, where no part is named', () => {
        expect(codesOf(falling([allowance(20, 'shelf-order', [], { everywhere: true })]))).toEqual([]);
        const elsewhere = allowance(20, 'shelf-order', [], { everywhere: true, span: { ...spanOf(20), file: 'other.case' } });
        expect(codesOf(falling([elsewhere]))).toContain('PLC-005');
    });

    test('that name no part that is built silence nothing', () => {
        expect(codesOf(falling([allowance(20, 'shelf-order', [])]))).toEqual(['PLC-005', 'DES-004']);
    });

    test('DES-004: the rule finds nothing there', () => {
        const casework = falling([allowance(20, 'band-too-thin', ['Case.Tier[2]'])]);
        expect(findingsOf('DES-004', casework)).toEqual(['-: there is no `band-too-thin` here to allow']);
    });

    test('DES-004 is not said of a rule that was not run, nor while part of the text could not be read', () => {
        const casework = falling([allowance(20, 'touching-without-joint', ['Case.Tier[2]'])]);
        expect(findingsOf('DES-004', casework)).toHaveLength(1);
        expect(findingsOf('DES-004', casework, { phase: 'sizes' })).toEqual([]);
        const reading = [{ code: 'TXT-001', span: spanOf(0), message: 'x', related: [] }];
        expect(findingsOf('DES-004', casework, { reading })).toEqual([]);
    });

    test('DES-003: without a reason; the warning is silent all the same', () => {
        const { because: _, ...bare } = allowance(20, 'shelf-order', ['Case.Tier[2]', 'Case.Tier[3]']);
        expect(codesOf(falling([bare]))).toEqual(['DES-003']);
    });

    test('DES-006: an error cannot be allowed, and stays', () => {
        const parts = bookcase([12, 12.5]);
        const casework = caseworkOf({ parts, allowances: [allowance(20, 'parts-overlap', ['Case.Tier[2]'])] });
        expect(codesOf(casework)).toEqual(expect.arrayContaining(['PLC-003', 'DES-006']));
    });

    test('NAM-001: an unknown rule, with the one that was meant', () => {
        const [finding] = shown(falling([allowance(0, 'shelf-oder', ['Case.Tier[2]'])]));
        expect(finding).toMatchObject({
            code: 'NAM-001',
            message: 'no rule is called `shelf-oder`; did you mean `shelf-order`?',
            fix: { text: 'shelf-order' },
        });
    });
});

describe('requirements', () => {
    const requirement = (answer: Requirement['answer'], more: Partial<Requirement> = {}): Requirement => ({
        answer,
        left: measure('10 1/2in'),
        right: measure('11in'),
        operator: '>=',
        because: 'a teapot and a hand',
        span: spanOf(30),
        ...more,
    });

    test('DES-001: found and needed, and the reason that the designer gave', () => {
        expect(findingsOf('DES-001', caseworkOf({ parts: [], requirements: [requirement('fails')] }))).toEqual([
            '-: required is at least 11in, and it is 10 1/2in: a teapot and a hand',
        ]);
    });

    test('DES-001: a condition that compares no two measures', () => {
        const casework = caseworkOf({ parts: [], requirements: [requirement('fails', { left: undefined, operator: 'and' })] });
        expect(findingsOf('DES-001', casework)).toEqual(['-: what is required here does not hold: a teapot and a hand']);
    });

    test('what holds, or is not known, is not found', () => {
        const casework = caseworkOf({ parts: [], requirements: [requirement('holds'), requirement('unknown')] });
        expect(shown(casework)).toEqual([]);
    });

    test('DES-002: holds as drawn; the hint says how far it may come down', () => {
        const source = { id: 'sheet', minus: Rational.of(254, 1000), plus: Rational.of(254, 1000) };
        const drawn = measure('11 1/8in');
        const twoSheets = quantity.scale(
            quantity.deviating(quantity.of(Rational.one, unitNamed('in')), 'sheet'),
            Rational.of(-20),
        ).deviations;
        const left = { ...drawn, quantity: { ...drawn.quantity, deviations: twoSheets } };
        const casework = caseworkOf({
            parts: [],
            requirements: [requirement('depends', { left })],
            deviations: new Map([['sheet', source]]),
        });
        const [finding] = shown(casework);
        expect(finding).toMatchObject({
            code: 'DES-002',
            severity: 'warning',
            message:
                'this holds as drawn (11 1/8in, required is at least 11in), but not when everything is at its worst: a teapot and a hand',
            // Twenty times 0.254mm is 0.2in.
            hint: 'the margin is 1/8in; at worst it is -0.075in or 0.325in',
        });
    });
});

describe('all findings', () => {
    const problem = (code: string, place: number, more: Partial<Problem> = {}): Problem => ({
        code,
        span: spanOf(place),
        message: code,
        related: [],
        ...more,
    });

    test('stand in the order of files, places and codes, however they were found', () => {
        const other = { ...spanOf(0), file: 'shop.case' };
        const casework = falling([], {
            problems: [problem('PLC-007', 50), problem('UNI-003', 5), problem('MAT-005', 0, { span: other })],
        });
        const design = { ...casework.design, files: ['shop.case', 'hand-made.case'] };
        const reading = [problem('PRP-001', 5), problem('TXT-001', 70)];
        expect(runRules({ ...casework, design }, { reading }).map(({ code }) => code)).toEqual([
            'MAT-005',
            'PLC-005',
            'PRP-001',
            'UNI-003',
            'PLC-007',
            'TXT-001',
        ]);
    });

    test('are the same each time', () => {
        const casework = falling([allowance(20, 'shelf-order', ['Case.Tier[2]'])]);
        expect(JSON.stringify(runRules(casework))).toBe(JSON.stringify(runRules(casework)));
    });

    test('what two builds of one case say at the same words is said once', () => {
        expect(codesOf(falling([], { problems: [problem('PLC-007', 50), problem('PLC-007', 50)] }))).toEqual(['PLC-005', 'PLC-007']);
    });

    test('a part whose place is a mistake gets no finding about what comes of it', () => {
        const part = 'Case.Tier[2]';
        expect(findingsOf('PLC-005', falling())).toHaveLength(1);
        expect(shown(falling([], { problems: [problem('PLC-004', 3, { part })] }))).toMatchObject([
            { code: 'PLC-004' },
            { code: 'PLC-005', part: 'Case.Tier[3]' },
        ]);
    });

    test('what a file brings is not missed name by name while the file itself is missing', () => {
        const reading = [problem('NAM-003', 0), problem('NAM-001', 5), problem('NAM-001', 6)];
        expect(runRules(falling([]), { reading }).map(({ code }) => code)).toEqual(['NAM-003', 'PLC-005']);
    });

    test('what is let too deep into a board stands out of the case because of that', () => {
        const concerned = problem('PLC-004', 3, { part: 'Case.back' });
        const cut = { ...problem('EDG-004', 5, { part: 'Case.Left' }), concerns: ['Case.back'] };
        expect(codesOf(caseworkOf({ parts: [], problems: [concerned] }))).toEqual(['PLC-004']);
        expect(codesOf(caseworkOf({ parts: [], problems: [concerned, cut] }))).toEqual(['EDG-004']);
    });

    test('what is not said may stand in the part of its declaration that could not be read', () => {
        const declaration = {
            is: 'design',
            id: 'x',
            name: 'Case',
            nameSpan: spanOf(1),
            span: { ...spanOf(1), end: 100 },
        } as unknown as Declaration;
        const missing = problem('PLC-011', 1);
        const casework = caseworkOf({ parts: [], problems: [missing] });
        const design = { ...casework.design, declarations: new Map([['x', declaration]]) };
        const found = (reading: readonly Problem[]) => runRules({ ...casework, design }, { reading }).map(({ code }) => code);
        expect(found([])).toEqual(['PLC-011']);
        expect(found([problem('TXT-001', 5)])).toEqual(['TXT-001']);
        expect(found([problem('TXT-001', 20)])).toEqual(['PLC-011', 'TXT-001']);
        expect(found([problem('TXT-001', 5, { span: { ...spanOf(5), file: 'other.case' } })])).toEqual(['PLC-011', 'TXT-001']);
    });

    test('a problem takes name and severity from its rule', () => {
        expect(runRules(falling([], { problems: [problem('UNI-005', 5)] }))[1]).toMatchObject({
            code: 'UNI-005',
            name: 'two-readings',
            severity: 'warning',
        });
    });
});
