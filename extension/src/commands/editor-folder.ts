import type { BuiltDocument } from 'casewright-language/requests';
import { folderBeside, type NewDocument, type OutputFolder } from 'casewright-shared/output';
import { FileSystemError, FileType, Uri, workspace } from 'vscode';

/** Where the documents of a design go: a folder of its name in the one that the setting names, beside the design if that is relative. */
export function folderFor(design: Uri, name: string): Uri {
    const outer = workspace.getConfiguration('casewright', design).get('outputFolder', 'out').trim() || 'out';
    const folder = folderBeside(name, outer.replaceAll('\\', '/').replace(/\/+$/, ''));
    const isAbsolute = /^([A-Za-z]:)?\//.test(folder);
    if (!isAbsolute) {
        return Uri.joinPath(design, '..', folder);
    }
    return design.with({ path: folder.startsWith('/') ? folder : `/${folder}` });
}

/** A file as seen from a folder, with `/` between the names. */
export function pathFrom(folder: Uri, file: Uri): string {
    const from = folder.path.split('/');
    const to = file.path.split('/');
    const apart = from.findIndex((name, index) => name !== to[index]);
    const common = apart < 0 ? from.length : apart;
    return [...from.slice(common).map(() => '..'), ...to.slice(common)].join('/');
}

/** The content that the server made. */
export function contentOf(document: BuiltDocument): string | Uint8Array {
    return 'text' in document ? document.text : Uint8Array.from(atob(document.base64), (character) => character.charCodeAt(0));
}

/** A folder that the editor can reach, wherever it is kept. */
export class EditorFolder implements OutputFolder {
    constructor(private readonly folder: Uri) {}

    async read(name: string): Promise<Uint8Array | 'no file' | undefined> {
        const file = this.at(name);
        const there = await unlessMissing(workspace.fs.stat(file));
        if (!there) {
            return undefined;
        }
        return there.type === FileType.File ? await workspace.fs.readFile(file) : 'no file';
    }

    async readText(name: string): Promise<string | undefined> {
        const bytes = await unlessMissing(workspace.fs.readFile(this.at(name)));
        return bytes && new TextDecoder().decode(bytes);
    }

    async digest(content: string | Uint8Array): Promise<string> {
        const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', new Uint8Array(bytesOf(content))));
        return Array.from(hash, (byte) => byte.toString(16).padStart(2, '0')).join('');
    }

    async make(): Promise<() => Promise<void>> {
        const made: Uri[] = [];
        for (let at = this.folder; !(await unlessMissing(workspace.fs.stat(at))); at = Uri.joinPath(at, '..')) {
            made.push(at);
        }
        await workspace.fs.createDirectory(this.folder); // with those that it is in
        return async () => {
            for (const folder of made) {
                await workspace.fs.delete(folder);
            }
        };
    }

    /** All are first written beside their places under other names, so that none is half written, and none replaced unless there is room for all. */
    async replace(documents: readonly NewDocument[], written: (document: NewDocument) => void): Promise<void> {
        const beside = new Map<NewDocument, Uri>();
        try {
            for (const document of documents) {
                const other = this.at(`.${document.name}.${crypto.randomUUID()}.part`);
                beside.set(document, other);
                await workspace.fs.writeFile(other, bytesOf(document.content));
            }
            for (const [document, other] of beside) {
                await workspace.fs.rename(other, this.at(document.name), { overwrite: true });
                beside.delete(document);
                written(document);
            }
        } finally {
            for (const other of beside.values()) {
                await unlessMissing(workspace.fs.delete(other));
            }
        }
    }

    private at(name: string): Uri {
        return Uri.joinPath(this.folder, name);
    }
}

function bytesOf(content: string | Uint8Array): Uint8Array {
    return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}

/** What the editor finds; undefined if there is nothing. */
async function unlessMissing<Result>(found: Thenable<Result>): Promise<Result | undefined> {
    try {
        return await found;
    } catch (error) {
        if (error instanceof FileSystemError && error.code === 'FileNotFound') {
            return undefined;
        }
        throw error;
    }
}
