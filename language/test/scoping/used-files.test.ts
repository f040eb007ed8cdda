/** Which files see which: chains, changes, deletions, rings, the library. */
import { describe, expect, test } from 'vitest';
import { FilesInMemory } from '../files-in-memory.js';

const base = 'material Oak : lumber { planed 3/4in }\n';
const middle = 'public use "base.case"\nmaterial Panel : plywood { thickness 3/4in }\n';
const top = 'use "middle.case"\nmaterial Own like Oak { planed 1/2in }\n';

async function messages(files: FilesInMemory, name: string): Promise<readonly string[]> {
    return (await files.problems(name)).map(({ code, message }) => `${code} ${message}`);
}

describe('a chain of three files', () => {
    test('is loaded from its end, and names that are passed on are seen', async () => {
        const files = new FilesInMemory({ 'base.case': base, 'middle.case': middle, 'top.case': top });
        expect(await messages(files, 'top.case')).toEqual([]);
        expect((await files.lower('top.case')).design.files).toEqual(['top.case', 'middle.case', 'base.case']);
    });

    test('a change at its other end is seen at this one, and so is the change back', async () => {
        const files = new FilesInMemory({ 'base.case': base, 'middle.case': middle, 'top.case': top });
        await files.open('top.case');
        await files.change('base.case', base.replace('Oak', 'Elm'));
        expect(await messages(files, 'top.case')).toEqual(['NAM-001 nothing is called `Oak` here']);
        await files.change('base.case', base);
        expect(await messages(files, 'top.case')).toEqual([]);
    });

    test('a change of a value at its other end is in the design of this one', async () => {
        const files = new FilesInMemory({ 'base.case': base, 'middle.case': middle, 'top.case': top });
        const planed = async () => {
            const { declarations } = (await files.lower('top.case')).design;
            const oak = declarations.get('base.case#Oak');
            return oak?.is === 'fact' && oak.properties[0]?.value?.is === 'measure' ? oak.properties[0].value.text : undefined;
        };
        expect(await planed()).toBe('3/4in');
        await files.change('base.case', base.replace('3/4in', '5/8in'));
        expect(await planed()).toBe('5/8in');
    });

    test('a name that comes out of sight in the middle', async () => {
        const files = new FilesInMemory({ 'base.case': base, 'middle.case': middle, 'top.case': top });
        await files.open('top.case');
        await files.change('middle.case', middle.replace('public use', 'use'));
        expect(await messages(files, 'top.case')).toEqual(['NAM-001 `Oak` is declared in base.case, which this file does not use itself']);
    });

    test('a file that is deleted, and comes back', async () => {
        const files = new FilesInMemory({ 'base.case': base, 'middle.case': middle, 'top.case': top });
        await files.open('top.case');
        await files.delete('middle.case');
        expect(await messages(files, 'top.case')).toEqual(['NAM-003 there is no file `middle.case` that can be read']);
        await files.change('middle.case', middle);
        expect(await messages(files, 'top.case')).toEqual([]);
    });

    test('a file that does not change keeps what it was lowered to', async () => {
        const files = new FilesInMemory({ 'base.case': base, 'middle.case': middle, 'top.case': top });
        const before = (await files.lower('top.case')).design.declarations.get('base.case#Oak');
        await files.change('top.case', `${top}material More like Oak { planed 1/4in }\n`);
        const after = (await files.lower('top.case')).design.declarations;
        expect(after.get('base.case#Oak')).toBe(before);
        expect(after.has('top.case#More')).toBe(true);
    });
});

describe('rings', () => {
    const first = 'use "second.case"\nmaterial A : plywood { thickness 3/4in }\n';
    const second = 'use "first.case"\nmaterial B like A { thickness 1/2in }\n';

    test('names are seen all the same', async () => {
        const files = new FilesInMemory({ 'first.case': first, 'second.case': second });
        expect((await files.problems('first.case')).map(({ code }) => code)).toEqual(['NAM-004']);
        expect((await files.lower('first.case')).design.declarations.has('second.case#B')).toBe(true);
    });

    test('a change in a ring is seen all around it', async () => {
        const files = new FilesInMemory({ 'first.case': first, 'second.case': second });
        await files.open('first.case');
        await files.open('second.case');
        await files.change('first.case', first.replace('material A', 'material C'));
        expect((await files.problems('second.case')).map(({ code }) => code)).toEqual(['NAM-004', 'NAM-001']);
        await files.change('second.case', second.replace('use "first.case"\n', ''));
        expect((await files.problems('first.case')).map(({ code }) => code)).toEqual([]);
    });
});

describe('the library', () => {
    test('is read without a disk, under a name that an editor can open', async () => {
        const files = new FilesInMemory({
            'a.case': 'use casewright.species\nmaterial Own : lumber { planed 3/4in  species BlackWalnut }\n',
        });
        const { design, problems } = await files.lower('a.case');
        expect(problems).toEqual([]);
        expect(design.files).toEqual(['a.case', 'casewright:/library/species.case']);
        const own = design.declarations.get('a.case#Own');
        expect(own?.is === 'fact' && own.properties.find(({ name }) => name === 'species')?.value).toMatchObject({
            is: 'name',
            id: 'casewright:/library/species.case#BlackWalnut',
        });
    });
});

test('what files are called does not depend on where they are', async () => {
    const files = new FilesInMemory({
        'jobs/kiln/design.case': 'use "../shop.case"\nmaterial Own like Oak { planed 1/2in }\n',
        'jobs/shop.case': base,
    });
    expect((await files.lower('jobs/kiln/design.case')).design.files).toEqual(['design.case', '../shop.case']);
});

test('who refers to a declaration is found across files', async () => {
    const files = new FilesInMemory({ 'base.case': base, 'middle.case': middle, 'top.case': top });
    await files.open('top.case');
    const { casewright, shared } = files.services;
    const oak = [...shared.workspace.LangiumDocuments.all]
        .map((document) => casewright.references.VisibleNames.of(document).top.names.get('Oak'))
        .find((name) => name !== undefined)!;
    const found = casewright.references.References.findReferences(oak.node, { includeDeclaration: true }).toArray();
    expect(found.map(({ sourceUri, segment }) => `${sourceUri.path} ${segment.offset}`)).toEqual([
        `/designs/base.case ${base.indexOf('Oak')}`,
        `/designs/top.case ${top.indexOf('Oak')}`,
    ]);
});
