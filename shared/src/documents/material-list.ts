/**
 * The list of materials: what the pieces and joints of all that is built take, by area, length, volume and count.
 *
 * Amounts are those of the rough pieces, with nothing for kerfs, planing, defects or the way pieces fit on a sheet: it is no layout, and
 * says so.
 */
import type { Casework, Measure, Piece, Thing } from '../casework/index.js';
import { type Quantity, quantity, Rational, type Real, real, sayMeasure } from '../quantity/index.js';
import { areaOf, isSolidWood, roughThickness, sheetSizes, thingName, times, total, volumeOf } from '../strength/index.js';
import type { DocumentOptions } from './document-options.js';
import { countFasteners, gluedJoints } from './fastener-count.js';
import { materialDetails } from './material-words.js';
import { onlyBuilt } from './only-built.js';
import { piecesByMaterial } from './pieces-by-material.js';
import { asBought, type PrintStyle, printStyle, sizeAmount, totalCell } from './print-style.js';
import { projectFacts } from './project-facts.js';
import { type Cell, type Column, type Group, type Row, type Sheet, textCell } from './sheet.js';

/** One material and the pieces cut from it. */
interface Stock {
    readonly id: string;
    readonly material: Thing | undefined;
    readonly pieces: readonly Piece[];
}

/** The materials and fasteners of all that is built. */
export function materialList(evaluated: Casework, options: Pick<DocumentOptions, 'units'>): Sheet {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const stocks = stocksOf(casework);
    const isSolid = ({ material }: Stock) => material !== undefined && isSolidWood(material);
    const groups = [
        panelGroup(
            stocks.filter((stock) => !isSolid(stock)),
            casework,
            print,
        ),
        solidGroup(stocks.filter(isSolid), casework, print),
        fastenerGroup(casework, print),
    ];
    return {
        kind: 'materials',
        title: 'List of materials',
        facts: projectFacts(casework, print),
        columns: columns(print),
        groups: groups.filter((group) => group.rows.length > 0),
        notes: notesOf(casework),
    };
}

function columns(print: PrintStyle): readonly Column[] {
    return [
        { key: 'group', heading: 'Group', align: 'left', saidByGroup: true },
        { key: 'item', heading: 'Item', align: 'left' },
        { key: 'details', heading: 'Details', align: 'left' },
        { key: 'section', heading: 'Width x thickness', unit: print.sizeUnit, align: 'left' },
        { key: 'pieces', heading: 'Pieces', align: 'right' },
        { key: 'count', heading: 'Count', align: 'right' },
        { key: 'length', heading: 'Length', unit: print.runUnit, align: 'right' },
        { key: 'area', heading: 'Area', unit: print.areaUnit, align: 'right' },
        { key: 'volume', heading: 'Volume', unit: print.volumeUnit, align: 'right' },
        { key: 'sheet', heading: 'Sheet', align: 'left' },
        { key: 'sheets', heading: 'Sheets by area, at least', align: 'right' },
        { key: 'use', heading: 'For', align: 'left' },
        { key: 'notes', heading: 'Notes', align: 'left' },
    ];
}

function stocksOf(casework: Casework): readonly Stock[] {
    return piecesByMaterial(casework).map(([id, pieces]) => ({ id, material: casework.things.get(id), pieces }));
}

function notesOf(casework: Casework): readonly string[] {
    const notes = [
        'Amounts are for all that is built, at the rough sizes of the cut list. Nothing is added for kerfs, planing, defects or waste.',
    ];
    const without = countOf(casework.pieces.filter((piece) => piece.material === undefined));
    if (without > 0) notes.push(`Not counted, because their material is not known: ${without} ${without === 1 ? 'piece' : 'pieces'}.`);
    return notes;
}

function countOf(pieces: readonly Piece[]): number {
    return pieces.reduce((sum, piece) => sum + piece.quantity, 0);
}

/** The uses of pieces, in the order in which they are built: `layers, bands`. */
function usesInWords(pieces: readonly Piece[]): string {
    const words = { core: 'panels', layer: 'layers', band: 'bands', nosing: 'nosings', solid: 'boards' } as const;
    return [...new Set(pieces.map((piece) => words[piece.role]))].join(', ');
}

// ---------------------------------------------------------------- sheets

function panelGroup(stocks: readonly Stock[], casework: Casework, print: PrintStyle): Group {
    const heading = 'Sheets';
    const rows = stocks.map(({ id, material, pieces }): Row => {
        const area = total(pieces.map((piece) => times(areaOf(piece.rough), piece.quantity)));
        const [first, ...others] = sheetSizes(material);
        const stated: Row = {
            group: textCell(heading),
            item: textCell(thingName(casework, id)),
            details: textCell(materialDetails(material, print)),
            pieces: { is: 'count', count: countOf(pieces) },
            area: totalCell(area, print.areaUnit, 2),
            use: textCell(usesInWords(pieces)),
        };
        if (!first) return stated;
        const atLeast = (sheet: readonly [Measure, Measure]) => area && sheetsByArea(area, sheet);
        return {
            ...stated,
            sheet: textCell(sheetInWords(first, print)),
            sheets: countCell(atLeast(first)),
            notes: textCell(others.map((sheet) => `or ${atLeast(sheet) ?? '?'} of ${sheetInWords(sheet, print)}`).join(', ')),
        };
    });
    return {
        heading,
        rows,
        notes: [
            'The count of sheets is the area of the pieces over the area of a sheet, rounded up. It is not a layout: pieces that do not fit side by side take more.',
        ],
    };
}

function sheetInWords([width, length]: readonly [Measure, Measure], print: PrintStyle): string {
    return `${asBought(width, print)} x ${asBought(length, print)}`;
}

/** Above a whole number by less than this part, an approximate count of sheets is that whole number. */
const sheetTolerance = 1e-9;

/** How many sheets have at least an area; undefined for a sheet without an area. */
function sheetsByArea(area: Quantity, [width, length]: readonly [Measure, Measure]): number | undefined {
    const sheets = quantity.divide(area, quantity.multiply(width.quantity, length.quantity))?.value;
    if (sheets === undefined) return undefined;
    return real.toNumber(real.ceiling(typeof sheets === 'number' ? sheets - sheetTolerance : sheets));
}

function countCell(count: number | undefined): Cell {
    return count === undefined ? { is: 'unknown' } : { is: 'count', count };
}

// ---------------------------------------------------------------- solid wood

function solidGroup(stocks: readonly Stock[], casework: Casework, print: PrintStyle): Group {
    const heading = 'Solid wood';
    const decimals = print.system === 'inch' ? { length: 1, volume: 2 } : { length: 2, volume: 4 };
    const rows: Row[] = [];
    const notes: string[] = [];
    for (const stock of stocks) {
        const volumes: (Quantity | undefined)[] = [];
        for (const pieces of bySection(stock.pieces)) {
            const length = total(pieces.map((piece) => times(piece.rough.length?.quantity, piece.quantity)));
            const volume = total(pieces.map((piece) => times(boughtVolume(piece, stock.material), piece.quantity)));
            volumes.push(volume);
            rows.push({
                group: textCell(heading),
                item: textCell(thingName(casework, stock.id)),
                details: textCell(materialDetails(stock.material, print)),
                section: textCell(sectionInWords(pieces[0]!, print)),
                pieces: { is: 'count', count: countOf(pieces) },
                length: totalCell(length, print.runUnit, decimals.length),
                volume: totalCell(volume, print.volumeUnit, decimals.volume),
                use: textCell(usesInWords(pieces)),
            });
        }
        const cell = totalCell(total(volumes), print.volumeUnit, decimals.volume);
        const sum = cell.is === 'amount' ? `${cell.amount.printed.text} ${print.volumeUnit.symbol}` : 'not known';
        notes.push(`${thingName(casework, stock.id)} in all: ${sum}.`);
    }
    notes.push('Boards count at the rough thickness of their material where it is stated, bands and nosings at their own.');
    if (print.system === 'inch') notes.push('One bdft (board foot) is 144 cubic inches.');
    return { heading, rows, notes };
}

/** Pieces of one rough width and thickness, the largest section first. */
function bySection(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
    const sections = new Map<string, Piece[]>();
    for (const piece of pieces) {
        const key = `${exactText(piece.rough.thickness)} x ${exactText(piece.rough.width)}`;
        const known = sections.get(key);
        if (known) known.push(piece);
        else sections.set(key, [piece]);
    }
    const byThickness = (piece: Piece) => piece.rough.thickness?.quantity.value ?? Rational.zero;
    const byWidth = (piece: Piece) => piece.rough.width?.quantity.value ?? Rational.zero;
    return [...sections.values()].sort(
        ([a], [b]) => real.compare(byThickness(b!), byThickness(a!)) || real.compare(byWidth(b!), byWidth(a!)),
    );
}

function exactText(measure: Measure | undefined): string {
    const value: Real | undefined = measure?.quantity.value;
    return value === undefined ? '?' : value.toString();
}

function sectionInWords({ rough }: Piece, print: PrintStyle): string {
    const say = (measure: Measure | undefined) => (measure ? sayMeasure(sizeAmount(measure, print).printed) : '?');
    return `${say(rough.width)} x ${say(rough.thickness)}`;
}

/** The wood a board is planed from, or a strip's own. */
function boughtVolume(piece: Piece, material: Thing | undefined): Quantity | undefined {
    const thickness = piece.role === 'solid' ? roughThickness(material) : undefined;
    const area = areaOf(piece.rough);
    return thickness && area ? quantity.multiply(area, thickness) : volumeOf(piece.rough);
}

// ---------------------------------------------------------------- fasteners and glue

function fastenerGroup(casework: Casework, print: PrintStyle): Group {
    const heading = 'Fasteners and glue';
    const fasteners = countFasteners(casework, print);
    const rows = fasteners.map(
        ({ name, count, joints }): Row => ({
            group: textCell(heading),
            item: textCell(name),
            count: countCell(count),
            use: textCell(joints.join(', ')),
        }),
    );
    const glued = gluedInWords(casework);
    if (glued !== '') rows.push({ group: textCell(heading), item: textCell('glue'), use: textCell(glued) });
    return { heading, rows, notes: fasteners.length === 0 ? [] : [spacingNote] };
}

const spacingNote =
    'Where a joint gives a spacing, no two fasteners are farther apart, half a space or the inset stated is left at each end, and there are at least two.';

/** What is glued: joints by their names, bands and nosings, layers. */
function gluedInWords(casework: Casework): string {
    const roles = new Set(casework.pieces.map((piece) => piece.role));
    const strips = [roles.has('band') ? 'bands' : '', roles.has('nosing') ? 'nosings' : '', roles.has('layer') ? 'layers' : ''];
    return [...gluedJoints(casework), ...strips].filter((word) => word !== '').join(', ');
}
