/** The folder that documents are written to. Nothing in it is replaced that the tool did not write, and nothing is deleted. */
import { lstat, mkdir, readFile, rmdir, stat } from 'node:fs/promises';
import * as path from 'node:path';
import { CouldNotRun } from '../could-not-run.js';
import { pathFrom } from '../paths.js';
import { systemCode, systemReason } from '../system-error.js';
import { type BuildRecord, hashOf, readRecord, recordName, writeRecord } from './build-record.js';
import { NotWritten, replaceFiles } from './replace-files.js';

/** A document as it is to be written. */
export interface NewDocument {
    /** Its name in the folder. */
    readonly name: string;
    /** Text is written as UTF-8. */
    readonly content: string | Uint8Array;
}

/** Where documents go, and what they are of. */
export interface Destination {
    /** Absolute. */
    readonly folder: string;
    /** How the user is told where it is. */
    readonly shown: string;
    /** The absolute path of the design. */
    readonly design: string;
}

/**
 * Writes the documents of a design to a folder, which is made if it is not there.
 * @returns the names of documents that an earlier build left there and this one did not write again
 * @throws CouldNotRun, having written nothing, if the folder cannot be written to or if a file of somebody else's stands in the way
 */
export async function writeDocuments(documents: readonly NewDocument[], destination: Destination): Promise<readonly string[]> {
    const { folder, shown } = destination;
    const design = pathFrom(folder, destination.design);
    const before = await attempt(shown, () => recordIn(destination, design));
    for (const document of documents) await attempt(shown, () => refuseToReplace(document, before, destination));
    const made = await attempt(shown, () => makeFolder(folder));
    const written = new Map<string, string>();
    try {
        await replaceFiles(
            documents.map(({ name, content }) => ({ file: path.join(folder, name), content })),
            ({ file, content }) => written.set(path.basename(file), hashOf(content)),
        );
    } catch (error) {
        // What is in its place belongs into the record also if another file could not follow. The first error is the one to tell.
        if (written.size > 0) await writeRecordOf(destination, design, new Map([...before, ...written])).catch(() => {});
        else await removeFolders(made).catch(() => {});
        throw couldNotWrite(error, destination);
    }
    const older = await stillThere(
        folder,
        [...before.keys()].filter((name) => !written.has(name)),
    );
    const kept = older.map((name) => [name, before.get(name) ?? ''] as const);
    await writeRecordOf(destination, design, new Map([...kept, ...written])).catch((error) => {
        throw couldNotWrite(error, destination);
    });
    return older;
}

/** What earlier builds of the design wrote to the folder. */
async function recordIn({ folder, shown }: Destination, design: string): Promise<BuildRecord['files']> {
    const record = await readRecord(path.join(folder, recordName));
    if (record === undefined) return new Map();
    if (record === 'unreadable') {
        throw new CouldNotRun(`\`${shown}/${recordName}\` is not as the tool wrote it, so it does not say which files may be replaced`, [
            'build into another folder with `--out`, or delete that file and the documents beside it',
        ]);
    }
    if (record.design !== design) {
        throw new CouldNotRun(`\`${shown}\` holds the documents of another design, \`${record.design}\` as seen from there`, [
            'build into another folder with `--out`',
        ]);
    }
    return record.files;
}

async function refuseToReplace(
    { name, content }: NewDocument,
    before: BuildRecord['files'],
    { folder, shown }: Destination,
): Promise<void> {
    const file = path.join(folder, name);
    const there = await unlessMissing(lstat(file));
    if (!there) return;
    const hash = there.isFile() ? hashOf(await readFile(file)) : undefined;
    // The same bytes can be put there again, whoever wrote them.
    if (hash !== undefined && (hash === before.get(name) || hash === hashOf(content))) return;
    const whose = before.has(name) ? 'was changed since the tool wrote it' : 'was not written by the tool';
    throw new CouldNotRun(`\`${shown}/${name}\` ${whose}, so it is not replaced`, [
        'move it away, or build into another folder with `--out`; nothing is written',
    ]);
}

async function writeRecordOf({ folder }: Destination, design: string, files: BuildRecord['files']): Promise<void> {
    await replaceFiles([{ file: path.join(folder, recordName), content: writeRecord({ design, files }) }]);
}

async function stillThere(folder: string, names: readonly string[]): Promise<string[]> {
    const there: string[] = [];
    for (const name of names.filter((one) => path.basename(one) === one)) {
        if (await lstat(path.join(folder, name)).catch(() => undefined)) there.push(name);
    }
    return there.sort();
}

/**
 * Makes a folder and those that it is in, as far as they are not there.
 *
 * One by one: on a file system that refuses a new folder with ENOENT, as /proc does, Node 24 with `recursive` tries for ever.
 * @returns the folders that were made, the outermost first
 */
async function makeFolder(folder: string): Promise<string[]> {
    const missing: string[] = [];
    let at = folder;
    while (!(await isFolder(at))) {
        missing.unshift(at);
        at = path.dirname(at);
    }
    for (const one of missing) await mkdir(one);
    return missing;
}

async function isFolder(folder: string): Promise<boolean> {
    const there = await unlessMissing(stat(folder));
    if (there && !there.isDirectory()) throw Object.assign(new Error(`${folder} is a file`), { code: 'ENOTDIR' });
    return there !== undefined;
}

/** Takes away folders that were made for nothing. */
async function removeFolders(made: readonly string[]): Promise<void> {
    for (const folder of made.toReversed()) await rmdir(folder);
}

/** What a call to the file system finds; undefined if there is nothing. */
async function unlessMissing<Result>(found: Promise<Result>): Promise<Result | undefined> {
    try {
        return await found;
    } catch (error) {
        if (systemCode(error) === 'ENOENT') return undefined;
        throw error;
    }
}

const folderReasons: Readonly<Record<string, string>> = {
    EEXIST: 'it is a file, or a file is in the way of it',
    ENOTDIR: 'it is a file, or a file is in the way of it',
    ENOENT: 'no folder can be made there',
};

/** Turns an error of the operating system into words about the folder. */
async function attempt<Result>(shown: string, act: () => Promise<Result>): Promise<Result> {
    try {
        return await act();
    } catch (error) {
        if (error instanceof CouldNotRun) throw error;
        const reason = folderReasons[systemCode(error) ?? ''] ?? systemReason(error);
        throw new CouldNotRun(`the documents cannot be written to \`${shown}\`: ${reason}`);
    }
}

function couldNotWrite(error: unknown, { shown }: Destination): unknown {
    if (!(error instanceof NotWritten)) return error;
    return new CouldNotRun(`\`${shown}/${path.basename(error.file)}\` cannot be written: ${systemReason(error.cause)}`);
}
