/**
 * JSON (RFC 8259): UTF-8 without a byte order mark, two blanks a level, short values on one line, and a line end at the end. Names stand
 * in the order in which the document gives them; numbers have six decimals at most, which for millimetres is a nanometre.
 */
import stringify from 'json-stringify-pretty-compact';
import { type Amount, type Cell, type JsonObject, type JsonValue, type Row, type Sheet, sizeDirections } from '../documents/index.js';
import { quantity, real, sayMeasure, type Unit, usualUnit } from '../quantity/index.js';

const mostDecimals = 6;
const widestLine = 120;

/**
 * Data as JSON.
 * @throws RangeError if a number is not finite: JSON has no word for it.
 */
export function writeJson(data: JsonObject): string {
    return `${stringify(rounded(data), { indent: 2, maxLength: widestLine })}\n`;
}

function rounded(value: JsonValue): JsonValue {
    if (typeof value === 'number') {
        if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be written as JSON`);
        return Number(value.toFixed(mostDecimals));
    }
    if (typeof value !== 'object' || value === null) return value;
    if (isList(value)) return value.map(rounded);
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, rounded(each)]));
}

function isList(value: readonly JsonValue[] | JsonObject): value is readonly JsonValue[] {
    return Array.isArray(value);
}

/** The version of the form that sheets have in JSON. */
const sheetVersion = 1;

/** A sheet as data: amounts in metric units with their printed text beside them. */
export function sheetAsData(sheet: Sheet): JsonObject {
    const units = new Map(sheet.columns.map(({ key, unit }) => [key, unit]));
    return {
        document: sheet.kind,
        version: sheetVersion,
        title: sheet.title,
        facts: sheet.facts.map(({ label, text }) => ({ label, text })),
        columns: sheet.columns.map(({ key, heading, unit }) => ({ key, heading, printedIn: unit?.symbol ?? null })),
        groups: sheet.groups.map(({ heading, rows, notes }) => ({
            heading,
            rows: rows.map((row) => rowAsData(row, units)),
            notes: [...notes],
        })),
        notes: [...sheet.notes],
        ...(sheet.features ? { features: sheet.features } : {}),
    };
}

/** Cells in the order of the columns; what a row has no cell for is null. */
function rowAsData(row: Row, units: ReadonlyMap<string, Unit | undefined>): JsonObject {
    return Object.fromEntries([...units].map(([key, unit]) => [key, cellAsData(row[key], unit)]));
}

function cellAsData(cell: Cell | undefined, unit: Unit | undefined): JsonValue {
    switch (cell?.is) {
        case 'text':
            return cell.text;
        case 'count':
            return cell.count;
        case 'number':
            return cell.number;
        case 'amount':
            return amountAsData(cell.amount, unit);
        case 'size':
            return Object.fromEntries(sizeDirections.map((direction) => [direction, amountAsData(cell[direction], unit)]));
        default:
            return null;
    }
}

function amountAsData(amount: Amount | undefined, printedIn: Unit | undefined): JsonValue {
    if (!amount) return null;
    const metric = usualUnit(amount.quantity.dimension, 'mm');
    const value = metric ? quantity.valueIn(amount.quantity, metric) : amount.quantity.value;
    const blank = printedIn?.spaced ? ' ' : '';
    const text = `${amount.printed.text}${blank}${printedIn?.symbol ?? ''}`;
    return { value: real.toNumber(value), unit: metric?.symbol ?? '', printed: sayMeasure({ ...amount.printed, text }) };
}
