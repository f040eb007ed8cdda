/**
 * The purchase list: what to order for all that is built, in the units in which it is sold, and what it costs where the text has prices.
 *
 * Sheets and boards are counted by their layouts, not by area. What the text does not price is named, and never guessed.
 */
import type { Casework } from '../../casework/index.js';
import type { DocumentOptions } from '../document-options.js';
import { onlyBuilt } from '../only-built.js';
import { type PrintStyle, printStyle } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import type { Column, Group, Sheet } from '../sheet.js';
import { fastenerLines } from './fastener-lines.js';
import { finishLines } from './finish-lines.js';
import { glueLines } from './glue.js';
import type { Line, Lines } from './line.js';
import { sayMoney, sumsOf } from './price.js';
import { boardLines, sheetLines } from './stock-lines.js';

/** Everything that is bought for all that is built, group by group; groups of nothing are left out. */
export function purchasedGroups(evaluated: Casework, print: PrintStyle): readonly Lines[] {
    return [
        sheetLines(evaluated, print),
        boardLines(evaluated, print),
        fastenerLines(onlyBuilt(evaluated), print),
        glueLines(evaluated, print),
        finishLines(evaluated, print),
    ].filter(({ lines, unknown = [] }) => lines.length + unknown.length > 0);
}

/** What is bought for all that is built; undefined where that is nothing. */
export function purchaseList(evaluated: Casework, options: Pick<DocumentOptions, 'units'>): Sheet | undefined {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const bought = purchasedGroups(evaluated, print).filter(({ lines }) => lines.length > 0);
    if (bought.length === 0) return undefined;
    return {
        kind: 'purchase',
        title: 'Purchase list',
        facts: projectFacts(casework, print),
        columns: columns(),
        groups: bought.map(({ heading, lines, notes }): Group => ({ heading, rows: lines.map(({ row }) => row), notes })),
        notes: notesOf(bought.flatMap(({ lines }) => lines)),
    };
}

function columns(): readonly Column[] {
    return [
        { key: 'group', heading: 'Group', align: 'left', saidByGroup: true },
        { key: 'item', heading: 'What', align: 'left' },
        { key: 'details', heading: 'Details', align: 'left' },
        { key: 'size', heading: 'Size', align: 'left' },
        { key: 'count', heading: 'Count', align: 'right' },
        { key: 'buy', heading: 'Buy', align: 'right' },
        { key: 'price', heading: 'Price', align: 'right' },
        { key: 'cost', heading: 'Cost', align: 'right' },
        { key: 'use', heading: 'For', align: 'left' },
    ];
}

function notesOf(lines: readonly Line[]): readonly string[] {
    const sums = sumsOf(lines.flatMap(({ cost }) => cost ?? []));
    const unpriced = [...new Set(lines.flatMap(({ unpriced: name }) => name ?? []))];
    return [
        ...(sums.length > 0 ? [`What has a price comes to ${sums.map(sayMoney).join(' and ')}, without tax and delivery.`] : []),
        ...(unpriced.length > 0 ? [`Without a price here: ${unpriced.join(', ')}.`] : []),
        'Spare pieces and what goes wrong are not in it.',
    ];
}
