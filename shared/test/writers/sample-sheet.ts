import type { Amount, Cell, Column, Row, Sheet } from '../../src/documents/index.js';
import { formatLength, formatNumber, quantity, Rational, unitNamed } from '../../src/quantity/index.js';

const inch = unitNamed('in');

/** So many 64ths of an inch, printed to 1/32. */
function sixtyFourths(count: number): Amount {
    const length = quantity.of(Rational.of(count, 64), inch);
    return { quantity: length, printed: formatLength(length, { system: 'inch', denominator: 32, mark: 'none' }) };
}

/** So many hundredths of a foot, printed with one decimal. */
function hundredthsOfFeet(count: number): Amount {
    const feet = Rational.of(count, 100);
    const text = formatNumber(feet, { decimals: 1, zeros: 'kept' });
    return { quantity: quantity.of(feet, unitNamed('ft')), printed: { text, exact: false, off: undefined } };
}

export const text = (words: string): Cell => ({ is: 'text', text: words });

const columns: readonly Column[] = [
    { key: 'name', heading: 'Name', align: 'left' },
    { key: 'group', heading: 'Group', align: 'left', saidByGroup: true },
    { key: 'count', heading: 'Count', align: 'right' },
    { key: 'cut', heading: 'Cut', unit: inch, align: 'left' },
    { key: 'run', heading: 'Run', unit: unitNamed('ft'), align: 'right' },
];

export function sheetOf(...rows: readonly Row[]): Sheet {
    return {
        kind: 'sample',
        title: 'Sample',
        facts: [{ label: 'Client', text: 'Fern Alley' }],
        columns,
        groups: [{ heading: 'Boards', rows, notes: ['No waste.'] }],
        notes: ['The end.'],
    };
}

export const rows: readonly Row[] = [
    {
        name: text('Tier[1..2]'),
        group: text('Boards'),
        count: { is: 'count', count: 4 },
        cut: { is: 'size', length: sixtyFourths(2 * 64 + 33), width: sixtyFourths(64), thickness: undefined },
        run: { is: 'amount', amount: hundredthsOfFeet(1234) },
    },
    { name: text('Floor'), group: text('Boards'), count: { is: 'unknown' } },
];
