// What the lowering of one file shares: the file, how it is called, what was found wrong. Knows spans and ids: no statement.
import { type DeclarationId, type Problem, type Span, vocabulary } from 'casewright-shared/casework';
import type { AstNode, CstNode, LangiumDocument, Reference } from 'langium';
import { DeclaredName } from '../scoping/declared-name.js';
import type { FileNames } from '../scoping/file-names.js';
import type { VisibleNames } from '../scoping/visible-names.js';
import { docBefore } from './source-text.js';

/** A problem as it is reported: what may be left out is filled in. */
export type Reported = Omit<Problem, 'code' | 'span' | 'related'> & Partial<Pick<Problem, 'related'>>;

/** How files are called in spans and ids, such as `shop.case`. */
export type FileLabel = (uri: string) => string;

export class FileLowering {
    readonly problems: Problem[] = [];
    /** Declarations that this file refers to. */
    readonly used = new Set<DeclarationId>();
    private usedHere = new Set<DeclarationId>();
    readonly label: string;
    readonly text: string;
    /** Whether declared things come into the design, as far as it was asked. */
    readonly built = new Map<DeclaredName, boolean>();
    /** Declarations and parts of which it has been said that something in them is not built. */
    readonly notBuilt = new Set<AstNode>();
    private readonly brokenLines: readonly Line[];
    private readonly hasDocs: boolean;
    /** Words of broken and misspelt lines. */
    private lost: readonly string[] | undefined;
    private readonly byId = new Map<DeclarationId, DeclaredName>();
    private readonly ids = new Map<DeclaredName, DeclarationId>();

    constructor(
        readonly names: FileNames,
        readonly visible: VisibleNames,
        private readonly labelOf: FileLabel,
    ) {
        this.label = labelOf(names.document.uri.toString());
        this.text = names.document.textDocument.getText();
        this.brokenLines = linesWithErrors(names.document, this.text);
        this.hasDocs = this.text.includes('///');
    }

    labelFor(document: LangiumDocument): string {
        return document === this.names.document ? this.label : this.labelOf(document.uri.toString());
    }

    /**
     * Whether a name may well be declared by a line that is broken or misspelt: it stands there, or its first letters do, or it is a kind
     * and so the name of any part without one.
     */
    isLost(name: string): boolean {
        this.lost ??= [...this.names.lost, ...this.brokenTexts.flatMap(wordsIn)];
        return (
            this.lost.some((word) => name === word || (word.length > 1 && name.startsWith(word))) ||
            (this.lost.length > 0 && name in vocabulary.partKinds)
        );
    }

    /** Whether a file that is used cannot be read, or the line that uses one is broken: nobody knows then which names are unknown. */
    get lacksFiles(): boolean {
        return this.visible.lacksFiles(this.names) || this.names.lacksUse || this.brokenTexts.some((line) => line.includes('.case"'));
    }

    private get hasAllNames(): boolean {
        return this.names.lost.size === 0 && this.names.nameless.size === 0 && !this.lacksFiles;
    }

    private get brokenTexts(): string[] {
        return this.brokenLines.map(({ start, end }) => this.text.slice(start, end));
    }

    /** The stretch of a node; of a node that was not finished, where it would stand. */
    span(node: AstNode | undefined): Span {
        return this.spanOfCst(node?.$cstNode ?? node?.$container?.$cstNode);
    }

    spanOfCst(node: CstNode | undefined): Span {
        return node ? this.between(node.offset, node.end) : this.between(0, 0);
    }

    between(start: number, end: number): Span {
        return { file: this.label, start, end };
    }

    word(start: number, word: string): Span {
        return this.between(start, start + word.length);
    }

    /** The id of a declaration, of this file or of another. */
    id(name: DeclaredName): DeclarationId {
        let id = this.ids.get(name);
        if (id === undefined) {
            id = `${this.labelFor(name.document)}#${name.declarationPath}`;
            this.ids.set(name, id);
            this.byId.set(id, name);
        }
        return id;
    }

    /** The declaration that a name in this file refers to; it counts as used. */
    target(reference: Reference | undefined): DeclaredName | undefined {
        if (!reference?.ref) {
            return undefined;
        }
        const name = reference.$nodeDescription;
        if (!(name instanceof DeclaredName)) {
            return undefined;
        }
        const id = this.id(name);
        this.used.add(id);
        this.usedHere.add(id);
        return name;
    }

    /** Does something, with the declarations that it refers to, and whether all of it can be relied on: nothing is wrong and no name was lost. */
    during<Result>(lower: () => Result): {
        readonly result: Result;
        readonly used: ReadonlySet<DeclarationId>;
        readonly isFlawless: boolean;
    } {
        const problems = this.problems.length;
        this.usedHere = new Set();
        const result = lower();
        const isFlawless = this.problems.length === problems && this.brokenLines.length === 0 && this.hasAllNames;
        return { result, used: this.usedHere, isFlawless };
    }

    /** The declaration behind an id that this file refers to. */
    nameOf(id: DeclarationId): DeclaredName | undefined {
        return this.byId.get(id);
    }

    /** Whether a syntax error was found in the lines of a span. */
    isBroken(span: Span): boolean {
        let before = 0;
        let after = this.brokenLines.length;
        while (before < after) {
            const middle = (before + after) >> 1;
            if (this.brokenLines[middle]!.end < span.start) {
                before = middle + 1;
            } else {
                after = middle;
            }
        }
        const first = this.brokenLines[before];
        return first !== undefined && first.start <= span.end;
    }

    endOfLine(offset: number): number {
        const end = this.text.indexOf('\n', offset);
        return end < 0 ? this.text.length : end;
    }

    doc(start: number): { readonly doc?: string } {
        const doc = this.hasDocs ? docBefore(this.text, start) : undefined;
        return doc === undefined ? {} : { doc };
    }

    /** Reports a problem, unless it stands in a line with a syntax error: it may well come of that, and there is one report a line. */
    report(code: string, span: Span, problem: Reported): void {
        if (!this.isBroken(span)) {
            this.problems.push({ code, span, related: [], ...problem });
        }
    }
}

interface Line {
    readonly start: number;
    readonly end: number;
}

/** The lines in which there is a syntax error, in the order of the text. */
function linesWithErrors({ parseResult }: LangiumDocument, text: string): Line[] {
    const { lexerErrors, lexerReport, parserErrors } = parseResult;
    const offsets = [...lexerErrors, ...(lexerReport?.diagnostics ?? [])].map(({ offset }) => offset ?? 0);
    for (const { token } of parserErrors) {
        if (token.startOffset >= 0) {
            offsets.push(token.startOffset);
        }
    }
    return offsets
        .sort((a, b) => a - b)
        .map((offset) => {
            const end = text.indexOf('\n', offset);
            return { start: text.lastIndexOf('\n', offset - 1) + 1, end: end < 0 ? text.length : end };
        });
}

function wordsIn(line: string): string[] {
    return line.match(/[A-Za-z_À-ɏ][0-9A-Za-z_À-ɏ]+/g) ?? [];
}
