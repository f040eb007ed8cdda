// Which designs a file belongs to, and what is found in all of them. Knows the graph of used files and analyses: no client.
import type { LangiumDocument, LangiumDocuments } from 'langium';
import { URI } from 'langium';
import type { Diagnostic } from 'vscode-languageserver';
import type { Analyses } from '../../analysis/analyses.js';
import type { UsedFiles } from '../../workspace/used-files.js';
import { diagnosticOf, keyOf } from '../diagnostics/finding-diagnostic.js';

/** The findings of a project by the URIs of its files. Every file is there, also one in which nothing is found. */
export type FoundInProject = ReadonlyMap<string, readonly Diagnostic[]>;

export class Projects {
    constructor(
        private readonly analyses: Analyses,
        private readonly usedFiles: UsedFiles,
        private readonly documents: LangiumDocuments,
    ) {}

    /** What is found in a file, in all that it uses, and in the designs that use it with all that they use; each finding once. */
    check(document: LangiumDocument): FoundInProject {
        const found = new Map<string, Map<string, Diagnostic>>();
        for (const design of this.outermost(document)) {
            const analysis = this.analyses.of(design);
            for (const file of this.usedFiles.closure(design)) {
                const uri = file.uri.toString();
                found.set(uri, found.get(uri) ?? new Map());
            }
            for (const finding of analysis.findings.filter(({ allowed }) => allowed === undefined)) {
                const uri = analysis.documentOf(finding.span.file).uri.toString();
                const diagnostic = diagnosticOf(finding, analysis);
                found.get(uri)?.set(keyOf(diagnostic), diagnostic);
            }
        }
        return new Map([...found].map(([uri, diagnostics]) => [uri, [...diagnostics.values()]]));
    }

    /** The designs that can be built where a file is open: the file alone if it is a project, otherwise also those that use it. */
    buildable(document: LangiumDocument): readonly LangiumDocument[] {
        const { design } = this.analyses.of(document);
        const candidates = design.project?.span.file === design.file ? [document] : [document, ...this.users(document)];
        return candidates.filter((one) => this.analyses.of(one).design.cases.length > 0);
    }

    /** The designs that nobody uses, among those that use a file; the file itself if nobody does. */
    private outermost(document: LangiumDocument): readonly LangiumDocument[] {
        const users = this.users(document);
        const outermost = users.filter((user) => this.users(user).length === 0);
        return outermost.length > 0 ? outermost : [document];
    }

    private users(document: LangiumDocument): readonly LangiumDocument[] {
        const own = document.uri.toString();
        const uris = [...this.usedFiles.usersOf(new Set([own]))].filter((uri) => uri !== own).sort();
        return uris.flatMap((uri) => this.documents.getDocument(URI.parse(uri)) ?? []);
    }
}
