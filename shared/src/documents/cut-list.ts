/**
 * The cut list: what to cut from which material, one row for the pieces that are truly identical.
 *
 * Identical is what the casework calls alike, by exact sizes: a shelf that is 1/32in shallower than its neighbour has a row of its
 * own, also where both print the same. So sizes are not rounded together here; each says by itself when it is full or shy.
 */
import type { Casework, Measure, Piece } from '../casework/index.js';
import { quantity } from '../quantity/index.js';
import type { DocumentOptions } from './document-options.js';
import { edgesInWords } from './edge-words.js';
import { materialInWords, materialOrder } from './material-words.js';
import { namesInWords, partNamer } from './part-names.js';
import { type PrintStyle, printStyle, sizeCell } from './print-style.js';
import { projectFacts } from './project-facts.js';
import type { Cell, Column, Group, Row, Sheet } from './sheet.js';
import { thingName } from './thing-values.js';

/** Pieces that are one row, in the order in which they were built. */
interface Batch {
    readonly first: Piece;
    readonly pieces: readonly Piece[];
}

/** The cut list of all that is built. */
export function cutList(casework: Casework, options: DocumentOptions): Sheet {
    const print = printStyle(casework, options);
    const batches = batchesOf(casework.pieces).sort(inShopOrder(casework));
    return {
        kind: 'cut-list',
        title: 'Cut list',
        facts: projectFacts(casework, print),
        columns: columns(print),
        groups: groupsOf(batches, casework, print),
        notes: [
            'Quantities are for all that is built.',
            'Sizes are length x width x thickness; the length of a sheet piece lies along the grain unless its row says otherwise.',
            'Rough is what to cut first, core is without bands and nosings, finished is as delivered.',
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

function batchesOf(pieces: readonly Piece[]): Batch[] {
    const batches = new Map<string, Piece[]>();
    for (const piece of pieces) {
        const known = batches.get(piece.alike);
        if (known) known.push(piece);
        else batches.set(piece.alike, [piece]);
    }
    return [...batches.values()].map((alike) => ({ first: alike[0]!, pieces: alike }));
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
    const byMaterial = new Map<string | undefined, Row[]>();
    for (const batch of batches) {
        const row = rowOf(batch, casework, print, nameOf);
        const rows = byMaterial.get(batch.first.material);
        if (rows) rows.push(row);
        else byMaterial.set(batch.first.material, [row]);
    }
    return [...byMaterial].map(([material, rows]) => ({ heading: materialInWords(casework, material, print), rows, notes: [] }));
}

function rowOf({ first, pieces }: Batch, casework: Casework, print: PrintStyle, nameOf: (path: string) => string): Row {
    const texts = {
        parts: namesInWords(pieces.map((piece) => nameOf(piece.part))),
        piece: inWordsOnce(pieces.map((piece) => piece.name)),
        material: first.material === undefined ? '' : thingName(casework, first.material),
        grain: first.grain === 'none' ? '' : `along ${first.grain}`,
        hand: first.hand ?? '',
        edges: edgesOfPiece(first, casework, print),
        notes: inWordsOnce(pieces.flatMap((piece) => piece.notes)),
    };
    const cells: Record<string, Cell> = {
        quantity: { is: 'count', count: pieces.reduce((sum, piece) => sum + piece.quantity, 0) },
    };
    for (const [key, text] of Object.entries(texts)) cells[key] = { is: 'text', text };
    for (const stage of ['finished', 'core', 'rough'] as const) cells[stage] = sizeCell(first[stage], print);
    return cells;
}

/** The edges of a piece that is the part or a layer of it; a band or nosing is itself the treatment of an edge. */
function edgesOfPiece(piece: Piece, casework: Casework, print: PrintStyle): string {
    const isStrip = piece.role === 'band' || piece.role === 'nosing';
    return isStrip ? '' : edgesInWords(casework.parts.get(piece.part)?.edges ?? [], casework, print);
}

/** Texts, each once, in their order. */
function inWordsOnce(texts: readonly string[]): string {
    return [...new Set(texts)].join('; ');
}
