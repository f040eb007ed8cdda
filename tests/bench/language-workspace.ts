/** The language on files in memory, stage by stage, for benchmarks. */
import { createCasewrightServices } from 'casewright-language';
import { type Casework, construct } from 'casewright-shared/casework';
import { runRules } from 'casewright-shared/rules';
import { type FileSystemProvider, type LangiumDocument, URI } from 'langium';
import type { GeneratedFile } from './generated-projects.ts';

export class LanguageWorkspace {
    private readonly texts = new Map<string, string>();
    private readonly services = createCasewrightServices({ fileSystemProvider: () => this.provider() });

    constructor(files: readonly GeneratedFile[]) {
        for (const { uri, text } of files) this.texts.set(uri, text);
    }

    /** The bare parser, as the measure of everything else. */
    parse(uri: string): void {
        this.services.casewright.parser.LangiumParser.parse(this.textOf(uri));
    }

    /** Parses, indexes and links files anew. */
    async link(uris: readonly string[]): Promise<readonly LangiumDocument[]> {
        const { LangiumDocuments, DocumentBuilder } = this.services.shared.workspace;
        for (const uri of uris) if (LangiumDocuments.hasDocument(URI.parse(uri))) LangiumDocuments.deleteDocument(URI.parse(uri));
        const documents: LangiumDocument[] = [];
        for (const uri of uris) documents.push(await LangiumDocuments.getOrCreateDocument(URI.parse(uri)));
        await DocumentBuilder.build(documents, { validation: false });
        return documents;
    }

    /** Changes a file and lets the builder do what it does after a keystroke, but for checks. */
    async edit(uri: string, text: string): Promise<LangiumDocument> {
        const { LangiumDocuments, DocumentBuilder } = this.services.shared.workspace;
        this.texts.set(uri, text);
        DocumentBuilder.updateBuildOptions = { validation: false };
        await DocumentBuilder.update([URI.parse(uri)], []);
        return LangiumDocuments.getOrCreateDocument(URI.parse(uri));
    }

    /** The casework of a linked file. */
    construct(document: LangiumDocument): Casework {
        return construct(this.services.casewright.lowering.Lowering.lowerDesign(document).design);
    }

    /** Everything that a check does with a linked file; the number of findings. */
    check(document: LangiumDocument): number {
        const { design, problems } = this.services.casewright.lowering.Lowering.lowerDesign(document);
        return runRules(construct(design), { reading: problems }).length;
    }

    /** The same as a server does it, which uses again what an edit has left alone, and keeps what it finds for the next. */
    checkEdited(document: LangiumDocument): number {
        return this.services.casewright.analysis.Analyses.of(document).findings.length;
    }

    private textOf(uri: string): string {
        const text = this.texts.get(uri);
        if (text === undefined) throw new Error(`${uri} is not in the benchmark`);
        return text;
    }

    private provider(): FileSystemProvider {
        const refuse = (): never => {
            throw new Error('a benchmark reads texts only');
        };
        return {
            stat: refuse,
            statSync: refuse,
            exists: async (uri) => this.texts.has(uri.toString()),
            existsSync: (uri) => this.texts.has(uri.toString()),
            readBinary: refuse,
            readBinarySync: refuse,
            readFile: async (uri) => this.textOf(uri.toString()),
            readFileSync: (uri) => this.textOf(uri.toString()),
            readDirectory: async () => [],
            readDirectorySync: () => [],
        };
    }
}
