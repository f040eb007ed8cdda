// An editor without a screen: files in memory, one of them open, and the answers of the language server as text.
import { type LangiumDocument, URI } from 'langium';
import type { Diagnostic, Range, TextDocumentPositionParams } from 'vscode-languageserver';
import { TextsByUri } from '../../src/analysis/texts.js';
import { createLanguageServerServices } from '../../src/server/services.js';

/** Where the cursor stands in a text. */
const cursor = '<|>';

/** One server for all tests of a file, as in an editor that stays open; each test has a folder of its own. */
const files = new Map<string, string>();
const services = makeServices();
let folders = 0;

export class Editor {
    readonly services = services;
    /** The text of the file that is looked at, without the cursor. */
    text = '';
    private offset = 0;
    private readonly folder = `memory:/work-${++folders}/`;

    private constructor(private readonly name: string) {}

    /**
     * Opens a text, called `design.case`, with other files beside it.
     * @param text with `<|>` where the cursor stands, if one is needed
     */
    static async open(text: string, beside: Readonly<Record<string, string>> = {}, name = 'design.case'): Promise<Editor> {
        const editor = new Editor(name);
        for (const [file, content] of Object.entries(beside)) {
            files.set(editor.uri(file), content);
        }
        await editor.type(text);
        return editor;
    }

    /** Replaces the text of the file that is looked at. */
    async type(text: string): Promise<void> {
        this.offset = Math.max(0, text.indexOf(cursor));
        this.text = text.replace(cursor, '');
        await this.write(this.name, this.text);
    }

    /** Writes a file, new or not, and lets the server look at the change. */
    async write(file: string, text: string): Promise<void> {
        files.set(this.uri(file), text);
        await services.shared.workspace.DocumentBuilder.update([URI.parse(this.uri(file))], []);
    }

    async remove(file: string): Promise<void> {
        files.delete(this.uri(file));
        await services.shared.workspace.DocumentBuilder.update([], [URI.parse(this.uri(file))]);
    }

    uri(file = this.name): string {
        return file.includes(':') ? file : this.folder + file;
    }

    document(file = this.name): LangiumDocument {
        const document = services.shared.workspace.LangiumDocuments.getDocument(URI.parse(this.uri(file)));
        if (!document) {
            throw new Error(`no document ${file} is open`);
        }
        return document;
    }

    get lsp() {
        return services.casewright.lsp;
    }

    /** What a request at the cursor is made with. */
    get atCursor(): TextDocumentPositionParams {
        return { textDocument: { uri: this.uri() }, position: this.document().textDocument.positionAt(this.offset) };
    }

    diagnostics(file = this.name): readonly Diagnostic[] {
        return this.document(file).diagnostics ?? [];
    }

    /** The diagnostics of a file, each as the line it is in, its words underlined, and what it says. */
    squiggles(file = this.name): string {
        return this.diagnostics(file)
            .map(({ range, severity, code, message }) => {
                const kind = { 1: 'error', 2: 'warning', 3: 'note', 4: 'hint' }[severity ?? 1];
                return `${this.underlined(range, file)}\n${[kind, code].filter(Boolean).join(' ')}: ${message}`;
            })
            .join('\n\n');
    }

    /** The line of a range, and under it the range. */
    underlined({ start, end }: Range, file = this.name): string {
        const line = this.document(file).textDocument.getText().split('\n')[start.line] ?? '';
        const length = end.line === start.line ? Math.max(1, end.character - start.character) : line.length - start.character;
        return `${line}\n${' '.repeat(start.character)}${'^'.repeat(length)}`;
    }

    /** The words of a range. */
    words(range: Range, file = this.name): string {
        return this.document(file).textDocument.getText(range);
    }
}

function makeServices() {
    const read = async (uri: string): Promise<string> => {
        const text = files.get(uri);
        if (text === undefined) {
            throw new Error(`there is no file ${uri}`);
        }
        return text;
    };
    return createLanguageServerServices({ fileSystemProvider: () => new TextsByUri(read) });
}

/** A text with the cursor put in at a place in some of its words: `Ti<|>er[2]`. */
export function withCursor(text: string, marked: string): string {
    const words = marked.replace(cursor, '');
    if (text.split(words).length !== 2) {
        throw new Error(`\`${words}\` stands ${text.split(words).length - 1} times in the text, not once`);
    }
    return text.replace(words, () => marked);
}
