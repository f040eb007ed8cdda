/** The costing: what a project costs and how its price is made, for the shop alone. */
import type { Casework } from '../../casework/index.js';
import { defaultTimeWords } from '../../cost/index.js';
import { formatNumber, type Quantity, type Rational } from '../../quantity/index.js';
import type { DocumentOptions } from '../document-options.js';
import { onlyBuilt } from '../only-built.js';
import { printStyle } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import { sayMoney, sayPrice } from '../purchase/price.js';
import { type Column, type Group, type Row, type Sheet, textCell } from '../sheet.js';
import { alternativeCostings } from './alternatives.js';
import { type Costing, costingOf, type Priced, percent, saysHowToPrice } from './costing.js';
import { moneyCell, moneyOf } from './money-cell.js';
import { dateFacts } from './quote-facts.js';

const columns: readonly Column[] = [
    { key: 'group', heading: 'Group', align: 'left', saidByGroup: true },
    { key: 'item', heading: 'What', align: 'left' },
    { key: 'details', heading: 'Details', align: 'left' },
    { key: 'amount', heading: 'Amount', align: 'right' },
    { key: 'each', heading: 'For one', align: 'right' },
    { key: 'hours', heading: 'Hours', align: 'right' },
    { key: 'cost', heading: 'Cost', align: 'right' },
];

/** Undefined where the text says nothing by which work could be priced. */
export function costingSheet(evaluated: Casework, options: Pick<DocumentOptions, 'units' | 'date'>): Sheet | undefined {
    if (!saysHowToPrice(evaluated)) return undefined;
    const casework = onlyBuilt(evaluated);
    const costing = costingOf(evaluated);
    const groups = [...purchaseGroups(costing), laborGroup(costing), priceGroup(costing), alternativesGroup(evaluated, costing)];
    return {
        kind: 'costing',
        title: 'Costing',
        facts: [
            { label: 'For', text: 'the shop alone: the client gets the quote' },
            ...projectFacts(casework, printStyle(casework, options)),
            ...dateFacts(options.date),
            ...costing.missing.map((text) => ({ label: 'Not complete', text })),
        ],
        columns,
        groups: groups.filter((group): group is Group => group !== undefined),
        notes: notesOf(costing),
    };
}

function purchaseGroups({ purchases }: Costing): readonly Group[] {
    return purchases.flatMap(({ heading, lines }) =>
        lines.length === 0
            ? []
            : [
                  {
                      heading,
                      rows: lines.map(({ row, unpriced }): Row => {
                          const { item, size, buy, count, price, cost } = row;
                          return {
                              group: textCell(heading),
                              ...(item ? { item } : {}),
                              ...(size ? { details: size } : {}),
                              ...(buy || count ? { amount: buy ?? count! } : {}),
                              ...(price ? { each: price } : {}),
                              cost: cost ?? (unpriced === undefined ? textCell('') : { is: 'unknown' }),
                          };
                      }),
                      notes: [],
                  },
              ],
    );
}

function laborGroup({ labor, rate, hours }: Costing): Group | undefined {
    if (labor.length === 0) return undefined;
    const heading = 'Labour';
    const rows = labor.map(
        (line): Row => ({
            group: textCell(heading),
            item: textCell(line.operation.heading),
            details: textCell(line.isDefault ? defaultTimeWords : 'by the shop'),
            amount: textCell(line.amount),
            each: textCell(line.each),
            hours: hoursCell(line.hours),
            cost: moneyCell(line.cost),
        }),
    );
    const total: Row = {
        group: textCell(heading),
        item: textCell('All labour'),
        ...(rate ? { each: textCell(sayPrice(rate)) } : {}),
        hours: hoursCell(hours),
    };
    return {
        heading,
        rows: [...rows, total],
        notes: [
            'Counted from the layouts, the pieces, the cuts of the joints and the finished surface. Measuring, drawing, buying, delivery and setting up are not in it.',
            ...(labor.some(({ isDefault }) => isDefault)
                ? ['The shop states its own times in `times`: a price that rests on the defaults is a guess at how fast it works.']
                : []),
        ],
    };
}

function hoursCell(hours: Rational): Row[string] {
    return { is: 'number', number: hours.toNumber(), text: formatNumber(hours, { decimals: 2, zeros: 'kept' }) };
}

function priceGroup(costing: Costing): Group {
    const heading = 'Price';
    const row = (item: string, of: Quantity | undefined, details = ''): Row => ({
        group: textCell(heading),
        item: textCell(item),
        details: textCell(details),
        cost: moneyCell(of),
    });
    if (!costing.price) {
        const known = costing.materials.map((sum) => row('Materials with a price', sum));
        return { heading, rows: [...known, row('Price', undefined)], notes: ['Not complete, as said at the head: there is no price yet.'] };
    }
    const { built, currency } = costing.price;
    const { shares } = costing;
    const money = (amount: Rational) => moneyOf(amount, currency);
    return {
        heading,
        rows: [
            row('Materials', money(built.materials)),
            row('Labour', money(built.labor)),
            ...(shares.overhead ? [row('Overhead', money(built.overhead), `${percent(shares.overhead)} of materials and labour`)] : []),
            row('Cost', money(built.cost)),
            ...(shares.margin ? [row('Profit', money(built.profit), `${percent(shares.margin)} of the price`)] : []),
            row('Price', money(built.price)),
            ...(shares.tax ? [row('Tax', money(built.tax), `${percent(shares.tax)} of the price`)] : []),
            row('Total', money(built.total)),
        ],
        notes: shares.margin ? [] : ['No `margin` is stated: the price is what it costs.'],
    };
}

function alternativesGroup(evaluated: Casework, costing: Costing): Group | undefined {
    const heading = 'Alternatives';
    const found = alternativeCostings(evaluated);
    if (found.length === 0) return undefined;
    const rows = found.map(
        ({ name, takes, costing: other }): Row => ({
            group: textCell(heading),
            item: textCell(name),
            details: textCell([takes, ...reasons(other)].join(': ')),
            amount: textCell(difference(costing.price, other?.price)),
            ...(other ? { hours: hoursCell(other.hours) } : {}),
            cost: moneyCell(other?.price && moneyOf(other.price.built.price, other.price.currency)),
        }),
    );
    return {
        heading,
        rows,
        notes: ['Each is built and laid out anew, and priced before tax. The rules have not looked at it: build it to see what they say.'],
    };
}

function reasons(costing: Costing | undefined): readonly string[] {
    if (!costing) return ['it cannot be built as it is'];
    return costing.missing.length === 0 ? [] : [`not complete: ${costing.missing.join('; ')}`];
}

/** `12.50 USD more`, of prices in one currency. */
export function difference(one: Priced | undefined, other: Priced | undefined): string {
    if (!one || !other || one.currency !== other.currency) return '';
    const more = other.built.price.minus(one.built.price);
    if (more.isZero()) return 'the same price';
    return `${sayMoney(moneyOf(more.absolute(), one.currency))} ${more.sign() > 0 ? 'more' : 'less'}`;
}

function notesOf({ price }: Costing): readonly string[] {
    return [
        'Spare pieces and what goes wrong are not in it.',
        ...(price ? ['A margin is a share of the price, not of the cost: at 20 % what costs 80 is sold for 100.'] : []),
    ];
}
