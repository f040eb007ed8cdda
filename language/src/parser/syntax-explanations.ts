// Syntax errors as sentences: what stands there, what is needed, and what mends it where that is known.
// Knows words of the language and the tokens of one statement: no rules of the grammar.
import type { IToken } from 'chevrotain';
import { isTyped } from './implied-token.js';
import { looseWords } from './loose-words.js';
import { A_STATEMENT, NOTHING_MORE } from './needed-words.js';
import { STATEMENT_WORDS } from './statement-lines.js';

/** The place of a syntax error. */
export interface SyntaxErrorPlace {
    /** The token that cannot stand there; implied at the end of a line. */
    token: IToken;
    /** What is needed in its place, from `NeededWords`. */
    needed: string;
    /** The tokens of its statement before it, the last one first. */
    before: readonly IToken[];
    /** The token after it on its line. */
    next: IToken | undefined;
    /** Whether a word of the language cannot be a name. */
    isReserved(word: IToken): boolean;
    isPartKind(word: IToken): boolean;
}

/** What to say, and at which token. */
export interface Explanation {
    message: string;
    at: IToken;
}

/** Explains a syntax error in the words of the user. */
export function explainSyntaxError(place: SyntaxErrorPlace): Explanation {
    for (const explain of EXPLANATIONS) {
        const found = explain(place);
        if (found !== undefined) {
            return typeof found === 'string' ? { message: found, at: visible(place) } : found;
        }
    }
    return { message: plainSentence(place), at: visible(place) };
}

type Explain = (place: SyntaxErrorPlace) => Explanation | string | undefined;

const isPlainNumber = (token: IToken | undefined): token is IToken => token !== undefined && /^[0-9./ -]+$/.test(token.image);
const isNumber = (token: IToken | undefined): boolean => token?.tokenType.name === 'QUANTITY';
const isText = (token: IToken | undefined): boolean => token !== undefined && /^(OPEN_)?STRING$/.test(token.tokenType.name);
const isWord = (token: IToken | undefined): token is IToken => token !== undefined && /^[A-Za-z_\u00c0-\u024f]/.test(token.image);
const touches = (left: IToken | undefined, right: IToken): boolean => left !== undefined && left.endOffset! + 1 === right.startOffset;

const RELATIONS: Readonly<Record<string, string>> = { past: 'past', short: 'short of', left: 'left of', right: 'right of' };

/** The way from a side of a room into it. */
const WAYS_FROM: Readonly<Record<string, string>> = {
    top: 'below',
    bottom: 'above',
    back: 'before',
    front: 'behind',
    left: 'right of',
    right: 'left of',
};

const PROPERTIES_OF_MEASURE_WORDS: Readonly<Record<string, string>> = {
    thick: 'thickness',
    wide: 'width',
    deep: 'depth',
    high: 'height',
    long: 'length',
};

/** More telling sentences for common mistakes; the first that fits is taken. */
const EXPLANATIONS: readonly Explain[] = [
    function inchMarkApart({ token, before: [previous] }) {
        return isText(token) && isPlainNumber(previous) ? `an inch mark touches its number: \`${previous.image}"\`` : undefined;
    },
    function numberWithoutDigitBeforePoint({ token, next }) {
        return token.image === '.' && next && isNumber(next) && touches(token, next)
            ? `a number begins with a digit: \`0.${next.image}\``
            : undefined;
    },
    function commaInNumber({ token, before: [previous], next }) {
        return token.image === ',' && isPlainNumber(previous) && touches(previous, token) && next && /^[0-9]{3}(?![0-9])/.test(next.image)
            ? `a number has no comma in it: \`${previous.image}${next.image}\``
            : undefined;
    },
    function commentOfAnotherLanguage({ token, next }) {
        return token.image === '/' && next?.image === '*' ? 'a comment begins with `//` and ends with its line' : undefined;
    },
    function commaBeforeComparison({ token, needed, next }) {
        return token.image === ',' && needed === NOTHING_MORE && next && /^(?:[<>]=?|!?=)$/.test(next.image)
            ? `no comma stands before the sign of a comparison: take it out, and \`${next.image}\` follows at once`
            : undefined;
    },
    function looseWordBeforeKind({ before, isPartKind }) {
        const [loose, kind, name] = before.toReversed();
        const part = isWord(name) ? name.image : `every ${kind?.image}`;
        return loose && kind && looseWords.has(loose.image) && isPartKind(kind)
            ? {
                  message:
                      `no \`${kind.image}\` is declared \`${loose.image}\`: that it can be moved is said by its joint, ` +
                      `\`join ${part} to every side with { rest on ...   loose }\``,
                  at: loose,
              }
            : undefined;
    },
    function twoEqualSigns({ token, before: [previous] }) {
        return token.image === '=' && previous?.image === '=' ? 'one `=` compares two values' : undefined;
    },
    function ruleCode({ token, needed }) {
        return token.tokenType.name === 'RULE_CODE' && needed !== NOTHING_MORE
            ? `\`${token.image}\` is the code of a rule; to subtract, write \`${token.image.replace('-', ' - ')}\``
            : undefined;
    },
    function footAfterNumber({ token, before }) {
        const [word, number] = [token, ...before].slice(token.image === 'foot' ? 0 : 1);
        return word?.image === 'foot' && isPlainNumber(number)
            ? { message: `feet are written \`${number.image}ft\` or \`${number.image}'\``, at: word }
            : undefined;
    },
    function unitThatIsAConnective({ token, before: [word, measure] }) {
        const number = measure && /^[0-9./ -]+[ \t](in|m|g)$/.exec(measure.image);
        return number && isWord(word) && !stands(token)
            ? { message: `\`${measure.image}\` is read as a measure; put \`${number[1]} ${word.image}\` before the number`, at: measure }
            : undefined;
    },
    function elseWithoutIf({ token }) {
        return token.image === 'else' ? '`else` stands after the block of an `if`, and there is none here' : undefined;
    },
    function signAfterPropertyName({ token, before, next }) {
        const [name] = before;
        return (token.image === '=' || token.image === ':') && before.length === 1 && isWord(name) && !STATEMENT_WORDS.has(name.image)
            ? `a property has no \`${token.image}\` before its value: write \`${name.image} ${next?.image ?? '...'}\``
            : undefined;
    },
    function reservedWordAsName({ token, needed, before, isReserved }) {
        const inParameters = needed === '`)`' && /^[(,]$/.test(before[0]?.image ?? '');
        const nameIsNeeded =
            needed === 'a name' ||
            inParameters ||
            (needed === NOTHING_MORE && before.length === 1 && STATEMENT_WORDS.has(before[0]!.image));
        return nameIsNeeded && isWord(token) && isReserved(token)
            ? `\`${token.image}\` is a word of the language, so it cannot be a name`
            : undefined;
    },
    function nameBeginsWithDigit({ token, needed }) {
        return needed === 'a name' && isNumber(token) ? `\`${token.image}\` is a number; a name begins with a letter` : undefined;
    },
    function propertyOfPartWithoutName(place) {
        const part = partAndNumber(place);
        if (!part || !/^[a-z]/.test(part.name.image)) {
            return undefined;
        }
        const { kind, name } = part;
        const mended = `\`${kind.image} { ${name.image} ${place.token.image} }\``;
        return {
            message: `\`${name.image}\` is read as the name of this \`${kind.image}\`: write ${mended}, or give the ${kind.image} a name first`,
            at: name,
        };
    },
    function placeOfUnnamedWithoutAt({ token, before: [kind, ...more], isPartKind }) {
        return isNumber(token) && kind && isPartKind(kind) && more.length === 0
            ? `the place of a part begins with \`at\`: \`${kind.image} at ${token.image}\``
            : undefined;
    },
    function kindWithCapital({ token, before: [word, ...more], isPartKind }) {
        const small = word?.image.toLowerCase();
        return !stands(token) && word && more.length === 0 && isPartKind({ ...word, image: small! })
            ? { message: `nothing is called \`${word.image}\`; did you mean \`${small}\`?`, at: word }
            : undefined;
    },
    function thicknessBeforeMaterial({ token, before: [material, thickness, of] }) {
        return !stands(token) && isWord(material) && isNumber(thickness) && of?.image === 'of'
            ? { message: `after \`of\` stands a material alone, which says its own thickness: \`of ${material.image}\``, at: thickness! }
            : undefined;
    },
    function signAfterPartName({ token, before: [name, kind, ...more], next, isPartKind }) {
        const isPart = isWord(name) && isWord(kind) && isPartKind(kind) && more.length === 0;
        const place = next && isNumber(next) ? `at ${next.image}` : `${next?.image ?? ''} ...`;
        return isPart && (token.image === ':' || token.image === '=')
            ? `after the name of a part no \`${token.image}\` is written: \`${kind.image} ${name.image} ${place}\``
            : undefined;
    },
    function thingDeclaredInCase({ token, needed, before: [name, kind, ...more] }) {
        return token.image === ':' && needed === NOTHING_MORE && isWord(name) && isWord(kind) && more.length === 0
            ? `\`${kind.image} ${name.image} : ...\` is declared by itself, at the top of the file`
            : undefined;
    },
    function andBetweenNames({ token, needed, before: [previous], next }) {
        return token.image === 'and' && (needed === NOTHING_MORE || needed === '`to`') && isWord(previous) && next && isWord(next)
            ? `several are named with commas between them: \`${previous.image}, ${next.image}\``
            : undefined;
    },
    function countWithoutBrackets({ token, before: [name, kind, ...more], next, isPartKind }) {
        const isPart = isWord(name) && isWord(kind) && isPartKind(kind) && more.length <= 1;
        const count = token.image === '(' ? next : token;
        return isPart && count && /^[0-9]+$/.test(count.image)
            ? `how many there are stands in brackets after the name: \`${kind.image} ${name.image}[${count.image}]\``
            : undefined;
    },
    function countBeforeKind({ token, before: [count, ...more], next, isPartKind }) {
        return count && more.length === 0 && /^[0-9]+$/.test(count.image) && isPartKind(token)
            ? `how many there are stands in brackets after the name: \`${token.image} ${next?.image ?? 'Tier'}[${count.image}]\``
            : undefined;
    },
    function sizesOfPart(place) {
        const part = partAndNumber(place);
        return part && place.next?.image === 'x'
            ? 'the sizes of a part follow from its place; one that does not is said by its name, such as `width 11in`'
            : undefined;
    },
    function placeWithoutAt(place) {
        const part = partAndNumber(place);
        return part && `the place of a part begins with \`at\`: \`${part.kind.image} ${part.name.image} at ${place.token.image}\``;
    },
    function placeFrom({ token, needed, before: [distance], next }) {
        const way = next && WAYS_FROM[next.image];
        return needed === NOTHING_MORE && token.image === 'from' && isNumber(distance) && way
            ? `a place says which way it is measured: \`${distance?.image} ${way} ${next.image}\``
            : undefined;
    },
    function measureWordBeforeNumber({ token, needed, next }) {
        const property = PROPERTIES_OF_MEASURE_WORDS[token.image];
        return needed === NOTHING_MORE && property && isNumber(next)
            ? `this is said as a property: \`${property} ${next?.image}\``
            : undefined;
    },
    function sharesWithoutClear({ token, needed, before: [word, ...more], isPartKind }) {
        const kind = more.at(-1);
        const isShare = word?.image === 'equal' || word?.image === 'rest';
        return needed === 'a value' && word && isShare && kind && isPartKind(kind) && !isNumber(token)
            ? { message: `what is shared out is said before it: \`clear ${word.image}\` for openings`, at: word }
            : undefined;
    },
    function joinWithoutTo({ token, needed, before: [part] }) {
        return token.image === 'with' && needed === '`to`' && isWord(part)
            ? `the part that receives it stands after \`to\`, the joint after \`with\`: \`join ${part.image} to ... with ...\``
            : undefined;
    },
    function edgeWithRecipeWord({ token, before: [edge, word, ...more] }) {
        return word?.image === 'edging' && more.length === 0 && isWord(edge) && isWord(token)
            ? { message: `an edge of a part is worked with \`edge\`: \`edge ${edge.image} ${token.image}\``, at: word }
            : undefined;
    },
    function nameAfterMaterial({ needed, before: [name, material, of, kind, ...more], isPartKind }) {
        return needed === 'a value' && name && isWord(name) && of?.image === 'of' && kind && isPartKind(kind) && more.length === 0
            ? {
                  message: `the name of a part stands right after its kind: \`${kind.image} ${name.image} of ${material?.image}\``,
                  at: name,
              }
            : undefined;
    },
    function nameOfPartInTwoWords({ needed, before: [second, first, kind, ...more], isPartKind }) {
        const areWords = isWord(first) && isWord(second) && /^[A-Z]/.test(second.image);
        return needed === 'a value' && areWords && kind && isPartKind(kind) && more.length === 0
            ? { message: `a name is one word: write \`${first.image}${second.image}\``, at: second }
            : undefined;
    },
    function feetAndInchesApart({ token, needed, before: [feet] }) {
        const number = /^([0-9]+) ?(?:ft|['′])$/.exec(feet?.image ?? '')?.[1];
        const inches = /^(.*?) ?(?:in|["″])$/.exec(token.image)?.[1];
        return needed === NOTHING_MORE && number && inches && feet
            ? { message: `feet and inches are written in one way each: \`${number}'${inches}"\` or \`${number}ft ${inches}in\``, at: feet }
            : undefined;
    },
    function relationWithoutTarget({ token, needed, before: [previous] }) {
        const relation = RELATIONS[token.image];
        return needed === NOTHING_MORE && relation && previous && isNumber(previous)
            ? `what this lies ${relation} is missing: \`${previous.image} ${relation} case\``
            : undefined;
    },
    function secondStatementOnLine({ token, needed, before, next, isPartKind }) {
        const first = before.at(-1);
        if (needed === NOTHING_MORE && token.image === 'edge' && first && isPartKind(first) && next) {
            return `what is done to the edges of a part stands in braces: \`{ edge ${next.image} ... }\``;
        }
        return needed === NOTHING_MORE && before.length > 1 && STATEMENT_WORDS.has(token.image) && next !== undefined
            ? `\`${token.image}\` begins a new statement: put it on a line of its own, or write \`;\` before it`
            : undefined;
    },
    function secondValue({ token, needed, before: [previous] }) {
        return needed === NOTHING_MORE && isNumber(token) && previous !== undefined && (isNumber(previous) || isText(previous))
            ? `\`${token.image}\` follows the value ${quoted(previous)}: a further value needs a comma or a word of its own before it`
            : undefined;
    },
    function propertiesWithoutBlock({ token, needed, before, next }) {
        return needed === NOTHING_MORE && before.length > 1 && token.tokenType.name === 'ID' && next && (isNumber(next) || isText(next))
            ? `the properties of a declaration stand in a block: \`{ ${token.image} ${next.image} }\``
            : undefined;
    },
    function titleWithoutQuotes({ token, needed, before, isPartKind }) {
        const [previous, kind, ...more] = before;
        return needed === NOTHING_MORE && isWord(token) && isWord(previous) && isWord(kind) && more.length === 0
            ? `a name is one word: write \`${previous.image}${capital(token.image)}\`${isPartKind(kind) ? '' : `, or a title in quotes, \`"${previous.image} ${token.image}"\``}`
            : undefined;
    },
    function reasonWithoutQuotes({ token, needed, before: [previous] }) {
        return previous?.image === 'because' && needed !== NOTHING_MORE && stands(token)
            ? 'the reason after `because` stands in quotes: `because "..."`'
            : undefined;
    },
    function textWithoutQuotes({ token, needed, before, isPartKind, isReserved }) {
        const other = before.findIndex((word) => !/^[A-ZÀ-ÖØ-Þ][^.]*$/.test(word.image) || !isWord(word));
        const words = before.slice(0, Math.max(0, other)).toReversed();
        const name = before[other];
        const isProperty = name !== undefined && isWord(name) && words.length > 1 && !isPartKind(name) && !isReserved(name);
        return isProperty && (needed === 'a value' || needed === NOTHING_MORE) && !isNumber(token)
            ? { message: `a text stands in quotes: \`${name.image} "${words.map(({ image }) => image).join(' ')}"\``, at: words[0]! }
            : undefined;
    },
    function visibilityAlone({ token, needed }) {
        return needed === A_STATEMENT && (token.image === 'private' || token.image === 'public')
            ? `a declaration is needed after \`${token.image}\``
            : undefined;
    },
    function noStatement({ token, needed }) {
        return needed === A_STATEMENT && stands(token) ? `no statement begins with ${quoted(token)}` : undefined;
    },
];

/** A part kind, a name and then a number, as in `back height 4in`. */
function partAndNumber({ token, before, isPartKind }: SyntaxErrorPlace): { kind: IToken; name: IToken } | undefined {
    const [name, kind, ...more] = before;
    return isNumber(token) && isWord(name) && isWord(kind) && isPartKind(kind) && more.length <= 1 ? { kind, name } : undefined;
}

/** What stands there and what is needed. */
function plainSentence({ token, needed, before: [previous] }: SyntaxErrorPlace): string {
    const after = previous ? ` after ${quoted(previous)}` : '';
    if (!stands(token)) {
        return `${needed} is missing${after}`;
    }
    return needed === NOTHING_MORE
        ? `nothing more was expected${after}, but ${quoted(token)} stands there`
        : `${needed} is needed${after}, but ${quoted(token)} stands there`;
}

function quoted(token: IToken): string {
    return isText(token) ? 'a text' : `\`${token.image}\``;
}

/** What is missing at the end of a statement is missing after its last word, also if a `;` stands there. */
function stands(token: IToken): boolean {
    return isTyped(token) && token.image !== ';';
}

/** A token that has a width: what is missing at the end of a line is shown at the last word of the line. */
function visible({ token, before: [previous] }: SyntaxErrorPlace): IToken {
    return stands(token) ? token : (previous ?? token);
}

function capital(word: string): string {
    return word.charAt(0).toUpperCase() + word.slice(1);
}
