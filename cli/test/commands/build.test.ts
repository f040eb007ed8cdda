import { describe, expect, it } from 'vitest';
import { allowing, bookcase, mistaken, swept, withWarning } from '../designs.js';
import { shell } from '../shell.js';

const all = [
    'cut-list.csv',
    'cut-list.json',
    'cut-list.md',
    'joinery.csv',
    'joinery.json',
    'joinery.md',
    'materials.csv',
    'materials.json',
    'materials.md',
    'model.glb',
    'model.json',
    'purchase.csv',
    'purchase.json',
    'purchase.md',
    'sheets.csv',
    'sheets.json',
    'sheets.md',
    'sheets.pdf',
    'sheets.svg',
];
const written = (names: readonly string[], folder: string) => [
    `${folder}/.casewright-build.json`,
    ...names.map((name) => `${folder}/${name}`),
];

describe('build', () => {
    it('writes all documents into a folder of the name of the design, and says which', async () => {
        const { run, files } = await shell({ 'hall/bookcase.case': bookcase });
        expect(await run('build', 'hall/bookcase.case')).toEqual({
            exitCode: 0,
            told: '',
            out: [
                'Hall bookcase: 19 documents written to hall/out/bookcase',
                '    cut-list.md     Cut list: what to cut from which material, with finished, core and rough sizes.',
                '    cut-list.csv',
                '    cut-list.json',
                '    materials.md    List of materials: what to have in stock: sheets by area, solid wood by length and volume, fasteners by count.',
                '    materials.csv',
                '    materials.json',
                '    sheets.pdf      Sheet layouts: how many sheets to take, what is cut from each, and in which order at the saw, with the fence for every cut.',
                '    sheets.md',
                '    sheets.csv',
                '    sheets.json',
                '    sheets.svg',
                '    joinery.md      Marking out: where every part meets the others: the lines of each slot and joint from one edge, where fasteners stand, and the cuts by machine set-up.',
                '    joinery.csv',
                '    joinery.json',
                '    purchase.md     Purchase list: what to order of sheets and boards by their layouts, of fasteners and glue, and what it costs where there are prices.',
                '    purchase.csv',
                '    purchase.json',
                '    model.json      Model: the whole evaluated design for programs, with a published schema, and as a scene to look at from all sides.',
                '    model.glb',
                '',
            ].join('\n'),
        });
        expect(await files()).toEqual(['hall/bookcase.case', ...written(all, 'hall/out/bookcase')]);
    });

    it('writes the same bytes wherever it is run, and again', async () => {
        const here = await shell({ 'hall/bookcase.case': bookcase });
        const there = await shell({ 'elsewhere/deeper/bookcase.case': bookcase });
        await here.run('build', 'hall/bookcase.case');
        expect((await here.run('build', 'hall/bookcase.case')).exitCode).toBe(0);
        await there.run('build', `${there.folder}/elsewhere/deeper/bookcase.case`);
        for (const file of written(all, 'out/bookcase')) {
            expect(await there.read(`elsewhere/deeper/${file}`), file).toBe(await here.read(`hall/${file}`));
        }
    });

    it.each([
        [['--only', 'cut-list', '--format', 'csv'], ['cut-list.csv']],
        [
            ['--only', 'cut-list,model', '--format', 'json'],
            ['cut-list.json', 'model.json'],
        ],
        [
            ['--only', 'materials', '--only=model', '--format', 'json, md'],
            ['materials.json', 'materials.md', 'model.json'],
        ],
        [
            ['--format', 'csv'],
            ['cut-list.csv', 'joinery.csv', 'materials.csv', 'purchase.csv', 'sheets.csv'],
        ],
    ])('writes only what is asked for: %j', async (options, names) => {
        const { run, files } = await shell({ 'a.case': bookcase });
        expect((await run('build', 'a.case', ...options)).exitCode).toBe(0);
        expect(await files()).toEqual(['a.case', ...written(names, 'out/a')]);
    });

    it('prints sizes in the system that is asked for', async () => {
        const { run, read } = await shell({ 'a.case': bookcase });
        await run('build', 'a.case', '--units', 'mm', '--out', 'metric');
        // 30in less two sides of 0.72in: 28.56in, at 25.4mm to the inch (exact by definition) 725.424mm
        expect(await read('metric/cut-list.md')).toMatch(/\| Low +\| +1 \| 725\.4 .*x 279\.4 x 18\.3 /);
    });

    it.each([
        ['3in', ['0', '3', '6', '33', '36']],
        ['1 1/2in', ['0', '1.5', '34.5', '36']],
        ['5"', ['0', '5', '35', '36']],
    ])('takes offsets at the spacing that is asked for: %s', async (spacing, places) => {
        const { run, read } = await shell({ 'a.case': swept });
        expect(await run('build', 'a.case', '--only', 'offsets', '--format', 'csv', '--spacing', spacing)).toMatchObject({ exitCode: 0 });
        const rows = (await read('out/a/offsets.csv')).trim().split('\r\n').slice(1);
        const found = rows.map((row) => row.split(',')[0]);
        expect(found).toEqual(expect.arrayContaining(places));
        const step = Number(found[1]);
        expect(step).toBe(Number(places[1]));
    });

    it('writes nothing when there are errors, and shows them', async () => {
        const { run, files } = await shell({ 'a.case': mistaken });
        const ran = await run('build', 'a.case');
        expect(ran.exitCode).toBe(1);
        expect(ran.out).toMatch(/^a\.case:9:11 {2}error UNI-001[\s\S]*\n2 errors in `a\.case`: nothing is written\n$/);
        expect(await files()).toEqual(['a.case']);
    });

    it('leaves what an earlier build wrote alone when there are errors', async () => {
        const { run, read, write } = await shell({ 'a.case': bookcase });
        await run('build', 'a.case');
        const before = await read('out/a/cut-list.csv');
        await write({ 'a.case': mistaken });
        expect((await run('build', 'a.case')).exitCode).toBe(1);
        expect(await read('out/a/cut-list.csv')).toBe(before);
    });

    it('shows warnings beside what it wrote', async () => {
        const { run } = await shell({ 'a.case': withWarning });
        const ran = await run('build', 'a.case');
        expect(ran.exitCode).toBe(0);
        expect(ran.out).toMatch(
            /\n\na\.case:2:10 {2}warning NAM-006 {2}`Spare` is never used\n1 warning: `casewright check a\.case` says more\n$/,
        );
    });

    it('passes what is allowed on to the model, with the reason', async () => {
        const { run, read } = await shell({ 'a.case': allowing });
        expect((await run('build', 'a.case')).out).not.toContain('JNT-002');
        expect(JSON.parse(await read('out/a/model.json')).findings).toMatchObject([{ code: 'JNT-002', allowed: 'it rests on pins' }]);
    });

    it('names what an earlier build left', async () => {
        const { run } = await shell({ 'a.case': bookcase });
        await run('build', 'a.case', '--only', 'cut-list');
        const ran = await run('build', 'a.case', '--only', 'model');
        expect(ran.out).toContain(
            'left there from an earlier build, and not brought up to date: cut-list.csv, cut-list.json, cut-list.md\n',
        );
    });

    it('does not replace a document that somebody edited', async () => {
        const { run, read, write } = await shell({ 'a.case': bookcase });
        await run('build', 'a.case');
        await write({ 'out/a/cut-list.md': 'with my remarks' });
        expect(await run('build', 'a.case')).toEqual({
            exitCode: 2,
            out: '',
            told: [
                'casewright: `out/a/cut-list.md` was changed since the tool wrote it, so it is not replaced',
                '    move it away, or build into another folder with `--out`; nothing is written',
                '',
            ].join('\n'),
        });
        expect(await read('out/a/cut-list.md')).toBe('with my remarks');
    });
});
