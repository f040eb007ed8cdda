// Formats a whole text. Knows the steps: statements, roles, lines, columns, and how to say the result as edits.
import type { LangiumCoreServices } from 'langium';
import { align } from './alignment.js';
import { layOut } from './layout.js';
import { INDENTATION, type Line } from './lines.js';
import { readRoles } from './roles.js';
import { readStatements } from './statement-tree.js';

/** A piece of the text and what takes its place. Offsets count UTF-16 units from 0; `end` is after the last. */
export interface TextChange {
    offset: number;
    end: number;
    text: string;
}

/** What is needed of the services: a lexer and a parser of the language. */
export type FormattingServices = { parser: Pick<LangiumCoreServices['parser'], 'Lexer' | 'LangiumParser'> };

/**
 * Formats a text: four spaces a level, one statement a line, values and comments in columns, one spelling of measures.
 * The order of statements, the words and the comments stay; a statement with a syntax error stays as it is written.
 */
export function formatCase(text: string, services: FormattingServices): string {
    let formatted = '';
    let end = 0;
    for (const change of formattingChanges(text, services)) {
        formatted += text.slice(end, change.offset) + change.text;
        end = change.end;
    }
    return formatted + text.slice(end);
}

/** What formatting changes, from the begin of the text to its end. A text whose braces do not balance is not changed. */
export function formattingChanges(text: string, services: FormattingServices): TextChange[] {
    const { tokens, hidden, report } = services.parser.Lexer.tokenize(text);
    if (report && report.diagnostics.length > 0) {
        return [];
    }
    const parsed = services.parser.LangiumParser.parse(text);
    const errors = [...parsed.lexerErrors.map(({ offset }) => offset), ...parsed.parserErrors.map(({ token }) => token.startOffset)];
    const lines = layOut(readStatements(tokens, hidden), { text, roles: readRoles(parsed.value), errors });
    align(lines);
    return changesOf(text, lines);
}

function changesOf(text: string, lines: readonly Line[]): TextChange[] {
    const newLine = text.includes('\r\n') ? '\r\n' : '\n';
    const changes: TextChange[] = [];
    let end = 0;
    const beginOf = ({ indent }: Line, breaks: number): string => newLine.repeat(breaks) + ' '.repeat(indent * INDENTATION);
    const replace = (offset: number, after: number, replacement: string): void => {
        if (text.slice(offset, after) !== replacement) {
            changes.push({ offset, end: after, text: replacement });
        }
    };
    for (const line of lines) {
        line.pieces.forEach(({ piece, text: spelt, gap }, index) => {
            const from = afterStrangeSigns(text, end, piece.offset);
            const isParted = line.blankBefore && from === end;
            replace(from, piece.offset, index === 0 ? beginOf(line, from === 0 ? 0 : isParted ? 2 : 1) : gap.replaceAll(/\r?\n/g, newLine));
            replace(piece.offset, piece.end, spelt);
            end = piece.end;
        });
    }
    const from = afterStrangeSigns(text, end, text.length);
    replace(from, text.length, from === 0 ? '' : newLine);
    return changes;
}

/** Signs that the language does not have belong to no statement: what stands between two pieces begins after them. */
function afterStrangeSigns(text: string, from: number, to: number): number {
    let at = to;
    while (at > from && /[\s;]/.test(text[at - 1]!)) {
        at--;
    }
    return at;
}
