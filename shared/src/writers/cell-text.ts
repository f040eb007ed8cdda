/** The cells of a sheet as a person reads them. */
import { type Amount, type Cell, type Column, sizeDirections } from '../documents/index.js';
import { sayMeasure } from '../quantity/index.js';

/** What stands for a value that could not be computed. */
const unknownText = '?';

/** A cell without its unit, which the heading of its column has. */
export function cellText(cell: Cell | undefined): string {
    if (!cell) return '';
    switch (cell.is) {
        case 'text':
        case 'number':
            return cell.text;
        case 'count':
            return String(cell.count);
        case 'amount':
            return amountText(cell.amount);
        case 'size':
            return sizeDirections.map((direction) => amountText(cell[direction])).join(' x ');
        case 'unknown':
            return unknownText;
    }
}

function amountText(amount: Amount | undefined): string {
    return amount ? sayMeasure(amount.printed) : unknownText;
}

/** The heading of a column with its unit: `Area (ft2)`. */
export function headingText({ heading, unit }: Pick<Column, 'heading' | 'unit'>): string {
    return unit ? `${heading} (${unit.symbol})` : heading;
}
