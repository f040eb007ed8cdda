/** Sheet layouts: how many sheets of each material, what comes from each, and the cuts in their order, as a table and drawn. */
import type { Casework } from '../../casework/index.js';
import { type Drawing, layoutDrawing } from '../../drawing/index.js';
import { type LaidOutSheet, layOutSheets, type Piece, type SheetLayout } from '../../stock/index.js';
import { thingName } from '../../strength/index.js';
import type { DocumentOptions } from '../document-options.js';
import { materialInWords } from '../material-words.js';
import { onlyBuilt } from '../only-built.js';
import { namesInWords, nameWithinPart, partNamer } from '../part-names.js';
import { asBought, lengthAmount, lengthInWords, type PrintStyle, printStyle } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import { type Cell, type Column, type Group, type Row, type Sheet, textCell } from '../sheet.js';
import type { ShopDocument } from '../shop-document.js';
import { cuttingSequence, type SawResult, type SawStep } from './cutting-sequence.js';
import { jobUnitsPerMillimetre, type MaterialJob, sheetJobs } from './sheet-jobs.js';

/** How often each layout is changed in search of a better one: a fraction of a second for a case. */
const steps = 6000;

/** Sheets that are cut alike. */
interface Pattern {
    readonly sheet: LaidOutSheet;
    readonly count: number;
}

/** A material laid out, with what its pieces are called. */
interface LaidOut {
    readonly of: MaterialJob;
    readonly layout: SheetLayout;
    readonly patterns: readonly Pattern[];
    /** By blank: the parts that it is for. */
    readonly names: readonly string[];
    readonly material: string;
    readonly print: PrintStyle;
}

/** The layouts of all that is built; undefined where nothing is cut from sheets. */
export function sheetLayouts(evaluated: Casework, options: Pick<DocumentOptions, 'units'>): ShopDocument | undefined {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const laidOut = sheetJobs(casework).map((of) => layOut(of, casework, print));
    if (laidOut.length === 0) return undefined;
    const sheet: Sheet = {
        kind: 'sheets',
        title: 'Sheet layouts',
        facts: projectFacts(casework, print),
        columns: columns(print),
        groups: laidOut.flatMap((one) => [
            sheetsGroup(one, casework),
            piecesGroup(one),
            ...one.patterns.map((pattern, index) => cutsGroup(one, pattern, index)),
        ]),
        notes: notesOf(casework, laidOut, print),
    };
    return { is: 'sheet', sheet, pages: { drawings: laidOut.flatMap(drawingsOf), units: print.system === 'inch' ? 'in' : 'mm' } };
}

function layOut(of: MaterialJob, casework: Casework, print: PrintStyle): LaidOut {
    const layout = layOutSheets(of.job, { steps });
    const nameOf = partNamer(casework);
    const names = of.pieces.map((pieces) => {
        const within = [...new Set(pieces.map((piece) => nameWithinPart(piece, casework)))].filter((name) => name !== '');
        return [namesInWords(pieces.map((piece) => nameOf(piece.part))), ...within].join(', ');
    });
    return { of, layout, patterns: patternsOf(layout), names, material: thingName(casework, of.material), print };
}

function patternsOf({ sheets }: SheetLayout): readonly Pattern[] {
    const patterns = new Map<string, { sheet: LaidOutSheet; count: number }>();
    for (const sheet of sheets) {
        const key = JSON.stringify(sheet);
        const known = patterns.get(key);
        if (known) known.count++;
        else patterns.set(key, { sheet, count: 1 });
    }
    return [...patterns.values()];
}

function columns(print: PrintStyle): readonly Column[] {
    return [
        { key: 'group', heading: 'Group', align: 'left', saidByGroup: true },
        { key: 'mark', heading: 'Mark', align: 'right' },
        { key: 'item', heading: 'What', align: 'left' },
        { key: 'step', heading: 'Cut', align: 'right' },
        { key: 'from', heading: 'From', align: 'left' },
        { key: 'direction', heading: 'Grain', align: 'left' },
        { key: 'fence', heading: 'Fence', unit: print.sizeUnit, align: 'right' },
        { key: 'times', heading: 'Times', align: 'right' },
        { key: 'count', heading: 'Count', align: 'right' },
        { key: 'along', heading: 'Along grain', unit: print.sizeUnit, align: 'right' },
        { key: 'across', heading: 'Across grain', unit: print.sizeUnit, align: 'right' },
        { key: 'used', heading: 'Used', align: 'right' },
        { key: 'gives', heading: 'Gives', align: 'left' },
        { key: 'left', heading: 'Then left', align: 'left' },
    ];
}

function count(number: number): Cell {
    return { is: 'count', count: number };
}

const millimetres = (units: number): number => units / jobUnitsPerMillimetre;

function sheetsGroup({ of, layout, material, print }: LaidOut, casework: Casework): Group {
    const heading = `${materialInWords(casework, of.material, print)}: sheets to take`;
    const rows = of.sizes.flatMap((size, stock): Row[] => {
        const taken = layout.sheets.filter((sheet) => sheet.stock === stock);
        if (taken.length === 0) return [];
        return [
            {
                group: textCell(heading),
                item: textCell(`sheet ${asBought(size[0], print)} x ${asBought(size[1], print)}`),
                count: count(taken.length),
                used: textCell(`${Math.round(usedShare(taken, of) * 100)} %`),
                left: textCell(largestOffcut(taken, print)),
            },
        ];
    });
    return { heading, rows, notes: proofOf(layout, of, material) };
}

/** What share of the sheets' area is in blanks. */
function usedShare(sheets: readonly LaidOutSheet[], { job }: MaterialJob): number {
    const area = (piece: { width: number; height: number }) => piece.width * piece.height;
    const blanks = sheets.flatMap(({ whole }) => all(whole)).filter(({ kind }) => kind === 'blank');
    const whole = sheets.reduce((sum, { stock }) => sum + area(job.stock[stock]!), 0);
    return whole === 0 ? 0 : blanks.reduce((sum, blank) => sum + area(blank), 0) / whole;
}

function largestOffcut(sheets: readonly LaidOutSheet[], print: PrintStyle): string {
    const offcuts = sheets.flatMap(({ whole }) => all(whole)).filter(({ kind }) => kind === 'offcut');
    const largest = offcuts.sort((one, other) => other.width * other.height - one.width * one.height)[0];
    return largest ? `largest offcut ${sizeInWords(largest, print)}` : '';
}

function proofOf(
    { cost, leastCost, unplaced, sheets }: SheetLayout,
    { job, isPriced, unknown, pieces }: MaterialJob,
    material: string,
): string[] {
    const notes: string[] = [];
    const isOneSize = job.stock.length === 1;
    if (cost <= leastCost + 1e-9)
        notes.push(`No layout of ${material} takes fewer sheets${isOneSize ? '' : ', or cheaper ones'}: this is proved.`);
    else if (isOneSize)
        notes.push(
            `No layout of ${material} takes fewer than ${Math.ceil(leastCost / job.stock[0]!.cost - 1e-9)} sheets; this one takes ${sheets.length}.`,
        );
    else
        notes.push(
            `It is not proved that no layout of ${material} is cheaper: the least possible is at most ${Math.round((1 - leastCost / cost) * 100)} % below this one.`,
        );
    if (!isOneSize && !isPriced) notes.push(`${material} has no price per sheet, so that the sizes are chosen by the least area.`);
    const left = unplaced.reduce((sum, number) => sum + number, 0);
    if (left > 0) notes.push(`Not laid out, because they are larger than every sheet: ${left} of the pieces.`);
    const without = unknown.length + pieces.filter((batch) => batch.length === 0).length;
    if (without > 0) notes.push(`Not laid out, because their sizes are not known: ${without} of the pieces.`);
    return notes;
}

function piecesGroup({ of, names, material, print }: LaidOut): Group {
    const heading = `${material}: pieces`;
    const rows = of.job.blanks.map(
        (blank, index): Row => ({
            group: textCell(heading),
            mark: count(index + 1),
            item: textCell(names[index] ?? ''),
            count: count(blank.count),
            along: { is: 'amount', amount: lengthAmount(millimetres(blank.height), print) },
            across: { is: 'amount', amount: lengthAmount(millimetres(blank.width), print) },
            direction: textCell(blank.mayTurn ? 'may turn' : ''),
        }),
    );
    return { heading, rows, notes: [] };
}

function cutsGroup(one: LaidOut, { sheet, count: alike }: Pattern, index: number): Group {
    const heading = `${one.material}: ${patternName(one, alike, index)}`;
    const rows = cuttingSequence(sheet.whole).map(
        (step): Row => ({
            group: textCell(heading),
            step: count(step.number),
            from: textCell(step.from === 'sheet' ? 'the sheet' : step.from),
            direction: textCell(step.direction),
            fence: { is: 'amount', amount: lengthAmount(millimetres(step.fence), one.print) },
            times: count(step.times),
            gives: textCell(givesInWords(step)),
            left: textCell(leftInWords(step, one.print)),
        }),
    );
    return { heading, rows, notes: [] };
}

function patternName({ patterns, layout }: LaidOut, alike: number, index: number): string {
    const before = patterns.slice(0, index).reduce((sum, pattern) => sum + pattern.count, 0);
    const of = `of ${layout.sheets.length}`;
    return alike === 1 ? `sheet ${before + 1} ${of}` : `sheets ${before + 1} to ${before + alike} ${of}, all alike`;
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

function all(piece: Piece): readonly Piece[] {
    return piece.kind === 'cut' ? piece.pieces.flatMap(all) : [piece];
}

function notesOf({ shop }: Casework, laidOut: readonly LaidOut[], print: PrintStyle): readonly string[] {
    const kerf = lengthInWords(millimetres(laidOut[0]!.of.job.kerf), print);
    const trimmed = shop.trim ? ` Each edge of a sheet is trimmed first.` : '';
    return [
        `All cuts go from edge to edge; the saw takes ${kerf}.${trimmed}`,
        'Sizes of offcuts and pieces are along the grain of the sheet first.',
        'The fence stands at the size of what is cut off. Across a long piece take a stop on a crosscut sled or a guided saw, never the fence alone.',
        'A whole sheet is heavy and wants two people, or a track saw on the floor, for its first cuts. Keep to the instructions of the saw and to its guards.',
    ];
}

// ---------------------------------------------------------------- drawings

function drawingsOf(one: LaidOut): readonly Drawing[] {
    return one.patterns.map(({ sheet, count: alike }, index) => {
        const { of, print, names, material } = one;
        const [width, length] = of.sizes[sheet.stock]!;
        const size = of.job.stock[sheet.stock]!;
        const edge = of.trim;
        // The drawing has the grain from left to right: its x is our height.
        const turned = ({ x, y, width: across, height: along }: Piece) => ({
            x: edge + millimetres(y),
            y: edge + millimetres(x),
            width: millimetres(along),
            height: millimetres(across),
        });
        const sequence = cuttingSequence(sheet.whole);
        return layoutDrawing({
            title: `${material}, ${patternName(one, alike, index)}`,
            facts: [
                `Sheet ${asBought(width, print)} x ${asBought(length, print)}, ${Math.round(usedShare([sheet], of) * 100)} % used. ${of.hasGrain ? 'Grain' : 'Length'} from left to right.`,
            ],
            sheet: { x: 0, y: 0, width: millimetres(size.height) + 2 * edge, height: millimetres(size.width) + 2 * edge },
            trim: edge,
            blanks: all(sheet.whole).flatMap((piece) =>
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
            offcuts: all(sheet.whole).flatMap((piece) =>
                piece.kind === 'offcut' ? [{ ...turned(piece), size: sizeInWords(piece, print) }] : [],
            ),
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
            steps: sequence.map((step) => stepInWords(step, of.hasGrain, print)),
        });
    });
}

/** `3  A across the grain at 14 5/8in, 2 times: 2 x piece 7; 30in x 20in left` */
function stepInWords(step: SawStep, hasGrain: boolean, print: PrintStyle): string {
    const from = step.from === 'sheet' ? 'the sheet' : step.from;
    const times = step.times === 1 ? '' : `, ${step.times} times`;
    const left = leftInWords(step, print);
    return `${step.number}  ${from}, ${step.direction} the ${hasGrain ? 'grain' : 'length'} at ${lengthInWords(millimetres(step.fence), print)}${times}: ${givesInWords(step)}${left === '' ? '' : `; ${left} left`}`;
}
