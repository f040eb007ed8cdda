/** The cells of the sheet of curves: its columns, and amounts in their units. */
import { formatNumber, quantity, unitNamed } from '../../quantity/index.js';
import { lengthAmount, type PrintStyle } from '../print-style.js';
import type { Cell, Column, Group } from '../sheet.js';

/** Which table a row is of, for those who get all tables as one. */
export const tableColumn: Column = { key: 'table', heading: 'Table', align: 'left', saidByGroup: true };

/** A group whose rows each say it. */
export function withTable(group: Group): Group {
    return { ...group, rows: group.rows.map((row) => ({ table: text(group.heading), ...row })) };
}

export function curveColumns(print: PrintStyle): readonly Column[] {
    const unit = print.sizeUnit;
    return [
        tableColumn,
        { key: 'what', heading: 'What', align: 'left' },
        { key: 'along', heading: 'Height or width', unit, align: 'left' },
        { key: 'depth', heading: 'Depth', unit, align: 'left' },
        { key: 'rise', heading: 'Rise', unit, align: 'left' },
        { key: 'length', heading: 'Length', unit, align: 'left' },
        { key: 'shortening', heading: 'Shorter than the strip', unit, align: 'right' },
        { key: 'radius', heading: 'Radius', unit, align: 'left' },
        { key: 'pull', heading: 'Pull', unit: forceUnit(print), align: 'right' },
        { key: 'strain', heading: 'Strain', unit: unitNamed('%'), align: 'right' },
        { key: 'note', heading: 'Note', align: 'left' },
    ];
}

function forceUnit({ system }: PrintStyle) {
    return unitNamed(system === 'inch' ? 'lbf' : 'N');
}

export const text = (of: string): Cell => ({ is: 'text', text: of });

export function lengthCell(millimetres: number, print: PrintStyle): Cell {
    return { is: 'amount', amount: lengthAmount(Math.abs(millimetres) < 1e-6 ? 0 : millimetres, print) };
}

/** A difference that is finer than a rule shows, in decimals. */
export function fineCell(millimetres: number, print: PrintStyle): Cell {
    return amountCell(quantity.of(millimetres, unitNamed('mm')), print.sizeUnit, print.system === 'inch' ? 3 : 1);
}

/** Over a 10 m part such a circle stands 0.13 mm off its chord. In millimetres. */
export const straightFrom = 1e8;

/** A radius as far as it matters: it is no size that is cut. A straight line has none. */
export function radiusCell(millimetres: number, print: PrintStyle): Cell {
    return millimetres > straightFrom ? text('straight') : lengthCell(roundedRadius(millimetres, print), print);
}

/** To an inch or 10 mm where it is great, to a quarter of an inch or a millimetre where it is not. */
export function roundedRadius(millimetres: number, { system }: PrintStyle): number {
    const isGreat = millimetres > 2540;
    const step = system === 'inch' ? (isGreat ? 25.4 : 25.4 / 4) : isGreat ? 10 : 1;
    return Math.max(Math.round(millimetres / step), 1) * step;
}

export function pullCell(newtons: number, print: PrintStyle): Cell {
    return amountCell(quantity.of(newtons, unitNamed('N')), forceUnit(print), 1);
}

export function strainCell(share: number): Cell {
    return amountCell(quantity.of(share * 100, unitNamed('%')), unitNamed('%'), 2);
}

function amountCell(of: ReturnType<typeof quantity.of>, unit: ReturnType<typeof unitNamed>, decimals: number): Cell {
    const printed = formatNumber(quantity.valueIn(of, unit), { decimals, zeros: 'kept' });
    return { is: 'amount', amount: { quantity: of, printed: { text: printed, exact: false, off: undefined } } };
}
