import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { chromium, type Page } from 'playwright-core';

const PROGRAM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const ARGUMENTS = [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-dev-shm-usage',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    // Nothing in a test may depend on the world outside this machine.
    '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE *.localhost, EXCLUDE 127.0.0.1',
];

/** A page of a browser of its own. */
export interface BrowserPage {
    readonly page: Page;
    /** Everything that the page's console has said so far. */
    readonly consoleLines: readonly string[];
    close(): Promise<void>;
}

/**
 * Opens a page in a fresh profile on disk. The profile allows storage in foreign frames: playwright turns storage partitioning
 * off, after which the browser's default blocks it, and a webview could not register its service worker.
 */
export async function openChromium(): Promise<BrowserPage> {
    const profile = await mkdtemp(path.join(tmpdir(), 'casewright-chromium-'));
    await mkdir(path.join(profile, 'Default'));
    await writeFile(path.join(profile, 'Default/Preferences'), JSON.stringify({ profile: { cookie_controls_mode: 0 } }));
    const context = await chromium.launchPersistentContext(profile, {
        executablePath: PROGRAM,
        args: ARGUMENTS,
        viewport: { width: 1400, height: 1200 },
    });
    const page = context.pages()[0] ?? (await context.newPage());
    const consoleLines: string[] = [];
    page.on('console', (message) => consoleLines.push(`[${message.type()}] ${message.text()}`));
    page.on('pageerror', (error) => consoleLines.push(`[page error] ${error}`));
    return {
        page,
        consoleLines,
        close: async () => {
            await context.close();
            await rm(profile, { recursive: true, force: true, maxRetries: 5 });
        },
    };
}
