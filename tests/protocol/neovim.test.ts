import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { languageServerCommand } from './language-server.js';

let folder: string;

beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'casewright-neovim-'));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('Neovim shows a mistake where it stands', () => {
    const file = path.join(folder, 'trial.case');
    writeFileSync(file, 'case Trial {\n    width = 40in\n    height 30in\n}\n');
    const script = path.join(import.meta.dirname, 'neovim.lua');
    const run = spawnSync('nvim', ['--headless', '-u', 'NONE', '-i', 'NONE', '-n', '-c', `luafile ${script}`], {
        encoding: 'utf8',
        timeout: 60_000,
        env: { ...process.env, XDG_STATE_HOME: folder, CASEWRIGHT_FILE: file, CASEWRIGHT_SERVER: languageServerCommand().join('\n') },
    });
    expect(run.error, 'nvim starts: `npm run test:tools` installs it').toBeUndefined();
    expect(run.stderr).not.toMatch(/diagnostic|client|answer/);
    expect(run.status).toBe(0);
});
