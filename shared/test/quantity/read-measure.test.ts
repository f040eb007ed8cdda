import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
    dimension,
    type MeasureProblem,
    measurePattern,
    type Quantity,
    Rational,
    readMeasure,
    readUnit,
    unitWords,
} from '../../src/quantity/index.js';

function accepted(text: string): { readonly quantity: Quantity; readonly canonical: string; readonly form: string } {
    const reading = readMeasure(text);
    if (!reading.ok) throw new Error(reading.problem.message);
    return { quantity: reading.quantity, canonical: reading.written.canonical, form: reading.written.form };
}

function refused(text: string): MeasureProblem {
    const reading = readMeasure(text);
    if (reading.ok) throw new Error(`\`${text}\` was read as ${reading.written.canonical}`);
    return reading.problem;
}

/** What the lexer cuts out at the start of a text. */
function firstToken(text: string): string | undefined {
    return new RegExp(`^(?:${measurePattern})`).exec(text)?.[0];
}

describe('decided readings', () => {
    test.each([
        // text, value, its unit, form, canonical spelling
        ['3/4in', '3/4', 'in', 'fraction', '3/4in'],
        ['1 1/4in', '5/4', 'in', 'mixed', '1 1/4in'],
        ['1-1/4in', '5/4', 'in', 'mixed', '1 1/4in'],
        ['1-1/4"', '5/4', 'in', 'mixed', '1 1/4"'],
        ['40"', '40', 'in', 'whole', '40"'],
        ['40″', '40', 'in', 'whole', '40"'],
        ["5'", '60', 'in', 'whole', "5'"],
        ['5′', '60', 'in', 'whole', "5'"],
        [`5'10 1/2"`, '141/2', 'in', 'feet and inches', `5'10 1/2"`],
        [`5'-10 1/2"`, '141/2', 'in', 'feet and inches', `5'10 1/2"`],
        [`5' 10"`, '70', 'in', 'feet and inches', `5'10"`],
        ['5′10½″', '141/2', 'in', 'feet and inches', `5'10 1/2"`],
        [`5'1/2"`, '121/2', 'in', 'feet and inches', `5'1/2"`],
        [`5'10.25"`, '281/4', 'in', 'feet and inches', `5'10.25"`],
        [`5'10-1/2"`, '141/2', 'in', 'feet and inches', `5'10 1/2"`],
        ['5ft 10 1/2in', '141/2', 'in', 'feet and inches', '5ft 10 1/2in'],
        ['5 ft 10 in', '70', 'in', 'feet and inches', '5ft 10in'],
        ['19mm', '19', 'mm', 'whole', '19mm'],
        ['2 in', '2', 'in', 'whole', '2in'],
        ['0.720in', '0.72', 'in', 'decimal', '0.720in'],
        ['1½"', '3/2', 'in', 'mixed', '1 1/2"'],
        ['1 ½in', '3/2', 'in', 'mixed', '1 1/2in'],
        ['¾in', '3/4', 'in', 'fraction', '3/4in'],
        ['⅝"', '5/8', 'in', 'fraction', '5/8"'],
        ['⅔ft', '8', 'in', 'fraction', '2/3ft'],
        ['5/4in', '5/4', 'in', 'fraction', '5/4in'],
        ['8ft', '96', 'in', 'whole', '8ft'],
        ['2.5lb', '2.5', 'lb', 'decimal', '2.5lb'],
        ['1.1kg', '1.1', 'kg', 'decimal', '1.1kg'],
        ['25 lb/ft2', '25', 'lb/ft2', 'whole', '25 lb/ft2'],
        ['25lb/ft²', '25', 'lb/ft2', 'whole', '25 lb/ft2'],
        ['30 kg/m', '30', 'kg/m', 'whole', '30 kg/m'],
        ['1/4in/ft', '1/4', 'in/ft', 'fraction', '1/4in/ft'],
        ['1.0 kPa', '1', 'kPa', 'decimal', '1.0 kPa'],
        ['65 USD/hour', '65', 'USD/hour', 'whole', '65 USD/hour'],
        ['118 USD', '118', 'USD', 'whole', '118 USD'],
        ['2 hours', '2', 'hour', 'whole', '2 hours'],
        ['3 bdft', '3', 'bdft', 'whole', '3 bdft'],
        ['12°', '12', 'deg', 'whole', '12°'],
        ['15deg', '15', 'deg', 'whole', '15deg'],
        ['7 1/2°', '15/2', 'deg', 'mixed', '7 1/2°'],
        ['8%', '8', '%', 'whole', '8%'],
    ])('%s', (text, value, unit, form, canonical) => {
        const read = accepted(text);
        const expected = readUnit(unit);
        expect(read.quantity.dimension).toBe(expected?.dimension);
        expect(read.quantity.value).toEqual(Rational.parse(value).times(expected?.factor as Rational));
        expect(read.form).toBe(form);
        expect(read.canonical).toBe(canonical);
        expect(firstToken(text)).toBe(text);
    });

    test.each([
        ['40', '40', '40'],
        ['1.5', '3/2', '1.5'],
        ['0', '0', '0'],
        // Spelt `1/2` it would be a division: the formatter leaves it.
        ['½', '1/2', '½'],
        ['1½', '3/2', '1½'],
        ['1 ½', '3/2', '1½'],
    ])('%s is a plain number', (text, value, canonical) => {
        const read = accepted(text);
        expect(read.quantity).toEqual({ dimension: dimension.none, value: Rational.parse(value), deviations: undefined, unit: undefined });
        expect(read.canonical).toBe(canonical);
    });

    test('what is canonical reads the same, and is its own canonical spelling', () => {
        for (const text of ['1-1/4"', `5'-10 1/2"`, '5 ft 10 in', '1 ½', '25lb/ft²', '12°', '5′', '0.720in', '3 USD/bdft', '1rad']) {
            const read = accepted(text);
            expect(accepted(read.canonical)).toEqual({ ...read, form: accepted(read.canonical).form });
            expect(accepted(read.canonical).canonical).toBe(read.canonical);
        }
    });

    test('a measure read twice is the same', () => {
        expect(readMeasure('3/4in')).toEqual(readMeasure('3/4in'));
        expect(readMeasure('40inch')).toEqual(readMeasure('40inch'));
    });
});

describe('where the token ends', () => {
    test.each([
        ['3/4', '3'],
        ['3 / 4in', '3'],
        ['12in/4', '12in'],
        ['100lb/n', '100lb'],
        ['1 - 1/4in', '1'],
        ['5in-1/4in', '5in'],
        ['30in-1-1/4in', '30in'],
        [`5' - 10"`, `5'`],
        ['5ft-10in', '5ft'],
        [`5'10"-1/2"`, `5'10"`],
        ['5 inner', '5'],
        ['5 in2', '5 in2'],
        ['1..4', '1'],
        ['40inch', '40inch'],
        ['2x4', '2x4'],
        ['2"x4"', '2"'],
        ['40 "', '40'],
        ['10 1/2', '10 1/2'],
        ['10-1/2', '10-1/2'],
        ['1,000mm', '1'],
        ['2 in * 3', '2 in'],
        ['14 USD per board foot', '14 USD'],
    ])('%s: %s', (text, token) => {
        expect(firstToken(text)).toBe(token);
    });

    test.each(['.5in', 'in', '-1/4in', 'x-1/4in', '"tall"', '#20'])('%s does not begin with a number', (text) => {
        expect(firstToken(text)).toBeUndefined();
    });

    test('every unit word may follow a number, with or without a space, alone or below another', () => {
        for (const word of unitWords) {
            for (const text of [`3${word}`, `3 ${word}`, `1/2${word}`, `1 1/2 ${word}`, `3${word}2`, `3 USD/${word}`]) {
                expect(firstToken(text)).toBe(text);
                expect(readMeasure(text).ok).toBe(true);
            }
        }
    });
});

describe('refusals', () => {
    test.each([
        // text, the wrong part of it, the message, the hint, the replacement
        ['40inch', 'inch', '`inch` is not a unit', 'did you mean `40in`?', '40in'],
        ['12MM', 'MM', '`MM` is not a unit', 'did you mean `12mm`?', '12mm'],
        ['1-1/2inches', 'inches', '`inches` is not a unit', 'did you mean `1 1/2in`?', '1 1/2in'],
        ['25lbs', 'lbs', '`lbs` is not a unit', 'did you mean `25lb`?', '25lb'],
        ['3kpa', 'kpa', '`kpa` is not a unit', 'did you mean `3 kPa`?', '3 kPa'],
        ['5foo', 'foo', '`foo` is not a unit', 'write `5in` or `5mm`, or put a space before `foo` if it is a name', undefined],
    ])('%s: an unknown unit', (text, wrong, message, hint, replacement) => {
        const problem = refused(text);
        expect(problem.code).toBe('unknown-unit');
        expect(text.slice(problem.start, problem.end)).toBe(wrong);
        expect(problem).toMatchObject({ message, hint });
        expect(problem.replacement).toBe(replacement);
        if (replacement) expect(readMeasure(replacement).ok).toBe(true);
    });

    test('10 1/2 needs a unit; where a share is asked for it is one', () => {
        const problem = refused('10 1/2');
        expect(problem).toMatchObject({ code: 'unit-missing', message: '`10 1/2` has no unit', hint: 'write `10 1/2in` or `10 1/2mm`' });
        expect(problem.plainNumber?.value).toEqual(Rational.of(21, 2));
    });

    test('10-1/2 needs a unit, or spaces to subtract', () => {
        const problem = refused('10-1/2');
        expect(problem).toMatchObject({ code: 'unit-missing', hint: 'write `10 1/2in` or `10 1/2mm`, or `10 - 1/2` to subtract' });
        expect(problem.plainNumber).toBeUndefined();
    });

    test.each([
        ['1/0in', 2],
        ['1 1/0in', 4],
        ['3-1/00"', 4],
        [`5'10 1/0"`, 7],
        ['5ft 1/0in', 6],
        ['1 1/0', 4],
    ])('%s divides by zero', (text, start) => {
        const problem = refused(text);
        expect(problem.code).toBe('division-by-zero');
        expect(problem.start).toBe(start);
        expect(text.slice(problem.start, problem.end)).toMatch(/^0+$/);
        expect(problem.message).toBe(`\`${text}\` divides by zero`);
    });

    test.each([
        ['2x4', 'write `2in x 4in`, each size with its unit', undefined],
        ['9inx6in', 'write `9in x 6in`', '9in x 6in'],
        ['2"x4"', 'write `2" x 4"`', '2" x 4"'],
        ['1/2inx3/4in', 'write `1/2in x 3/4in`', '1/2in x 3/4in'],
        ['2inx4inx8ft', 'write `2in x 4in x 8ft`', '2in x 4in x 8ft'],
    ])('%s: sizes run together', (text, hint, replacement) => {
        const problem = refused(text);
        expect(problem).toMatchObject({ code: 'sizes-run-together', hint });
        expect(problem.replacement).toBe(replacement);
        expect(text.slice(problem.start, problem.end)).toBe('x');
    });

    test('more digits than any size has', () => {
        expect(accepted('1'.repeat(30)).quantity.value).toEqual(Rational.parse('1'.repeat(30)));
        const text = `1 ${'2'.repeat(31)}/3in`;
        const problem = refused(text);
        expect(problem).toMatchObject({ code: 'too-many-digits', found: '31 digits', start: 2, end: 33 });
        expect(refused('9'.repeat(1_000_000)).code).toBe('too-many-digits');
    });

    test.each(['', ' ', '1/2', '-1in', '.5in', '5 inner', '40 "', `5'10`, 'in', '1..4', '1,000mm', '1in ', '1/2/3in', '3 4in'])(
        '%j is no token',
        (text) => {
            expect(refused(text).code).toBe('not-a-measure');
        },
    );

    test('a long word is shown cut, and a long chain of units is no unit', () => {
        expect(refused(`5${'z'.repeat(5_000_000)}`).message).toBe(`\`${'z'.repeat(40)}...\` is not a unit`);
        expect(refused(`5in${'/ft'.repeat(100_000)}`).code).toBe('unknown-unit');
    });

    test('every refusal says what was found, what is needed and what mends it, in lower case', () => {
        for (const text of ['40inch', '10 1/2', '10-1/2', '1/0in', '2x4', '1'.repeat(40), '1/2']) {
            for (const part of [refused(text).message, refused(text).found, refused(text).needed, refused(text).hint])
                expect(part).toMatch(/^[`a-z0-9]/);
        }
    });

    test('whatever is thrown at it, it answers, and only tokens are measures', () => {
        const pieces = fc.constantFrom(
            '0',
            '1',
            '12',
            '/',
            '-',
            ' ',
            '.',
            "'",
            '"',
            '½',
            'in',
            'ft',
            'mm',
            'x',
            'lb',
            '2',
            '°',
            '%',
            'inch',
            '#',
            '′',
        );
        const texts = fc.oneof(
            fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join('')),
            fc.string({ unit: 'binary', maxLength: 12 }),
        );
        const whole = new RegExp(`^(?:${measurePattern})$`);
        fc.assert(
            fc.property(texts, (text) => {
                const reading = readMeasure(text);
                if (reading.ok) {
                    expect(text).toMatch(whole);
                    expect(accepted(reading.written.canonical).quantity).toEqual(reading.quantity);
                } else {
                    expect(reading.problem.hint).not.toBe('');
                    const { start = 0, end = text.length } = reading.problem;
                    expect(start).toBeGreaterThanOrEqual(0);
                    expect(end).toBeGreaterThanOrEqual(start);
                    expect(end).toBeLessThanOrEqual(text.length);
                }
            }),
            { numRuns: 1500 },
        );
    });
});
