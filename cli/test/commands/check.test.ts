import { describe, expect, it } from 'vitest';
import { allowing, bookcase, mistaken, withWarning } from '../designs.js';
import { shell } from '../shell.js';

describe('check', () => {
    it('shows each mistake at its words, and counts them', async () => {
        const { run } = await shell({ 'hall/bookcase.case': mistaken });
        expect(await run('check', 'hall/bookcase.case')).toEqual({
            exitCode: 1,
            told: '',
            out: [
                'hall/bookcase.case:9:11  error UNI-001  `30` has no unit: a length is needed here',
                '     9  width 30   height 36in   depth 11in   anchor 30in high',
                '              ~~',
                '        found   a plain number',
                '        needed  a length',
                '        hint    write `30in` or `30mm`',
                '',
                'hall/bookcase.case:11:18  error NAM-001  nothing is called `Pyl`; did you mean `Ply`?',
                '    11  shelf Low of Pyl at 12in',
                '                     ~~~',
                '        found   `Pyl`',
                '        needed  a material or a case',
                '        see     hall/bookcase.case:1:10  `Ply` is declared here',
                '',
                '2 errors in 1 file',
                '',
            ].join('\n'),
        });
    });

    it.each([
        ['a sound design', bookcase, 0, 'nothing found in 1 file\n'],
        ['a design with a warning', withWarning, 0, '1 warning in 1 file\n'],
        ['a design with something that is allowed', allowing, 0, 'nothing found in 1 file; 1 allowed\n'],
        ['an empty file', '', 0, 'nothing found in 1 file\n'],
        ['a file of other words', 'Dear Sir or Madam,\n', 1, '1 error in 1 file\n'],
    ])('ends well or not: %s', async (_, text, exitCode, end) => {
        const { run } = await shell({ 'a.case': text });
        const ran = await run('check', 'a.case');
        expect(ran).toMatchObject({ exitCode, told: '' });
        expect(ran.out.endsWith(end), ran.out).toBe(true);
    });

    it('says once what is wrong in a file that two designs use', async () => {
        const { run } = await shell({
            'shop.case': 'material Ply : plywood { thickness }\n',
            'a.case': 'use "shop.case"\n',
            'b.case': 'use "shop.case"\n',
        });
        const { findings, count } = JSON.parse((await run('check', '--format', 'json', 'a.case', 'b.case')).out);
        expect(findings.map(({ file, code }: Record<string, string>) => `${file} ${code}`)).toEqual(['shop.case TXT-001']);
        expect(count.error).toBe(1);
    });

    it('checks the other files when one cannot be read, and ends with 2', async () => {
        const { run } = await shell({ 'a.case': mistaken });
        const ran = await run('check', 'a.case', 'b.case');
        expect(ran).toMatchObject({ exitCode: 2, told: 'casewright: there is no file `b.case`\n    did you mean `a.case`?\n' });
        expect(ran.out).toMatch(/\n2 errors in 1 file\n$/);
    });

    it('says why a file that is used cannot be read', async () => {
        const { run } = await shell({ 'a.case': 'use "shop.case"\n', 'shop.case': new Uint8Array([0xe9]) });
        const ran = await run('check', 'a.case');
        expect(ran.exitCode).toBe(1);
        expect(ran.out).toContain('a.case:1:5  error NAM-003');
        expect(ran.told).toBe(
            'casewright: `shop.case` is no text in UTF-8: line 1 has bytes that are no character\n    save it as UTF-8\n',
        );
    });

    it('shows places as seen from the working folder, however the file is named', async () => {
        const { run, folder } = await shell({ 'jobs/a.case': 'use "../racks/shop.case"\n', 'racks/shop.case': 'let x =\n' });
        expect((await run('check', 'jobs/a.case')).out).toMatch(/^racks\/shop\.case:1:/);
        expect(await run('check', `${folder}/racks/../jobs/a.case`)).toEqual(await run('check', 'jobs/a.case'));
    });

    it.each([
        ['files that use each other', { 'a.case': 'use "b.case"\n', 'b.case': 'use "a.case"\n' }, 'NAM-004'],
        ['a size that depends on itself', { 'a.case': 'let x = y + 1in\nlet y = x\n' }, 'PLC-007'],
        ['a division by zero', { 'a.case': 'let x = 1in / 0\n' }, 'UNI-004'],
        [
            'a repetition of a billion',
            { 'a.case': bookcase.replace('shelf Low', 'repeat i in 1..1000000000 { shelf Many at 1in }\n    shelf Low') },
            'PLC-009',
        ],
    ])('answers %s', async (_, files, code) => {
        const { run } = await shell(files as Record<string, string>);
        const ran = await run('check', '--format', 'json', 'a.case');
        expect(ran.exitCode).toBe(1);
        expect(JSON.parse(ran.out).findings.map((finding: { code: string }) => finding.code)).toContain(code);
    });

    it.each(['{'.repeat(50_000), `let x = ${'('.repeat(50_000)}`, `case A { ${'shelf S { '.repeat(50_000)}`])(
        'answers blocks that are nested without end: %.12s',
        async (text) => {
            const { run } = await shell({ 'a.case': text });
            const ran = await run('check', 'a.case');
            expect(ran.exitCode).toBeGreaterThan(0);
            expect(ran.out + ran.told).toMatch(/nested thousands deep|error TXT-001/);
        },
    );

    it('answers five megabytes that are no design', async () => {
        const { run } = await shell({ 'a.case': 'no design, only words\n'.repeat(240_000) });
        expect(await run('check', 'a.case')).toEqual({
            exitCode: 2,
            out: '',
            told: 'casewright: `a.case` has 240,001 lines; a design may have 200,000 lines at most\n',
        });
    });

    it('writes SARIF with the rules that it found broken', async () => {
        const { run } = await shell({ 'a.case': mistaken });
        const ran = await run('check', '--format', 'sarif', 'a.case');
        expect(ran.exitCode).toBe(1);
        const [sarif] = JSON.parse(ran.out).runs;
        expect(sarif.tool.driver.rules.map(({ id }: { id: string }) => id)).toEqual(['NAM-001', 'UNI-001']);
        expect(sarif.results).toHaveLength(2);
    });
});
