import { chmod, lstat, stat, symlink } from 'node:fs/promises';
import * as path from 'node:path';
import { describe, expect, it } from 'vitest';
import { shell } from '../shell.js';

const untidy = 'case A{width 40in;height 1in\n depth  2in\n}';
const tidy = 'case A {\n    width  40in\n    height 1in\n    depth  2in\n}\n';

describe('format', () => {
    it('lays a design out, and then has nothing more to do', async () => {
        const { run, read } = await shell({ 'a.case': untidy });
        expect(await run('format', 'a.case')).toEqual({ exitCode: 0, told: '', out: 'formatted: a.case\n1 file of 1 changed\n' });
        expect(await read('a.case')).toBe(tidy);
        expect(await run('format', 'a.case')).toEqual({ exitCode: 0, told: '', out: '0 files of 1 changed\n' });
    });

    it('with --check changes nothing, and ends with 1 if something would change', async () => {
        const { run, read } = await shell({ 'a.case': untidy, 'b.case': tidy });
        const ran = await run('format', '--check', 'a.case', 'b.case');
        expect(ran).toEqual({ exitCode: 1, told: '', out: 'not formatted: a.case\n1 file of 2 to be formatted\n' });
        expect(await read('a.case')).toBe(untidy);
        expect((await run('format', '--check', 'b.case')).exitCode).toBe(0);
    });

    it('says which files it leaves as they are because they cannot be read', async () => {
        const broken = 'case A{\n width = = 40in\n';
        const { run, read } = await shell({ 'a.case': broken });
        const ran = await run('format', 'a.case');
        expect(ran.told).toMatch(/^`a\.case` has \d lines? that cannot be read, left as written: /);
        expect(await read('a.case')).toBe(broken);
    });

    it('formats the other files when one is not there, and ends with 2', async () => {
        const { run, read } = await shell({ 'a.case': untidy });
        expect(await run('format', 'b.case', 'a.case')).toMatchObject({ exitCode: 2, out: 'formatted: a.case\n1 file of 2 changed\n' });
        expect(await read('a.case')).toBe(tidy);
    });

    it('keeps the rights of a file, and a link to it', async () => {
        const { run, read, folder } = await shell({ 'a.case': untidy });
        const [file, link] = [path.join(folder, 'a.case'), path.join(folder, 'b.case')];
        await chmod(file, 0o600);
        await symlink('a.case', link);
        await run('format', 'b.case');
        expect(await read('a.case')).toBe(tidy);
        expect((await stat(file)).mode & 0o777).toBe(0o600);
        expect((await lstat(link)).isSymbolicLink()).toBe(true);
    });
});
