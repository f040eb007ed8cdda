// Words of the language in sentences. Knows words only.
import { closestWords } from 'casewright-shared/rules';

/** The known word that was probably meant, if one is near enough. */
export function nearestWord(word: string, known: Iterable<string>): string | undefined {
    return closestWords(word, known).find((near) => near !== word);
}

/** `a`, `b` or `c`: words of the language in a sentence; after `most` of them the rest is not listed. */
export function listWords(words: readonly string[], joining = 'or', most = 12): string {
    const quoted = words.slice(0, most).map((word) => `\`${word}\``);
    if (words.length > most) {
        return `${quoted.join(', ')} and ${words.length - most} more`;
    }
    const last = quoted.pop() ?? '';
    return quoted.length === 0 ? last : `${quoted.join(', ')} ${joining} ${last}`;
}
