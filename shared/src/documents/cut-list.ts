/**
 * The cut list: what to cut from which material, one row for the pieces that are truly identical.
 *
 * Identical is what the casework calls alike, by exact sizes: a shelf that is 1/32in shallower than its neighbour has a row of its
 * own, also where both print the same. So sizes are not rounded together here; each says by itself when it is full or shy.
 */
import type { Casework, Measure, Piece, Words } from '../casework/index.js';
import { quantity } from '../quantity/index.js';
import { thingName } from '../strength/index.js';
import type { DocumentOptions } from './document-options.js';
import { edgesInWords } from './edge-words.js';
import { materialInWords, materialOrder } from './material-words.js';
import { onlyBuilt } from './only-built.js';
import { namesInWords, nameWithinPart, partNamer } from './part-names.js';
import { alikePieces } from './pieces-by-material.js';
import { inWords, type PrintStyle, printStyle, sizeCell } from './print-style.js';
import { projectFacts } from './project-facts.js';
import { type Cell, type Column, type Group, type Row, type Sheet, sizeDirections, textCell } from './sheet.js';

/** Pieces that are one row, in the order in which they were built. */
interface Batch {
    readonly first: Piece;
    readonly pieces: readonly Piece[];
}

/** The cut list of all that is built. */
export function cutList(evaluated: Casework, options: Pick<DocumentOptions, 'units'>): Sheet {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const batches = alikePieces(casework.pieces)
        .map((pieces): Batch => ({ first: pieces[0]!, pieces }))
        .sort(inShopOrder(casework));
    return {
        kind: 'cut-list',
        title: 'Cut list',
        facts: projectFacts(casework, print),
        columns: columns(print),
        groups: groupsOf(batches, casework, print),
        notes: [
            'Quantities are for all that is built.',
            'Sizes are length x width x thickness. Rough is what to cut first, core is without bands and nosings, finished is as delivered.',
            'Edges are in the order of work.',
        ],
    };
}

function columns(print: PrintStyle): readonly Column[] {
    const unit = print.sizeUnit;
    return [
        { key: 'parts', heading: 'Part', align: 'left' },
        { key: 'piece', heading: 'Piece', align: 'left' },
        { key: 'quantity', heading: 'Quantity', align: 'right' },
        { key: 'material', heading: 'Material', align: 'left', saidByGroup: true },
        { key: 'finished', heading: 'Finished', unit, align: 'left' },
        { key: 'core', heading: 'Core', unit, align: 'left' },
        { key: 'rough', heading: 'Rough', unit, align: 'left' },
        { key: 'grain', heading: 'Grain', align: 'left' },
        { key: 'hand', heading: 'Hand', align: 'left' },
        { key: 'edges', heading: 'Edges', align: 'left' },
        { key: 'notes', heading: 'Notes', align: 'left' },
    ];
}

/** By material, then the thickest, the longest and the widest first; what is equal stays in the order it was built. */
function inShopOrder(casework: Casework): (a: Batch, b: Batch) => number {
    const order = materialOrder(casework);
    return ({ first: a }, { first: b }) =>
        order(a.material, b.material) ||
        largestFirst(a.rough.thickness, b.rough.thickness) ||
        largestFirst(a.rough.length, b.rough.length) ||
        largestFirst(a.rough.width, b.rough.width);
}

/** Unknown sizes come last. */
function largestFirst(a: Measure | undefined, b: Measure | undefined): number {
    if (!a || !b) return a ? -1 : b ? 1 : 0;
    return quantity.compare(b.quantity, a.quantity) ?? 0;
}

/** One group for each material, in the order of the batches. */
function groupsOf(batches: readonly Batch[], casework: Casework, print: PrintStyle): readonly Group[] {
    const nameOf = partNamer(casework);
    const rows = batches.map((batch) => rowOf(batch, casework, print, nameOf));
    const byMaterial = new Map<string | undefined, Row[]>();
    batches.forEach((batch, index) => {
        const row = warnOfLookalike(index, batches, rows);
        const known = byMaterial.get(batch.first.material);
        if (known) known.push(row);
        else byMaterial.set(batch.first.material, [row]);
    });
    return [...byMaterial].map(([material, rows]) => ({ heading: materialInWords(casework, material, print), rows, notes: [] }));
}

function rowOf({ first, pieces }: Batch, casework: Casework, print: PrintStyle, nameOf: (path: string) => string): Row {
    return {
        parts: textCell(namesInWords(pieces.map((piece) => nameOf(piece.part)))),
        piece: textCell(eachOnce(pieces.map((piece) => nameWithinPart(piece, casework))).join(', ')),
        quantity: { is: 'count', count: pieces.reduce((sum, piece) => sum + piece.quantity, 0) },
        material: textCell(first.material === undefined ? '' : thingName(casework, first.material)),
        finished: sizeCell(first.finished, print),
        core: sizeCell(first.core, print),
        rough: sizeCell(first.rough, print),
        grain: textCell(first.grain === 'none' ? '' : `along ${first.grain}`),
        hand: textCell(first.hand ?? ''),
        edges: textCell(edgesOfPiece(first, casework, print)),
        notes: textCell(eachOnce(pieces.flatMap((piece) => piece.notes.map((note) => noteInWords(note, print)))).join('; ')),
    };
}

function noteInWords(note: Words, print: PrintStyle): string {
    return note.map((word) => (typeof word === 'string' ? word : inWords(word, print))).join('');
}

/**
 * The edges of a piece that is the part; a band or nosing is itself the treatment of an edge. Of layers they are those of all as one, and
 * are said with the first.
 */
function edgesOfPiece(piece: Piece, casework: Casework, print: PrintStyle): string {
    if (piece.role === 'band' || piece.role === 'nosing') return '';
    const part = casework.parts.get(piece.part);
    if (piece.role !== 'layer') return edgesInWords(part?.edges ?? [], casework, print);
    const isFirst = casework.pieces.find((other) => other.part === piece.part && other.role === 'layer') === piece;
    return isFirst && part && part.edges.length > 0 ? `after the glue-up: ${edgesInWords(part.edges, casework, print)}` : '';
}

function eachOnce(texts: readonly string[]): readonly string[] {
    return [...new Set(texts)];
}

// ---------------------------------------------------------------- rows that print the same and are not

/** The row, with a word of warning where an earlier one prints the same sizes and its pieces are a little larger or smaller. */
function warnOfLookalike(index: number, batches: readonly Batch[], rows: readonly Row[]): Row {
    const row = rows[index]!;
    const earlier = rows.findIndex((other, at) => at < index && printsTheSame(other, row) && !sameSizes(batches[at]!, batches[index]!));
    const before = rows[earlier]?.parts;
    if (before?.is !== 'text') return row;
    const warning = `not the same as ${before.text}: they differ by less than is printed`;
    const notes = row.notes?.is === 'text' && row.notes.text !== '' ? `${warning}; ${row.notes.text}` : warning;
    return { ...row, notes: { is: 'text', text: notes } };
}

const stages = ['finished', 'core', 'rough'] as const;
const seen = ['material', 'piece', 'grain', 'hand', 'edges', ...stages] as const;

function printsTheSame(a: Row, b: Row): boolean {
    return seen.every((key) => printed(a[key]) === printed(b[key]));
}

function printed(cell: Cell | undefined): string {
    if (cell?.is === 'text') return cell.text;
    if (cell?.is !== 'size') return '';
    return sizeDirections.map((direction) => `${cell[direction]?.printed.text} ${cell[direction]?.printed.off}`).join(' x ');
}

function sameSizes({ first: a }: Batch, { first: b }: Batch): boolean {
    return stages.every((stage) => sizeDirections.every((direction) => sameMeasure(a[stage][direction], b[stage][direction])));
}

function sameMeasure(a: Measure | undefined, b: Measure | undefined): boolean {
    return a && b ? quantity.compare(a.quantity, b.quantity) === 0 : a === b;
}
