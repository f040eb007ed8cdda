/** What is cut at the saw, sheet by sheet or board by board: the cuts in their order as a table, and each layout drawn. */
import { type Drawing, type LayoutPicture, layoutDrawing } from '../../drawing/index.js';
import type { LaidOutSheet, Piece } from '../../stock/index.js';
import { lengthAmount, lengthInWords, type PrintStyle } from '../print-style.js';
import { type Cell, type Column, type Group, type Row, textCell } from '../sheet.js';
import { cuttingSequence, type SawResult, type SawStep } from './cutting-sequence.js';
import { jobUnitsPerMillimetre } from './sheet-jobs.js';

/** Sheets that are cut alike. */
export interface Pattern {
    readonly sheet: LaidOutSheet;
    readonly count: number;
}

/** The layouts of one material, with how its pieces and its stock are called. */
export interface SawWork {
    readonly material: string;
    readonly noun: 'sheet' | 'board';
    readonly patterns: readonly Pattern[];
    /** By blank: what it is for. */
    readonly names: readonly string[];
    /** By stock size, the start of a sentence: `Sheet 48in x 96in`. */
    readonly stockInWords: readonly string[];
    /** By stock size: what is taken off each edge beforehand, and drawn, in millimetres; nothing where it has none. */
    readonly trims: readonly number[];
    readonly hasGrain: boolean;
    readonly print: PrintStyle;
}

/** Sheets by how they are cut, in the order of the first of each. */
export function patternsOf(sheets: readonly LaidOutSheet[]): readonly Pattern[] {
    const patterns = new Map<string, { sheet: LaidOutSheet; count: number }>();
    for (const sheet of sheets) {
        const key = JSON.stringify(sheet);
        const known = patterns.get(key);
        if (known) known.count++;
        else patterns.set(key, { sheet, count: 1 });
    }
    return [...patterns.values()];
}

export function count(number: number): Cell {
    return { is: 'count', count: number };
}

export const millimetres = (units: number): number => units / jobUnitsPerMillimetre;

/** The columns that the cuts stand in, after those of the group. */
export function cutColumns(print: PrintStyle): readonly Column[] {
    return [
        { key: 'step', heading: 'Cut', align: 'right' },
        { key: 'from', heading: 'From', align: 'left' },
        { key: 'direction', heading: 'Grain', align: 'left' },
        { key: 'fence', heading: 'Fence', unit: print.sizeUnit, align: 'right' },
        { key: 'times', heading: 'Times', align: 'right' },
    ];
}

/** The cuts of each pattern, a group for each. */
export function cutGroups(work: SawWork): readonly Group[] {
    return work.patterns.map((pattern, index) => cutsGroup(work, pattern, index));
}

function cutsGroup(work: SawWork, { sheet }: Pattern, index: number): Group {
    const heading = `${work.material}: ${patternName(work, index)}`;
    const rows = cuttingSequence(sheet.whole).map(
        (step): Row => ({
            group: textCell(heading),
            step: count(step.number),
            from: textCell(startOf(step, work)),
            direction: textCell(step.direction),
            fence: { is: 'amount', amount: lengthAmount(millimetres(step.fence), work.print) },
            times: count(step.times),
            gives: textCell(givesInWords(step)),
            left: textCell(leftInWords(step, work.print)),
        }),
    );
    return { heading, rows, notes: [] };
}

function startOf({ from }: SawStep, { noun }: SawWork): string {
    return from === 'sheet' ? `the ${noun}` : from;
}

function patternName({ patterns, noun }: SawWork, index: number): string {
    const number = (some: readonly Pattern[]) => some.reduce((sum, pattern) => sum + pattern.count, 0);
    const [before, alike] = [number(patterns.slice(0, index)), patterns[index]!.count];
    const of = `of ${number(patterns)}`;
    return alike === 1 ? `${noun} ${before + 1} ${of}` : `${noun}s ${before + 1} to ${before + alike} ${of}, all alike`;
}

function nameOfResult(result: SawResult): string {
    return 'letter' in result ? result.letter : `piece ${result.blank + 1}`;
}

/** `2 x piece 7, A, B`: blanks by their marks, pieces that are cut further by their letters. */
function givesInWords({ gives }: SawStep): string {
    const counts = new Map<string, number>();
    for (const result of gives) {
        const name = nameOfResult(result);
        counts.set(name, (counts.get(name) ?? 0) + 1);
    }
    return [...counts].map(([name, times]) => (times === 1 ? name : `${times} x ${name}`)).join(', ');
}

/** Narrower than this an offcut is not spoken of, in millimetres. */
const leastOffcut = 25;

function leftInWords({ left }: SawStep, print: PrintStyle): string {
    if (!left) return '';
    if (!('offcut' in left)) return nameOfResult(left);
    const { offcut } = left;
    return millimetres(Math.min(offcut.width, offcut.height)) < leastOffcut ? '' : sizeInWords(offcut, print);
}

/**
 * Along the grain first.
 * @param rounding `down` for what is left over, of which no more may be promised than there is
 */
function sizeInWords(
    { width, height }: { width: number; height: number },
    print: PrintStyle,
    rounding: 'nearest' | 'down' = 'down',
): string {
    return `${lengthInWords(millimetres(height), print, rounding)} x ${lengthInWords(millimetres(width), print, rounding)}`;
}

/** What a piece is cut into in the end: blanks and offcuts. */
function endsOf(piece: Piece): readonly Piece[] {
    return piece.kind === 'cut' ? piece.pieces.flatMap(endsOf) : [piece];
}

/** What share of the area of sheets is in blanks. */
export function usedShare(sheets: readonly LaidOutSheet[]): number {
    const area = (piece: { width: number; height: number }) => piece.width * piece.height;
    const blanks = sheets.flatMap(({ whole }) => endsOf(whole)).filter(({ kind }) => kind === 'blank');
    const whole = sheets.reduce((sum, sheet) => sum + area(sheet.whole), 0);
    return whole === 0 ? 0 : blanks.reduce((sum, blank) => sum + area(blank), 0) / whole;
}

/** `largest offcut 30in x 20in`; empty where there is none. */
export function largestOffcut(sheets: readonly LaidOutSheet[], print: PrintStyle): string {
    const offcuts = sheets.flatMap(({ whole }) => endsOf(whole)).filter(({ kind }) => kind === 'offcut');
    const largest = offcuts.sort((one, other) => other.width * other.height - one.width * one.height)[0];
    return largest ? `largest offcut ${sizeInWords(largest, print)}` : '';
}

/**
 * Each pattern by itself.
 * @param longestOnPaper in millimetres, where it does not go on a page
 */
export function sawDrawings(work: SawWork, longestOnPaper?: number): readonly Drawing[] {
    return work.patterns.map(({ sheet }, index) =>
        layoutDrawing({ ...pictureOf(work, sheet, index), ...(longestOnPaper === undefined ? {} : { longestOnPaper }) }),
    );
}

function pictureOf(work: SawWork, sheet: LaidOutSheet, index: number): LayoutPicture {
    const { print, names, material, hasGrain } = work;
    const edge = work.trims[sheet.stock] ?? 0;
    // The drawing has the grain from left to right: its x is our height.
    const turned = ({ x, y, width: across, height: along }: Piece) => ({
        x: edge + millimetres(y),
        y: edge + millimetres(x),
        width: millimetres(along),
        height: millimetres(across),
    });
    const sequence = cuttingSequence(sheet.whole);
    const ends = endsOf(sheet.whole);
    return {
        title: `${material}, ${patternName(work, index)}`,
        facts: [
            `${work.stockInWords[sheet.stock]}, ${Math.round(usedShare([sheet]) * 100)} % used. ${hasGrain ? 'Grain' : 'Length'} from left to right.`,
        ],
        sheet: { x: 0, y: 0, width: millimetres(sheet.whole.height) + 2 * edge, height: millimetres(sheet.whole.width) + 2 * edge },
        trim: edge,
        blanks: ends.flatMap((piece) =>
            piece.kind === 'blank'
                ? [
                      {
                          ...turned(piece),
                          mark: String(piece.blank + 1),
                          name: names[piece.blank] ?? '',
                          size: sizeInWords(piece, print, 'nearest'),
                      },
                  ]
                : [],
        ),
        offcuts: ends.flatMap((piece) => (piece.kind === 'offcut' ? [{ ...turned(piece), size: sizeInWords(piece, print) }] : [])),
        strips: sequence.flatMap(({ gives, pieces }) =>
            gives.flatMap((result, at) => ('letter' in result ? [{ ...turned(pieces[at]!), letter: result.letter }] : [])),
        ),
        cuts: sequence.flatMap(({ lines, number, direction }) =>
            lines.map(({ x, y, length: long }) => {
                const from = { x: edge + millimetres(y), y: edge + millimetres(x) };
                const to =
                    direction === 'along' ? { x: from.x + millimetres(long), y: from.y } : { x: from.x, y: from.y + millimetres(long) };
                return { from, to, number };
            }),
        ),
        steps: sequence.map((step) => stepInWords(step, work)),
    };
}

/** `3  A across the grain at 14 5/8in, 2 times: 2 x piece 7; 30in x 20in left` */
function stepInWords(step: SawStep, work: SawWork): string {
    const { hasGrain, print } = work;
    const times = step.times === 1 ? '' : `, ${step.times} times`;
    const left = leftInWords(step, print);
    return `${step.number}  ${startOf(step, work)}, ${step.direction} the ${hasGrain ? 'grain' : 'length'} at ${lengthInWords(millimetres(step.fence), print)}${times}: ${givesInWords(step)}${left === '' ? '' : `; ${left} left`}`;
}
