// Builds documents together with the files they use. Knows when to load a file: not what is in it.
import {
    type BuildOptions,
    type Cancellation,
    DefaultDocumentBuilder,
    DocumentState,
    type LangiumDocument,
    type LangiumSharedCoreServices,
    type URI,
} from 'langium';
import type { UsedFiles } from './used-files.js';

export class CasewrightBuilder extends DefaultDocumentBuilder {
    constructor(
        services: LangiumSharedCoreServices,
        private readonly usedFiles: UsedFiles,
    ) {
        super(services);
    }

    protected override async buildDocuments(
        documents: LangiumDocument[],
        options: BuildOptions,
        cancelToken: Cancellation.CancellationToken,
    ): Promise<void> {
        await super.buildDocuments(await this.withUsedFiles(documents, cancelToken), options, cancelToken);
    }

    /** Our own graph knows who is affected, also of documents with names that are unknown so far. */
    protected override shouldRelink(document: LangiumDocument, changedUris: Set<string>): boolean {
        return this.indexManager.isAffected(document, changedUris);
    }

    private async withUsedFiles(
        documents: readonly LangiumDocument[],
        cancelToken: Cancellation.CancellationToken,
    ): Promise<LangiumDocument[]> {
        const all = new Set(documents);
        let wave = [...documents];
        while (wave.length > 0) {
            await this.runCancelable(wave, DocumentState.Parsed, cancelToken, (document) =>
                this.langiumDocumentFactory.update(document, cancelToken),
            );
            const next: LangiumDocument[] = [];
            for (const document of wave) {
                for (const { uri } of this.usedFiles.usedBy(document)) {
                    const used = uri && (await this.load(uri, cancelToken));
                    if (used && used.state < DocumentState.Linked && !all.has(used)) {
                        all.add(used);
                        next.push(used);
                    }
                }
            }
            wave = next;
        }
        return [...all];
    }

    private async load(uri: URI, cancelToken: Cancellation.CancellationToken): Promise<LangiumDocument | undefined> {
        try {
            return await this.langiumDocuments.getOrCreateDocument(uri, cancelToken);
        } catch {
            return undefined; // the `use` is reported where it stands
        }
    }
}
