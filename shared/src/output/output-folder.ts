/** Documents into a folder. Nothing in it is replaced that the tool did not write, and nothing is deleted. */
import { type BuildRecord, parseRecord, recordName, writeRecord } from './build-record.js';

/** A document as it is to be written. */
export interface NewDocument {
    /** Its name in the folder. */
    readonly name: string;
    /** Text is written as UTF-8. */
    readonly content: string | Uint8Array;
}

/** A folder as whoever keeps it gives access to it. What its methods throw is thrown on. */
export interface OutputFolder {
    /** The content of a file; undefined if nothing of that name is there, `no file` if it is something else, such as a folder or a link. */
    read(name: string): Promise<Uint8Array | 'no file' | undefined>;
    /** The text of a file; undefined if nothing of that name is there. */
    readText(name: string): Promise<string | undefined>;
    /** The digest SHA-256 (FIPS 180-4) of a content, in hexadecimal digits. */
    digest(content: string | Uint8Array): Promise<string>;
    /** Makes the folder and those that it is in, as far as they are not there; gives back how to take away what was made. */
    make(): Promise<() => Promise<void>>;
    /** Writes files whole or not at all, over those of their names; tells of each as soon as it is in its place. */
    replace(documents: readonly NewDocument[], written: (document: NewDocument) => void): Promise<void>;
}

/** Where documents go, and what they are of. */
export interface Destination {
    readonly folder: OutputFolder;
    /** How the user is told where it is. */
    readonly shown: string;
    /** The design as seen from the folder, with `/` between the names. */
    readonly design: string;
    /** How to build into another folder, as advice to the user: `build into another folder with ...`. */
    readonly elsewhere: string;
}

/** Nothing is put into the folder, with the reason in words. */
export class NotPut extends Error {
    /**
     * @param message what is wrong
     * @param advice what to do about it, each a sentence of its own
     */
    constructor(
        message: string,
        readonly advice: readonly string[],
    ) {
        super(message);
    }
}

/** Where the documents of a design go unless another folder is asked for: a folder of its name in a folder `out` beside it. */
export function folderBeside(name: string, outer = 'out'): string {
    return `${outer}/${name}`;
}

/**
 * Writes the documents of a design to a folder, which is made if it is not there.
 * @returns the names of documents that an earlier build left there and this one did not write again
 * @throws NotPut, having written nothing, if a file of somebody else's stands in the way; and what the folder throws
 */
export async function putDocuments(documents: readonly NewDocument[], destination: Destination): Promise<readonly string[]> {
    const { folder } = destination;
    const before = await recordIn(destination);
    for (const document of documents) await refuseToReplace(document, before, destination);
    const takeAway = await folder.make();
    const written = new Map<string, string>();
    const hashes = new Map<string, string>();
    for (const { name, content } of documents) hashes.set(name, await hashOf(content, folder));
    try {
        await folder.replace(documents, ({ name }) => written.set(name, hashes.get(name) ?? ''));
    } catch (error) {
        // What is in its place belongs into the record also if another file could not follow. The first error is the one to tell.
        if (written.size > 0) await writeRecordOf(destination, new Map([...before, ...written])).catch(() => {});
        else await takeAway().catch(() => {});
        throw error;
    }
    const older = await stillThere(
        folder,
        [...before.keys()].filter((name) => !written.has(name)),
    );
    const kept = older.map((name) => [name, before.get(name) ?? ''] as const);
    await writeRecordOf(destination, new Map([...kept, ...written]));
    return older;
}

/** What earlier builds of the design wrote to the folder. */
async function recordIn({ folder, shown, design, elsewhere }: Destination): Promise<BuildRecord['files']> {
    const text = await folder.readText(recordName);
    if (text === undefined) return new Map();
    const record = parseRecord(text);
    if (!record) {
        throw new NotPut(`\`${shown}/${recordName}\` is not as the tool wrote it, so it does not say which files may be replaced`, [
            `${elsewhere}, or delete that file and the documents beside it`,
        ]);
    }
    if (record.design !== design) {
        throw new NotPut(`\`${shown}\` holds the documents of another design, \`${record.design}\` as seen from there`, [elsewhere]);
    }
    return record.files;
}

async function refuseToReplace({ name, content }: NewDocument, before: BuildRecord['files'], destination: Destination): Promise<void> {
    const { folder, shown, elsewhere } = destination;
    const there = await folder.read(name);
    if (there === undefined) return;
    const hash = there === 'no file' ? undefined : await hashOf(there, folder);
    // The same bytes can be put there again, whoever wrote them.
    if (hash !== undefined && (hash === before.get(name) || hash === (await hashOf(content, folder)))) return;
    const whose = before.has(name) ? 'was changed since the tool wrote it' : 'was not written by the tool';
    throw new NotPut(`\`${shown}/${name}\` ${whose}, so it is not replaced`, [`move it away, or ${elsewhere}; nothing is written`]);
}

async function writeRecordOf({ folder, design }: Destination, files: BuildRecord['files']): Promise<void> {
    await folder.replace([{ name: recordName, content: writeRecord({ design, files }) }], () => {});
}

async function stillThere(folder: OutputFolder, names: readonly string[]): Promise<string[]> {
    const there: string[] = [];
    for (const name of names.filter((one) => !/[\\/]/.test(one))) {
        if (await folder.read(name).catch(() => undefined)) there.push(name);
    }
    return there.sort();
}

async function hashOf(content: string | Uint8Array, folder: OutputFolder): Promise<string> {
    return `sha256:${await folder.digest(content)}`;
}
