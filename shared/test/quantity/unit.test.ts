import { describe, expect, test } from 'vitest';
import {
    dimension,
    divideDimensions,
    guessUnit,
    quantity,
    Rational,
    readUnit,
    real,
    type Unit,
    unitNamed,
    units,
    unitWords,
    usualUnit,
} from '../../src/quantity/index.js';

function known(symbol: string): Unit {
    const found = readUnit(symbol);
    if (!found) throw new Error(`no unit ${symbol}`);
    return found;
}

/** One of a unit, expressed in another of its dimension. */
function oneIn(unit: string, other: string): Rational {
    const [from, to] = [known(unit), known(other)];
    expect(from.dimension).toBe(to.dimension);
    const value = quantity.valueIn(quantity.of(Rational.one, from), to);
    if (!real.isExact(value)) throw new Error(`${unit} in ${other} is not exact`);
    return value;
}

describe('exact definitions', () => {
    test.each([
        // International yard and pound agreement, 1959 (US Federal Register 24 FR 5348): 1 yd = 0.9144 m, 1 lb = 0.45359237 kg.
        ['in', 'mm', '25.4'],
        ['ft', 'mm', '304.8'],
        ['yd', 'm', '0.9144'],
        ['lb', 'kg', '0.45359237'],
        ['oz', 'lb', '1/16'],
        // Pound-force: 0.45359237 kg under standard gravity 9.80665 m/s² (3rd CGPM, 1901; NIST SP 811, appendix B.8).
        ['lbf', 'N', '4.4482216152605'],
        ['kN', 'N', '1000'],
        // Wood Handbook FPL-GTR-282, glossary: a board foot is a board 1 ft long, 1 ft wide and 1 in thick, 144 in³.
        ['bdft', 'in3', '144'],
        // SI Brochure, 9th edition: decimal prefixes; 1 Pa = 1 N/m².
        ['cm', 'mm', '10'],
        ['m', 'mm', '1000'],
        ['g', 'kg', '0.001'],
        ['Pa', 'N/m2', '1'],
        ['kPa', 'Pa', '1000'],
        ['MPa', 'N/mm2', '1'],
        ['GPa', 'MPa', '1000'],
        ['psf', 'lbf/ft2', '1'],
        ['psi', 'lbf/in2', '1'],
        ['psi', 'psf', '144'],
        ['hour', 'minute', '60'],
        ['day', 'hour', '24'],
        ['week', 'day', '7'],
        ['ft2', 'in2', '144'],
        ['ft³', 'in³', '1728'],
        ['in4', 'mm4', '416231.4256'],
    ])('1 %s = %3$s %2$s', (unit, other, value) => {
        expect(oneIn(unit, other).toString()).toBe(Rational.parse(value).toString());
    });

    test('1 psi = 6894.757 Pa, rounded (NIST SP 811, appendix B.8: 6.894 757 E+03)', () => {
        expect(oneIn('psi', 'Pa').toNumber()).toBeCloseTo(6894.757, 3);
    });

    test('1 lb/ft2 = 4.882428 kg/m2, rounded (NIST SP 811, appendix B.8: 4.882 428 E+00)', () => {
        expect(oneIn('lb/ft2', 'kg/m2').toNumber()).toBeCloseTo(4.882428, 6);
    });

    test('1 lb/ft3 = 16.01846 kg/m3, rounded (NIST SP 811, appendix B.8: 1.601 846 E+01)', () => {
        expect(oneIn('lb/ft3', 'kg/m3').toNumber()).toBeCloseTo(16.01846, 5);
    });

    test('a turn is 2π radians, and the radian is the one approximate unit', () => {
        const turn = quantity.of(real.multiply(Rational.of(2), Math.PI), known('rad'));
        expect(real.equalWithin(turn.value, Rational.of(360), 1e-12)).toBe(true);
        expect(units.filter((unit) => !real.isExact(unit.factor)).map((unit) => unit.symbol)).toEqual(['rad']);
    });

    test('percent and slope are plain numbers', () => {
        expect(known('%').dimension).toBe(dimension.none);
        expect(known('%').factor).toEqual(Rational.of(1, 100));
        expect(known('in/ft').dimension).toBe(dimension.none);
        expect(known('in/ft').factor).toEqual(Rational.of(1, 12));
    });
});

describe('the table', () => {
    test('no spelling stands for two units', () => {
        const spellings = units.flatMap((unit) => unit.symbols);
        expect(new Set(spellings).size).toBe(spellings.length);
    });

    test('no spelling of one unit is listed as a mistake for another', () => {
        for (const unit of units)
            for (const mistake of unit.mistakenFor) expect(units.flatMap((each) => each.symbols)).not.toContain(mistake);
    });

    test('every word of the language is a spelling in letters, and reads as its unit', () => {
        expect(unitWords).toEqual(units.flatMap((unit) => unit.symbols).filter((symbol) => /^[A-Za-z]+$/.test(symbol)));
        for (const word of unitWords) expect(readUnit(word)?.symbols).toContain(word);
    });

    test('pounds are a mass, pounds-force a force', () => {
        expect(known('lb').dimension).toBe(dimension.mass);
        expect(known('lbf').dimension).toBe(dimension.force);
        expect(known('lb/ft2').dimension).toBe(dimension.areaLoad);
        expect(known('psf').dimension).toBe(dimension.pressure);
    });

    test('unitNamed throws for a word that is none', () => {
        expect(unitNamed('"')).toBe(known('in'));
        expect(() => unitNamed('inch')).toThrow(RangeError);
    });
});

describe('readUnit', () => {
    test.each([
        ['lb/ft²', 'lb/ft2'],
        ['kg/m³', 'kg/m3'],
        ['USD/bdft', 'USD/bdft'],
        ['USD/hours', 'USD/hour'],
        ['deg/m', 'deg/m'],
        ['board foot', 'bdft'],
        ['board feet', 'bdft'],
        ['′', 'ft'],
    ])('%s is %s', (text, symbol) => {
        expect(known(text).symbol).toBe(symbol);
        expect(known(text)).toBe(known(symbol));
    });

    test.each(['', 'inch', 'IN', 'in5', '2in', 'lb/', '/ft', 'lb//ft', 'lb/inch', 'in/ft/in/ft/in', '%/m', 'constructor', '__proto__'])(
        '%j is none',
        (text) => {
            expect(readUnit(text)).toBeUndefined();
        },
    );

    test('what is printed can be read', () => {
        for (const text of [...unitWords, 'mm2', 'lb/ft2', 'N/mm2', 'in4', 'USD/m']) expect(readUnit(known(text).symbol)).toBe(known(text));
    });

    test('names in a sentence', () => {
        expect(known('lb/ft2').name).toBe('pound per square foot');
        expect(known('kg/m3').name).toBe('kilogram per cubic metre');
        expect(known('in4').name).toBe('inch to the fourth power');
    });

    test('which system a compound belongs to', () => {
        expect(known('lb/ft2').system).toBe('inch');
        expect(known('USD/m2').system).toBe('mm');
        expect(known('in/hour').system).toBe('inch');
        expect(known('lb/m2').system).toBeUndefined();
        expect(known('USD/hour').system).toBeUndefined();
    });
});

describe('guessUnit', () => {
    test.each([
        ['inch', 'in'],
        ['Inches', 'in'],
        ['MM', 'mm'],
        ['feet', 'ft'],
        ['lbs', 'lb'],
        ['lbs/sqft', 'lb/ft2'],
        ['sqm', 'm2'],
        ['cuft', 'ft3'],
        ['kg/M3', 'kg/m3'],
        ['mpa', 'MPa'],
        ['degrees', '°'],
        ['hrs', 'hour'],
        ['usd', 'USD'],
    ])('%s was meant as %s', (text, symbol) => {
        expect(guessUnit(text)?.symbol).toBe(symbol);
    });

    test.each(['foo', '', 'x4', 'in/foo', 'sq'])('no guess for %j', (text) => {
        expect(guessUnit(text)).toBeUndefined();
    });
});

describe('usualUnit', () => {
    const usd = dimension.money('USD');
    test.each([
        [dimension.length, 'in', 'mm'],
        [dimension.mass, 'lb', 'kg'],
        [dimension.areaLoad, 'lb/ft2', 'kg/m2'],
        [dimension.lineLoad, 'lb/ft', 'kg/m'],
        [dimension.pressure, 'psi', 'MPa'],
        [dimension.density, 'lb/ft3', 'kg/m3'],
        [dimension.angle, '°', '°'],
        [usd, 'USD', 'USD'],
        [divideDimensions(usd, dimension.volume), 'USD/bdft', 'USD/m3'],
        [divideDimensions(usd, dimension.length), 'USD/ft', 'USD/m'],
        [divideDimensions(usd, dimension.time), 'USD/hour', 'USD/hour'],
    ])('%#', (of, inch, mm) => {
        for (const [system, symbol] of [
            ['inch', inch],
            ['mm', mm],
        ] as const) {
            const unit = usualUnit(of, system);
            expect(unit?.symbol).toBe(symbol);
            expect(unit?.dimension).toBe(of);
        }
    });

    test('none for a plain number or a dimension that nobody writes', () => {
        expect(usualUnit(dimension.none, 'inch')).toBeUndefined();
        expect(usualUnit(divideDimensions(dimension.none, usd), 'inch')).toBeUndefined();
        expect(usualUnit(divideDimensions(usd, dimension.force), 'mm')).toBeUndefined();
    });
});
