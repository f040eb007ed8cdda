// Words of the language in sentences. Knows words only.
import { closestWords } from 'casewright-shared/casework';

/** The known word that was probably meant, if one is near enough. */
export function nearestWord(word: string, known: Iterable<string>): string | undefined {
    const words = [...known];
    const meant = meantBy(word);
    return meant !== undefined && words.includes(meant) ? meant : closestWords(word, words).find((near) => near !== word);
}

/** The word of the language for a plural, or for a word of everyday speech. */
export function meantBy(word: string): string | undefined {
    return singular(word) ?? (Object.hasOwn(otherWords, word) ? otherWords[word] : undefined);
}

/** `shelf` for `shelves`. Plurals with a mere `s` are near enough to be found by their letters. */
function singular(word: string): string | undefined {
    return /^(.+)ves$/.exec(word)?.[1]?.concat('f');
}

/** Words of everyday speech for words of the language that are spelt otherwise. */
const otherWords: Readonly<Record<string, string>> = {
    beneath: 'below',
    under: 'below',
    underneath: 'below',
    over: 'above',
    inside: 'in',
    within: 'in',
    made: 'of',
    spaced: 'clear',
    spacing: 'clear',
    evenly: 'clear',
    tall: 'height',
    toe: 'kick',
    partition: 'divider',
    half: 'middle',
    centre: 'middle',
    center: 'middle',
    lid: 'top',
    floor: 'bottom',
};

/** `a`, `b` or `c`: words of the language in a sentence; after `most` of them the rest is not listed. */
export function listWords(words: readonly string[], joining = 'or', most = 12): string {
    const quoted = words.slice(0, most).map((word) => `\`${word}\``);
    if (words.length > most) {
        return `${quoted.join(', ')} and ${words.length - most} more`;
    }
    const last = quoted.pop() ?? '';
    return quoted.length === 0 ? last : `${quoted.join(', ')} ${joining} ${last}`;
}
