/** Sheets and boards, by their layouts. */
import type { Casework, Measure } from '../../casework/index.js';
import { formatNumber, quantity, Rational, type Real, real } from '../../quantity/index.js';
import { isSolidWood, thingName, wordOf } from '../../strength/index.js';
import { clearYield } from '../boards/board-feet.js';
import { boardVolume } from '../boards/board-jobs.js';
import { boardSizeInWords } from '../boards/board-words.js';
import { type LaidOutBoards, laidOutBoards } from '../boards/laid-out-boards.js';
import { materialDetails } from '../material-words.js';
import { onlyBuilt } from '../only-built.js';
import { piecesByMaterial } from '../pieces-by-material.js';
import { asBought, type PrintStyle } from '../print-style.js';
import { type Row, textCell } from '../sheet.js';
import { type LaidOutSheets, laidOutSheets } from '../sheets/laid-out-sheets.js';
import { type Line, type Lines, priced } from './line.js';
import { isByVolume, type Price, priceOf, unitOfPrice } from './price.js';

/** Panels, by the sheet. */
export function sheetLines(evaluated: Casework, print: PrintStyle): Lines {
    const heading = 'Sheets';
    const notes: string[] = [];
    const unknown: string[] = [];
    const lines = laidOutSheets(evaluated).flatMap((found) => {
        const left = found.layout.unplaced.reduce((sum, number) => sum + number, 0);
        const name = thingName(evaluated, found.of.material);
        if (left > 0) {
            notes.push(`Of ${name} ${left} of the pieces fit on none of its sheets: what they take is not in the list.`);
            unknown.push(`of ${name} ${left} of the pieces fit on none of its sheets`);
        }
        const { length: sizeless } = found.of.unknown;
        if (sizeless > 0) unknown.push(`of ${name} the sizes of ${sizeless} of the pieces are not known`);
        return sheetsOf(found, evaluated, print, heading);
    });
    const laidOut = new Set(laidOutSheets(evaluated).map(({ of }) => of.material));
    for (const [material] of piecesByMaterial(onlyBuilt(evaluated))) {
        const thing = evaluated.things.get(material);
        if (laidOut.has(material) || (thing && isSolidWood(thing))) continue;
        unknown.push(`how much of ${thingName(evaluated, material)} to buy is not known: it says no \`sheet\``);
    }
    return { heading, lines, notes, unknown };
}

function sheetsOf({ of, layout }: LaidOutSheets, casework: Casework, print: PrintStyle, heading: string): readonly Line[] {
    const { material, sizes, offcuts } = of;
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
        };
        const onRack = offcuts[stock];
        if (onRack !== undefined) return [{ row: { ...row, details: textCell(`offcut ${onRack}`), buy: textCell('from the rack') } }];
        const bought = { ...row, buy: textCell(count === 1 ? '1 sheet' : `${count} sheets`) };
        return [priced(bought, thingName(casework, material), price, price && sheetsAtPrice(count, [width, length], price))];
    });
}

/** How many of what a price is for are in so many sheets: sheets, or their area. */
function sheetsAtPrice(count: number, [width, length]: readonly [Measure, Measure], price: Price): Real | undefined {
    if (price.per === 'sheet' || price.per === 'each') return Rational.of(count);
    const unit = unitOfPrice(price);
    const area = quantity.nominal(quantity.multiply(width.quantity, length.quantity));
    return unit?.dimension === area.dimension ? real.multiply(quantity.valueIn(area, unit), Rational.of(count)) : undefined;
}

/** Hardwood. By how much more rough wood than a layout takes is bought, is the trade's question to the grade; without one it is said and not added. */
export function boardLines(evaluated: Casework, print: PrintStyle): Lines {
    const heading = 'Boards';
    const notes: string[] = [];
    const { laidOut, without } = laidOutBoards(evaluated);
    const lines = laidOut.flatMap((found) => boardsOf(found, evaluated, print, { heading, notes }));
    const unknown: string[] = [];
    for (const { of, layout } of laidOut) {
        const left = layout.unplaced.reduce((sum, number) => sum + number, 0) + of.unknown.length;
        if (left > 0) unknown.push(`of ${thingName(evaluated, of.material)} ${left} of the pieces are got out of none of its boards`);
    }
    for (const material of without) {
        unknown.push(`how much of ${thingName(evaluated, material)} to buy is not known`);
        notes.push(
            `How much of ${thingName(evaluated, material)} to buy is not known: it does not say its \`rough\` thickness and the \`boards\` it comes in.`,
        );
    }
    return { heading, lines, notes, unknown };
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
    const priceUnit = price && unitOfPrice(price);
    // wood is ordered in what it is sold by, whatever the sizes are printed in
    const unit = isByVolume(priceUnit) ? priceUnit : print.volumeUnit;
    return of.sizes.flatMap((size, stock): Line[] => {
        const count = layout.sheets.filter((sheet) => sheet.stock === stock).length;
        if (count === 0) return [];
        const decimals = unit.system === 'mm' ? 3 : 1;
        const volume = roundedUp((count * boardVolume(of, size, unit.system === 'mm' ? 'mm' : 'inch')) / (clear ?? 1), decimals);
        const row: Row = {
            group: textCell(heading),
            item: textCell(name),
            details: textCell(materialDetails(of.thing, print)),
            size: textCell(boardSizeInWords(size, print)),
            count: { is: 'count', count },
            buy: textCell(`${formatNumber(volume, { decimals, zeros: 'kept' })} ${unit.symbol}`),
        };
        return [priced(row, name, price, isByVolume(priceUnit) ? volume : price?.per === 'each' ? Rational.of(count) : undefined)];
    });
}

/** Rounded up as it is printed, so that the cost is that of the printed amount. */
function roundedUp(volume: number, decimals: number): Rational {
    const parts = 10 ** decimals;
    return Rational.of(Math.ceil(volume * parts - 1e-6), parts);
}
