import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { EXAMPLE, languageServerCommand } from './language-server.js';

let folder: string;

beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'casewright-neovim-'));
    cpSync(path.dirname(EXAMPLE), folder, { recursive: true });
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('Neovim shows a mistake where it stands, and a length in the other unit system', () => {
    const file = path.join(folder, path.basename(EXAMPLE));
    writeFileSync(file, readFileSync(file, 'utf8').replace('width  40in', 'width  40'));
    const script = path.join(import.meta.dirname, 'neovim.lua');
    const run = spawnSync('nvim', ['--headless', '-u', 'NONE', '-i', 'NONE', '-n', '-c', `luafile ${script}`], {
        encoding: 'utf8',
        timeout: 60_000,
        env: { ...process.env, XDG_STATE_HOME: folder, CASEWRIGHT_FILE: file, CASEWRIGHT_SERVER: languageServerCommand().join('\n') },
    });
    expect(run.error, 'nvim does not start: `npm run test:tools` installs it').toBeUndefined();
    expect(run.status, run.stderr).toBe(0);
});
