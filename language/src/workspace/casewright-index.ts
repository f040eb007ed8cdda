// Which documents a change touches, and who refers to what. Knows the graph of used files: no names.
import {
    type AstNode,
    type AstNodeLocator,
    AstUtils,
    type Cancellation,
    CstUtils,
    DefaultIndexManager,
    type LangiumDocument,
    type LangiumSharedCoreServices,
    type Reference,
    type ReferenceDescription,
    type Stream,
    stream,
    type URI,
} from 'langium';
import type { UsedFiles } from './used-files.js';

export class CasewrightIndex extends DefaultIndexManager {
    private lastChanged: { readonly changed: ReadonlySet<string>; readonly affected: ReadonlySet<string> } | undefined;

    constructor(
        services: LangiumSharedCoreServices,
        private readonly usedFiles: UsedFiles,
    ) {
        super(services);
    }

    override async updateContent(document: LangiumDocument, cancelToken?: Cancellation.CancellationToken): Promise<void> {
        this.usedFiles.update(document);
        await super.updateContent(document, cancelToken);
    }

    /** Who uses a deleted file is still recorded with the user, so that it is looked at again. */
    override remove(uri: URI): void {
        this.usedFiles.remove(uri);
        super.remove(uri);
    }

    /** A document is affected if it uses a changed file, directly or not; the builder asks for one set of changes after another. */
    override isAffected(document: LangiumDocument, changedUris: Set<string>): boolean {
        if (this.lastChanged?.changed !== changedUris) {
            this.lastChanged = { changed: changedUris, affected: this.usedFiles.usersOf(changedUris) };
        }
        return this.lastChanged.affected.has(document.uri.toString());
    }

    /** References are found when they are asked for: an index of them would be paid for with every keystroke. */
    override async updateReferences(): Promise<void> {}

    override findAllReferences(target: AstNode): Stream<ReferenceDescription> {
        const found: ReferenceDescription[] = [];
        const targetUri = AstUtils.getDocument(target).uri;
        for (const document of this.documents.all) {
            for (const reference of document.references as Reference[]) {
                const node = reference.$refNode;
                if (node && reference.ref === target) {
                    const locator: AstNodeLocator = this.serviceRegistry.getServices(document.uri).workspace.AstNodeLocator;
                    found.push({
                        sourceUri: document.uri,
                        sourcePath: locator.getAstNodePath(node.astNode),
                        targetUri,
                        targetPath: locator.getAstNodePath(target),
                        segment: CstUtils.toDocumentSegment(node),
                        local: document.uri.toString() === targetUri.toString(),
                    });
                }
            }
        }
        return stream(found);
    }
}
