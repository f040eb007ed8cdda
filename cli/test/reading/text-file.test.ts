import { mkdir, symlink } from 'node:fs/promises';
import * as path from 'node:path';
import { describe, expect, it } from 'vitest';
import { CouldNotRun } from '../../src/could-not-run.js';
import { MissingFile, readTextFile } from '../../src/reading/text-file.js';
import { shell } from '../shell.js';

const read = async (files: Readonly<Record<string, string | Uint8Array>>, name: string): Promise<string> => {
    const { folder } = await shell(files);
    return await readTextFile(path.join(folder, name), name);
};

describe('a design is read', () => {
    it('as UTF-8 (RFC 3629)', async () => {
        expect(await read({ 'a.case': '// ½ à 樹 🌳\r\n' }, 'a.case')).toBe('// ½ à 樹 🌳\r\n');
    });

    it('without its byte order mark', async () => {
        expect(await read({ 'a.case': '\ufeffcase A {}' }, 'a.case')).toBe('case A {}');
    });

    it('also when it is empty', async () => {
        expect(await read({ 'a.case': '' }, 'a.case')).toBe('');
    });

    it('through a link', async () => {
        const { folder } = await shell({ 'a.case': 'case A {}' });
        await symlink('a.case', path.join(folder, 'b.case'));
        expect(await readTextFile(path.join(folder, 'b.case'), 'b.case')).toBe('case A {}');
    });
});

const latin1 = new Uint8Array([...Buffer.from('// one\n// two\n// caf'), 0xe9, 0x0a]);

describe('what cannot be read is told', () => {
    it.each([
        ['a folder', { 'hall/a.case': '', 'hall/b.case': '' }, 'hall', '`hall` is a folder, not a file', 'it holds `a.case`, `b.case`'],
        ['a folder without designs', { 'hall/a.txt': '' }, 'hall', '`hall` is a folder, not a file', 'it holds no designs'],
        ['another kind of file', { 'a.txt': '' }, 'a.txt', '`a.txt` is no design: the name of a design ends in `.case`', undefined],
        ['text in UTF-16', { 'a.case': Buffer.from('\ufeffcase', 'utf16le') }, 'a.case', '`a.case` is text in UTF-16', 'save it as UTF-8'],
        [
            'what is no text',
            { 'a.case': new Uint8Array([65, 0, 66]) },
            'a.case',
            /is no text: line 1 has a zero byte in it, which no text has/,
            undefined,
        ],
        ['text in Latin-1', { 'a.case': latin1 }, 'a.case', /is no text in UTF-8: line 3 has bytes/, 'save it as UTF-8'],
        ['a file on the way', { 'a.case': '' }, 'a.case/b.case', /what should be a folder on the way to it is a file/, undefined],
        [
            'too many lines',
            { 'a.case': '\n'.repeat(200_000) },
            'a.case',
            /has 200,001 lines; a design may have 200,000 lines at most/,
            undefined,
        ],
        ['too many bytes', { 'a.case': ' '.repeat(2 ** 24 + 1) }, 'a.case', /has 17 MB; a design may have 16 MB at most/, undefined],
    ])('%s', async (_, files, name, message, advice) => {
        const error = await read(files as Record<string, string>, name).catch((thrown: unknown) => thrown);
        expect(error).toBeInstanceOf(CouldNotRun);
        const { message: told, advice: told2 } = error as CouldNotRun;
        if (typeof message === 'string') expect(told).toBe(message);
        else expect(told).toMatch(message);
        expect(told2[0]).toBe(advice);
    });

    it('what is not there, with a name like it', async () => {
        const error = await read({ 'bookcase.case': '' }, 'bokcase.case').catch((thrown: unknown) => thrown);
        expect(error).toBeInstanceOf(MissingFile);
        expect(error).toMatchObject({ message: 'there is no file `bokcase.case`', advice: ['did you mean `bookcase.case`?'] });
    });

    it('a link that leads to itself', async () => {
        const { folder } = await shell();
        await symlink('a.case', path.join(folder, 'a.case'));
        await expect(readTextFile(path.join(folder, 'a.case'), 'a.case')).rejects.toThrow('its links lead round in a circle');
    });

    it('a folder whose name ends as that of a design', async () => {
        const { folder } = await shell();
        await mkdir(path.join(folder, 'a.case'));
        await expect(readTextFile(path.join(folder, 'a.case'), 'a.case')).rejects.toThrow('is a folder, not a file');
    });

    it('a device, without waiting for its end', async () => {
        await expect(readTextFile('/dev/zero', '/dev/zero')).rejects.toThrow('`/dev/zero` is not an ordinary file');
    });
});
