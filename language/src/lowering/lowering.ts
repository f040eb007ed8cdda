// From a document and the files it uses to one design. Knows how the pieces go together, and when a piece can be used again.
import type { Declaration, DeclarationId, Design, FactDeclaration, Problem, Statement } from 'casewright-shared/casework';
import { type AstNode, type LangiumDocument, URI, UriUtils } from 'langium';
import type { VisibleNames } from '../scoping/visible-names.js';
import type { UsedFiles } from '../workspace/used-files.js';
import { carryOver } from './carried-over.js';
import { FileLowering } from './file-lowering.js';
import { KnownStatements } from './known-statements.js';
import { type LoweredFile, lowerFile } from './lowered-file.js';
import { targetSpan } from './names-of-file.js';

/** A design, and what is wrong with the text it was read from. Problems of used files are in it: their spans say whose they are. */
export interface LoweredDesign {
    readonly design: Design;
    readonly problems: readonly Problem[];
}

interface Remembered {
    /** The syntax trees of the file and of all it uses. */
    readonly of: readonly AstNode[];
    readonly lowered: LoweredFile;
    readonly file: FileLowering;
}

export class Lowering {
    /** By the state of a file, and by what the file is called. */
    private readonly remembered = new WeakMap<AstNode, Map<string, Remembered>>();
    /** What was last lowered of a document, by what it is called. */
    private readonly last = new WeakMap<LangiumDocument, Map<string, LoweredFile>>();

    private readonly statements = new KnownStatements();

    constructor(
        private readonly names: VisibleNames,
        private readonly usedFiles: UsedFiles,
    ) {}

    /** The design that a document says, with everything it uses. The document and what it uses must be linked. */
    lowerDesign(document: LangiumDocument): LoweredDesign {
        const documents = this.usedFiles.closure(document);
        const labelOf = labelsFrom(document.uri);
        const files = documents.map((one) => this.lowerOne(one, labelOf));
        const cycles = this.cycles(document, files);
        return {
            design: designOf(files.map(({ lowered }) => lowered)),
            problems: [...cycles, ...files.flatMap(({ lowered }) => lowered.problems)],
        };
    }

    private lowerOne(document: LangiumDocument, labelOf: (uri: string) => string): Remembered {
        const root = document.parseResult.value;
        const label = labelOf(document.uri.toString());
        let byLabel = this.remembered.get(root);
        if (!byLabel) {
            byLabel = new Map();
            this.remembered.set(root, byLabel);
        }
        const of = this.usedFiles.closure(document).map((one) => one.parseResult.value);
        const known = byLabel.get(label);
        if (known && known.of.length === of.length && known.of.every((one, index) => one === of[index])) {
            return known;
        }
        const file = new FileLowering(this.names.of(document), this.names, labelOf);
        const made = { of, lowered: this.carriedOver(document, lowerFile(file, this.statements, of.slice(1))), file };
        byLabel.set(label, made);
        return made;
    }

    private carriedOver(document: LangiumDocument, lowered: LoweredFile): LoweredFile {
        const last = this.last.get(document) ?? new Map<string, LoweredFile>();
        this.last.set(document, last);
        const before = last.get(lowered.label);
        const now = before ? carryOver(before, lowered) : lowered;
        last.set(lowered.label, now);
        return now;
    }

    /** Files that use each other in a ring: one report for each ring, where the first file that was asked for enters it. */
    private cycles(document: LangiumDocument, files: readonly Remembered[]): Problem[] {
        const problems: Problem[] = [];
        const reported = new Set<string>();
        const path: LangiumDocument[] = [];
        const done = new Set<LangiumDocument>();
        const visit = (at: LangiumDocument): void => {
            path.push(at);
            for (const { use } of this.usedFiles.usedBy(at)) {
                const next = this.usedFiles.documentOf(use, at);
                if (!next || done.has(next)) {
                    continue;
                }
                const from = path.indexOf(next);
                if (from < 0) {
                    visit(next);
                    continue;
                }
                const ring = path.slice(from);
                const key = ring
                    .map((one) => one.uri.toString())
                    .sort()
                    .join(' ');
                if (!reported.has(key)) {
                    reported.add(key);
                    problems.push(this.cycleProblem(ring, files));
                }
            }
            path.pop();
            done.add(at);
        };
        visit(document);
        return problems;
    }

    private cycleProblem(ring: readonly LangiumDocument[], files: readonly Remembered[]): Problem {
        const steps = ring.map((document, index) => {
            const next = ring[(index + 1) % ring.length]!;
            const { file } = files.find((one) => one.file.names.document === document)!;
            const use = file.names.uses.find((one) => this.usedFiles.documentOf(one, document) === next)!;
            return { label: file.label, span: targetSpan(file, use) };
        });
        const names = [...steps.map(({ label }) => label), steps[0]!.label];
        return {
            code: 'NAM-004',
            span: steps[0]!.span,
            message: ring.length === 1 ? 'a file does not use itself' : `these files use each other in a ring: ${names.join(' uses ')}`,
            hint: ring.length === 1 ? 'take the line out' : 'put what both need into a third file, and use that',
            found: names.join(' -> '),
            needed: 'files that do not lead back to themselves',
            related: steps.slice(1).map(({ label, span }) => ({ span, message: `${label} goes on here` })),
        };
    }
}

/** What files are called: by their path from the folder of the one that was asked for; others, such as the library, by their URI. */
function labelsFrom(main: URI): (uri: string) => string {
    const folder = UriUtils.dirname(main);
    const labels = new Map<string, string>();
    return (text) => {
        let label = labels.get(text);
        if (label === undefined) {
            const uri = URI.parse(text);
            const isNear = uri.scheme === main.scheme && uri.authority === main.authority;
            label = isNear ? UriUtils.relative(folder, uri) : text;
            labels.set(text, label);
        }
        return label;
    };
}

function designOf(files: readonly LoweredFile[]): Design {
    const main = files[0]!;
    const declarations = new Map<DeclarationId, Declaration>();
    const used = new Set<DeclarationId>();
    for (const file of files) {
        for (const declaration of file.declarations) {
            addDeclaration(declarations, declaration);
        }
        for (const id of file.used) {
            used.add(id);
        }
    }
    const nearestLast = [...files].reverse();
    const shop = files.find((file) => file.shop)?.shop;
    return {
        file: main.label,
        files: files.map(({ label }) => label),
        declarations,
        defaults: nearestLast.flatMap((file) => file.defaults),
        requirements: files.flatMap((file) => file.requirements),
        allowances: files.flatMap((file) => file.allowances),
        ...present('project', main.project),
        ...present('shop', shop),
        cases: main.cases,
        used,
    };
}

function present<Key extends string>(key: Key, value: FactDeclaration | undefined): { readonly [K in Key]?: FactDeclaration } {
    return (value ? { [key]: value } : {}) as { readonly [K in Key]?: FactDeclaration };
}

/** A declaration and all that is declared inside it. */
function addDeclaration(declarations: Map<DeclarationId, Declaration>, declaration: Declaration): void {
    if (!declarations.has(declaration.id)) {
        declarations.set(declaration.id, declaration);
    }
    if (declaration.is === 'design') {
        for (const parameter of declaration.parameters) {
            declarations.set(parameter.id, parameter);
        }
        for (const opening of declaration.phrases.openings) {
            declarations.set(opening.id, opening);
        }
        addStatements(declarations, declaration.statements);
    }
}

function addStatements(declarations: Map<DeclarationId, Declaration>, statements: readonly Statement[]): void {
    for (const statement of statements) {
        switch (statement.is) {
            case 'let':
            case 'declare':
                addDeclaration(declarations, statement.declaration);
                break;
            case 'part':
                for (const part of statement.parts) {
                    addDeclaration(declarations, part);
                    if (part.index) {
                        addDeclaration(declarations, part.index);
                    }
                }
                for (const opening of statement.phrases.openings) {
                    addDeclaration(declarations, opening);
                }
                addStatements(declarations, statement.statements);
                break;
            case 'in':
                addStatements(declarations, statement.statements);
                break;
            case 'repeat':
                addDeclaration(declarations, statement.index);
                addStatements(declarations, statement.statements);
                break;
            case 'if':
                addStatements(declarations, statement.then);
                addStatements(declarations, statement.otherwise);
                break;
        }
    }
}
