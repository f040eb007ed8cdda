// Syntax errors as problems like all others. Knows parse results: what an error says is made where the text is parsed.
import type { Problem } from 'casewright-shared/casework';
import type { LangiumDocument } from 'langium';

/** The rule that explains every syntax error. */
const syntaxRule = 'TXT-001';

/** What could not be read in a document, at most one problem a line, in the order of the text. */
export function syntaxProblems(document: LangiumDocument, file: string): Problem[] {
    const { lexerErrors, lexerReport, parserErrors } = document.parseResult;
    const byLine = new Map<number, Problem>();
    const report = (offset: number, length: number, message: string): void => {
        const { line } = document.textDocument.positionAt(offset);
        if (!byLine.has(line)) {
            byLine.set(line, { code: syntaxRule, span: { file, start: offset, end: offset + length }, message, related: [] });
        }
    };
    for (const { offset, length, message } of lexerErrors) {
        report(offset, length, message);
    }
    for (const { token, message } of parserErrors) {
        // A text without a single word has no token to point at.
        const isPlaced = token.startOffset >= 0;
        report(isPlaced ? token.startOffset : 0, isPlaced ? token.image.length : 0, message);
    }
    for (const { offset, length, message } of lexerReport?.diagnostics ?? []) {
        report(offset ?? 0, length, message);
    }
    return [...byLine.values()].sort((a, b) => a.span.start - b.span.start);
}
