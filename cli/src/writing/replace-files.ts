/** Writes files whole or not at all. */
import { randomBytes } from 'node:crypto';
import { open, rename, rm } from 'node:fs/promises';
import * as path from 'node:path';

export interface NewFile {
    /** Absolute. */
    readonly file: string;
    /** Text is written as UTF-8. */
    readonly content: string | Uint8Array;
    /** The rights of the file that it replaces, where it keeps them. */
    readonly mode?: number;
}

/** A file that could not be written. */
export class NotWritten extends Error {
    constructor(
        readonly file: string,
        override readonly cause: unknown,
    ) {
        super(`${file} could not be written`);
    }
}

/**
 * Writes files, replacing those that are there. All are first written beside their places under other names, so that no file is
 * ever half written, and none is replaced unless there is room for all.
 * @param written is told of each file as soon as it is in its place
 * @throws NotWritten with the error of the operating system; what was written beside the places is taken away again
 */
export async function replaceFiles(files: readonly NewFile[], written: (file: NewFile) => void = () => {}): Promise<void> {
    const beside = new Map<NewFile, string>();
    try {
        for (const file of files) await attempt(file, () => writeBeside(file, beside));
        for (const [file, other] of beside) {
            await attempt(file, () => rename(other, file.file));
            beside.delete(file);
            written(file);
        }
    } finally {
        for (const other of beside.values()) await rm(other, { force: true });
    }
}

async function writeBeside(file: NewFile, beside: Map<NewFile, string>): Promise<void> {
    const { dir, base } = path.parse(file.file);
    const other = path.join(dir, `.${base}.${randomBytes(6).toString('hex')}.part`);
    const handle = await open(other, 'wx', file.mode ?? 0o666);
    beside.set(file, other);
    try {
        if (file.mode !== undefined) await handle.chmod(file.mode);
        await handle.writeFile(file.content, 'utf8');
        await handle.sync(); // or a crash of the machine could leave an empty file under the right name
    } finally {
        await handle.close();
    }
}

async function attempt(file: NewFile, write: () => Promise<void>): Promise<void> {
    try {
        await write();
    } catch (error) {
        throw new NotWritten(file.file, error);
    }
}
