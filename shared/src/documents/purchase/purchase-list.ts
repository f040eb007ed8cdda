/**
 * The purchase list: what to order for all that is built, in the units in which it is sold, and what it costs where the text has prices.
 *
 * Sheets and boards are counted by their layouts, not by area. What the text does not price is named, and never guessed.
 */
import type { Casework } from '../../casework/index.js';
import { formatNumber, formatQuantity, type Quantity, Rational, usualStyle } from '../../quantity/index.js';
import { thingName, wordOf } from '../../strength/index.js';
import { clearYield } from '../boards/board-feet.js';
import { boardVolume } from '../boards/board-jobs.js';
import { boardSizeInWords } from '../boards/board-words.js';
import { type LaidOutBoards, laidOutBoards } from '../boards/laid-out-boards.js';
import type { DocumentOptions } from '../document-options.js';
import { countFasteners } from '../fastener-count.js';
import { materialDetails } from '../material-words.js';
import { onlyBuilt } from '../only-built.js';
import { asBought, type PrintStyle, printStyle } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import { type Cell, type Column, type Group, type Row, type Sheet, textCell } from '../sheet.js';
import { type LaidOutSheets, laidOutSheets } from '../sheets/laid-out-sheets.js';
import { gluedArea } from './glued-area.js';
import { costOf, type Price, priceOf, sumsOf } from './price.js';

/** A line of the list, with what it costs where that is known. */
interface Line {
    readonly row: Row;
    readonly cost?: Quantity;
    /** What it is called where it is said that it has no price. */
    readonly unpriced?: string;
}

interface Lines {
    readonly heading: string;
    readonly lines: readonly Line[];
    readonly notes: readonly string[];
}

/** What is bought for all that is built; undefined where that is nothing. */
export function purchaseList(evaluated: Casework, options: Pick<DocumentOptions, 'units'>): Sheet | undefined {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const groups = [
        sheetLines(evaluated, print),
        boardLines(evaluated, print),
        fastenerLines(casework, print),
        glueLines(evaluated, print),
    ];
    const bought = groups.filter(({ lines }) => lines.length > 0);
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
        'Offcuts on the rack, spare pieces and what goes wrong are not in it.',
    ];
}

// ---------------------------------------------------------------- sheets

function sheetLines(evaluated: Casework, print: PrintStyle): Lines {
    const heading = 'Sheets';
    const notes: string[] = [];
    const lines = laidOutSheets(evaluated).flatMap((found) => {
        const left = found.layout.unplaced.reduce((sum, number) => sum + number, 0);
        const name = thingName(evaluated, found.of.material);
        if (left > 0) notes.push(`Of ${name} ${left} of the pieces fit on none of its sheets: what they take is not in the list.`);
        return sheetsOf(found, evaluated, print, heading);
    });
    return { heading, lines, notes };
}

function sheetsOf({ of, layout }: LaidOutSheets, casework: Casework, print: PrintStyle, heading: string): readonly Line[] {
    const { material, sizes } = of;
    const price = priceOf(casework, material);
    return sizes.flatMap(([width, length], stock): Line[] => {
        const count = layout.sheets.filter((sheet) => sheet.stock === stock).length;
        if (count === 0) return [];
        const size = `${asBought(width, print)} x ${asBought(length, print)}`;
        const row: Row = {
            group: textCell(heading),
            item: textCell(thingName(casework, material)),
            details: textCell(materialDetails(casework.things.get(material), print)),
            size: textCell(size),
            count: { is: 'count', count },
            buy: textCell(count === 1 ? '1 sheet' : `${count} sheets`),
        };
        return [priced(row, thingName(casework, material), price, price?.per === 'sheet' ? Rational.of(count) : undefined)];
    });
}

/** The line with its cost, if its price is for what it is counted in. */
function priced(row: Row, name: string, price: Price | undefined, count: Rational | number | undefined): Line {
    if (!price) return { row, unpriced: name };
    const stated = { ...row, price: textCell(`${sayMoney(price.amount.quantity)} per ${price.per}`) };
    if (count === undefined) return { row: stated, unpriced: `${name} (its price is per ${price.per})` };
    const cost = costOf(count, price);
    return { row: { ...stated, cost: moneyCell(cost) }, cost };
}

// ---------------------------------------------------------------- boards

/** By how much more rough wood than a layout takes is bought, is the trade's question to the grade; without one it is said and not added. */
function boardLines(evaluated: Casework, print: PrintStyle): Lines {
    const heading = 'Boards';
    const notes: string[] = [];
    const { laidOut, without } = laidOutBoards(evaluated);
    const lines = laidOut.flatMap((found) => boardsOf(found, evaluated, print, { heading, notes }));
    for (const material of without) {
        notes.push(
            `How much of ${thingName(evaluated, material)} to buy is not known: it does not say its \`rough\` thickness and the \`boards\` it comes in.`,
        );
    }
    return { heading, lines, notes };
}

function boardsOf(
    { of, layout }: LaidOutBoards,
    casework: Casework,
    print: PrintStyle,
    { heading, notes }: { readonly heading: string; readonly notes: string[] },
): readonly Line[] {
    const name = thingName(casework, of.material);
    const grade = wordOf(of.thing.properties.get('grade'));
    const clear = grade === undefined ? undefined : clearYield(grade);
    notes.push(
        clear === undefined
            ? `${name} is counted as clear wood, and each board as narrow as it may be: buy more for knots, sapwood and checks.`
            : `${name}: of ${grade} at least ${formatNumber(clear * 100, { decimals: 1, zeros: 'dropped' })} % is clear in the cuttings that the grade speaks of, and so much more is in the list.`,
    );
    const price = priceOf(casework, of.material);
    const isByVolume = print.system === 'inch' ? price?.per === 'board foot' || price?.per === 'bdft' : price?.per === 'm3';
    return of.sizes.flatMap((size, stock): Line[] => {
        const count = layout.sheets.filter((sheet) => sheet.stock === stock).length;
        if (count === 0) return [];
        const decimals = print.system === 'inch' ? 1 : 3;
        const volume = tenths((count * boardVolume(of, size, print.system)) / (clear ?? 1), decimals);
        const row: Row = {
            group: textCell(heading),
            item: textCell(name),
            details: textCell(materialDetails(of.thing, print)),
            size: textCell(boardSizeInWords(size, print)),
            count: { is: 'count', count },
            buy: textCell(`${formatNumber(volume, { decimals, zeros: 'kept' })} ${print.volumeUnit.symbol}`),
        };
        return [priced(row, name, price, isByVolume ? volume : price?.per === 'each' ? Rational.of(count) : undefined)];
    });
}

/** Rounded up as it is printed, so that the cost is that of the printed amount. */
function tenths(volume: number, decimals: number): Rational {
    const parts = 10 ** decimals;
    return Rational.of(Math.ceil(volume * parts - 1e-6), parts);
}

// ---------------------------------------------------------------- fasteners and glue

function fastenerLines(casework: Casework, print: PrintStyle): Lines {
    const heading = 'Fasteners';
    const lines = countFasteners(casework, print).map(
        ({ name, count, joints }): Line => ({
            row: {
                group: textCell(heading),
                item: textCell(name),
                count: count === undefined ? { is: 'unknown' } : { is: 'count', count },
                use: textCell(joints.join(', ')),
            },
            unpriced: name,
        }),
    );
    const isUnknown = lines.some(({ row }) => row.count?.is === 'unknown');
    return {
        heading,
        lines,
        notes: isUnknown ? ['How many are taken is not known where a joint says neither a count nor a spacing.'] : [],
    };
}

/** Glue on one of two faces, in grams a square metre: 35 to 50 lb per 1000 ft2, the usual single spread. Common practice, no source. */
const spread = { least: 170, most: 245 };

function glueLines(evaluated: Casework, print: PrintStyle): Lines {
    const heading = 'Glue';
    const { area, surfaces } = gluedArea(evaluated);
    if (area === 0) return { heading, lines: [], notes: [] };
    const say = (squareMillimetres: number) =>
        print.system === 'inch'
            ? `${formatNumber(squareMillimetres / 304.8 ** 2, { decimals: 1, zeros: 'kept' })} ft2`
            : `${formatNumber(squareMillimetres / 1e6, { decimals: 2, zeros: 'kept' })} m2`;
    const mass = (gramsPerSquareMetre: number) => {
        const grams = (area / 1e6) * gramsPerSquareMetre;
        return print.system === 'inch'
            ? formatNumber(grams / 28.349523125, { decimals: 0, zeros: 'kept' })
            : formatNumber(grams, { decimals: 0, zeros: 'kept' });
    };
    const row: Row = {
        group: textCell(heading),
        item: textCell('wood glue'),
        buy: textCell(`${mass(spread.least)} to ${mass(spread.most)} ${print.system === 'inch' ? 'oz' : 'g'}`),
        use: textCell(surfaces.map(({ what, area: part }) => `${what} ${say(part)}`).join(', ')),
    };
    const note =
        print.system === 'inch'
            ? 'Glue by weight, spread on one of the two faces at 35 to 50 lb per 1000 ft2 (common practice); follow what is printed on the bottle.'
            : 'Glue by weight, spread on one of the two faces at 170 to 245 g/m2 (common practice); follow what is printed on the bottle.';
    return { heading, lines: [{ row, unpriced: 'wood glue' }], notes: [note] };
}

// ---------------------------------------------------------------- money

function sayMoney(of: Quantity): string {
    return formatQuantity(of, usualStyle('inch', 32)).text;
}

function moneyCell(of: Quantity): Cell {
    return { is: 'amount', amount: { quantity: of, printed: { text: sayMoney(of), exact: true, off: undefined } } };
}
