/** The packaged extension in a real workbench, driven with mouse and keys as a person would. */
import { mkdir } from 'node:fs/promises';
import * as path from 'node:path';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { type BrowserPage, openChromium } from './chromium.js';
import { startWorkbench, type WorkbenchServer } from './code-server.js';
import { OUT, VSIX } from './paths.js';

let workbench: WorkbenchServer;
let browser: BrowserPage;

beforeAll(async () => {
    await mkdir(OUT, { recursive: true });
    workbench = await startWorkbench({ vsix: VSIX });
    browser = await openChromium();
    const folder = inject('workspace');
    await browser.page.goto(workbench.workbenchUrl({ folder, openFile: path.join(folder, 'trial.case') }));
    await browser.page.locator('.monaco-editor .view-lines').first().waitFor({ timeout: 60_000 });
});

afterAll(async () => {
    await browser?.close();
    await workbench?.stop();
});

it('underlines a mistake at its words and explains it under the pointer', async () => {
    const { page } = browser;
    const squiggle = page.locator('.monaco-editor .squiggly-error').first();
    await squiggle.waitFor({ timeout: 60_000 });
    await squiggle.hover({ force: true });
    const hover = page.locator('.monaco-hover:not(.hidden) .hover-contents').first();
    await hover.waitFor({ timeout: 20_000 });
    await page.screenshot({ path: path.join(OUT, 'mistake-under-the-pointer.png') });
    expect(await hover.textContent()).toMatch(/\S/);
});
