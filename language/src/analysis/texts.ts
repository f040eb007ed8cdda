// Files read one by one through a function, for a language without an editor. Knows URIs: no disk, no folders.
import { type FileSystemNode, type FileSystemProvider, type URI, UriUtils } from 'langium';

/** The text of the file at a URI, such as `file:///home/ann/kiln-lane.case`. Fails if there is no such file or it cannot be read. */
export type ReadFile = (uri: string) => Promise<string>;

/** Everything that can be read is a file; there are no folders. */
export class TextsByUri implements FileSystemProvider {
    constructor(private readonly read: ReadFile) {}

    readFile(uri: URI): Promise<string> {
        return this.read(uri.toString());
    }

    async exists(uri: URI): Promise<boolean> {
        try {
            await this.readFile(uri);
            return true;
        } catch {
            return false;
        }
    }

    async stat(uri: URI): Promise<FileSystemNode> {
        return this.statSync(uri);
    }

    statSync(uri: URI): FileSystemNode {
        return { isFile: true, isDirectory: false, uri };
    }

    async readDirectory(): Promise<FileSystemNode[]> {
        return [];
    }

    readDirectorySync(): FileSystemNode[] {
        return [];
    }

    existsSync(uri: URI): boolean {
        return UriUtils.extname(uri) !== '';
    }

    readFileSync(uri: URI): string {
        throw new Error(`${uri.toString()} can only be read asynchronously`);
    }

    async readBinary(uri: URI): Promise<Uint8Array> {
        return this.readBinarySync(uri);
    }

    readBinarySync(uri: URI): Uint8Array {
        throw new Error(`${uri.toString()} can only be read as a text`);
    }
}
