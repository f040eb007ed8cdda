/** The known words that a misspelt one may have been meant for. */

/** Words of three letters may be one edit away, of six two, and so on. */
const lettersPerEdit = 3;

/**
 * Known words near a misspelt one, the nearest first, words equally near in the order given. Capitals do not count.
 * An edit is a letter too many, too few or changed, or two neighbours changed about. Behind them come names that are part of the
 * other, or it of them: `Cherry` and `BlackCherry`.
 */
export function closestWords(word: string, known: Iterable<string>): string[] {
    const candidates = [...new Set(known)];
    const allowed = Math.max(1, Math.floor(word.length / lettersPerEdit));
    const near: { readonly word: string; readonly edits: number }[] = [];
    for (const candidate of candidates) {
        if (Math.abs(candidate.length - word.length) > allowed) continue;
        const edits = editsBetween(word.toLowerCase(), candidate.toLowerCase());
        if (edits <= allowed) near.push({ word: candidate, edits });
    }
    const found = near.sort((a, b) => a.edits - b.edits).map(({ word }) => word);
    return [...found, ...candidates.filter((one) => !found.includes(one) && isPartOf(one, word))];
}

/** Whether one of two names begins or ends with the other, at a capital. */
function isPartOf(one: string, other: string): boolean {
    const [short, long] = one.length < other.length ? [one, other] : [other, one];
    if (short.length <= lettersPerEdit || !/^[A-Z]/.test(short)) return false;
    return long.endsWith(short) || (long.startsWith(short) && /^[A-Z]/.test(long.slice(short.length)));
}

/** Optimal string alignment distance, row by row. */
function editsBetween(a: string, b: string): number {
    let before: number[] = [];
    let above = Array.from({ length: b.length + 1 }, (_, column) => column);
    for (let row = 1; row <= a.length; row++) {
        const current = [row];
        for (let column = 1; column <= b.length; column++) {
            const change = a[row - 1] === b[column - 1] ? 0 : 1;
            let least = Math.min(above[column]! + 1, current[column - 1]! + 1, above[column - 1]! + change);
            const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
            if (swapped) least = Math.min(least, before[column - 2]! + 1);
            current.push(least);
        }
        before = above;
        above = current;
    }
    return above[b.length]!;
}
