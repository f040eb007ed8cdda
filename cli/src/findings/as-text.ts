/** Findings for a person at a terminal. */
import { countInWords, plural } from 'casewright-shared/rules';
import type { Emphasis, Paint } from '../terminal.js';
import { visibleText } from '../visible-text.js';
import { countFound } from './count.js';
import { excerpt } from './excerpt.js';
import { type FoundInText, notAllowed, type Place } from './found.js';

/** Where the numbers of lines end, and where the words of a finding begin. */
const margin = 6;
const labelWidth = 'needed'.length + 2;

/** More findings than these are counted and not shown: a file that is no design at all can have one on each line. */
const mostShown = 200;

/** All findings but the allowed ones, each in full, and a line that counts them. `files` were asked for. */
export function findingsAsText(found: readonly FoundInText[], files: number, paint: Paint): string {
    const open = notAllowed(found);
    const shown = open.slice(0, mostShown).map((one) => `${findingAsText(one, paint)}\n`);
    const more = open.length - shown.length;
    const allowed = found.length - open.length;
    const summary = [
        `${countInWords(countFound(open))} in ${plural(files, 'file')}`,
        ...(allowed === 0 ? [] : [`${allowed} allowed`]),
        ...(more === 0 ? [] : [`${more} of them not shown: \`--format json\` shows all`]),
    ];
    return `${shown.join('')}${summary.join('; ')}\n`;
}

/**
 * A finding in full: place, code and message; the line with marks under its words; what was found and needed, what mends it, and
 * related places.
 */
export function findingAsText(found: FoundInText, paint: Paint): string {
    const { record } = found;
    const { start, end } = record.range;
    const { text, marks } = excerpt(found.line, start.column, end.line > start.line ? found.line.length + 1 : end.column);
    const emphasis = record.severity as Emphasis;
    const labelled = ([label, value]: readonly [string, string]) =>
        `${blank(margin + 2)}${paint('faint', label.padEnd(labelWidth))}${visibleText(value)}`;
    const more: (readonly [string, string])[] = [
        ['found', record.found ?? ''],
        ['needed', record.needed ?? ''],
        ['hint', record.hint ?? ''],
        ...found.related.map(({ place, message }) => ['see', `${placeAsText(place)}  ${message}`] as const),
    ];
    return [
        findingInOneLine(found, paint),
        `${paint('faint', String(start.line).padStart(margin))}  ${text}`.trimEnd(),
        `${blank(margin + 2)}${marks.replace(/~+/, (words) => paint(emphasis, words))}`,
        ...more.filter(([, value]) => value !== '').map(labelled),
    ]
        .join('\n')
        .concat('\n');
}

/** A finding's place, severity, code and message. */
export function findingInOneLine({ record }: FoundInText, paint: Paint): string {
    const place = placeAsText({ file: record.file, ...record.range });
    const what = paint(record.severity as Emphasis, `${record.severity} ${record.code}`);
    return `${paint('strong', place)}  ${what}  ${visibleText(record.message)}`;
}

/** `kiln-lane.case:21:11` */
function placeAsText({ file, start }: Place): string {
    return visibleText(`${file}:${start.line}:${start.column}`);
}

function blank(columns: number): string {
    return ' '.repeat(columns);
}
