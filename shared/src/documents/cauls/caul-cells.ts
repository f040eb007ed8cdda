/** The columns of the sheet of cauls. */
import { formatNumber, quantity, type Unit, unitNamed } from '../../quantity/index.js';
import { tableColumn } from '../curves/curve-cells.js';
import type { PrintStyle } from '../print-style.js';
import type { Cell, Column } from '../sheet.js';

interface CaulUnits {
    readonly force: Unit;
    readonly pressure: Unit;
}

function unitsOf({ system }: PrintStyle): CaulUnits {
    return system === 'inch'
        ? { force: unitNamed('lbf'), pressure: unitNamed('psi') }
        : { force: unitNamed('N'), pressure: unitNamed('MPa') };
}

export function caulColumns(print: PrintStyle): readonly Column[] {
    const { force, pressure } = unitsOf(print);
    return [
        tableColumn,
        { key: 'what', heading: 'What', align: 'left' },
        { key: 'from', heading: 'From either end', unit: print.sizeUnit, align: 'left' },
        { key: 'off', heading: 'Plane off', unit: print.sizeUnit, align: 'right' },
        { key: 'crown', heading: 'Crown', unit: print.sizeUnit, align: 'right' },
        { key: 'pressure', heading: 'Pressure on the glue', unit: pressure, align: 'right' },
        { key: 'force', heading: 'Each clamp', unit: force, align: 'right' },
        { key: 'stress', heading: 'Stress in the caul', unit: pressure, align: 'right' },
    ];
}

export function forceCell(newtons: number, print: PrintStyle): Cell {
    return cellOf(newtons, unitNamed('N'), unitsOf(print).force, 0);
}

export function pressureCell(megapascals: number, print: PrintStyle): Cell {
    return cellOf(megapascals, unitNamed('MPa'), unitsOf(print).pressure, print.system === 'inch' ? 0 : 2);
}

/** `175 psi`, `1.21 MPa` */
export function pressureInWords(megapascals: number, print: PrintStyle): string {
    const { pressure } = unitsOf(print);
    const value = quantity.valueIn(quantity.of(megapascals, unitNamed('MPa')), pressure);
    return `${formatNumber(value, { decimals: print.system === 'inch' ? 0 : 2, zeros: 'kept' })} ${pressure.symbol}`;
}

/** `1800 lbf`, `8007 N` */
export function forceInWords(newtons: number, print: PrintStyle): string {
    const { force } = unitsOf(print);
    const value = quantity.valueIn(quantity.of(newtons, unitNamed('N')), force);
    return `${formatNumber(value, { decimals: 0, zeros: 'kept' })} ${force.symbol}`;
}

function cellOf(amount: number, of: Unit, unit: Unit, decimals: number): Cell {
    const value = quantity.of(amount, of);
    const text = formatNumber(quantity.valueIn(value, unit), { decimals, zeros: 'kept' });
    return { is: 'amount', amount: { quantity: value, printed: { text, exact: false, off: undefined } } };
}
