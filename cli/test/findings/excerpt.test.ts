import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { excerpt } from '../../src/findings/excerpt.js';

describe('an excerpt', () => {
    it.each([
        ['leaves out the indentation', '        width 40', 15, 17, 'width 40', '      ~~'],
        ['marks a place between two words', 'shelf  at 12in', 7, 7, 'shelf  at 12in', '      ~'],
        ['marks a place behind the last word', 'shelf Low', 10, 10, 'shelf Low', '         ~'],
        ['marks a place in an empty line', '', 1, 1, '', '~'],
        ['keeps white space that it points at', '        width', 3, 5, '      width', '~~'],
        ['shows tabs as blanks', '\twidth\t40', 8, 10, 'width    40', '         ~~'],
        // Unicode Standard Annex 11: a wide character takes two columns, a combining mark none.
        ['marks under wide characters', 'note "樹" 40', 10, 12, 'note "樹" 40', '          ~~'],
        ['marks wide characters in full', 'note "樹木"', 7, 9, 'note "樹木"', '      ~~~~'],
        ['counts a letter and its combining mark once', 'cafe\u0301 40', 7, 9, 'cafe\u0301 40', '     ~~'],
    ])('%s', (_, line, from, to, text, marks) => {
        expect(excerpt(line, from, to)).toEqual({ text, marks });
    });

    it('cuts a long line on both sides of the words', () => {
        const { text, marks } = excerpt(`${'a'.repeat(500)}HERE${'b'.repeat(500)}`, 501, 505);
        expect(text).toBe(`…${'a'.repeat(40)}HERE${'b'.repeat(64)}…`);
        expect(marks).toBe(`${' '.repeat(41)}~~~~`);
    });

    it('marks no more than it shows', () => {
        const { text, marks } = excerpt('x'.repeat(5000), 1, 5001);
        expect(marks).toHaveLength(stringWidth(text));
    });

    it('is never wider than a line of the terminal, and the marks stand under its text', () => {
        const columns = fc.tuple(fc.string({ unit: 'grapheme', maxLength: 400 }), fc.nat(400), fc.nat(400));
        fc.assert(
            fc.property(columns, ([line, a, b]) => {
                const [from, to] = [Math.min(a, b, line.length) + 1, Math.min(Math.max(a, b), line.length) + 1];
                const { text, marks } = excerpt(line, from, to);
                expect(stringWidth(text)).toBeLessThanOrEqual(110);
                expect(marks.trimEnd().length).toBeLessThanOrEqual(stringWidth(text) + 1);
                expect(marks).toMatch(/^ *~+$/);
            }),
        );
    });
});
