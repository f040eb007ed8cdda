/**
 * Starts the language server out of a snapshot of its memory (Node's start-up snapshot), in which it is made and has read its library:
 * an editor then waits less than half as long. A snapshot is good for one Node and one bundle only; it is made in the
 * background while a server that was started the plain way is at work, and lies in the user's folder for caches. Without one,
 * or where Node cannot put another program in its place (Windows), the server starts the plain way.
 */
import * as fs from 'node:fs';
import * as os from 'node:os';
import * as path from 'node:path';
import { fileURLToPath } from 'node:url';
import { cachedDataVersionTag } from 'node:v8';

const day = 24 * 60 * 60 * 1000;
/** Snapshots that no start has used for so long are thrown away. */
const keptFor = 30 * day;
/** The making of one takes seconds: after so long whoever began it has come to an end before it was done. */
const givenUpAfter = 5 * 60 * 1000;
/** An editor that has just started its server has other work at first. */
const pause = 2000;

export interface PreparedStart {
    /** Continues as the prepared server, and does not return; returns where none has been prepared for this Node and bundle. */
    continueAsPrepared(): void;
    /** Prepares the next start, in a process of its own and after a pause; what goes wrong there is no concern of this one. */
    prepareNext(): void;
}

/**
 * @param bundle the file of the server that a snapshot can be made of; a file URL
 * @param serverArguments what follows the program on its command line
 */
export function preparedStart(bundle: URL, serverArguments: readonly string[]): PreparedStart {
    const file = fileURLToPath(bundle);
    const folder = cacheFolder(process.env);
    const snapshot = folder && fs.existsSync(file) ? path.join(folder, nameFor(file)) : undefined;
    return {
        continueAsPrepared() {
            if (snapshot === undefined || !process.execve || !fs.existsSync(snapshot) || !isOurs(path.dirname(snapshot))) return;
            markAsUsed(snapshot);
            process.execve(process.execPath, [process.execPath, ...process.execArgv, '--snapshot-blob', snapshot, ...serverArguments]);
        },
        prepareNext() {
            if (snapshot !== undefined && process.execve) setTimeout(() => void prepare(file, snapshot), pause).unref();
        },
    };
}

/** The folder for caches of this user; undefined where there is to be none, or where Node is told to load more than the server. */
function cacheFolder({ CASEWRIGHT_CACHE: chosen, XDG_CACHE_HOME: standard, NODE_OPTIONS: options }: NodeJS.ProcessEnv): string | undefined {
    if (chosen === 'off' || options) return undefined;
    if (chosen) return path.resolve(chosen);
    const caches = process.platform === 'darwin' ? path.join(os.homedir(), 'Library/Caches') : path.join(os.homedir(), '.cache');
    return path.join(standard || caches, 'casewright');
}

/** Another Node, other options of it, a processor with other abilities or another bundle has another name: Node refuses a snapshot of these. */
function nameFor(bundle: string): string {
    const stamp = (file: string) => {
        const { mtimeMs, size, ino } = fs.statSync(file);
        return [mtimeMs, size, ino].map((figure) => Math.round(figure).toString(36)).join('.');
    };
    const engine = cachedDataVersionTag().toString(36);
    return `server-${process.version}-${process.arch}-${engine}-${stamp(process.execPath)}-${stamp(bundle)}.snapshot`;
}

/** So that it is not thrown away as old. */
function markAsUsed(snapshot: string): void {
    const now = new Date();
    try {
        fs.utimesSync(snapshot, now, now);
    } catch {
        // where nothing can be written, nothing is thrown away either
    }
}

/** What is in the snapshot is run: nobody else may have put it there. */
function isOurs(folder: string): boolean {
    const { uid, mode } = fs.statSync(folder);
    return uid === process.getuid?.() && (mode & 0o022) === 0;
}

async function prepare(bundle: string, snapshot: string): Promise<void> {
    const { spawn } = await import('node:child_process');
    const run = (given: readonly string[], done: () => void, failed: () => void) => {
        const child = spawn(process.execPath, [...process.execArgv, ...given], { stdio: 'ignore' });
        child.on('error', failed);
        child.on('exit', (code) => (code === 0 ? done() : failed()));
        child.unref();
        if (child.pid !== undefined) os.setPriority(child.pid, os.constants.priority.PRIORITY_LOW);
    };
    const unfinished = `${snapshot}.unfinished`;
    try {
        fs.mkdirSync(path.dirname(snapshot), { recursive: true, mode: 0o700 });
        throwAwayOld(path.dirname(snapshot));
        if (fs.existsSync(snapshot) || !isOurs(path.dirname(snapshot))) return;
        fs.closeSync(fs.openSync(unfinished, 'wx'));
    } catch {
        return; // no place for one, or another server is about it
    }
    const giveUp = () => fs.rmSync(unfinished, { force: true });
    const keep = () => fs.renameSync(unfinished, snapshot);
    const tryIt = () => run(['--snapshot-blob', unfinished, 'language-server', '--try'], keep, giveUp);
    run(['--snapshot-blob', unfinished, '--build-snapshot', bundle], tryIt, giveUp);
}

function throwAwayOld(folder: string): void {
    for (const name of fs.readdirSync(folder)) {
        if (!/^server-.*\.snapshot(\.unfinished)?$/.test(name)) continue;
        const file = path.join(folder, name);
        const age = Date.now() - fs.statSync(file).mtimeMs;
        if (age > (name.endsWith('.unfinished') ? givenUpAfter : keptFor)) fs.rmSync(file, { force: true });
    }
}
