/** The folder on disk that documents are written to. */
import { createHash } from 'node:crypto';
import { lstat, mkdir, readFile, rmdir, stat } from 'node:fs/promises';
import * as path from 'node:path';
import { type NewDocument, NotPut, type OutputFolder, putDocuments } from 'casewright-shared/output';
import { CouldNotRun } from '../could-not-run.js';
import { pathFrom } from '../paths.js';
import { systemCode, systemReason } from '../system-error.js';
import { NotWritten, replaceFiles } from './replace-files.js';

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
    try {
        return await putDocuments(documents, {
            folder: new FolderOnDisk(folder, shown),
            shown,
            design: pathFrom(folder, destination.design),
            elsewhere: 'build into another folder with `--out`',
        });
    } catch (error) {
        throw error instanceof NotPut ? new CouldNotRun(error.message, error.advice) : error;
    }
}

/** What the operating system refuses is thrown as CouldNotRun, in words. */
class FolderOnDisk implements OutputFolder {
    constructor(
        private readonly folder: string,
        private readonly shown: string,
    ) {}

    read(name: string): Promise<Uint8Array | 'no file' | undefined> {
        return this.attempt(async () => {
            const file = path.join(this.folder, name);
            const there = await unlessMissing(lstat(file));
            if (!there) return undefined;
            return there.isFile() ? await readFile(file) : 'no file';
        });
    }

    readText(name: string): Promise<string | undefined> {
        return this.attempt(() => unlessMissing(readFile(path.join(this.folder, name), 'utf8')));
    }

    async digest(content: string | Uint8Array): Promise<string> {
        return createHash('sha256').update(content).digest('hex');
    }

    async make(): Promise<() => Promise<void>> {
        const made = await this.attempt(() => makeFolder(this.folder));
        return async () => {
            for (const folder of made.toReversed()) await rmdir(folder);
        };
    }

    async replace(documents: readonly NewDocument[], written: (document: NewDocument) => void): Promise<void> {
        const files = new Map(documents.map((document) => [path.join(this.folder, document.name), document]));
        try {
            await replaceFiles(
                [...files].map(([file, { content }]) => ({ file, content })),
                ({ file }) => written(files.get(file)!),
            );
        } catch (error) {
            if (!(error instanceof NotWritten)) throw error;
            const name = path.basename(error.file);
            throw new CouldNotRun(`\`${this.shown}/${name}\` cannot be written: ${systemReason(error.cause)}`);
        }
    }

    private async attempt<Result>(act: () => Promise<Result>): Promise<Result> {
        try {
            return await act();
        } catch (error) {
            const reason = folderReasons[systemCode(error) ?? ''] ?? systemReason(error);
            throw new CouldNotRun(`the documents cannot be written to \`${this.shown}\`: ${reason}`);
        }
    }
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
