import { mkdir, readdir, symlink } from 'node:fs/promises';
import * as path from 'node:path';
import { type NewDocument, recordName } from 'casewright-shared/output';
import { describe, expect, it } from 'vitest';
import { writeDocuments } from '../../src/writing/output-folder.js';
import { type Shell, shell } from '../shell.js';

const list: NewDocument = { name: 'cut-list.md', content: 'the cut list' };
const model: NewDocument = { name: 'model.json', content: '{}' };

const write = ({ folder }: Shell, documents: readonly NewDocument[], { out = 'out/hall', design = 'hall.case' } = {}) =>
    writeDocuments(documents, { folder: path.join(folder, out), shown: out, design: path.join(folder, design) });

describe('documents are written', () => {
    it('into a folder that is made for them, with a record that has no machine and no time in it', async () => {
        const there = await shell();
        expect(await write(there, [list, model])).toEqual([]);
        expect(await there.files()).toEqual(['out/hall/.casewright-build.json', 'out/hall/cut-list.md', 'out/hall/model.json']);
        // The hashes by `printf 'the cut list' | sha256sum` (GNU coreutils).
        expect(JSON.parse(await there.read(`out/hall/${recordName}`))).toEqual({
            writtenBy: 'casewright build, to know its own files again',
            version: 1,
            design: '../../hall.case',
            files: {
                'cut-list.md': 'sha256:dbd7981555cf58f82a8cb0c052253f26dabf1ecc27523c2822243322c19c680a',
                'model.json': 'sha256:44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a',
            },
        });
    });

    it('over those of an earlier build', async () => {
        const there = await shell();
        await write(there, [list]);
        await write(there, [{ ...list, content: 'another' }]);
        expect(await there.read('out/hall/cut-list.md')).toBe('another');
    });

    it('beside files of somebody else', async () => {
        const there = await shell({ 'out/hall/notes.txt': 'mine' });
        await write(there, [list]);
        expect(await there.read('out/hall/notes.txt')).toBe('mine');
    });

    it('over a file of the same bytes, whoever wrote it', async () => {
        const there = await shell({ 'out/hall/cut-list.md': list.content });
        await write(there, [list]);
        await write(there, [{ ...list, content: 'another' }]);
        expect(await there.read('out/hall/cut-list.md')).toBe('another');
    });

    it('and those that an earlier build left are named, stay, and are still known', async () => {
        const there = await shell();
        await write(there, [list, model]);
        expect(await write(there, [{ ...list, content: 'another' }])).toEqual(['model.json']);
        expect(await there.read('out/hall/model.json')).toBe('{}');
        expect(await write(there, [{ ...model, content: '{"a":1}' }])).toEqual(['cut-list.md']);
    });
});

describe('nothing is written', () => {
    const refuses = async (there: Shell, writing: () => Promise<unknown>, message: string | RegExp) => {
        const before = await everything(there.folder);
        await expect(writing()).rejects.toThrow(message);
        expect(await everything(there.folder)).toEqual(before);
    };
    const everything = async (folder: string) => (await readdir(folder, { recursive: true })).sort();

    it('over a file that the tool did not write', async () => {
        const there = await shell({ 'out/hall/model.json': 'mine' });
        await refuses(there, () => write(there, [list, model]), '`out/hall/model.json` was not written by the tool, so it is not replaced');
        expect(await there.read('out/hall/model.json')).toBe('mine');
    });

    it('over a document that was edited since', async () => {
        const there = await shell();
        await write(there, [list, model]);
        await there.write({ 'out/hall/cut-list.md': 'the cut list, with a remark' });
        const again = [
            { ...list, content: 'another' },
            { ...model, content: '{"a":1}' },
        ];
        await refuses(
            there,
            () => write(there, again),
            '`out/hall/cut-list.md` was changed since the tool wrote it, so it is not replaced',
        );
        expect(await there.read('out/hall/model.json')).toBe('{}');
    });

    it('over a link, even one to the same bytes', async () => {
        const there = await shell({ 'mine.md': list.content, 'out/hall/x': '' });
        await symlink('../../mine.md', path.join(there.folder, 'out/hall/cut-list.md'));
        await refuses(there, () => write(there, [list]), 'was not written by the tool');
    });

    it('over a folder', async () => {
        const there = await shell();
        await mkdir(path.join(there.folder, 'out/hall/model.json'), { recursive: true });
        await refuses(there, () => write(there, [list, model]), '`out/hall/model.json` was not written by the tool');
    });

    it('among the documents of another design', async () => {
        const there = await shell();
        await write(there, [list]);
        const other = () => write(there, [list], { design: 'stairs.case' });
        await refuses(there, other, '`out/hall` holds the documents of another design, `../../hall.case` as seen from there');
    });

    it.each(['', '[]', '{"version":1,"design":"../../hall.case","files":{"cut-list.md":1}}', '{"version":2}'])(
        'where the record is not as the tool wrote it: %j',
        async (record) => {
            const there = await shell({ [`out/hall/${recordName}`]: record });
            await refuses(there, () => write(there, [list]), `\`out/hall/${recordName}\` is not as the tool wrote it`);
        },
    );

    it.each([
        ['that is a file', 'notes.txt', 'it is a file, or a file is in the way of it'],
        ['inside a file', 'notes.txt/out', 'it is a file, or a file is in the way of it'],
        ['whose name is too long', 'n'.repeat(300), 'the name is too long'],
    ])('to a folder %s', async (_, out, reason) => {
        const there = await shell({ 'notes.txt': 'mine' });
        await refuses(there, () => write(there, [list], { out }), `the documents cannot be written to \`${out}\`: ${reason}`);
        expect(await there.read('notes.txt')).toBe('mine');
    });

    // The user root may write into every folder of a disk, so this asks for one that no disk has.
    it('to a file system that takes no folders, without trying for ever', async () => {
        const writing = writeDocuments([list], { folder: '/proc/casewright/out', shown: '/proc/casewright/out', design: '/hall.case' });
        await expect(writing).rejects.toThrow('the documents cannot be written to `/proc/casewright/out`: no folder can be made there');
    });

    it('where a folder has the name of the record', async () => {
        const there = await shell();
        await mkdir(path.join(there.folder, 'out/hall', recordName), { recursive: true });
        await refuses(there, () => write(there, [list]), 'the documents cannot be written to `out/hall`: it is a folder');
    });

    it('and folders made for it are taken away again', async () => {
        const there = await shell();
        const documents = [list, { name: 'n'.repeat(250), content: '' }];
        await refuses(there, () => write(there, documents, { out: 'a/b/c' }), /cannot be written: the name is too long/);
    });
});
