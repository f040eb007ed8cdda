/** The packaged extension in a real workbench, driven with mouse and keys as a person would. */
import { mkdir } from 'node:fs/promises';
import * as path from 'node:path';
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type BrowserPage, openChromium } from './chromium.js';
import { startWorkbench, type WorkbenchServer } from './code-server.js';
import { OUT, VSIX } from './paths.js';

let workbench: WorkbenchServer;
let browser: BrowserPage;

beforeAll(async () => {
    await mkdir(OUT, { recursive: true });
    workbench = await startWorkbench({ vsix: VSIX });
    browser = await openChromium();
    await browser.page.goto(workbench.workbenchUrl({ openFile: 'kiln-lane/kiln-lane.case' }));
    await line('project').waitFor({ timeout: 60_000 });
});

afterAll(async () => {
    await browser?.page.screenshot({ path: path.join(OUT, 'interface-at-the-end.png') });
    await browser?.close();
    await workbench?.stop();
});

it('warns when the order of work would leave end grain showing, and says what a shelf measures', async () => {
    const { page } = browser;
    await line('edge front Lipped').click();
    await page.keyboard.press('Alt+ArrowUp'); // the editor's own command: the line moves up, before the top edge
    const warning = page.locator('.monaco-editor .squiggly-warning').first();
    await warning.waitFor({ timeout: 60_000 });

    await line('shelf Floor').getByText('Floor', { exact: false }).last().hover();
    const shelf = hover('finished');
    await shelf.waitFor({ timeout: 20_000 });
    await page.screenshot({ path: path.join(OUT, 'warning-and-size.png') });
    expect(await shelf.textContent()).toMatch(/shelf PotteryCase\.Floor.*\d+in.*\d+mm/s);

    await page.keyboard.press('Escape'); // a hover stays while the pointer is on it
    await warning.hover({ force: true });
    const explained = hover('EDG-003');
    await explained.waitFor({ timeout: 20_000 });
    await page.screenshot({ path: path.join(OUT, 'warning-explained.png') });
});

it('offers what fits while a line is typed', async () => {
    const { page } = browser;
    await line('shelf Floor').click();
    await page.keyboard.press('End');
    await page.keyboard.press('Enter');
    await page.keyboard.type('kick of ');
    await page.keyboard.press('Control+Space');
    await page.locator('.suggest-widget .monaco-list-row', { hasText: 'WalnutPly' }).first().waitFor({ timeout: 20_000 });
    await page.screenshot({ path: path.join(OUT, 'completion.png') });
});

/** The line of the editor that has these words. */
function line(words: string): Locator {
    return browser.page.locator('.monaco-editor .view-line', { hasText: new RegExp(words.replaceAll(' ', '\\s')) }).first(); // blanks show as no-break spaces
}

/** What the editor shows under the pointer, once it has these words. */
function hover(words: string): Locator {
    return browser.page.locator('.monaco-hover:not(.hidden) .hover-contents').filter({ hasText: words }).first();
}
