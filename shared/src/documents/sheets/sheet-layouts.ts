/** Sheet layouts: how many sheets of each material, what comes from each, and the cuts in their order, as a table and drawn. */

import type { Casework } from '../../casework/index.js';
import type { SheetLayout } from '../../stock/index.js';
import { thingName } from '../../strength/index.js';
import { cautions } from '../cautions.js';
import type { DocumentOptions } from '../document-options.js';
import { materialInWords } from '../material-words.js';
import { onlyBuilt } from '../only-built.js';
import { namesInWords, nameWithinPart, partNamer } from '../part-names.js';
import { asBought, lengthAmount, lengthInWords, type PrintStyle, printStyle } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import { type Column, type Group, type Row, type Sheet, textCell } from '../sheet.js';
import type { ShopDocument } from '../shop-document.js';
import { type LaidOutSheets, laidOutSheets } from './laid-out-sheets.js';
import { count, cutColumns, cutGroups, largestOffcut, millimetres, patternsOf, type SawWork, sawDrawings, usedShare } from './saw-work.js';
import type { MaterialJob } from './sheet-jobs.js';

/** A material laid out, with what its pieces are called. */
interface LaidOut {
    readonly of: MaterialJob;
    readonly layout: SheetLayout;
    readonly work: SawWork;
    /** By blank: the parts that it is for. */
    readonly names: readonly string[];
    readonly material: string;
    readonly print: PrintStyle;
}

/** The layouts of all that is built; undefined where nothing is cut from sheets. */
export function sheetLayouts(evaluated: Casework, options: Pick<DocumentOptions, 'units'>): ShopDocument | undefined {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const laidOut = laidOutSheets(evaluated).map((found) => layOut(found, casework, print));
    if (laidOut.length === 0) return undefined;
    const sheet: Sheet = {
        kind: 'sheets',
        title: 'Sheet layouts',
        facts: projectFacts(casework, print),
        columns: columns(print),
        groups: laidOut.flatMap((one) => [sheetsGroup(one, casework), piecesGroup(one), ...cutGroups(one.work)]),
        notes: notesOf(casework, laidOut, print),
    };
    return {
        is: 'sheet',
        sheet,
        pages: { drawings: laidOut.flatMap(({ work }) => sawDrawings(work)), units: print.system === 'inch' ? 'in' : 'mm' },
    };
}

function layOut({ of, layout }: LaidOutSheets, casework: Casework, print: PrintStyle): LaidOut {
    const nameOf = partNamer(casework);
    const names = of.pieces.map((pieces) => {
        const within = [...new Set(pieces.map((piece) => nameWithinPart(piece, casework)))].filter((name) => name !== '');
        return [namesInWords(pieces.map((piece) => nameOf(piece.part))), ...within].join(', ');
    });
    const material = thingName(casework, of.material);
    const work: SawWork = {
        material,
        noun: 'sheet',
        patterns: patternsOf(layout.sheets),
        names,
        stockInWords: of.sizes.map(([width, length], stock) => {
            const size = `${asBought(width, print)} x ${asBought(length, print)}`;
            return of.offcuts[stock] === undefined ? `Sheet ${size}` : `Offcut ${of.offcuts[stock]} from the rack, ${size}`;
        }),
        trims: of.trims,
        hasGrain: of.hasGrain,
        print,
    };
    return { of, layout, work, names, material, print };
}

function columns(print: PrintStyle): readonly Column[] {
    return [
        { key: 'group', heading: 'Group', align: 'left', saidByGroup: true },
        { key: 'mark', heading: 'Mark', align: 'right' },
        { key: 'item', heading: 'What', align: 'left' },
        ...cutColumns(print),
        { key: 'count', heading: 'Count', align: 'right' },
        { key: 'along', heading: 'Along grain', unit: print.sizeUnit, align: 'right' },
        { key: 'across', heading: 'Across grain', unit: print.sizeUnit, align: 'right' },
        { key: 'used', heading: 'Used', align: 'right' },
        { key: 'gives', heading: 'Gives', align: 'left' },
        { key: 'left', heading: 'Then left', align: 'left' },
    ];
}

function sheetsGroup({ of, layout, material, print }: LaidOut, casework: Casework): Group {
    const heading = `${materialInWords(casework, of.material, print)}: sheets to take`;
    const rows = of.sizes.flatMap((size, stock): Row[] => {
        const taken = layout.sheets.filter((sheet) => sheet.stock === stock);
        if (taken.length === 0) return [];
        return [
            {
                group: textCell(heading),
                item: textCell(
                    `${of.offcuts[stock] === undefined ? 'sheet' : `offcut ${of.offcuts[stock]} from the rack,`} ${asBought(size[0], print)} x ${asBought(size[1], print)}`,
                ),
                count: count(taken.length),
                used: textCell(`${Math.round(usedShare(taken) * 100)} %`),
                left: textCell(largestOffcut(taken, print)),
            },
        ];
    });
    return { heading, rows, notes: proofOf(layout, of, material) };
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

function notesOf({ shop }: Casework, laidOut: readonly LaidOut[], print: PrintStyle): readonly string[] {
    const kerf = lengthInWords(millimetres(laidOut[0]!.of.job.kerf), print);
    const trimmed = shop.trim ? ` Each edge of a sheet is trimmed first.` : '';
    return [
        `All cuts go from edge to edge; the saw takes ${kerf}.${trimmed}`,
        'Sizes of offcuts and pieces are along the grain of the sheet first.',
        'The fence stands at the size of what is cut off. Across a long piece take a stop on a crosscut sled or a guided saw, never the fence alone.',
        'A whole sheet is heavy and wants two people, or a track saw on the floor, for its first cuts. Keep to the instructions of the saw and to its guards.',
        cautions.dust,
    ];
}
