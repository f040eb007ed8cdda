import { existsSync, readdirSync, rmSync } from 'node:fs';
import * as path from 'node:path';
import { startSession } from '../session.js';

/** Where the tests of prepared starts keep theirs. */
export const CACHE = path.resolve(import.meta.dirname, '../../out/prepared-start');

/** Before the first test: a server that is at work prepares the next start. */
export default async function prepare(): Promise<void> {
    rmSync(CACHE, { recursive: true, force: true });
    process.env.CASEWRIGHT_CACHE = CACHE;
    const session = await startSession();
    await untilPrepared(CACHE);
    await session.end();
}

/** Waits for the snapshot of a server that has been started with this folder for caches; in vain after a minute, which is an error. */
export async function untilPrepared(cache: string): Promise<string> {
    for (let waited = 0; waited < 60; waited += 0.2) {
        const name = existsSync(cache) ? readdirSync(cache).find((file) => file.endsWith('.snapshot')) : undefined;
        if (name !== undefined) return path.join(cache, name);
        await new Promise((resolve) => setTimeout(resolve, 200));
    }
    throw new Error(`no start of the language server has been prepared in ${cache}`);
}
