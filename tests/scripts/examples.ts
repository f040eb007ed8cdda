/** Checks and builds every example, `examples/NAME/NAME.case`, as a reader would. An example has no errors and no warnings. */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import * as path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');
const names = readdirSync(path.join(root, 'examples'), { withFileTypes: true }).filter((entry) => entry.isDirectory());
const failed = names.map(({ name }) => `examples/${name}/${name}.case`).filter((design) => !isSound(design) || !builds(design));

for (const design of failed) console.error(`${design} does not build, or not without warnings`);
process.exitCode = failed.length === 0 && names.length > 0 ? 0 : 1;

function isSound(design: string): boolean {
    const { stdout } = casewright('check', design, '--format', 'json');
    const { findings } = JSON.parse(stdout) as { findings: { severity: string; message: string }[] };
    const open = findings.filter(({ severity }) => severity !== 'note');
    for (const { severity, message } of open) console.error(`${design}: ${severity}: ${message}`);
    return open.length === 0;
}

function builds(design: string): boolean {
    const { status, stdout } = casewright('build', design);
    console.log(stdout);
    return status === 0;
}

function casewright(...args: string[]): { readonly status: number | null; readonly stdout: string } {
    const run = [path.join(root, 'cli/scripts/run.ts'), ...args];
    return spawnSync(process.execPath, run, {
        cwd: root,
        env: { ...process.env, INIT_CWD: root },
        stdio: ['ignore', 'pipe', 'inherit'],
        encoding: 'utf8',
    });
}
