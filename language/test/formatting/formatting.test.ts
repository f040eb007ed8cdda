import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readMeasure } from 'casewright-shared/quantity';
import fc from 'fast-check';
import { AstUtils } from 'langium';
import { describe, expect, test } from 'vitest';
import { createTextFormatter } from '../../src/formatting/text-formatter.js';
import { isBinary, isLiteral } from '../../src/generated/ast.js';
import { corpus, examples } from '../grammar/corpus-texts.js';
import { damageKinds } from '../grammar/damage.js';
import { createParserServices, parseWith } from '../grammar/services.js';
import { treeText } from '../grammar/tree-text.js';

const services = createParserServices();
const format = createTextFormatter();
const texts = [...corpus, ...examples];

/** The tree with every measure in one spelling. */
function meaning(text: string): string {
    const { file } = parseWith(services, text);
    for (const node of AstUtils.streamAst(file)) {
        if (isLiteral(node)) {
            const reading = readMeasure(node.text);
            node.text = reading.ok ? reading.written.canonical : node.text;
        } else if (isBinary(node) && node.operator === '+/-') {
            node.operator = '±';
        }
    }
    return treeText(file);
}

describe('before and after', () => {
    // Sections of a title, the text before, `---`, the text after. `vitest -u` writes the second anew.
    const path = fileURLToPath(new URL('layouts.txt', import.meta.url));
    const content = readFileSync(path, 'utf8');
    const sections = content
        .split(/^## /m)
        .slice(1)
        .map((section) => {
            const [head = ''] = section.split('\n---\n');
            const [title = '', ...before] = head.split('\n');
            return { title, before: before.join('\n') };
        });

    test('each text is laid out as it was reviewed', async () => {
        const answered = sections.map(({ title, before }) => `## ${title}\n${before}\n---\n${format(`${before}\n`)}`);
        await expect(answered.join('\n')).toMatchFileSnapshot(path);
    });

    test.each(sections)('$title: formatting again changes nothing, and the meaning stays', ({ before }) => {
        const after = format(before);
        expect(format(after)).toBe(after);
        expect(meaning(after)).toBe(meaning(before));
    });
});

describe('every text', () => {
    test.each(texts)('$name: formatting keeps the meaning and the comments, and again it changes nothing', ({ text }) => {
        const after = format(text);
        expect(meaning(after)).toBe(meaning(text));
        expect(after.match(/\/\/.*/g)?.map((comment) => comment.trim())).toEqual(text.match(/\/\/.*/g)?.map((comment) => comment.trim()));
        expect(format(after)).toBe(after);
        expect(after).not.toMatch(/[ \t]$/m);
        expect(after).not.toMatch(/\n\n\n/);
        expect(after).toMatch(/[^\n]\n$/);
    });

    test.each(texts)('$name: CRLF stays CRLF', ({ text }) => {
        expect(format(text.replaceAll('\n', '\r\n'))).toBe(format(text).replaceAll('\n', '\r\n'));
    });

    test.each(texts)('$name: blanks, blank lines, depth of indentation and ends of lines mean nothing', ({ text }) => {
        const formatted = format(text);
        fc.assert(
            fc.property(mutatedWhitespace(formatted), (mutated) => {
                fc.pre(images(mutated) === images(formatted));
                expect(format(mutated)).toBe(formatted);
            }),
            { numRuns: 25 },
        );
    });

    test.each(texts)('$name: a broken line stays as it is, and the rest is formatted', ({ text }) => {
        const lines = format(text).split('\n');
        fc.assert(
            fc.property(fc.nat(lines.length - 1), fc.constantFrom(...damageKinds), (index, kind) => {
                const [broken] = kind.damage(lines[index]!.replace(/\s*\/\/.*$/, ''));
                // A brace on the broken line is none of its words: it finds its own place.
                fc.pre(broken !== undefined && broken.trim() !== '' && !/^[\s)}]*$/.test(lines[index]!));
                const damaged = [...lines.slice(0, index), broken, ...lines.slice(index + 1)].join('\n');
                fc.pre(parseWith(services, damaged).problems.some(({ line }) => line === index));
                const after = format(damaged);
                expect(after.split('\n').map((line) => line.trim())).toContain(broken!.trim());
                expect(format(after)).toBe(after);
            }),
            { numRuns: 40 },
        );
    });
});

test('a text whose braces do not balance is not touched', () => {
    const text = 'case A {\n  width 3in\n    shelf   B at 4in {\n}\n';
    expect(format(text)).toBe(text);
});

test('a text of nothing is nothing', () => {
    expect(format('')).toBe('');
    expect(format('\n\n  \n')).toBe('');
    expect(format('// only a comment')).toBe('// only a comment\n');
});

/** What the text says, without its layout. */
function images(text: string): string {
    const { tokens, hidden } = services.parser.Lexer.tokenize(text);
    return [
        ...tokens.filter(({ image }) => image !== '').map(({ image }) => image),
        ...hidden.map(({ image }) => image.replace(/\n\s*/g, '\n').trim()),
    ].join(' ');
}

/** The text with other blanks between its tokens, where some stood; lines keep their order of depth. */
function mutatedWhitespace(text: string): fc.Arbitrary<string> {
    const gaps = gapsOf(text);
    return fc
        .record({
            blanks: fc.array(fc.constantFrom(' ', '  ', '\t', '     '), { minLength: gaps.length, maxLength: gaps.length }),
            indent: fc.constantFrom('\t', ' ', '  ', '      '),
            blankLines: fc.integer({ min: 1, max: 3 }),
            endOfLine: fc.constantFrom('', ' ', '\t  '),
        })
        .map(({ blanks, indent, blankLines, endOfLine }) => {
            let mutated = text;
            [...gaps].reverse().forEach(({ from, to }, index) => {
                mutated = mutated.slice(0, from) + blanks[index] + mutated.slice(to);
            });
            return mutated
                .replace(/^( {4})+/gm, (depth) => indent.repeat(depth.length / 4))
                .replace(/\n\n/g, `\n${'\n'.repeat(blankLines)}`)
                .replace(/\n/g, `${endOfLine}\n`);
        });
}

/** Blanks between two tokens or before a comment on one line. */
function gapsOf(text: string): { from: number; to: number }[] {
    const { tokens, hidden } = services.parser.Lexer.tokenize(text);
    const pieces = [...tokens.filter(({ image }) => image !== ''), ...hidden].sort((a, b) => a.startOffset - b.startOffset);
    return pieces
        .slice(1)
        .map((piece, index) => ({ from: pieces[index]!.startOffset + pieces[index]!.image.length, to: piece.startOffset }))
        .filter(({ from, to }) => /^ +$/.test(text.slice(from, to)));
}
