/** The table of offsets: the depth of curved parts at even steps from both ends. */
import type { Casework } from '../casework/index.js';
import { bevelledFront, type Offset, offsetsFrom, type TemplateShape, templateShapes } from '../drawing/index.js';
import { sameLength } from '../geometry/index.js';
import type { DocumentOptions } from './document-options.js';
import { onlyBuilt } from './only-built.js';
import { lengthAmount, lengthInWords, type PrintStyle, printStyle } from './print-style.js';
import { projectFacts } from './project-facts.js';
import type { Cell, Group, Row, Sheet } from './sheet.js';
import { offsetSpacing, servedInWords } from './template-words.js';

/** The offsets of all that is built; undefined where no flat part follows a curve. */
export function offsetTable(evaluated: Casework, options: Pick<DocumentOptions, 'units' | 'spacing'>): Sheet | undefined {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const shapes = templateShapes(casework);
    if (shapes.length === 0) return undefined;
    const unit = print.sizeUnit;
    return {
        kind: 'offsets',
        title: 'Offsets',
        facts: projectFacts(casework, print),
        columns: [
            { key: 'low', heading: 'From the bottom or left', unit, align: 'left' },
            { key: 'high', heading: 'From the top or right', unit, align: 'left' },
            { key: 'finished', heading: 'Finished', unit, align: 'left' },
            { key: 'core', heading: 'Core', unit, align: 'left' },
        ],
        groups: shapes.flatMap((shape) => groupsOf(shape, casework, print, offsetSpacing(print.system, options))),
        notes: [
            'Depths are from the finished back edge of the part, square to it, to the line.',
            'The finished line has its bands on; the core line is what the wood is cut to before. Nothing stands where bands take all of the core.',
        ],
    };
}

const ends = { height: { low: 'bottom', high: 'top' }, width: { low: 'left', high: 'right' } } as const;

function groupsOf(shape: TemplateShape, casework: Casework, print: PrintStyle, spacing: number): readonly Group[] {
    const called = `${shape.line.name}: ${servedInWords(shape, casework)}`;
    const stepsMeet = sameLength(shape.length, Math.round(shape.length / spacing) * spacing);
    const from = { low: offsetsFrom('low', shape, spacing), high: offsetsFrom('high', shape, spacing) };
    const isSymmetric = !stepsMeet && from.low.every((offset, index) => sameDepths(offset, from.high[index]));
    const both = stepsMeet ? ` or the ${ends[shape.over].high}` : isSymmetric ? `, and the same from the ${ends[shape.over].high}` : '';
    const heads = both === '' ? (['low', 'high'] as const) : (['low'] as const);
    return heads.map((end) => ({
        heading: `${called}, from the ${ends[shape.over][end]}${both}`,
        rows: from[end].map((offset) => rowOf(offset, shape, print)),
        notes: bevelNotes(shape, print),
    }));
}

function sameDepths(a: Offset, b: Offset | undefined): boolean {
    const isSame = (one: number | undefined, other: number | undefined) =>
        one === undefined || other === undefined ? one === other : sameLength(one, other);
    return b !== undefined && isSame(a.finished, b.finished) && isSame(a.core, b.core);
}

function rowOf({ along, finished, core }: Offset, { length }: TemplateShape, print: PrintStyle): Row {
    const row = { low: lengthCell(along, print), high: lengthCell(length - along, print), finished: lengthCell(finished, print) };
    return core === undefined ? row : { ...row, core: lengthCell(core, print) };
}

function lengthCell(millimetres: number, print: PrintStyle): Cell {
    return { is: 'amount', amount: lengthAmount(sameLength(millimetres, 0) ? 0 : millimetres, print) };
}

/** Of a bevelled front: which of its faces the depths are of, and its greatest and least bevel where it is curved both ways. */
function bevelNotes({ parts, over }: TemplateShape, print: PrintStyle): readonly string[] {
    const [part] = parts;
    const bevelled = part && bevelledFront(part);
    if (!bevelled) return [];
    const { deeper, shallower, behind } = bevelled;
    const faces = `The edge is bevelled: depths are those of the ${deeper} face; the ${shallower} one is ${lengthInWords(behind, print)} less deep all along.`;
    const along = part.front?.along;
    if (!along) return [faces];
    const [least, greatest] = [along.least, along.greatest].map(
        ({ degrees, at }) => `${degrees.toFixed(1)} degrees at ${lengthInWords(at, print)}`,
    );
    return [faces, `Square to the edge the bevel is ${least} at the least, and ${greatest} from the ${ends[over].low} at the most.`];
}
