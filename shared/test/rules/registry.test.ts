import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { closestWords } from '../../src/casework/index.js';
import { ruleNamed, rules } from '../../src/rules/index.js';

const ledger = readFileSync(new URL('../../src/rules/ledger.txt', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => /^[A-Z]/.test(line));
const groups = [
    'TXT',
    'NAM',
    'UNI',
    'PRP',
    'PLC',
    'MAT',
    'EDG',
    'CRV',
    'JNT',
    'STR',
    'STB',
    'RCK',
    'MOV',
    'HND',
    'ACC',
    'GLS',
    'COS',
    'LOA',
    'DES',
    'SOL',
];
const codes = rules.map(({ code }) => code);

describe('the registry', () => {
    test('codes and names are used once', () => {
        expect(new Set(codes).size).toBe(rules.length);
        expect(new Set(rules.map(({ name }) => name)).size).toBe(rules.length);
    });

    test('is sorted by group and number', () => {
        const key = (code: string) => `${`${groups.indexOf(code.slice(0, 3))}`.padStart(2)} ${code}`;
        expect(groups).toEqual(expect.arrayContaining(codes.map((code) => code.slice(0, 3))));
        expect(codes).toEqual(codes.toSorted((a, b) => (key(a) < key(b) ? -1 : 1)));
    });

    /** A code that was once shown to a user keeps its page for good: the ledger is only ever added to. */
    test('every code of the ledger has its rule, and every rule is in the ledger', () => {
        expect(codes.toSorted()).toEqual(ledger.toSorted());
        expect(new Set(ledger).size).toBe(ledger.length);
    });

    test('a rule is found by its code and by its name', () => {
        expect(ruleNamed('EDG-003')?.name).toBe('end-grain-showing');
        expect(ruleNamed('edg-003')).toBe(ruleNamed('end-grain-showing'));
        expect(ruleNamed('EDG-999')).toBeUndefined();
    });
});

describe.each(rules.map((rule) => [rule.code, rule] as const))('%s', (code, rule) => {
    test('has a code and a name of the right form', () => {
        expect(code).toMatch(/^[A-Z]{3}-\d{3}$/);
        expect(rule.name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    });

    test('explains itself in sentences', () => {
        expect(rule.title).toMatch(/^[A-Z`].*[^.]$/s);
        for (const section of [rule.what, rule.why, rule.mend]) {
            expect(section.length).toBeGreaterThan(15);
            expect(section).toMatch(/[.?`]$/);
        }
    });

    test('cites a source, and for shop practice says that there is none', () => {
        expect(rule.source.citation.length).toBeGreaterThan(3);
        expect(rule.source.kind === 'shop practice').toBe(rule.source.citation === 'common practice, no source');
    });

    test('shop practice is never an error', () => {
        expect(rule.source.kind === 'shop practice' && rule.severity === 'error').toBe(false);
    });

    test('a rule that is found while reading or computing has no check of its own, and one of the project has', () => {
        if (rule.phase === 'reading') expect(rule.check).toBeUndefined();
        if (rule.phase === 'project') expect(rule.check ?? rule.checkSolids).toBeTypeOf('function');
    });

    test('what it follows are other rules', () => {
        for (const origin of rule.follows ?? []) {
            expect(codes).toContain(origin);
            expect(origin).not.toBe(code);
        }
    });

    test('has bad examples that mark the words flagged, once, and good ones that mark nothing', () => {
        expect(rule.examples.bad.length).toBeGreaterThan(0);
        expect(rule.examples.good.length).toBeGreaterThan(0);
        for (const { text } of rule.examples.bad) expect(text).toMatch(/^[^»«]*»[^»«]+«[^»«]*\n$/);
        for (const { text } of rule.examples.good) expect(text).toMatch(/^[^»«]+\n$/);
    });
});

describe('words near a misspelt one', () => {
    test.each([
        ['end-grain-shwoing', ['end-grain-showing']],
        ['EDG-030', ['EDG-003']],
        ['something-else', []],
    ])('%s', (word, expected) => {
        expect(closestWords(word, ['end-grain-showing', 'band-too-thin', 'EDG-003', 'PLC-003']).slice(0, 1)).toEqual(expected);
    });

    test.each([
        ['BlackCherry', ['Cherry']],
        ['Oak', []],
        ['Walnuts', ['Walnut']],
        ['Side', ['SideOfCherry']],
    ])('a name that is part of the other: %s', (word, expected) => {
        expect(closestWords(word, ['Cherry', 'RedOak', 'Walnut', 'SideOfCherry', 'Besides'])).toEqual(expected);
    });
});
