import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { createParserServices, parseWith } from './services.js';
import { treeText } from './tree-text.js';

// Each reading of the file is a text after its place, `value: 3/4in`, and below it the tree or the error.
// `⏎` stands for a line break. `vitest -u` writes the answers anew; read them before you keep them.
const path = fileURLToPath(new URL('readings.txt', import.meta.url));
const services = createParserServices();

/** What stands around the text, and where in the tree its reading is. */
const PLACES: Readonly<Record<string, { around(text: string): string; find(statement: never): unknown }>> = {
    file: { around: (text) => text, find: (statement) => statement },
    value: { around: (text) => `let v = ${text}`, find: ({ value }: { value: unknown }) => value },
    property: { around: (text) => `material M {\n${text}\n}`, find: ({ body }: { body: { members: unknown } }) => body.members },
    step: { around: (text) => `joint J {\n${text}\n}`, find: ({ body }: { body: { steps: unknown } }) => body.steps },
    part: { around: (text) => `case K {\n${text}\n}`, find: ({ body }: { body: { members: unknown } }) => body.members },
};

function read(placeName: string, shownText: string): string {
    const place = PLACES[placeName];
    if (!place) {
        throw new Error(`no place is called ${placeName}; there are ${Object.keys(PLACES).join(', ')}`);
    }
    const text = place.around(shownText.replaceAll('⏎', '\n'));
    const { file, problems } = parseWith(services, text);
    const [problem] = problems;
    if (problem) {
        const words = text.split('\n')[problem.line]?.slice(problem.column, problem.column + problem.length);
        return `error at \`${words}\`: ${problem.message}`;
    }
    return file.statements.map((statement) => treeText(place.find(statement as never))).join(' ; ');
}

describe('what a text means', () => {
    const content = readFileSync(path, 'utf8');
    const lines = content.split('\n').filter((line) => !line.startsWith('    '));

    test('every decided reading is as it was reviewed', async () => {
        const answered = lines.flatMap((line) => {
            const [, place, text] = /^(\w+): (.*)$/.exec(line) ?? [];
            return place === undefined || text === undefined ? [line] : [line, `    ${read(place, text)}`];
        });
        await expect(answered.join('\n')).toMatchFileSnapshot(path);
    });

    test('each reading is decided once', () => {
        const texts = lines.filter((line) => /^\w+: /.test(line));
        expect(texts.filter((text, index) => texts.indexOf(text) !== index)).toEqual([]);
    });
});
