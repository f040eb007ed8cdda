import { chmod, mkdir, stat } from 'node:fs/promises';
import * as path from 'node:path';
import { expect, it } from 'vitest';
import { NotWritten, replaceFiles } from '../../src/writing/replace-files.js';
import { shell } from '../shell.js';

it('writes new files and replaces old ones, in UTF-8', async () => {
    const { folder, read, files } = await shell({ 'a.txt': 'old, and longer' });
    const written: string[] = [];
    await replaceFiles(
        [
            { file: path.join(folder, 'a.txt'), content: 'new ½' },
            { file: path.join(folder, 'b.txt'), content: '' },
        ],
        ({ file }) => written.push(path.basename(file)),
    );
    expect(await read('a.txt')).toBe('new ½');
    expect(await files()).toEqual(['a.txt', 'b.txt']);
    expect(written).toEqual(['a.txt', 'b.txt']);
});

it('replaces nothing if one of the files cannot be written at all, and leaves nothing beside them', async () => {
    const { folder, read, files } = await shell({ 'a.txt': 'old', 'b.txt': 'a file, not a folder' });
    const writing = replaceFiles([
        { file: path.join(folder, 'a.txt'), content: 'new' },
        { file: path.join(folder, 'b.txt', 'c.txt'), content: 'new' },
    ]);
    const error = await writing.catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(NotWritten);
    expect(error).toMatchObject({ file: path.join(folder, 'b.txt', 'c.txt'), cause: { code: 'ENOTDIR' } });
    expect(await read('a.txt')).toBe('old');
    expect(await files()).toEqual(['a.txt', 'b.txt']);
});

it('says which files are in their places when another one cannot follow', async () => {
    const { folder, read, files } = await shell({ 'a.txt': 'old' });
    await mkdir(path.join(folder, 'b.txt'));
    const written: string[] = [];
    const writing = replaceFiles(
        ['a.txt', 'b.txt', 'c.txt'].map((name) => ({ file: path.join(folder, name), content: 'new' })),
        ({ file }) => written.push(path.basename(file)),
    );
    await expect(writing).rejects.toThrow(NotWritten);
    expect(written).toEqual(['a.txt']);
    expect(await read('a.txt')).toBe('new');
    expect(await files()).toEqual(['a.txt']);
});

it('gives a file the rights that it is to have', async () => {
    const { folder } = await shell({ 'a.txt': 'old' });
    const file = path.join(folder, 'a.txt');
    await chmod(file, 0o640);
    await replaceFiles([{ file, content: 'new', mode: (await stat(file)).mode }]);
    expect((await stat(file)).mode & 0o777).toBe(0o640);
});
