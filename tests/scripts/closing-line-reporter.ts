import type { Reporter, TestCase } from 'vitest/node';

/** Ends a test run with one line for people and for programs: how many tests passed and how many failed. */
export default class ClosingLineReporter implements Reporter {
    private passed = 0;
    private failed = 0;

    onTestCaseResult(test: TestCase): void {
        const { state } = test.result();
        if (state === 'passed') {
            this.passed += 1;
        } else {
            this.failed += 1; // a skipped test proves nothing, so it counts as failed
        }
    }

    onTestRunEnd(modules: Parameters<NonNullable<Reporter['onTestRunEnd']>>[0], errors: readonly unknown[]): void {
        const brokenModules = modules.filter((module) => module.errors().length > 0).length;
        console.log(`${this.passed} passed, ${this.failed + brokenModules + errors.length} failed`);
    }
}
