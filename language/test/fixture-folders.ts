/**
 * Fixtures: a folder is a workspace of `.case` files, and each file says what is wrong in it. Words between `»` and `«` are flagged, and a
 * comment at the end of their line says with what, in the order of the marks:
 *
 *     of »Wallnut«      // error NAM-001 "did you mean `Walnut`?"
 *
 * Everything that is found and not marked fails, and so does everything that is marked and not found.
 */
import { readdirSync, readFileSync } from 'node:fs';
import * as path from 'node:path';
import { rules } from 'casewright-shared/rules';
import { expect } from 'vitest';
import { FilesInMemory } from './files-in-memory.js';

interface Expected {
    readonly line: number;
    readonly words: string;
    readonly severity: string;
    readonly code: string;
    readonly message: string;
}

interface Fixture {
    readonly text: string;
    readonly expected: readonly Expected[];
}

const severities = new Map(rules.map(({ code, severity }) => [code as string, severity]));

export function foldersIn(folder: string): string[] {
    return readdirSync(folder, { withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map((entry) => entry.name)
        .sort();
}

/** Checks every file of a folder, each as the one that was asked for. */
export async function checkFolder(folder: string): Promise<void> {
    const names = readdirSync(folder)
        .filter((name) => name.endsWith('.case'))
        .sort();
    const fixtures = new Map(names.map((name) => [name, readFixture(readFileSync(path.join(folder, name), 'utf8'))]));
    const files = new FilesInMemory(Object.fromEntries([...fixtures].map(([name, { text }]) => [name, text])));
    const found: Record<string, string[]> = {};
    const wanted: Record<string, string[]> = {};
    for (const [name, { text, expected }] of fixtures) {
        const problems = await files.problems(name);
        found[name] = problems.map(({ code, span, message }, index) => {
            const line = text.slice(0, span.start).split('\n').length;
            const said = expected[index] && message.includes(expected[index].message) ? expected[index].message : message;
            return `${line}: ${severities.get(code) ?? 'no rule'} ${code} [${text.slice(span.start, span.end)}] ${said}`;
        });
        wanted[name] = expected.map(({ line, severity, code, words, message }) => `${line}: ${severity} ${code} [${words}] ${message}`);
    }
    expect(found).toEqual(wanted);
}

function readFixture(marked: string): Fixture {
    const expected: Expected[] = [];
    const lines = marked.split('\n').map((line, index) => {
        const words = [...line.matchAll(/»([^«]*)«/g)].map(([, inside]) => inside ?? '');
        const says = [...line.matchAll(/\/\/ (error|warning|note) ([A-Z]+-[0-9]+) "((?:[^"\\]|\\.)*)"/g)];
        if (words.length !== says.length)
            throw new Error(`line ${index + 1} has ${words.length} marks and ${says.length} comments: ${line}`);
        says.forEach(([, severity = '', code = '', message = ''], mark) => {
            expected.push({ line: index + 1, words: words[mark] ?? '', severity, code, message: message.replaceAll('\\"', '"') });
        });
        return line.replaceAll(/[»«]/g, '');
    });
    return { text: lines.join('\n'), expected };
}
