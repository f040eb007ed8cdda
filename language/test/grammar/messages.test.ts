import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { createParserServices, parseWith, type SyntaxProblem } from './services.js';

// Each section of the file is a mistake: its title, the text indented by four, and below its lines what is said about them.
// `vitest -u` writes the answers anew; read them before you keep them.
const path = fileURLToPath(new URL('syntax-mistakes.txt', import.meta.url));
const services = createParserServices();

interface Mistake {
    title: string;
    text: string;
}

function readMistakes(content: string): Mistake[] {
    return content
        .split(/^## /m)
        .slice(1)
        .map((section) => {
            const [title = '', ...lines] = section.split('\n');
            const source = lines.filter((line) => line.startsWith('    '));
            return { title, text: source.map((line) => line.slice(4)).join('\n') };
        });
}

/** The text with, under each line, its problem: marks under the words and the message beside them. */
function render(text: string, problems: readonly SyntaxProblem[]): string {
    return text
        .split('\n')
        .flatMap((line, index) => [
            `    ${line}`.trimEnd(),
            ...problems
                .filter((problem) => problem.line === index)
                .map(({ column, length, message }) => `--> ${' '.repeat(column)}${'^'.repeat(Math.max(1, length))} ${message}`),
        ])
        .join('\n');
}

describe('what is said about common mistakes', () => {
    const mistakes = readMistakes(readFileSync(path, 'utf8'));
    const rendered = mistakes.map(({ title, text }) => ({ title, problems: parseWith(services, text).problems, text }));

    test('source, underline and message are as they were reviewed', async () => {
        const content = rendered.map(({ title, text, problems }) => `## ${title}\n${render(text, problems)}\n`).join('\n');
        await expect(content).toMatchFileSnapshot(path);
    });

    test.each(rendered)('$title: something is said, at words that stand in the text, once a line', ({ text, problems }) => {
        expect(problems).not.toEqual([]);
        expect(new Set(problems.map(({ line }) => line)).size).toBe(problems.length);
        for (const { line, column, length, message } of problems) {
            const words = text.split('\n')[line]?.slice(column, column + length) ?? '';
            expect(words).toHaveLength(length);
            expect(words.trim()).not.toBe('');
            expect(message).not.toMatch(/undefined|token|Expecting|\bEOL\b/);
            expect(message.charAt(0)).toBe(message.charAt(0).toLowerCase());
        }
    });
});
