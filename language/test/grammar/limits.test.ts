import { AstUtils } from 'langium';
import { describe, expect, test } from 'vitest';
import { createParserServices, parseWith } from './services.js';

const services = createParserServices();
const problemsOf = (text: string): string[] => parseWith(services, text).problems.map(({ message }) => message);

/** Texts that nest as deep, or go on as long, as they are told to. */
const endless: Readonly<Record<string, (times: number) => string>> = {
    'round brackets': (times) => `let a = ${'('.repeat(times)}1${')'.repeat(times)}`,
    'round brackets that are not closed': (times) => `let a = ${'('.repeat(times)}1`,
    'square brackets': (times) => `let a = ${'b['.repeat(times)}1${']'.repeat(times)}`,
    'negative signs': (times) => `let a = ${'- '.repeat(times)}1`,
    'a chain of not': (times) => `let a = ${'not '.repeat(times)}b`,
    'a long sum': (times) => `let a = 1${' + 1'.repeat(times)}`,
    'a chain of members': (times) => `let a = b${'.c'.repeat(times)}`,
    'a chain of else if': (times) => `if a { }${' else if a { }'.repeat(times)}`,
    'a chain of conditional values': (times) => `let a = ${'if a then 1 else '.repeat(times)}2`,
    'blocks in blocks': (times) => `case A ${'{ in B '.repeat(times)}{ }${' }'.repeat(times)}`,
    'blocks in recipes in blocks': (times) => `case A { ${'panel B with { band 1in { '.repeat(times)}${' } }'.repeat(times)} }`,
    'blocks that are not closed': (times) => 'case A {\n'.repeat(times),
    'quotes without end': (times) => '"'.repeat(times),
    'opening signs of all kinds': (times) => '{([ '.repeat(times),
    'closing signs of all kinds': (times) => '}])'.repeat(times),
    'signs that the language does not have': (times) => '$ '.repeat(times),
};

describe.each(Object.entries(endless))('%s', (_, make) => {
    test.each([1000, 10_000])('%i times: something is said, and the parser does not fail', (times) => {
        expect(problemsOf(make(times))).not.toEqual([]);
    });

    test('a sound statement after it is read', () => {
        const { file } = parseWith(services, `${make(1000)}\n\ncase Sound {\n    width 3in\n}\n`);
        const names = AstUtils.streamAst(file).map((node) => (node as { name?: string }).name);
        expect(names.toArray()).toContain('Sound');
    });
});

describe('the limits', () => {
    test('brackets', () => {
        expect(problemsOf(endless['round brackets']!(16))).toEqual([]);
        expect(problemsOf(endless['round brackets']!(17))).toEqual([
            'brackets nest 16 deep at most; give a part of this a name with `let`',
        ]);
    });

    test('blocks', () => {
        expect(problemsOf(endless['blocks in blocks']!(31))).toEqual([]);
        expect(problemsOf(endless['blocks in blocks']!(32))).toEqual(['blocks nest 32 deep at most; this one is not read']);
    });

    test('operators, counted for each statement', () => {
        expect(problemsOf(endless['a long sum']!(400))).toEqual([]);
        expect(problemsOf(`${endless['a long sum']!(300)}\n${endless['a long sum']!(300).replace('a', 'b')}`)).toEqual([]);
        expect(problemsOf(endless['a long sum']!(401))[0]).toMatch(/^a statement has 400 operators or 50 alternatives at most/);
    });

    test('a list is as long as it likes', () => {
        expect(problemsOf(`let a = max(${'1, '.repeat(5000)}1)`)).toEqual([]);
    });

    test('a text within the limits that finds little room on the stack is refused, and the next text is read', () => {
        const text = `case A ${'{ in B '.repeat(30)}{ size ${'('.repeat(16)}1${')'.repeat(16)} }${' }'.repeat(30)}`;
        const nested = <T>(depth: number, call: () => T): T => (depth === 0 ? call() : nested(depth - 1, call));
        let deepest = 1000;
        for (let step = 4096; step >= 1; step /= 2) {
            try {
                deepest = nested(deepest + step, () => deepest + step);
            } catch {
                // That deep the stack does not go.
            }
        }
        // The deeper the call, the less room: somewhere the text is too much.
        let problems: string[] = [];
        for (let share = 0.4; problems.length === 0; share += 0.02) {
            problems = nested(Math.floor(deepest * share), () => problemsOf(text));
        }
        expect(problems).toEqual(['this text could not be read to its end: it nests too deep']);
        expect(problemsOf(text)).toEqual([]);
    });
});
