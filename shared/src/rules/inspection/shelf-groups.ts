/** Shelves that one statement makes: an array, the builds of one case. What is wrong with them is one mistake. */
import type { Part } from '../../casework/index.js';
import type { SaidOnce } from '../rule.js';

/** A shelf and how bad it is, with what is bad of it and of those of its statement that are less so. */
export interface Ranked<Shelf, Mend> {
    readonly shelf: Shelf;
    readonly mend: Mend;
    readonly saidOnce: SaidOnce;
}

/**
 * Shelves by their statements, the worst of each first.
 * @param severityOf how bad one is: the greater, the worse
 * @param mendOf what mends one; it is given what mends those that are less bad, so that it can mend them too
 */
export function worstFirst<Shelf extends { readonly part: Part }, Mend>(
    shelves: readonly Shelf[],
    severityOf: (shelf: Shelf) => number,
    mendOf: (shelf: Shelf, others: Mend | undefined) => Mend,
): readonly Ranked<Shelf, Mend>[] {
    const statements = new Map<string, Shelf[]>();
    for (const shelf of shelves) {
        const key = statementOf(shelf.part);
        statements.set(key, [...(statements.get(key) ?? []), shelf]);
    }
    return [...statements].flatMap(([key, group]) => {
        const ranked: Ranked<Shelf, Mend>[] = [];
        let mend: Mend | undefined;
        // from the least bad on; of equals the first in the text is to speak for the others
        for (const shelf of group.toSorted((a, b) => severityOf(b) - severityOf(a)).reverse()) {
            mend = mendOf(shelf, mend);
            ranked.push({ shelf, mend, saidOnce: { key, others: `of \`${arrayName(shelf.part)}\`, none worse` } });
        }
        return ranked.reverse();
    });
}

function statementOf({ nameSpan }: Part): string {
    return `${nameSpan.start}-${nameSpan.end} ${nameSpan.file}`;
}

/** `Tier[2]` is one of `Tier`. */
function arrayName({ name }: Part): string {
    return name.replace(/\[[0-9]+\]$/, '');
}
