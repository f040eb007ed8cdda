/** The commands of the packaged extension in a real workbench, as a person runs them from the palette. */
import { existsSync, readdirSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import * as path from 'node:path';
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BrowserPage, openChromium } from './chromium.js';
import { startWorkbench, type WorkbenchServer } from './code-server.js';
import { OUT, VSIX } from './paths.js';

let workbench: WorkbenchServer;
let browser: BrowserPage;

/** Opens the example, in Restricted Mode unless it is trusted. */
async function open(isTrusted: boolean): Promise<void> {
    await mkdir(OUT, { recursive: true });
    workbench = await startWorkbench({ vsix: VSIX, isTrusted, showsMessages: true });
    browser = await openChromium();
    await browser.page.goto(workbench.workbenchUrl({ openFile: 'kiln-lane/kiln-lane.case' }));
    await line('project').waitFor({ timeout: 60_000 });
}

async function close(): Promise<void> {
    await browser?.page.screenshot({ path: path.join(OUT, 'commands-at-the-end.png') });
    await browser?.close();
    await workbench?.stop();
}

describe('in a folder that is trusted', () => {
    beforeAll(() => open(true));
    afterAll(close);

    it('the documents are written that are left ticked, and a message leads to them', async () => {
        const { page } = browser;
        await run('Write the Shop Documents');
        await page.locator('.quick-input-list .monaco-list-row', { hasText: 'Cut list' }).waitFor({ timeout: 60_000 });
        await page.screenshot({ path: path.join(OUT, 'command-build-kinds.png') });
        await page.keyboard.press('Enter');
        const told = message('written to');
        await told.waitFor({ timeout: 60_000 });
        await page.screenshot({ path: path.join(OUT, 'command-build-written.png') });
        expect(await told.textContent()).toMatch(/\d+ documents written to kiln-lane\/out\/kiln-lane/);
        expect(readdirSync(path.join(workbench.folder, 'kiln-lane/out/kiln-lane'))).toContain('templates.pdf');
        await page.getByRole('button', { name: 'Open cut-list.md' }).click();
        await page.locator('.tab.active', { hasText: 'cut-list.md' }).waitFor({ timeout: 20_000 });
        await page.locator('.tab', { hasText: 'kiln-lane.case' }).click();
    });

    it('a part says its sizes to choose from, and the chosen one is explained beside', async () => {
        const { page } = browser;
        await line('shelf Floor').getByText('Floor', { exact: false }).last().click();
        await run('Explain the Size under the Cursor');
        await page
            .locator('.quick-input-list .monaco-list-row', { hasText: 'PotteryCase.Floor.depth' })
            .first()
            .waitFor({ timeout: 60_000 });
        await page.screenshot({ path: path.join(OUT, 'command-why-sizes.png') });
        await page.keyboard.type('Floor.depth');
        await page.keyboard.press('Enter');
        await line('PotteryCase.Floor.depth = ').waitFor({ timeout: 20_000 });
        await page.screenshot({ path: path.join(OUT, 'command-why.png') });
    });

    it('a project with errors says which, among the problems', async () => {
        const { page } = browser;
        await line('width  40in').click();
        await page.keyboard.press('End');
        await page.keyboard.press('Backspace');
        await page.keyboard.press('Backspace');
        await run('Check the Project');
        const told = message('1 error in kiln-lane.case');
        await told.waitFor({ timeout: 60_000 });
        await page.getByRole('button', { name: 'Show Problems' }).click();
        await page.locator('.markers-panel .monaco-list-row', { hasText: '40in' }).first().waitFor({ timeout: 20_000 });
        await page.screenshot({ path: path.join(OUT, 'command-check.png') });
    });
});

describe('in Restricted Mode', () => {
    beforeAll(() => open(false));
    afterAll(close);

    it('nothing is written, and a message says why', async () => {
        await run('Write the Shop Documents');
        const told = message('Restricted Mode');
        await told.waitFor({ timeout: 60_000 });
        await browser.page.screenshot({ path: path.join(OUT, 'command-build-restricted.png') });
        expect(await told.textContent()).toContain('writes no files in Restricted Mode');
        expect(existsSync(path.join(workbench.folder, 'kiln-lane/out'))).toBe(false);
    });
});

/** Runs a command from the palette. */
async function run(title: string): Promise<void> {
    const { page } = browser;
    await page.keyboard.press('F1');
    await page.locator('.quick-input-widget input').first().waitFor({ timeout: 20_000 });
    await page.keyboard.type(`Casewright: ${title}`);
    await page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first().waitFor({ timeout: 20_000 });
    await page.keyboard.press('Enter');
}

function message(words: string): Locator {
    return browser.page.locator('.notifications-toasts .notification-toast', { hasText: words }).first();
}

/** The line of an editor that has these words. */
function line(words: string): Locator {
    return browser.page.locator('.monaco-editor .view-line', { hasText: new RegExp(words.trim().replaceAll(' ', '\\s')) }).first(); // blanks show as no-break spaces
}
