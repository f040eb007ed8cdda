// Collects what a completion offers. Knows items of the protocol and declared names: not when what is offered.
import { vocabulary } from 'casewright-shared/casework';
import type { Unit } from 'casewright-shared/quantity';
import { type CompletionItem, CompletionItemKind, InsertTextFormat, type Range, type TextEdit } from 'vscode-languageserver';
import { describeName } from '../../lowering/unknown-names.js';
import type { DeclaredName, Sort } from '../../scoping/declared-name.js';
import type { LibraryName } from '../../workspace/library.js';
import { explained } from '../hover/markdown.js';

/** In which order groups of items stand. */
export type Rank = 1 | 2 | 3;

export interface Explained {
    readonly doc: string;
    readonly example?: string;
}

/** A name of the library, and the edit that makes it visible. */
export interface UnusedName extends LibraryName {
    readonly edit: TextEdit;
}

export class Offer {
    private readonly items = new Map<string, CompletionItem>();

    constructor(
        /** What an item replaces. */
        private readonly range: Range,
        /** Everything that is visible at the cursor, the nearest first. */
        private readonly visible: readonly DeclaredName[],
        /** What the library declares and the file does not use yet. */
        private readonly unused: readonly UnusedName[],
        private readonly takesSnippets: boolean,
    ) {}

    get all(): CompletionItem[] {
        return [...this.items.values()];
    }

    /** A word of the language. */
    word(label: string, { doc, example }: Explained, kind: CompletionItemKind = CompletionItemKind.Keyword, rank: Rank = 2): void {
        this.add({ label, kind, documentation: { kind: 'markdown', value: explained(label, doc, example) }, sortText: `${rank}` });
    }

    words(
        table: Readonly<Record<string, Explained | string>>,
        kind: CompletionItemKind = CompletionItemKind.Keyword,
        rank: Rank = 2,
    ): void {
        for (const [label, row] of Object.entries(table)) {
            this.word(label, typeof row === 'string' ? { doc: row } : row, kind, rank);
        }
    }

    /** Words of which nothing more is to be said than where they belong. */
    plainWords(labels: readonly string[], doc: string, kind: CompletionItemKind = CompletionItemKind.EnumMember, rank: Rank = 1): void {
        for (const label of labels) {
            this.word(label, { doc }, kind, rank);
        }
    }

    /**
     * A whole statement.
     * @param text with what is to be filled in between `<` and `>`, and `<|>` where the cursor ends
     */
    snippet(label: string, text: string, { doc, example }: Explained, rank: Rank = 2): void {
        this.add({
            label,
            kind: CompletionItemKind.Snippet,
            documentation: { kind: 'markdown', value: explained(label, doc, example) },
            sortText: `${rank}`,
            insertTextFormat: this.takesSnippets ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
            textEdit: {
                range: this.range,
                newText: this.takesSnippets ? withTabStops(text) : text.replace(placeToFill, '$1').replace('<|>', ''),
            },
        });
    }

    /** A unit behind a number. */
    unit({ symbol, name, spaced }: Unit): void {
        const newText = spaced ? ` ${symbol}` : symbol;
        this.add({ label: symbol, kind: CompletionItemKind.Unit, detail: name, sortText: '1', textEdit: { range: this.range, newText } });
    }

    /** How a value may look, to be changed. */
    example(text: string, doc: string): void {
        this.add({ label: text, kind: CompletionItemKind.Value, documentation: doc, detail: 'for example', sortText: '3' });
    }

    /** Declared names of some sorts, or of some kinds of things. */
    names(wanted: { readonly sorts?: readonly Sort[]; readonly kinds?: readonly string[] }, rank: Rank = 1): void {
        for (const name of this.visible) {
            const fits = wanted.sorts?.includes(name.sort) === true || wanted.kinds?.includes(name.kind) === true;
            if (fits) {
                this.name(name, rank);
            }
        }
        for (const name of this.unused) {
            if (wanted.kinds?.includes(name.kind)) {
                this.unusedName(name);
            }
        }
    }

    /** A name of the library, with the line that uses it. Last in the list: what the shop has comes first. */
    private unusedName({ name, kind, module, edit }: UnusedName): void {
        this.add({
            label: name,
            kind: CompletionItemKind.Class,
            detail: `${vocabulary.factKinds[kind]?.called ?? kind} of ${module}`,
            documentation: `Adds the line \`use ${module}\`.`,
            sortText: '4',
            additionalTextEdits: [edit],
        });
    }

    name(name: DeclaredName, rank: Rank = 1): void {
        if (name.isUnnamed && !Object.hasOwn(vocabulary.partKinds, name.name)) {
            return;
        }
        this.add({ label: name.name, kind: kindOfItem[name.sort], detail: describeName(name), sortText: `${rank}` });
    }

    private add(item: CompletionItem): void {
        if (!this.items.has(item.label)) {
            this.items.set(item.label, { textEdit: { range: this.range, newText: item.label }, ...item });
        }
    }
}

const placeToFill = /<([^<>|]+)>/g;

/** The text in the protocol's syntax for snippets. */
function withTabStops(text: string): string {
    let stop = 0;
    return text.replace(placeToFill, (_, value: string) => `\${${++stop}:${value}}`).replace('<|>', '$0');
}

const kindOfItem: Readonly<Record<Sort, CompletionItemKind>> = {
    fact: CompletionItemKind.Class,
    recipe: CompletionItemKind.Method,
    design: CompletionItemKind.Class,
    let: CompletionItemKind.Constant,
    parameter: CompletionItemKind.Variable,
    part: CompletionItemKind.Struct,
    index: CompletionItemKind.Variable,
    opening: CompletionItemKind.Field,
    build: CompletionItemKind.Struct,
    use: CompletionItemKind.Module,
};
