// The built-in library as documents that can be opened. Knows the names of its modules and their URIs.
import { type FileSystemNode, type FileSystemProvider, URI } from 'langium';
import { libraryTexts } from './library-texts.js';

const scheme = 'casewright';
const prefix = 'casewright.';

/** The names by which the modules of the library are used: `casewright.species`. */
export const libraryModules: readonly string[] = [...libraryTexts.keys()];

/** `casewright.species` is `casewright:/library/species.case`. Undefined for a module that the library does not have. */
export function libraryUri(module: string): URI | undefined {
    return libraryTexts.has(module) ? URI.from({ scheme, path: `/library/${module.slice(prefix.length)}.case` }) : undefined;
}

/** The module of the library that a URI names. */
export function libraryModule(uri: URI): string | undefined {
    const name = uri.scheme === scheme ? /^\/library\/([^/]+)\.case$/.exec(uri.path)?.[1] : undefined;
    return name !== undefined && libraryTexts.has(prefix + name) ? prefix + name : undefined;
}

/** The text of the module that a URI names. */
export function libraryText(uri: URI): string | undefined {
    const module = libraryModule(uri);
    return module === undefined ? undefined : libraryTexts.get(module);
}

/** A thing that the library declares for everybody. */
export interface LibraryName {
    readonly name: string;
    /** `material`, `species` and so on. */
    readonly kind: string;
    readonly module: string;
}

let declared: readonly LibraryName[] | undefined;

/** All that the library declares. Its modules need not have been used: a declaration begins a line with its kind and its name. */
export function libraryNames(): readonly LibraryName[] {
    declared ??= [...libraryTexts].flatMap(([module, text]) =>
        [...text.matchAll(/^([a-z]+) ([A-Z][0-9A-Za-z]*)/gm)].map(([, kind = '', name = '']) => ({ name, kind, module })),
    );
    return declared;
}

/** Reads the library from its own texts and everything else from another file system. */
export class FileSystemWithLibrary implements FileSystemProvider {
    constructor(private readonly others: FileSystemProvider) {}

    async stat(uri: URI): Promise<FileSystemNode> {
        return libraryText(uri) === undefined ? this.others.stat(uri) : fileNode(uri);
    }

    statSync(uri: URI): FileSystemNode {
        return libraryText(uri) === undefined ? this.others.statSync(uri) : fileNode(uri);
    }

    async exists(uri: URI): Promise<boolean> {
        return libraryText(uri) !== undefined || this.others.exists(uri);
    }

    existsSync(uri: URI): boolean {
        return libraryText(uri) !== undefined || this.others.existsSync(uri);
    }

    async readFile(uri: URI): Promise<string> {
        return libraryText(uri) ?? this.others.readFile(uri);
    }

    readFileSync(uri: URI): string {
        return libraryText(uri) ?? this.others.readFileSync(uri);
    }

    async readBinary(uri: URI): Promise<Uint8Array> {
        return this.others.readBinary(uri);
    }

    readBinarySync(uri: URI): Uint8Array {
        return this.others.readBinarySync(uri);
    }

    readDirectory(uri: URI): Promise<FileSystemNode[]> {
        return this.others.readDirectory(uri);
    }

    readDirectorySync(uri: URI): FileSystemNode[] {
        return this.others.readDirectorySync(uri);
    }
}

function fileNode(uri: URI): FileSystemNode {
    return { isFile: true, isDirectory: false, uri };
}
