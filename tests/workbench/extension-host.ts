import { mkdir } from 'node:fs/promises';
import * as path from 'node:path';
import { format } from 'node:util';
import { describe, expect, it } from 'vitest';
import { type BrowserPage, openChromium } from './chromium.js';
import { OUT } from './paths.js';
import type { ReportedTest } from './suite/run-mocha.js';

const TIME_LIMIT = 120_000;

/** What an extension host answered. */
interface HostRun {
    readonly tests: readonly ReportedTest[];
    /** Exit code of the test run; undefined if it did not end in time. */
    readonly exitCode: number | undefined;
    /** The end of the page's console, for a run that went wrong. */
    readonly console: string;
}

/** Where the workbench reads web extensions under development and their tests from: addresses as the workbench writes them. */
export interface WebDevelopment {
    readonly extensions: readonly UriComponents[];
    readonly extensionTestsPath: UriComponents;
}

interface UriComponents {
    readonly scheme: string;
    readonly authority: string;
    readonly path: string;
}

/** Runs the suite in the extension host of the workbench at this address, and reports each of its tests as one of ours. */
export async function describeHost(name: string, url: string, development?: WebDevelopment): Promise<void> {
    const run = await runSuite(name, url, development);
    describe(name, () => {
        for (const { title, error } of run.tests) {
            it(title, () => {
                expect(error).toBeUndefined();
            });
        }
        it('the run came to its end', () => {
            expect(run.tests.length, run.console).toBeGreaterThan(0);
            const expectedExit = run.tests.some((test) => test.error !== undefined) ? 1 : 0;
            expect(run.exitCode, run.console).toBe(expectedExit);
        });
    });
}

async function runSuite(name: string, url: string, development: WebDevelopment | undefined): Promise<HostRun> {
    const browser = await openChromium();
    try {
        const tests: ReportedTest[] = [];
        const ending = await listen(browser, tests);
        if (development !== undefined) {
            await browser.page.addInitScript(setDevelopmentOptions, development);
        }
        await browser.page.goto(url);
        const exitCode = await Promise.race([ending.exit, afterTimeLimit()]);
        await mkdir(OUT, { recursive: true });
        await browser.page.screenshot({ path: path.join(OUT, `${name.replaceAll(' ', '-')}.png`) });
        return { tests, exitCode, console: browser.consoleLines.slice(-40).join('\n') };
    } finally {
        await browser.close();
    }
}

/**
 * The workbench calls two functions on `window` where they exist: one with each console line of its extension host,
 * and one at the end of the test run.
 */
async function listen({ page }: BrowserPage, tests: ReportedTest[]): Promise<{ exit: Promise<number> }> {
    await page.exposeFunction('codeAutomationLog', (_type: string, values: unknown[]) => {
        const reported = /^##test (\{.*\})/.exec(format(...values))?.[1];
        if (reported !== undefined) {
            tests.push(JSON.parse(reported) as ReportedTest);
        }
    });
    const { promise: exit, resolve } = Promise.withResolvers<number>();
    await page.exposeFunction('codeAutomationExit', (code: number) => resolve(code));
    return { exit };
}

/** Runs in the page: the workbench reads these options from an element of the page, on its first look at it. */
function setDevelopmentOptions(development: WebDevelopment): void {
    const getElementById = Document.prototype.getElementById;
    Document.prototype.getElementById = function (id: string) {
        const element = getElementById.call(this, id);
        if (id === 'vscode-workbench-web-configuration' && element !== null && !element.hasAttribute('data-prepared')) {
            const settings = JSON.parse(element.getAttribute('data-settings') ?? '{}');
            settings.developmentOptions = { ...settings.developmentOptions, ...development };
            element.setAttribute('data-settings', JSON.stringify(settings));
            element.setAttribute('data-prepared', '');
        }
        return element;
    };
}

function afterTimeLimit(): Promise<undefined> {
    return new Promise((resolve) => {
        setTimeout(resolve, TIME_LIMIT, undefined).unref();
    });
}
