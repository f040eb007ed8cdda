import { describe, expect, it } from 'vitest';
import { bookcase, mistaken } from '../designs.js';
import { shell } from '../shell.js';

describe('why', () => {
    it('says a size in both systems, its tolerance, and each step with its place down to what is written', async () => {
        const { run } = await shell({ 'hall/bookcase.case': bookcase });
        const { exitCode, out } = await run('why', 'hall/bookcase.case', 'Bookcase.Low.length');
        expect(exitCode).toBe(0);
        const [heading, tolerance, blank, ...steps] = out.split('\n');
        // 30in less two sides of 0.72in is 28.56in, 725.424mm; two pieces of ±0.01in: 0.02in at worst, 0.01in times the root of 2 likely
        expect(heading).toBe('Bookcase.Low.length = 28 9/16in shy (725.4mm)');
        expect(tolerance).toMatch(/^worst ±0\.020in, likely ±0\.014in$/);
        expect(blank).toBe('');
        expect(steps).toEqual(
            expect.arrayContaining([
                expect.stringMatching(/^28\.56in +from Left\.inner to Right\.inner {2}\(hall\/bookcase\.case:11\)$/),
                expect.stringMatching(/^ {2}29\.28in +stops at Right\.inner: Right is written before it, so it runs through {2}\(.*:10\)$/),
                expect.stringMatching(/^ +30in +written {2}\(hall\/bookcase\.case:9\)$/),
            ]),
        );
    });

    it('works out the sag of a shelf that carries something', async () => {
        const loaded = bookcase
            .replace(/\}\s*$/, '    load 10 lb on Low\n}\n')
            .replace(/(material Ply[^\n]*?) \}/, '$1   modulusAlong 1000000 psi }');
        const { run } = await shell({ 'a.case': loaded });
        const { exitCode, out } = await run('why', 'a.case', 'Low.sag');
        expect(exitCode).toBe(0);
        expect(out).toMatch(/^Bookcase\.Low\.sag = [0-9.]+in at once, [0-9.]+in in years\n\n/);
        expect(out).toContain('Clear span between its supports: L = 28.56in  (the design)');
        expect(out).toMatch(/Sags at once: s = P L\^3 \/ \(48 EI\).* = [0-9.]+in {2}\(Wood Handbook/);
    });

    it('says that a shelf carries nothing', async () => {
        const { run } = await shell({ 'a.case': bookcase });
        const { exitCode, told } = await run('why', 'a.case', 'Low.sag');
        expect(exitCode).toBe(2);
        expect(told).toContain('`Bookcase.Low` has no `sag`: nothing is said to lie on it');
        expect(told).toContain('`load 20 lb/ft2 on Low`');
        expect((await run('why', 'a.case', 'Lwo.sag')).told).toContain('did you mean `Low`?');
    });

    it('takes a path without the case where there is only one', async () => {
        const { run } = await shell({ 'a.case': bookcase });
        expect(await run('why', 'a.case', 'Low.length')).toEqual(await run('why', 'a.case', 'Bookcase.Low.length'));
    });

    it('speaks metric where the project does', async () => {
        const { run } = await shell({ 'a.case': bookcase.replace('client "A. Example"', 'units mm') });
        expect((await run('why', 'a.case', 'Low.length')).out).toMatch(/^Bookcase\.Low\.length = 725\.4mm \(28 9\/16in shy\)\n/);
    });

    it.each([
        ['Shelf.length', '`Bookcase` has no `Shelf.length`', /^there is `width`, .*`Left`, `Right`, `Low`$/],
        ['Low.lenght', '`Bookcase.Low` has no `lenght`', 'did you mean `length`?'],
        ['Bookcase.Lwo.length', '`Bookcase` has no `Lwo.length`', 'did you mean `Low`?'],
        ['Low', '`Bookcase.Low` is a thing, not a size: ask for one of its sizes', /^there is `length`, `width`, /],
    ])('lists what there is where %s is not', async (path, message, advice) => {
        const { run } = await shell({ 'a.case': bookcase });
        const ran = await run('why', 'a.case', path);
        expect(ran).toMatchObject({ exitCode: 2, out: '' });
        const [told, first] = ran.told.split('\n');
        expect(told).toBe(`casewright: ${message}`);
        if (typeof advice === 'string') expect(first!.trim()).toBe(advice);
        else expect(first!.trim()).toMatch(advice);
    });

    it('shows the errors where they keep a size from being known', async () => {
        const { run } = await shell({ 'a.case': mistaken });
        const ran = await run('why', 'a.case', 'Bookcase.width');
        expect(ran).toMatchObject({ exitCode: 1, told: '`Bookcase.width` is not known: see what is wrong with the design\n' });
        expect(ran.out).toContain('a.case:9:11  error UNI-001');
    });

    it('says that a part may be missing because of errors', async () => {
        const { run } = await shell({ 'a.case': mistaken });
        const ran = await run('why', 'a.case', 'Bookcase.Shelf.length');
        expect(ran).toMatchObject({ exitCode: 2, out: '' });
        expect(ran.told).toContain('\n    parts may be missing because the design has 2 errors: `casewright check` shows them\n');
    });

    it('explains a size that errors elsewhere do not touch, and says that there are some', async () => {
        const { run } = await shell({ 'a.case': mistaken });
        const ran = await run('why', 'a.case', 'Bookcase.height');
        expect(ran).toMatchObject({ exitCode: 0, told: 'the design has 2 errors: `casewright check` shows them\n' });
        expect(ran.out).toMatch(/^Bookcase\.height = 36in \(914\.4mm\)\n/);
    });
});
