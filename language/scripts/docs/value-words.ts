/** What may be written as a value, in words, from a row of the vocabulary. */
import type { vocabulary } from 'casewright-shared/casework';
import { describeDimension, dimension } from 'casewright-shared/quantity';

export type Shape = vocabulary.Shape;

/** `a length`, `one of \`length\`, \`width\`, \`none\``: what stands after the name; empty where the name alone says it all. */
export function valueInWords(shape: Shape): string {
    switch (shape.is) {
        case 'quantity':
            return quantityInWords(shape.dimension) + (shape.tolerance ? ', with its tolerance if it is known' : '');
        case 'count':
            return 'a whole number';
        case 'sizes':
            return `${shape.count} ${plural(quantityInWords(shape.dimension))} with \`x\` between them`;
        case 'sizeByLength':
            return 'a trade size, a length, or both with `x` between them';
        case 'dimensions':
            return `${plural(quantityInWords(shape.dimension))}, each with its word: ${wordsOf(shape.words)}`;
        case 'interval':
            return `from ${quantityInWords(shape.dimension)} \`to\` another`;
        case 'shares':
            return 'a list of lengths and shares';
        case 'text':
            return 'a text in quotes';
        case 'truth':
            return '`yes` or `no`';
        case 'tradeSize':
            return 'a trade size';
        case 'choice':
            return `one of ${wordsOf(shape.of)}`;
        case 'thing':
            return `the name of ${shape.kinds.map(named).join(' or of ')}`;
        case 'both':
            return `two ${shape.kind}s with \`+\` between them`;
        case 'newName':
            return 'a name that is given here';
        case 'rate':
            return `${shape.of === 'money' ? 'an amount of money' : `a ${shape.of}`} \`per\` ${wordsOf(shape.per)}`;
        case 'worded':
            return `${shape.optional ? 'perhaps ' : ''}${wordsOf(shape.words)}, then ${valueInWords(shape.value)}`;
        case 'points':
            return `${wordsOf(shape.words)}, then ${shape.most === 1 ? 'a length `at` its place' : 'lengths, each `at` its place, with commas between them'}`;
        case 'list':
            return shape.of.is === 'nothing' ? 'a list of names' : `one or more, with commas between them: ${valueInWords(shape.of)}`;
        case 'either':
            return shape.of.map(valueInWords).join('; or ');
        case 'block':
            return 'properties in braces';
        case 'nothing':
            return '';
    }
}

function quantityInWords(name: vocabulary.DimensionName): string {
    return name === 'none' ? 'a plain number' : describeDimension(dimension[name]);
}

function plural(quantity: string): string {
    return `${quantity.replace(/^an? /, '')}s`;
}

function wordsOf(words: readonly string[]): string {
    return words.map((word) => `\`${word}\``).join(', ');
}

function named(kind: string): string {
    return kind === 'goods' || kind === 'species' ? kind : `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;
}
