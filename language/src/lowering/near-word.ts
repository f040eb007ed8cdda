// The word that was probably meant. Knows letters only.

/** How many edits make one word of the other: a letter put in, left out or changed, or two neighbours swapped. */
export function editDistance(a: string, b: string): number {
    let before: number[] = [];
    let last = Array.from({ length: b.length + 1 }, (_, index) => index);
    for (let i = 1; i <= a.length; i++) {
        const row = [i];
        for (let j = 1; j <= b.length; j++) {
            const change = a[i - 1] === b[j - 1] ? 0 : 1;
            let least = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + change);
            if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
                least = Math.min(least, before[j - 2]! + 1);
            }
            row.push(least);
        }
        before = last;
        last = row;
    }
    return last[b.length]!;
}

/** The known word that is nearest to one that is not known, if it is near enough to be a slip of the keyboard. */
export function nearestWord(word: string, known: Iterable<string>): string | undefined {
    const allowed = word.length <= 3 ? 1 : word.length <= 7 ? 2 : 3;
    let best: string | undefined;
    let least = allowed + 1;
    for (const candidate of known) {
        if (Math.abs(candidate.length - word.length) > allowed || candidate === word) {
            continue;
        }
        const distance = candidate.toLowerCase() === word.toLowerCase() ? 0.5 : editDistance(word, candidate);
        if (distance < least && distance < Math.max(candidate.length, 2)) {
            best = candidate;
            least = distance;
        }
    }
    return best;
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
