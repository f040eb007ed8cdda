// What a value that does not fit is told. Knows shapes in words: not how they are compared.
import type { Expression as DesignExpression, vocabulary } from 'casewright-shared/casework';
import { describeDimension, dimension } from 'casewright-shared/quantity';
import type { FileLowering } from './file-lowering.js';
import { describeName, listKinds } from './unknown-names.js';
import { listWords } from './words.js';

type Shape = vocabulary.Shape;

/** What asks for a value, for messages: `width`, `width 40in`. */
export interface Asking {
    readonly name: string;
    readonly example: string;
    readonly shape: Shape;
}

/** Whether a value of this sort is among those that a shape takes. */
export function takes(shape: Shape, is: Shape['is']): boolean {
    return (
        shape.is === is || (shape.is === 'either' && shape.of.some((one) => takes(one, is))) || (shape.is === 'list' && takes(shape.of, is))
    );
}

/** What is asked for, in words: `a length`, `a text in quotes`. */
export function describeShape(shape: Shape): string {
    switch (shape.is) {
        case 'quantity':
            return describeDimension(dimension[shape.dimension]);
        case 'count':
            return 'a whole number';
        case 'sizes':
            return `${shape.count === 2 ? 'two' : shape.count === 3 ? 'three' : shape.count} sizes with \`x\` between them`;
        case 'sizeByLength':
            return 'a size and a length, such as `#8 x 1 1/4in` or `4mm x 40mm`';
        case 'dimensions':
            return `sizes, each with ${listWords(shape.words)}`;
        case 'interval':
            return 'two measures with `to` between them';
        case 'shares':
            return `lengths and shares, such as ${listWords(['14in, rest', 'equal'])}`;
        case 'text':
            return 'a text in quotes';
        case 'truth':
            return '`yes` or `no`';
        case 'tradeSize':
            return 'a trade size, such as `#8`';
        case 'choice':
            return listWords(shape.of);
        case 'thing':
            return listKinds(shape.kinds);
        case 'both':
            return `two ${shape.kind}s with \`+\` between them`;
        case 'rate':
            return `a ${shape.of === 'money' ? 'price' : shape.of} per ${listWords(shape.per, 'or', 4)}`;
        case 'worded':
            return `${listWords(shape.words)} and ${describeShape(shape.value)}`;
        case 'points':
            return `${listWords(shape.words)} and ${shape.most === 1 ? 'a depth at its place' : 'depths, each at its place'}`;
        case 'list':
            return describeShape(shape.of);
        case 'either':
            return [...new Set(shape.of.map(describeShape))].join(', or ');
        case 'newName':
            return 'a name';
        case 'block':
            return 'properties in braces';
        case 'nothing':
            return 'nothing after it';
    }
}

function describeFound(file: FileLowering, value: DesignExpression): string {
    switch (value.is) {
        case 'name': {
            const name = file.nameOf(value.id);
            return name ? `\`${name.name}\`, ${describeName(name)}` : `\`${value.name}\``;
        }
        case 'word':
            return value.word.includes(' ') ? `\`${value.word}\`` : `the word \`${value.word}\``;
        case 'text':
            return 'a text';
        default:
            return `\`${file.text.slice(value.span.start, value.span.end)}\``;
    }
}

/** `arc out -2in` is `arc in 2in`. */
function otherWay({ name, shape }: Asking, at: DesignExpression): string | undefined {
    if (at.is !== 'binary' || at.operator !== '-' || at.left.is !== 'word' || at.right.is !== 'measure' || !takes(shape, 'worded')) {
        return undefined;
    }
    const other = { out: 'in', in: 'out' }[at.left.word];
    return other && `write \`${name} ${other} ${at.right.text}\`: the word says which way, and the length is above zero`;
}

export function reportMisfit(file: FileLowering, asking: Asking, at: DesignExpression): void {
    const found = describeFound(file, at);
    const needed = describeShape(asking.shape);
    const quotes = takes(asking.shape, 'text') && at.is !== 'text' ? `"${file.text.slice(at.span.start, at.span.end)}"` : undefined;
    file.report('NAM-007', at.span, {
        message:
            asking.shape.is === 'nothing'
                ? `\`${asking.name}\` takes no value; here stands ${found}`
                : `\`${asking.name}\` needs ${needed}; here stands ${found}`,
        hint: quotes ? `write \`${quotes}\`` : (otherWay(asking, at) ?? `write it so: \`${asking.example}\``),
        found,
        needed,
        ...(quotes ? { fix: { title: `write ${quotes}`, span: at.span, text: quotes, safe: false } } : {}),
    });
}

/** The units in which each dimension is usually written, in the two systems. */
const usualUnits: Readonly<Record<vocabulary.DimensionName, readonly [string, string]>> = {
    none: ['', ''],
    length: ['in', 'mm'],
    area: [' ft2', ' m2'],
    volume: [' ft3', ' m3'],
    mass: ['lb', 'kg'],
    time: [' minutes', ' hours'],
    angle: ['deg', 'rad'],
    force: [' lbf', ' N'],
    pressure: [' psi', ' MPa'],
    areaLoad: [' lb/ft2', ' kg/m2'],
    lineLoad: [' lb/ft', ' kg/m'],
    density: [' lb/ft3', ' kg/m3'],
};

export function reportMissingUnit(file: FileLowering, shape: Shape, at: DesignExpression): void {
    const needed = dimensionNeeded(shape) ?? 'length';
    const text = file.text.slice(at.span.start, at.span.end);
    const [inch, metric] = usualUnits[needed];
    if (shape.is === 'sizeByLength' && /^[0-9]+$/.test(text)) {
        file.report('UNI-001', at.span, {
            message: `\`${text}\` has no unit: a size of screw by its number is written with \`#\``,
            hint: `write \`#${text}\` or \`${text}mm\``,
            found: 'a plain number',
            needed: describeShape(shape),
            fix: { title: `write \`#${text}\``, span: at.span, text: `#${text}`, safe: false },
        });
        return;
    }
    const written = text.includes('/') ? `\`${text}${inch}\`` : `\`${text}${inch}\` or \`${text}${metric}\``;
    const article = describeDimension(dimension[needed]);
    file.report('UNI-001', at.span, {
        message: `\`${text}\` has no unit: ${article} is needed here`,
        hint: `write ${written}`,
        found: 'a plain number',
        needed: article,
    });
}

function dimensionNeeded(shape: Shape): vocabulary.DimensionName | undefined {
    switch (shape.is) {
        case 'quantity':
        case 'sizes':
        case 'dimensions':
        case 'interval':
            return shape.dimension;
        case 'points':
            return 'length';
        case 'worded':
            return dimensionNeeded(shape.value);
        case 'list':
            return dimensionNeeded(shape.of);
        case 'either':
            return shape.of.map(dimensionNeeded).find((found) => found !== undefined && found !== 'none');
        default:
            return undefined;
    }
}
