/** Which way a server starts. What it answers when it was prepared, the tests of the protocol ask it, which run both ways. */
import {
    chmodSync,
    cpSync,
    mkdirSync,
    mkdtempSync,
    readdirSync,
    readFileSync,
    renameSync,
    rmSync,
    utimesSync,
    writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { startSession } from '../session.js';
import { CACHE, untilPrepared } from './prepare.js';

let cache: string;

beforeEach(() => {
    cache = path.join(mkdtempSync(path.join(tmpdir(), 'casewright-cache-')), 'casewright');
});

afterEach(() => {
    process.env.CASEWRIGHT_CACHE = CACHE;
    rmSync(path.dirname(cache), { recursive: true, force: true });
});

/** Whether a server that is started with a folder for caches comes out of a snapshot; Linux tells how a process was started. */
async function isPrepared(folder: string): Promise<boolean> {
    process.env.CASEWRIGHT_CACHE = folder;
    const session = await startSession();
    const line = readFileSync(`/proc/${session.processId}/cmdline`, 'utf8').split('\0');
    expect(await session.end()).toBe(0);
    return line.includes('--snapshot-blob');
}

test('out of the snapshot that an earlier one has made', async () => {
    expect(await isPrepared(CACHE)).toBe(true);
});

test('the plain way where there is none, or there is to be none', async () => {
    expect(await isPrepared(cache)).toBe(false);
    expect(await isPrepared('off')).toBe(false);
});

test('the plain way where Node has options of its own from outside', async () => {
    process.env.NODE_OPTIONS = '--no-deprecation';
    try {
        expect(await isPrepared(CACHE)).toBe(false);
    } finally {
        delete process.env.NODE_OPTIONS;
    }
});

test('the plain way where another Node or another bundle made it', async () => {
    cpSync(CACHE, cache, { recursive: true });
    chmodSync(cache, 0o700);
    const [name = ''] = readdirSync(cache);
    renameSync(path.join(cache, name), path.join(cache, name.replace(process.version, 'v22.18.0')));
    expect(await isPrepared(cache)).toBe(false);
});

test('the plain way where others may write in the folder: what is in a snapshot is run', async () => {
    cpSync(CACHE, cache, { recursive: true });
    chmodSync(cache, 0o777);
    expect(await isPrepared(cache)).toBe(false);
});

test('old ones are thrown away, other files are not', async () => {
    mkdirSync(cache, { mode: 0o700 });
    const [old, unfinished, mine] = ['server-v22.snapshot', 'server-v24.snapshot.unfinished', 'notes.snapshot'].map((name) =>
        path.join(cache, name),
    ) as [string, string, string];
    for (const file of [old, unfinished, mine]) {
        writeFileSync(file, '');
        utimesSync(file, new Date('2020-01-01'), new Date('2020-01-01'));
    }
    process.env.CASEWRIGHT_CACHE = cache;
    const session = await startSession();
    await expect.poll(() => readdirSync(cache), { timeout: 60_000 }).not.toContain(path.basename(old));
    await expect.poll(() => readdirSync(cache).filter((name) => /^server-.*\.snapshot$/.test(name)), { timeout: 60_000 }).toHaveLength(1);
    await session.end();
    expect(readdirSync(cache)).toContain('notes.snapshot');
    expect(readdirSync(cache)).toHaveLength(2);
    expect(await untilPrepared(cache)).not.toBe(old);
});
