/** The program as it is delivered, run as a shell runs it. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import * as path from 'node:path';
import { beforeAll, expect, it, vi } from 'vitest';
import { bookcase, mistaken } from './designs.js';
import { shell } from './shell.js';

const root = path.resolve(import.meta.dirname, '../..');
const fromCheckout = path.join(root, 'cli/scripts/run.ts');
const program = path.join(root, 'cli/dist/casewright.mjs');

// Each test starts processes, on a machine that may be busy with others.
vi.setConfig({ testTimeout: 60_000 });

beforeAll(() => {
    // Bundles what is missing or out of date.
    expect(spawnSync(process.execPath, [fromCheckout, '--version'], { encoding: 'utf8' })).toMatchObject({ status: 0, stderr: '' });
}, 60_000);

const run = (args: readonly string[], folder: string, environment: NodeJS.ProcessEnv = {}) =>
    spawnSync(process.execPath, [...args], { cwd: folder, env: { ...process.env, ...environment }, encoding: 'utf8' });

it('tells its version', async () => {
    const { status, stdout } = run([program, '--version'], root);
    expect({ status, stdout }).toEqual({ status: 0, stdout: '0.1.0\n' });
});

it.each([
    ['check sound.case', 0],
    ['check wrong.case', 1],
    ['check missing.case', 2],
])('ends with its exit code: %s', async (line, status) => {
    const { folder } = await shell({ 'sound.case': bookcase, 'wrong.case': mistaken });
    expect(run([program, ...line.split(' ')], folder).status).toBe(status);
});

it('runs from the checkout in the folder that the user stands in', async () => {
    const { folder } = await shell({ 'wrong.case': mistaken });
    const { status, stdout } = run([fromCheckout, 'check', 'wrong.case'], root, { INIT_CWD: folder });
    expect(status).toBe(1);
    expect(stdout).toMatch(/^wrong\.case:9:11 /);
});

it('writes results to one stream and what went wrong to the other', async () => {
    const { folder } = await shell({ 'wrong.case': mistaken });
    const { stdout, stderr } = run([program, 'check', 'wrong.case', 'missing.case', '--format', 'json'], folder);
    expect(JSON.parse(stdout).count.error).toBe(2);
    expect(stderr).toBe('casewright: there is no file `missing.case`\n');
});

it('stops in peace when nobody reads on, as under `head`', async () => {
    const child = spawn(process.execPath, [program, 'explain'], { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
    child.stdout.destroy();
    let told = '';
    child.stderr.on('data', (data) => {
        told += data;
    });
    const [status] = await once(child, 'close');
    expect({ status, told }).toEqual({ status: 0, told: '' });
});

it('uses colours on a screen, unless the user does not want them', async () => {
    const { folder } = await shell({ 'wrong.case': mistaken });
    // `script` runs a command on a terminal of its own; no colours by the environment of whoever runs the tests.
    const onScreen = (environment: NodeJS.ProcessEnv) =>
        spawnSync('script', ['-qec', `'${process.execPath}' '${program}' check wrong.case`, '/dev/null'], {
            cwd: folder,
            env: { PATH: process.env.PATH, TERM: 'xterm-256color', ...environment },
            encoding: 'utf8',
        }).stdout;
    expect(onScreen({})).toContain('\u001b[');
    expect(onScreen({ NO_COLOR: '1' })).toContain('error UNI-001');
    expect(onScreen({ NO_COLOR: '1' })).not.toContain('\u001b[');
    expect(run([program, 'check', 'wrong.case'], folder).stdout).not.toContain('\u001b[');
});
