// What checking a whole project finds in files that say nothing of it by themselves, such as a material that is too thin for the design
// that uses it. Knows diagnostics and texts: not how anything is found.
import type { LangiumDocument, LangiumDocuments } from 'langium';
import { URI } from 'langium';
import type { Diagnostic } from 'vscode-languageserver';
import { keyOf } from './finding-diagnostic.js';

export class ProjectDiagnostics {
    /** By the URIs of files. */
    private beside: ReadonlyMap<string, readonly Diagnostic[]> = new Map();
    /** The texts that were checked: what was found is true of them only. */
    private texts: ReadonlyMap<string, string> = new Map();

    constructor(
        private readonly documents: () => LangiumDocuments,
        private readonly publish: (document: LangiumDocument, diagnostics: Diagnostic[]) => void,
    ) {}

    /** Shows what was found in a project, beside what its files say by themselves, for as long as no text of it changes. */
    show(found: ReadonlyMap<string, readonly Diagnostic[]>): void {
        this.forget();
        const beside = new Map<string, readonly Diagnostic[]>();
        const texts = new Map<string, string>();
        for (const [uri, diagnostics] of found) {
            const document = this.document(uri);
            if (document) {
                texts.set(uri, document.textDocument.getText());
                const known = new Set((document.diagnostics ?? []).map(keyOf));
                const more = diagnostics.filter((one) => !known.has(keyOf(one)));
                if (more.length > 0) {
                    beside.set(uri, more);
                    this.publish(document, [...(document.diagnostics ?? []), ...more]);
                }
            }
        }
        this.beside = beside;
        this.texts = texts;
    }

    /** What is to be shown in a file beside what it says by itself. */
    of(document: LangiumDocument): readonly Diagnostic[] {
        if (this.beside.size > 0 && [...this.texts].some(([uri, text]) => this.document(uri)?.textDocument.getText() !== text)) {
            this.forget();
        }
        return this.beside.get(document.uri.toString()) ?? [];
    }

    private forget(): void {
        const before = this.beside;
        this.beside = new Map();
        this.texts = new Map();
        for (const [uri, more] of before) {
            const document = this.document(uri);
            const gone = new Set(more.map(keyOf));
            if (document?.diagnostics) {
                this.publish(
                    document,
                    document.diagnostics.filter((one) => !gone.has(keyOf(one))),
                );
            }
        }
    }

    private document(uri: string): LangiumDocument | undefined {
        return this.documents().getDocument(URI.parse(uri));
    }
}
