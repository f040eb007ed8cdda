/**
 * Reads one number token, with its unit, as it is written on paper. The value is exact. What is refused is refused with the words
 * that are wrong, what is needed there, and a mend in the user's own numbers.
 */
import { measurePattern, vulgarFraction } from './measure-token.js';
import { type Quantity, quantity } from './quantity.js';
import { Rational } from './rational.js';
import { guessUnit, readUnit, type Unit, unitNamed } from './unit.js';

export type MeasureProblemCode =
    | 'unknown-unit'
    | 'unit-missing'
    | 'division-by-zero'
    | 'sizes-run-together'
    | 'too-many-digits'
    | 'not-a-measure';

/** Why a text is no measure. All texts start in lower case and have words of the language in backticks. */
export interface MeasureProblem {
    readonly code: MeasureProblemCode;
    /** The whole of it in one sentence, without the hint. */
    readonly message: string;
    readonly found: string;
    readonly needed: string;
    /** What mends it, in the user's numbers. */
    readonly hint: string;
    /** The text to put in place of the whole token, where there is one good one. */
    readonly replacement?: string;
    /** Which part of the text is wrong, as offsets into it; the whole of it if they are missing. */
    readonly start?: number;
    readonly end?: number;
    /**
     * For `1 1/4` without a unit, the plain number it would be: where a share is asked for, a share list for example, it has only
     * this reading. `1-1/4` has two, and never carries it.
     */
    readonly plainNumber?: Quantity;
}

/** How a measure was written, for a formatter and for printing it back in kind. */
export interface WrittenMeasure {
    readonly form: 'whole' | 'decimal' | 'fraction' | 'mixed' | 'feet and inches';
    /** Absent for a plain number. */
    readonly unit?: Unit;
    /** The same measure in the canonical spelling; it keeps the user's digits and the user's choice between `in` and `"`. */
    readonly canonical: string;
}

export type MeasureReading =
    | { readonly ok: true; readonly quantity: Quantity; readonly written: WrittenMeasure }
    | { readonly ok: false; readonly problem: MeasureProblem };

/** Longer numbers than this are a slip of the keyboard, and would only make the arithmetic slow. */
const mostDigits = 30;
const tooLongANumber = new RegExp(`[0-9]{${mostDigits + 1},}`);

const glyph = '(?<glyphWhole>[0-9]+)?(?<space> ?)(?<glyph>[¼½¾⅓⅔⅛⅜⅝⅞])';
const mixed = '(?<mixedWhole>[0-9]+)(?<joint>[ -])(?<mixedAbove>[0-9]+)\\/(?<mixedBelow>[0-9]+)';
const fraction = '(?<above>[0-9]+)\\/(?<below>[0-9]+)';
const decimal = '(?<decimal>[0-9]+\\.[0-9]+)';
const whole = '(?<whole>[0-9]+)';
const number = `(?:${glyph}|${mixed}|${fraction}|${decimal}|${whole})`;

const token = new RegExp(`^(?:${measurePattern})$`);
const feetAndInches = new RegExp(`^(?<feet>[0-9]+)(?:(?<footMark>['′])[ -]?${number}["″]| ?ft ${number.replaceAll('?<', '?<ft')} ?in)$`);
const numberAndUnit = new RegExp(`^${number}(?<unit>.*)$`);
/** A size has three measures at most: length, width and thickness. */
const mostSizes = 3;

/** A design writes the same few measures again and again, and an editor reads them at every keystroke. */
const readings = new Map<string, MeasureReading>();
const mostRemembered = 4096;
const longestRemembered = 24;

type Groups = Readonly<Record<string, string | undefined>>;

interface WrittenNumber {
    readonly value: Rational;
    readonly form: WrittenMeasure['form'];
    readonly canonical: string;
}

/**
 * Reads a measure or a plain number: `3/4in`, `1 1/4"`, `5'10 1/2"`, `25 lb/ft2`, `12°`, `8%`, `40`. The text is a token as the
 * grammar cuts it out: without a sign, without spaces around it.
 */
export function readMeasure(text: string): MeasureReading {
    const known = readings.get(text);
    if (known) return known;
    const reading = readAnew(text);
    if (text.length <= longestRemembered) {
        if (readings.size >= mostRemembered) readings.clear();
        readings.set(text, reading);
    }
    return reading;
}

function readAnew(text: string): MeasureReading {
    if (tooLongANumber.test(text)) return refused(tooManyDigits(text));
    const inFeet = feetAndInches.exec(text)?.groups;
    if (inFeet) return readFeetAndInches(text, inFeet);
    const groups = numberAndUnit.exec(text)?.groups;
    if (!groups || !token.test(text)) return refused((groups && sizesRunTogether(text)) ?? notAMeasure(text));
    const read = readNumber(groups, '');
    if (!read) return refused(divisionByZero(text));
    const unitText = groups.unit ?? '';
    const word = unitText.trimStart();
    if (word === '') return readPlain(text, read, groups);
    const unit = readUnit(word);
    if (!unit) return refused(unknownUnit(text, word, read));
    return accepted(quantity.of(read.value, unit), { form: read.form, unit, canonical: read.canonical + canonicalSuffix(word, unit) });
}

function accepted(read: Quantity, written: WrittenMeasure): MeasureReading {
    return { ok: true, quantity: read, written };
}

function refused(problem: MeasureProblem): MeasureReading {
    return { ok: false, problem };
}

/** The number in the named groups, whose names may have a prefix; undefined if it divides by zero. */
function readNumber(groups: Groups, prefix: string): WrittenNumber | undefined {
    const group = (name: string): string | undefined => groups[prefix + name];
    const integer = group('whole');
    if (integer !== undefined) return { value: Rational.parse(integer), form: 'whole', canonical: integer };
    const point = group('decimal');
    if (point !== undefined) return { value: Rational.parse(point), form: 'decimal', canonical: point };
    const character = group('glyph');
    const [above, below] = character
        ? (vulgarFraction(character) ?? [])
        : [group('above') ?? group('mixedAbove'), group('below') ?? group('mixedBelow')];
    if (above === undefined || below === undefined) return undefined;
    const divisor = Rational.parse(`${below}`);
    if (divisor.isZero()) return undefined;
    const part = Rational.parse(`${above}`).dividedBy(divisor);
    const before = group('glyphWhole') ?? group('mixedWhole');
    if (before === undefined) return { value: part, form: 'fraction', canonical: `${above}/${below}` };
    return { value: Rational.parse(before).plus(part), form: 'mixed', canonical: `${before} ${above}/${below}` };
}

function readFeetAndInches(text: string, groups: Groups): MeasureReading {
    const inches = readNumber(groups, groups.footMark ? '' : 'ft');
    if (!inches) return refused(divisionByZero(text));
    const feet = groups.feet ?? '0';
    const inch = unitNamed('in');
    const value = Rational.parse(feet).times(Rational.of(12)).plus(inches.value);
    const canonical = groups.footMark ? `${feet}'${inches.canonical}"` : `${feet}ft ${inches.canonical}in`;
    return accepted(quantity.of(value, inch), { form: 'feet and inches', unit: inch, canonical });
}

function readPlain(text: string, read: WrittenNumber, groups: Groups): MeasureReading {
    if (groups.mixedWhole !== undefined) return refused(unitMissing(text, read, groups));
    // `½` stays as it is: spelt `1/2` it would be a division, which binds otherwise.
    return accepted(quantity.plain(read.value), {
        form: read.form,
        canonical: groups.glyph === undefined ? read.canonical : text.replace(' ', ''),
    });
}

const straightMarks: Readonly<Record<string, string>> = { '″': '"', '′': "'" };

function canonicalSuffix(word: string, unit: Unit): string {
    const spelt = straightMarks[word] ?? (unit.symbols.includes(word) ? word : unit.symbol);
    return unit.spaced ? ` ${spelt}` : spelt;
}

/** The user's text for a message, which shows no more of it than anyone would read. */
function quoted(text: string): string {
    return text.length > 40 ? `\`${text.slice(0, 40)}...\`` : `\`${text}\``;
}

function tooManyDigits(text: string): MeasureProblem {
    const { index: start = 0, 0: digits = text } = tooLongANumber.exec(text) ?? {};
    return {
        code: 'too-many-digits',
        message: `a number has at most ${mostDigits} digits`,
        found: `${digits.length} digits`,
        needed: `a number of at most ${mostDigits} digits`,
        hint: 'leave out the digits that do not matter',
        start,
        end: start + digits.length,
    };
}

function divisionByZero(text: string): MeasureProblem {
    const at = /\/(0+)(?![0-9])/.exec(text);
    const start = at ? at.index + 1 : 0;
    return {
        code: 'division-by-zero',
        message: `\`${text}\` divides by zero`,
        found: 'a fraction over 0',
        needed: 'a fraction over 1 or more',
        hint: 'write the denominator, such as the 4 of `3/4in`',
        start,
        end: at ? start + (at[1]?.length ?? 1) : text.length,
    };
}

function unitMissing(text: string, read: WrittenNumber, groups: Groups): MeasureProblem {
    const difference = `${groups.mixedWhole} - ${groups.mixedAbove}/${groups.mixedBelow}`;
    const measures = `\`${read.canonical}in\` or \`${read.canonical}mm\``;
    const spaced = groups.joint === ' ';
    return {
        code: 'unit-missing',
        message: `\`${text}\` has no unit`,
        found: 'a whole number and a fraction without a unit',
        needed: 'a unit',
        hint: spaced ? `write ${measures}` : `write ${measures}, or \`${difference}\` to subtract`,
        ...(spaced ? { plainNumber: quantity.plain(read.value) } : {}),
    };
}

function unknownUnit(text: string, word: string, read: WrittenNumber): MeasureProblem {
    const together = sizesRunTogether(text);
    if (together) return together;
    const feetAndInches = /^ft-?([0-9][0-9./ -]*)in$/.exec(word);
    const guess = guessUnit(word);
    const replacement = feetAndInches
        ? `${read.canonical}ft ${feetAndInches[1]}in`
        : guess && read.canonical + canonicalSuffix(guess.symbol, guess);
    const start = text.length - word.length;
    const measures = `\`${read.canonical}in\` or \`${read.canonical}mm\``;
    return {
        code: 'unknown-unit',
        message: `${quoted(word)} is not a unit`,
        found: `${quoted(word)} right after \`${text.slice(0, start).trimEnd()}\``,
        needed: 'a unit, such as `in`, `mm`, `lb` or `kg`',
        hint: replacement ? `did you mean \`${replacement}\`?` : `write ${measures}, or put a space before ${quoted(word)} if it is a name`,
        ...(replacement ? { replacement } : {}),
        start,
        end: text.length,
    };
}

/** `2x4` and `9inx6in`: sizes whose by-sign touches a number. */
function sizesRunTogether(text: string): MeasureProblem | undefined {
    const sizes = text.split('x', mostSizes + 1);
    if (sizes.length < 2 || sizes.length > mostSizes || !sizes.every(isMeasureOrPlain)) return undefined;
    const lacksUnit = (size: string): boolean => /[0-9¼½¾⅓⅔⅛⅜⅝⅞]$/.test(size);
    const mended = sizes.map((size) => (lacksUnit(size) ? `${size}in` : size)).join(' x ');
    const at = text.indexOf('x');
    return {
        code: 'sizes-run-together',
        message: '`x` between two sizes needs a space on both sides',
        found: `\`${text}\` in one word`,
        needed: 'a space before and after `x`',
        hint: sizes.some(lacksUnit) ? `write \`${mended}\`, each size with its unit` : `write \`${mended}\``,
        ...(sizes.some(lacksUnit) ? {} : { replacement: mended }),
        start: at,
        end: at + 1,
    };
}

function isMeasureOrPlain(size: string): boolean {
    const unit = numberAndUnit.exec(size)?.groups?.unit;
    return unit === '' || (unit !== undefined && readUnit(unit.trimStart()) !== undefined);
}

function notAMeasure(text: string): MeasureProblem {
    return {
        code: 'not-a-measure',
        message: `${quoted(text)} is not a number with a unit`,
        found: quoted(text),
        needed: 'a number with a unit, or a plain number',
        hint: 'write it as on paper: `3/4in`, `1 1/4in`, `5\'10 1/2"` or `19mm`',
    };
}
