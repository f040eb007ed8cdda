/** Whatever reports a problem does so under a code that a rule explains, and every rule is reported by something. */
import { readdirSync, readFileSync } from 'node:fs';
import * as path from 'node:path';
import { rules } from 'casewright-shared/rules';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '../../..');

function codesIn(folder: string): Set<string> {
    const files = readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
    return new Set(files.flatMap((name) => readFileSync(path.join(root, folder, name), 'utf8').match(/'[A-Z]{3}-\d{3}'/g) ?? []));
}

const quoted = (code: string) => `'${code}'`;
const reported = new Set([...codesIn('language/src'), ...codesIn('shared/src/casework')]);

test('every code in the sources of language and casework has its rule', () => {
    expect([...reported].filter((code) => !rules.some((rule) => quoted(rule.code) === code))).toEqual([]);
});

test('every rule without a check is reported while a text is read or computed, or with the allowances', () => {
    const withAllowances = ['DES-003', 'DES-004', 'DES-006'];
    const silent = rules.filter(
        ({ code, check, checkSolids }) => !check && !checkSolids && !reported.has(quoted(code)) && !withAllowances.includes(code),
    );
    expect(silent.map(({ code }) => code)).toEqual([]);
});
