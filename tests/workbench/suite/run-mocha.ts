/** What the extension host tells about a test, on one line of its console that begins with `##test`. */
export interface ReportedTest {
    readonly title: string;
    /** What went wrong; absent if the test passed. */
    readonly error?: string;
}

/** Runs what has been declared to mocha, tells of each test, and fails if one of them failed. */
export async function runMocha(mocha: Mocha | BrowserMocha): Promise<void> {
    await new Promise<void>((resolve, reject) => {
        const runner = mocha.run((failures) => {
            if (failures > 0) {
                reject(new Error(`${failures} failed`));
            } else {
                resolve();
            }
        });
        runner.on('pass', (test) => report({ title: test.title }));
        runner.on('fail', (test, error) => report({ title: test.title, error: String(error.stack ?? error) }));
    });
}

function report(test: ReportedTest): void {
    console.log(`##test ${JSON.stringify(test)}`);
}
