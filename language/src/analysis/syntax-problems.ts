// Syntax errors as problems like all others. Knows parse results: what an error says is made where the text is parsed.
import type { Problem } from 'casewright-shared/casework';
import type { IToken } from 'chevrotain';
import type { LangiumDocument } from 'langium';
import { SecondStatementException } from '../parser/second-statement.js';

/** The rule that explains every syntax error but one. */
const syntaxRule = 'TXT-001';
/** The rule of two statements on one line, of which both are read. */
const secondStatementRule = 'TXT-002';

/** What could not be read in a document, at most one problem a line, in the order of the text. */
export function syntaxProblems(document: LangiumDocument, file: string): Problem[] {
    const { lexerErrors, lexerReport, parserErrors } = document.parseResult;
    const byLine = new Map<number, Problem>();
    const report = (offset: number, length: number, message: string, more: Partial<Problem> = {}): void => {
        const { line } = document.textDocument.positionAt(offset);
        if (!byLine.has(line)) {
            byLine.set(line, { code: syntaxRule, span: { file, start: offset, end: offset + length }, message, related: [], ...more });
        }
    };
    for (const { offset, length, message } of lexerErrors) {
        report(offset, length, message);
    }
    for (const error of parserErrors) {
        const { token, message } = error;
        // A text without a single word has no token to point at.
        const isPlaced = token.startOffset >= 0;
        const more =
            error instanceof SecondStatementException
                ? { code: secondStatementRule, fix: onLineOfItsOwn(document.textDocument.getText(), token, file) }
                : {};
        report(isPlaced ? token.startOffset : 0, isPlaced ? token.image.length : 0, message, more);
    }
    for (const { offset, length, message } of lexerReport?.diagnostics ?? []) {
        report(offset ?? 0, length, message);
    }
    return [...byLine.values()].sort((a, b) => a.span.start - b.span.start);
}

/** Breaks the line before a statement; inside braces that are closed on the line a `;` does it. */
function onLineOfItsOwn(text: string, { startOffset, image }: IToken, file: string): NonNullable<Problem['fix']> {
    const before = text.slice(text.lastIndexOf('\n', startOffset - 1) + 1, startOffset);
    const indent = /^\s*/.exec(before)?.[0] ?? '';
    const isInBraces = before.includes('{');
    const span = { file, start: startOffset - (before.length - before.trimEnd().length), end: startOffset };
    return isInBraces
        ? { title: `write \`;\` before \`${image}\``, span, text: '; ', safe: true }
        : { title: `put \`${image}\` on a line of its own`, span, text: `\n${indent}`, safe: true };
}
