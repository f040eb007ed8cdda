// Files of this machine and files that only the client can reach. Knows schemes of URIs.
import type { FileSystemNode, FileSystemProvider, URI } from 'langium';

/** Reads `file:` from one file system and everything else, such as a repository that is open over the network, from another. */
export class FilesByScheme implements FileSystemProvider {
    constructor(
        private readonly machine: FileSystemProvider,
        private readonly client: FileSystemProvider,
    ) {}

    stat(uri: URI): Promise<FileSystemNode> {
        return this.for(uri).stat(uri);
    }

    statSync(uri: URI): FileSystemNode {
        return this.for(uri).statSync(uri);
    }

    exists(uri: URI): Promise<boolean> {
        return this.for(uri).exists(uri);
    }

    existsSync(uri: URI): boolean {
        return this.for(uri).existsSync(uri);
    }

    readFile(uri: URI): Promise<string> {
        return this.for(uri).readFile(uri);
    }

    readFileSync(uri: URI): string {
        return this.for(uri).readFileSync(uri);
    }

    readBinary(uri: URI): Promise<Uint8Array> {
        return this.for(uri).readBinary(uri);
    }

    readBinarySync(uri: URI): Uint8Array {
        return this.for(uri).readBinarySync(uri);
    }

    readDirectory(uri: URI): Promise<FileSystemNode[]> {
        return this.for(uri).readDirectory(uri);
    }

    readDirectorySync(uri: URI): FileSystemNode[] {
        return this.for(uri).readDirectorySync(uri);
    }

    private for({ scheme }: URI): FileSystemProvider {
        return scheme === 'file' ? this.machine : this.client;
    }
}
