import fc from 'fast-check';
import MarkdownIt, { type Token } from 'markdown-it';
import { describe, expect, test } from 'vitest';
import { writeMarkdown } from '../../src/writers/markdown.js';
import { rows, sheetOf, text } from './sample-sheet.js';

/** Read back with markdown-it: CommonMark, with tables and strikethrough as on GitHub; HTML allowed, links found. */
const reader = new MarkdownIt({ html: true, linkify: false });

/** The text of each block of a kind, such as the cells of a table, and what markup was found within. */
function blocks(markdown: string, ...kinds: readonly string[]): readonly { readonly text: string; readonly markup: readonly string[] }[] {
    const tokens = reader.parse(markdown, {});
    return tokens.flatMap((token: Token, index: number) => {
        const content = tokens[index + 1]?.type === 'inline' ? tokens[index + 1] : tokens[index + 2];
        if (!kinds.includes(token.type)) return [];
        const children: readonly Token[] = content?.type === 'inline' ? (content.children ?? []) : [];
        const plain = children.filter(({ type }) => type === 'text' || type === 'text_special');
        return [
            {
                text: plain.map((child) => child.content).join(''),
                markup: children.filter((child) => !plain.includes(child)).map(({ type }) => type),
            },
        ];
    });
}

function texts(markdown: string, ...kinds: readonly string[]): readonly string[] {
    return blocks(markdown, ...kinds).map((block) => block.text);
}

test('a sheet as a person reads it', () => {
    expect(writeMarkdown(sheetOf(...rows))).toBe(
        `# Sample

- Client: Fern Alley

## Boards

| Name       | Count | Cut (in)            | Run (ft) |
| :--------- | ----: | :------------------ | -------: |
| Tier[1..2] |     4 | 2 17/32 shy x 1 x ? |     12.3 |
| Floor      |     ? |                     |          |

- No waste.

## Notes

- The end.
`,
    );
});

test('reads back as a title, a table with its cells, and lists', () => {
    const markdown = writeMarkdown(sheetOf(...rows));
    expect(texts(markdown, 'heading_open')).toEqual(['Sample', 'Boards', 'Notes']);
    expect(texts(markdown, 'th_open', 'td_open')).toEqual([
        ...['Name', 'Count', 'Cut (in)', 'Run (ft)'],
        ...['Tier[1..2]', '4', '2 17/32 shy x 1 x ?', '12.3'],
        ...['Floor', '?', '', ''],
    ]);
    expect(texts(markdown, 'list_item_open')).toEqual(['Client: Fern Alley', 'No waste.', 'The end.']);
});

test('columns in which a group has nothing, and what its heading says, are left out', () => {
    const markdown = writeMarkdown(sheetOf({ name: text('Floor'), group: text('Boards'), cut: text('') }));
    expect(texts(markdown, 'th_open')).toEqual(['Name']);
});

test('the columns line up as plain text, also with characters of two code units', () => {
    const lines = writeMarkdown(sheetOf({ name: text('𝔸𝔹') }, { name: text('four') }))
        .split('\n')
        .filter((line) => line.startsWith('|'));
    expect(lines).toEqual(['| Name |', '| :--- |', '| 𝔸𝔹   |', '| four |']);
});

describe('text means itself', () => {
    /** Markup of every kind, whole and in pieces, so that two that belong together meet often. */
    const markup = [
        '*',
        '**',
        '_',
        '__',
        '`',
        '~~',
        '~',
        '|',
        '\\',
        '<b>',
        '<',
        '<!-- ',
        ' -->',
        '&amp;',
        '&#35;',
        '&',
        '[',
        ']',
        '](',
        '(',
        ')',
        '[a](b)',
        '[a]: b',
    ];
    const starts = ['#', '## ', '-', '- ', '+ ', '> ', '1. ', '2) ', '=', '---', '![', '!'];
    const plain = ['a', 'b', '1', ' ', '  ', '\n', '.', '"', '/', 'é'];
    const awkward = fc.array(fc.constantFrom(...markup, ...starts, ...plain), { maxLength: 8 }).map((pieces) => pieces.join(''));
    const oneLine = (words: string) => words.replace(/\s+/g, ' ').trim();
    const runs = { numRuns: 2000 };

    test('in a cell', () => {
        fc.assert(
            fc.property(awkward, (words) => {
                expect(blocks(writeMarkdown(sheetOf({ name: text(`x${words}`) })), 'td_open')).toEqual([
                    { text: oneLine(`x${words}`), markup: [] },
                ]);
            }),
            runs,
        );
    });

    test('in a heading', () => {
        fc.assert(
            fc.property(awkward, (words) => {
                const sheet = { ...sheetOf(), title: `x${words}` };
                expect(blocks(writeMarkdown(sheet), 'heading_open')[0]).toEqual({ text: oneLine(`x${words}`), markup: [] });
            }),
            runs,
        );
    });

    test('in a note, also at its start', () => {
        fc.assert(
            fc.property(
                awkward.filter((words) => oneLine(words) !== ''),
                (words) => {
                    const markdown = writeMarkdown({ ...sheetOf(), notes: [words] });
                    expect(texts(markdown, 'list_item_open').at(-1)).toBe(oneLine(words));
                    expect(blocks(markdown, 'paragraph_open').at(-1)?.markup).toEqual([]);
                },
            ),
            runs,
        );
    });

    test.each([
        ['Tier[1..3]', 'Tier[1..3]'],
        ['left_side', 'left_side'],
        ['#8 x 1 1/4in', '#8 x 1 1/4in'],
        ['a|b', 'a\\|b'],
        ['*', '\\*'],
    ])('%s is written %s: no backslash that a reader of the plain text can do without', (words, written) => {
        expect(writeMarkdown(sheetOf({ name: text(words) }))).toContain(`| ${written} `);
    });
});
