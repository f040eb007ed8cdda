/**
 * The text of a number token, with its unit if it has one, built from the table of units. The grammar's terminal must cut out the
 * same texts; the language holds its own against this pattern in a test.
 *
 * A fraction with a unit and no spaces is one number, a mixed number may have a tight hyphen, feet and inches go together; without
 * a unit `3/4` is a division and not a number. Letters that touch a number are taken in even if they are no unit, for one clear
 * message instead of a stray name.
 */
import { misspeltUnitWords, unitWords } from './unit.js';

const vulgarFractions: Readonly<Record<string, readonly [number, number]>> = {
    '¼': [1, 4],
    '½': [1, 2],
    '¾': [3, 4],
    '⅓': [1, 3],
    '⅔': [2, 3],
    '⅛': [1, 8],
    '⅜': [3, 8],
    '⅝': [5, 8],
    '⅞': [7, 8],
};

/** The value of a fraction that is one character, as numerator and denominator. */
export function vulgarFraction(character: string): readonly [number, number] | undefined {
    return vulgarFractions[character];
}

/** `hour` and `hours` as `hours?`. */
function withOptionalPlurals(words: readonly string[]): string {
    return words
        .filter((word) => !words.some((other) => word === `${other}s`))
        .map((word) => (words.includes(`${word}s`) ? `${word}s?` : word))
        .join('|');
}

const glyph = `[${Object.keys(vulgarFractions).join('')}]`;
const decimal = '[0-9]+\\.[0-9]+|[0-9]+';
const withGlyph = `(?:[0-9]+ ?)?${glyph}`;
const mixed = '[0-9]+[ -][0-9]+\\/[0-9]+';
const fraction = '[0-9]+\\/[0-9]+';
const word = `(?:${withOptionalPlurals(unitWords)})[234²³]?`;
const misspelt = `(?:${withOptionalPlurals(misspeltUnitWords)})(?![0-9A-Za-z_])`;
const suffix = `(?:["″'′°%]|[ \\t]?${word}(?:\\/${word})*(?![0-9A-Za-z_])|[ \\t]${misspelt}|[A-Za-zµ][0-9A-Za-z²³]*)`;
const inches = `(?:${withGlyph}|${mixed}|${fraction}|${decimal})`;

/** The regular expression of a number token, as source text without anchors, for use without the `u` flag. */
export const measurePattern: string = [
    `[0-9]+['′](?:[ -]?${inches}["″])?`,
    `[0-9]+ ?ft ${inches} ?in(?![0-9A-Za-z_])`,
    `${withGlyph}${suffix}?`,
    `${mixed}${suffix}?`,
    `${fraction}${suffix}`,
    `(?:${decimal})${suffix}?`,
].join('|');
