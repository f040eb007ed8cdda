// Formatting as an editor asks for it. Knows requests and edits: how a text is formatted is in format-case.
import type { LangiumDocument } from 'langium';
import type { Formatter } from 'langium/lsp';
import type {
    DocumentOnTypeFormattingOptions,
    DocumentOnTypeFormattingParams,
    DocumentRangeFormattingParams,
    TextEdit,
} from 'vscode-languageserver';
import { type FormattingServices, formattingChanges } from './format-case.js';

/** Answers with the smallest edits, so that cursors and marks stay where they are. The language has one layout: options are not asked. */
export class CasewrightFormatter implements Formatter {
    constructor(private readonly services: FormattingServices) {}

    formatDocument({ textDocument }: LangiumDocument): TextEdit[] {
        return formattingChanges(textDocument.getText(), this.services).map(({ offset, end, text }) => ({
            range: { start: textDocument.positionAt(offset), end: textDocument.positionAt(end) },
            newText: text,
        }));
    }

    /** Edits that touch a line of the range; columns are those of the whole document. */
    formatDocumentRange(document: LangiumDocument, { range }: Pick<DocumentRangeFormattingParams, 'range'>): TextEdit[] {
        return this.formatDocument(document).filter(
            (edit) => edit.range.end.line >= range.start.line && edit.range.start.line <= range.end.line,
        );
    }

    /** After a brace is closed its line finds its place. */
    formatDocumentOnType(document: LangiumDocument, { position }: Pick<DocumentOnTypeFormattingParams, 'position'>): TextEdit[] {
        return this.formatDocumentRange(document, { range: { start: position, end: position } });
    }

    get formatOnTypeOptions(): DocumentOnTypeFormattingOptions {
        return { firstTriggerCharacter: '}' };
    }
}
