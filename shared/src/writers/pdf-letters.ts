/**
 * Text in the letters of a typeface. A PDF's own typefaces, which every reader has, know those of Western Europe only (WinAnsi, ISO
 * 32000-1, Annex D). Letters that a typeface has not are written without their marks, and the reader is told.
 */

/** Latin letters that Unicode does not take apart into a letter and its marks. */
const withoutMarks: Readonly<Record<string, string>> = {
    Ł: 'L',
    ł: 'l',
    Đ: 'D',
    đ: 'd',
    Ħ: 'H',
    ħ: 'h',
    Ŧ: 'T',
    ŧ: 't',
    Ŋ: 'N',
    ŋ: 'n',
    ı: 'i',
    ĸ: 'k',
    ẞ: 'SS',
    Ə: 'E',
    ə: 'e',
    '−': '-',
    '′': "'",
    '″': '"',
    '⁄': '/',
};

export interface Letters {
    /** The text as it can be printed; a letter that has no such form becomes a question mark. */
    of(text: string): string;
    /** The words of some texts that are not printed as they are written, each once with how it is printed. */
    changedIn(texts: Iterable<string>): readonly (readonly [written: string, printed: string])[];
}

/** @param known the code points that the typeface has */
export function lettersOf(known: Iterable<number>): Letters {
    const codes = new Set(known);
    const has = (text: string) => text !== '' && [...text].every((letter) => codes.has(letter.codePointAt(0) ?? 0));
    const letter = (one: string) => {
        const bare = one.normalize('NFD').replace(/\p{M}/gu, '');
        return [one, bare, withoutMarks[one], withoutMarks[bare]].find((form) => form !== undefined && has(form)) ?? '?';
    };
    // A letter whose mark follows it is one letter: composed first, or its mark would be one of its own.
    const of = (text: string) =>
        [...text.normalize('NFC')]
            .filter((one) => !/\p{M}/u.test(one))
            .map(letter)
            .join('');
    const changedIn = (texts: Iterable<string>) => {
        const changed = new Map<string, string>();
        for (const text of texts) {
            for (const word of text.normalize('NFC').split(/\s+/)) if (of(word) !== word) changed.set(word, of(word));
        }
        return [...changed];
    };
    return { of, changedIn };
}

/** A sentence that says how words are printed; undefined where all are as they are written. */
export function noteOnLetters(changed: readonly (readonly [written: string, printed: string])[]): string | undefined {
    if (changed.length === 0) return undefined;
    const printed = changed.map(([, as]) => as);
    const unknown = printed.some((word) => word.includes('?')) ? ', and letters that the typeface has not as question marks' : '';
    return `In this file some letters stand without their marks${unknown}: ${printed.join(', ')}. The SVG and the DXF have them as they are written.`;
}
