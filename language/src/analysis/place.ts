// Where a span is: its document, lines and columns. Knows documents: nothing of what is said about them.
import type { Span } from 'casewright-shared/casework';
import type { LangiumDocument } from 'langium';

/** A stretch of a document as a person counts: lines and columns from 1, the end behind the last character. */
export interface PlaceInText {
    /** The name of the file in spans and ids, such as `shop.case`. */
    readonly file: string;
    readonly uri: string;
    readonly line: number;
    readonly column: number;
    readonly endLine: number;
    readonly endColumn: number;
}

export function placeInText(document: LangiumDocument, span: Span): PlaceInText {
    const start = document.textDocument.positionAt(span.start);
    const end = document.textDocument.positionAt(span.end);
    return {
        file: span.file,
        uri: document.uri.toString(),
        line: start.line + 1,
        column: start.character + 1,
        endLine: end.line + 1,
        endColumn: end.character + 1,
    };
}
