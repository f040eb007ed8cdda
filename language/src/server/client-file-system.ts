// The client's files as a file system. Knows requests to the client; nothing here can be answered at once.
import { type FileSystemNode, type FileSystemProvider, URI } from 'langium';
import type { Connection } from 'vscode-languageserver';
import { FIND_FILE, type FileEntry, type FileRequest, LIST_FOLDER, READ_FILE } from './client-files.js';

/** Reads through the client: for a server that runs in a browser's worker, where the editor alone can reach the files. */
export class ClientFileSystem implements FileSystemProvider {
    /** @param connection asked for at each request: there may be none yet when this is made */
    constructor(private readonly connection: () => Connection) {}

    async stat(uri: URI): Promise<FileSystemNode> {
        const found = await this.find(uri);
        if (found === null) {
            throw new Error(`there is nothing at ${uri}`);
        }
        return toNode(found);
    }

    async exists(uri: URI): Promise<boolean> {
        return (await this.find(uri)) !== null;
    }

    readFile(uri: URI): Promise<string> {
        return this.connection().sendRequest<string>(READ_FILE, about(uri));
    }

    readBinary(uri: URI): Promise<Uint8Array> {
        throw new Error(`${uri} comes from the client, which gives text`);
    }

    async readDirectory(uri: URI): Promise<FileSystemNode[]> {
        return (await this.connection().sendRequest<FileEntry[]>(LIST_FOLDER, about(uri))).map(toNode);
    }

    statSync(uri: URI): FileSystemNode {
        return refuseToWait(uri);
    }

    existsSync(uri: URI): boolean {
        return refuseToWait(uri);
    }

    readFileSync(uri: URI): string {
        return refuseToWait(uri);
    }

    readBinarySync(uri: URI): Uint8Array {
        return refuseToWait(uri);
    }

    readDirectorySync(uri: URI): FileSystemNode[] {
        return refuseToWait(uri);
    }

    private find(uri: URI): Promise<FileEntry | null> {
        return this.connection().sendRequest<FileEntry | null>(FIND_FILE, about(uri));
    }
}

function about(uri: URI): FileRequest {
    return { uri: uri.toString() };
}

function toNode({ uri, kind }: FileEntry): FileSystemNode {
    return { uri: URI.parse(uri), isFile: kind === 'file', isDirectory: kind === 'directory' };
}

function refuseToWait(uri: URI): never {
    throw new Error(`${uri} is the client's, which answers later: read it with a method that returns a promise`);
}
