/**
 * Comma-separated values, as RFC 4180 says: one header line, lines that end in CRLF, quotes where they are needed.
 *
 * UTF-8. A byte order mark stands in front exactly when there is a character outside ASCII: without it spreadsheets take UTF-8 for the
 * machine's old code page, and with it some programs read the first heading wrong, so it comes only where it matters.
 *
 * What is text and starts like a formula gets an apostrophe in front (OWASP ASVS 5.0, requirement 1.2.10; CWE-1236): a client's name
 * must not become a command in the spreadsheet that opens the list.
 *
 * The table only: what stands above and below it is for people, and is in the other formats. A size is one column as it is printed, and
 * at the end of the line three numbers.
 */
import { type Amount, type Cell, type Column, type Row, type Sheet, sizeDirections } from '../documents/index.js';
import { formatNumber, quantity, type Unit } from '../quantity/index.js';
import { cellText, headingText } from './cell-text.js';

const byteOrderMark = '\uFEFF';
const lineEnd = '\r\n';

/** A sheet as one table, its groups one after the other. */
export function writeCsv(sheet: Sheet): string {
    const rows = sheet.groups.flatMap((group) => group.rows);
    const sized = sheet.columns.filter((column) => rows.some((row) => row[column.key]?.is === 'size'));
    const lines = [headings(sheet.columns, sized), ...rows.map((row) => fieldsOf(row, sheet.columns, sized))];
    const text = lines.map((fields) => fields.map(quoted).join(',') + lineEnd).join('');
    return hasOnlyAscii(text) ? text : byteOrderMark + text;
}

function headings(columns: readonly Column[], sized: readonly Column[]): readonly string[] {
    const ofNumbers = sized.flatMap((column) =>
        sizeDirections.map((direction) => headingText({ ...column, heading: `${column.heading} ${direction}` })),
    );
    return [...columns.map(headingText), ...ofNumbers].map(asPlainText);
}

function fieldsOf(row: Row, columns: readonly Column[], sized: readonly Column[]): readonly string[] {
    const numbers = sized.flatMap(({ key, unit }) => {
        const cell = row[key];
        return sizeDirections.map((direction) => (cell?.is === 'size' ? numberIn(cell[direction], unit) : ''));
    });
    return [...columns.map((column) => fieldOf(row[column.key], column.unit)), ...numbers];
}

function fieldOf(cell: Cell | undefined, unit: Unit | undefined): string {
    if (cell?.is === 'amount') return numberIn(cell.amount, unit);
    if (cell?.is === 'number') return formatNumber(cell.number, { decimals: 6, zeros: 'dropped' });
    return cell?.is === 'count' ? cellText(cell) : asPlainText(cellText(cell));
}

/** An exact value in the unit of its column, to six decimals; empty if it is not known. */
function numberIn(amount: Amount | undefined, unit: Unit | undefined): string {
    if (!amount) return '';
    const value = unit ? quantity.valueIn(amount.quantity, unit) : amount.quantity.value;
    return formatNumber(value, { decimals: 6, zeros: 'dropped' });
}

/** Text that no spreadsheet takes for a formula. The wide forms of the signs are read as formulas by some. */
function asPlainText(text: string): string {
    return /^[=+\-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20]/.test(text) ? `'${text}` : text;
}

function quoted(field: string): string {
    return /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
}

function hasOnlyAscii(text: string): boolean {
    for (let index = 0; index < text.length; index++) if (text.charCodeAt(index) > 0x7f) return false;
    return true;
}
