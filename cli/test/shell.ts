/** A folder and a terminal for one test: runs commands in it as a shell would, and keeps what they say. */
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { onTestFinished } from 'vitest';
import { runCommandLine } from '../src/command-line.js';
import { type Paint, withoutColours } from '../src/terminal.js';

export interface Ran {
    readonly exitCode: number;
    /** What was written as the result. */
    readonly out: string;
    /** What was told beside it. */
    readonly told: string;
}

export interface Shell {
    readonly folder: string;
    run(...args: string[]): Promise<Ran>;
    /** Writes files, and the folders they are in. */
    write(files: Readonly<Record<string, string | Uint8Array>>): Promise<void>;
    read(file: string): Promise<string>;
    /** The paths of all files, sorted. */
    files(): Promise<string[]>;
}

/** An empty folder, taken away when the test ends, and a terminal that stands in it. */
export async function shell(files: Readonly<Record<string, string | Uint8Array>> = {}, paint: Paint = withoutColours): Promise<Shell> {
    const folder = await mkdtemp(path.join(tmpdir(), 'casewright-'));
    onTestFinished(() => rm(folder, { recursive: true, force: true }));
    const opened: Shell = {
        folder,
        run: (...args) => run(args, folder, paint),
        write: async (texts) => {
            for (const [name, text] of Object.entries(texts)) {
                await mkdir(path.dirname(path.join(folder, name)), { recursive: true });
                await writeFile(path.join(folder, name), text);
            }
        },
        read: (file) => readFile(path.join(folder, file), 'utf8'),
        files: async () => {
            const found = await readdir(folder, { recursive: true, withFileTypes: true });
            return found
                .filter((entry) => !entry.isDirectory())
                .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
                .sort();
        },
    };
    await opened.write(files);
    return opened;
}

async function run(args: readonly string[], workingFolder: string, paint: Paint): Promise<Ran> {
    let out = '';
    let told = '';
    const exitCode = await runCommandLine(args, {
        workingFolder,
        write: (text) => {
            out += text;
        },
        tell: (text) => {
            told += text;
        },
        paint,
    });
    return { exitCode, out, told };
}
