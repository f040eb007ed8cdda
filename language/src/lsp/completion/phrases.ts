// What may go on from a finished phrase: more properties, connectives, edges. Knows the vocabulary.
import { vocabulary } from 'casewright-shared/casework';
import { CompletionItemKind } from 'vscode-languageserver';
import { joiningWords } from '../statement-words.js';
import type { Sayable } from '../vocabulary-at.js';
import type { Offer, Rank } from './offer.js';

/** Properties of a thing that the statement has not said yet. */
export function propertiesNotSaid(offer: Offer, sayable: Sayable | undefined, said: readonly string[], rank: Rank = 1): void {
    for (const [name, row] of Object.entries(sayable?.properties ?? {})) {
        if (row.built !== false && (row.repeats || !said.includes(name))) {
            offer.word(name, row, CompletionItemKind.Property, rank);
        }
    }
}

/** Connectives that may go on. */
export function connectives(offer: Offer, ...words: readonly string[]): void {
    for (const word of words) {
        const row = joiningWords.get(word);
        if (row) {
            offer.word(word, row);
        }
    }
}

/** Ways from a thing to a place: after a distance. */
export function relations(offer: Offer): void {
    offer.words(vocabulary.relations, CompletionItemKind.Keyword, 1);
}
