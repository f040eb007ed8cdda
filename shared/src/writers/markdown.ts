/** Markdown with tables (CommonMark 0.31 and the tables of GitHub Flavored Markdown), aligned so that it also reads as plain text. */
import { type Column, type Group, isEmptyColumn, type Sheet } from '../documents/index.js';
import { cellText, headingText } from './cell-text.js';

/** A sheet: title, what stands above, a table for each group, notes. Columns in which a group has nothing are left out of its table. */
export function writeMarkdown(sheet: Sheet): string {
    const blocks = [
        `# ${headingWords(sheet.title)}`,
        sheet.facts.map(({ label, text }) => `- ${inline(label)}: ${inline(text)}`).join('\n'),
        ...sheet.groups.flatMap((group) => groupBlocks(group, sheet.columns)),
        ...(sheet.notes.length === 0 ? [] : ['## Notes', listOf(sheet.notes)]),
    ];
    return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

function groupBlocks(group: Group, columns: readonly Column[]): readonly string[] {
    const shown = columns.filter((column) => !column.saidByGroup && !isEmptyColumn(column, group));
    return [`## ${headingWords(group.heading)}`, tableOf(group, shown), listOf(group.notes)];
}

function listOf(notes: readonly string[]): string {
    return notes.map((note) => `- ${atLineStart(inline(note))}`).join('\n');
}

function tableOf(group: Group, columns: readonly Column[]): string {
    const table = [
        columns.map((column) => cellWords(headingText(column))),
        ...group.rows.map((row) => columns.map((column) => cellWords(cellText(row[column.key])))),
    ];
    const widths = columns.map((_, index) => Math.max(3, ...table.map((cells) => widthOf(cells[index] ?? ''))));
    const lineOf = (cells: readonly string[]) => {
        const padded = cells.map((cell, index) => {
            const blank = ' '.repeat((widths[index] ?? 0) - widthOf(cell));
            return columns[index]?.align === 'right' ? blank + cell : cell + blank;
        });
        return `| ${padded.join(' | ')} |`;
    };
    const rule = columns.map(({ align }, index) => {
        const dashes = '-'.repeat((widths[index] ?? 0) - 1);
        return align === 'right' ? `${dashes}:` : `:${dashes}`;
    });
    const [head = [], ...rows] = table;
    return [lineOf(head), `| ${rule.join(' | ')} |`, ...rows.map(lineOf)].join('\n');
}

/** In characters, of which one may be two code units. */
function widthOf(text: string): number {
    return [...text].length;
}

// ---------------------------------------------------------------- text that means itself

/**
 * Text on one line in which no character works as markup. An underscore before a letter cannot end emphasis, and brackets that
 * no link follows are no link, so these get no backslash: `Tier[1..3]` is read as plain text more often than as Markdown.
 */
function inline(text: string): string {
    return text
        .replace(/\s+/g, ' ')
        .trim()
        .replace(/[\\`*<&~]/g, '\\$&')
        .replace(/_(?![\p{L}\p{N}])/gu, '\\_')
        .replace(/\](?=[([:])/g, '\\]');
}

function cellWords(text: string): string {
    return inline(text).replaceAll('|', '\\|');
}

/** In a heading, number signs at the end would be taken for its closing. */
function headingWords(text: string): string {
    return inline(text).replace(/#+$/, (signs) => '\\#'.repeat(signs.length));
}

/** At the start of an item, signs that would begin a heading, a list, a quotation or a rule. */
function atLineStart(text: string): string {
    return text.replace(/^(?:[-+>#=]|\d+(?=[.)]))/, (signs) => (/^\d/.test(signs) ? `${signs}\\` : `\\${signs}`));
}
