/**
 * Everything that continuous integration runs: that generated files are fresh, types, lint, unused exports, and all tests.
 * Goes on after a failure, tells how long each stage took, and ends with one line that sums up stages and tests.
 */
import { spawn } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import * as path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');

/** Files and folders whose content comes from `npm run generate` and `npm run docs`, and is kept in the repository all the same. */
const GENERATED = ['language/src/generated', 'language/src/workspace/library-texts.ts', 'language/docs', 'extension/syntaxes'];

interface Outcome {
    readonly passed: number;
    readonly failed: number;
}

const stages: readonly (readonly [title: string, run: () => Promise<Outcome>])[] = [
    ['generated files are fresh', generatedFilesAreFresh],
    ['types', () => one(npmRun('types'))],
    ['lint and format', () => one(npmRun('lint'))],
    ['no unused exports', () => one(npmRun('unused'))],
    ['tests', tests],
];

const times: string[] = [];
let passed = 0;
let failed = 0;
for (const [title, run] of stages) {
    console.log(`\n== ${title}`);
    const started = Date.now();
    const outcome = await run();
    passed += outcome.passed;
    failed += outcome.failed;
    times.push(
        `${String(Math.round((Date.now() - started) / 1000)).padStart(5)} s  ${outcome.failed === 0 ? 'ok    ' : 'FAILED'}  ${title}`,
    );
}
console.log(`\n${times.join('\n')}\n`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;

/** A stage that is a single check. */
async function one(run: Promise<{ code: number }>): Promise<Outcome> {
    const { code } = await run;
    return code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** All tests; their runner ends with the line that this program sums up. */
async function tests(): Promise<Outcome> {
    const { code, output } = await npmRun('test');
    const [, passedTests, failedTests] = /(\d+) passed, (\d+) failed\s*$/.exec(output) ?? [];
    if (passedTests === undefined || failedTests === undefined) {
        console.error(`the tests ended with ${code} before they said how many passed`);
        return { passed: 0, failed: 1 };
    }
    const outcome = { passed: Number(passedTests), failed: Number(failedTests) };
    return code !== 0 && outcome.failed === 0 ? { ...outcome, failed: 1 } : outcome;
}

async function generatedFilesAreFresh(): Promise<Outcome> {
    const before = await contents();
    const { code } = await npmRun('generate');
    const docs = await npmRun('docs', '--if-present');
    const after = await contents();
    const stale = [...new Set([...before.keys(), ...after.keys()])].filter((file) => before.get(file) !== after.get(file));
    for (const file of stale) {
        console.error(`${file} was out of date; it is now as generated, so look at the difference and commit it`);
    }
    return code === 0 && docs.code === 0 && stale.length === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

async function contents(): Promise<Map<string, string>> {
    const present = GENERATED.map((generated) => path.join(root, generated)).filter((place) => existsSync(place));
    const files = (await Promise.all(present.map(filesIn))).flat();
    const texts = await Promise.all(files.map((file) => readFile(file, 'utf8')));
    return new Map(files.map((file, index) => [path.relative(root, file), texts[index] ?? '']));
}

async function filesIn(place: string): Promise<string[]> {
    if (statSync(place).isFile()) {
        return [place];
    }
    const entries = await readdir(place, { recursive: true, withFileTypes: true });
    return entries.filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
}

async function npmRun(script: string, ...options: string[]): Promise<{ code: number; output: string }> {
    const child = spawn('npm', ['run', '--silent', ...options, script], { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] });
    let output = '';
    child.stdout.on('data', (data) => {
        output += data;
        process.stdout.write(data);
    });
    const code = await new Promise<number>((resolve) =>
        child.once('close', (status, signal) => {
            if (signal !== null) {
                console.error(`npm run ${script} was ended by ${signal}`);
            }
            resolve(status ?? 1);
        }),
    );
    return { code, output };
}
