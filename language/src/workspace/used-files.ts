// Which file uses which: the graph of `use` statements. Knows paths and documents: no names.
import { type AstNode, type LangiumDocument, type LangiumDocuments, URI, UriUtils } from 'langium';
import type { File, Use } from '../generated/ast.js';
import { libraryModule, libraryUri } from './library.js';

/** A file that a `use` names; without a URI it names no file that could be. */
export interface UsedFile {
    readonly use: Use;
    readonly uri: URI | undefined;
}

export class UsedFiles {
    /** By the URI of the file that uses. */
    private readonly graph = new Map<string, readonly UsedFile[]>();
    private readonly read = new WeakMap<AstNode, readonly UsedFile[]>();

    constructor(private readonly documents: () => LangiumDocuments) {}

    /** Reads the `use` statements of a document into the graph. */
    update(document: LangiumDocument): void {
        this.graph.set(document.uri.toString(), this.usedBy(document));
    }

    remove(uri: URI): void {
        this.graph.delete(uri.toString());
    }

    /** The files that a document names, in order. */
    usedBy(document: LangiumDocument): readonly UsedFile[] {
        const file = document.parseResult.value as File;
        let used = this.read.get(file);
        if (!used) {
            used = (file.statements ?? [])
                .filter((statement) => statement?.$type === 'Use')
                .map((use) => ({ use, uri: target(use, document.uri) }));
            this.read.set(file, used);
        }
        return used;
    }

    documentOf(use: Use, from: LangiumDocument): LangiumDocument | undefined {
        const uri = this.usedBy(from).find((used) => used.use === use)?.uri;
        return uri && this.documents().getDocument(uri);
    }

    /** All documents that have been read, but for those of the library. */
    known(): LangiumDocument[] {
        return this.documents()
            .all.filter((document) => libraryModule(document.uri) === undefined)
            .toArray();
    }

    /** A document and all it uses, directly or not: first itself, then each file with its own, in the order of use. */
    closure(document: LangiumDocument): LangiumDocument[] {
        const seen = new Set([document.uri.toString()]);
        const found: LangiumDocument[] = [];
        const visit = (at: LangiumDocument): void => {
            found.push(at);
            for (const { uri } of this.usedBy(at)) {
                const next = uri && !seen.has(uri.toString()) ? this.documents().getDocument(uri) : undefined;
                if (next) {
                    seen.add(next.uri.toString());
                    visit(next);
                }
            }
        };
        visit(document);
        return found;
    }

    /** The URIs of all files that use one of these, directly or not. */
    usersOf(changed: ReadonlySet<string>): ReadonlySet<string> {
        const users = new Map<string, string[]>();
        for (const [user, used] of this.graph) {
            for (const { uri } of used) {
                const key = uri?.toString();
                if (key !== undefined) {
                    const known = users.get(key);
                    if (known) {
                        known.push(user);
                    } else {
                        users.set(key, [user]);
                    }
                }
            }
        }
        const affected = new Set<string>();
        const open = [...changed];
        for (let uri = open.pop(); uri !== undefined; uri = open.pop()) {
            for (const user of users.get(uri) ?? []) {
                if (!affected.has(user)) {
                    affected.add(user);
                    open.push(user);
                }
            }
        }
        return affected;
    }
}

function target(use: Use, from: URI): URI | undefined {
    if (use.module !== undefined) {
        return libraryUri(use.module);
    }
    if (!use.path?.endsWith('.case')) {
        return undefined;
    }
    return /^[A-Za-z][A-Za-z0-9+.-]+:\//.test(use.path) ? URI.parse(use.path) : UriUtils.resolvePath(UriUtils.dirname(from), use.path);
}
