import { rules } from 'casewright-shared/rules';
import { describe, expect, it } from 'vitest';
import { shell } from '../shell.js';

describe('explain', () => {
    it.each(['UNI-001', 'uni-001', 'missing-unit', 'Missing-Unit'])('shows the page of a rule: %s', async (asked) => {
        const { run } = await shell();
        const ran = await run('explain', asked);
        expect(ran).toMatchObject({ exitCode: 0, told: '' });
        expect(ran.out).toMatch(/^UNI-001 missing-unit \(error\)\n[\s\S]*\nSource\n/);
    });

    it('lists all rules', async () => {
        const { run } = await shell();
        const { out } = await run('explain');
        expect(
            out
                .trimEnd()
                .split('\n')
                .map((line) => line.split(' ')[0]),
        ).toEqual(rules.map(({ code }) => code));
    });

    it.each([
        ['UNI-01', 'did you mean `UNI-001`?'],
        ['misssing-unit', 'did you mean `missing-unit`?'],
        ['dovetails', '`casewright explain` lists all rules'],
    ])('does not know %s', async (asked, advice) => {
        const { run } = await shell();
        const ran = await run('explain', asked);
        expect(ran).toMatchObject({ exitCode: 2, out: '' });
        expect(ran.told.split('\n').slice(0, 2)).toEqual([`casewright: no rule is called \`${asked}\``, `    ${advice}`]);
    });
});
