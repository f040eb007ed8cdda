import { FIND_FILE, type FileEntry, type FileRequest, LIST_FOLDER, READ_FILE } from 'casewright-language/client-files';
import { FileType, Uri, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** Lets a server that has no disk of its own read the files that the editor can reach, wherever they are kept. */
export function serveFiles(client: BaseLanguageClient): void {
    client.onRequest(READ_FILE, ({ uri }: FileRequest) => readText(Uri.parse(uri)));
    client.onRequest(FIND_FILE, ({ uri }: FileRequest) => findEntry(Uri.parse(uri)));
    client.onRequest(LIST_FOLDER, ({ uri }: FileRequest) => listEntries(Uri.parse(uri)));
}

async function readText(file: Uri): Promise<string> {
    return new TextDecoder().decode(await workspace.fs.readFile(file));
}

async function findEntry(uri: Uri): Promise<FileEntry | null> {
    try {
        const { type } = await workspace.fs.stat(uri);
        return { uri: uri.toString(), kind: kindOf(type) };
    } catch {
        return null;
    }
}

async function listEntries(folder: Uri): Promise<FileEntry[]> {
    const entries = await workspace.fs.readDirectory(folder);
    return entries.map(([name, type]) => ({ uri: Uri.joinPath(folder, name).toString(), kind: kindOf(type) }));
}

function kindOf(type: FileType): FileEntry['kind'] {
    // A link carries the flag of what it leads to beside its own.
    if ((type & FileType.File) !== 0) {
        return 'file';
    }
    return (type & FileType.Directory) !== 0 ? 'directory' : 'other';
}
