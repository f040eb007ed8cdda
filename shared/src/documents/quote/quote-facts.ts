/** What stands at the head of a quote besides its project. */
import type { Fact } from '../sheet.js';

/** The date that was given; a document knows no clock. */
export function dateFacts(date: string | undefined): readonly Fact[] {
    return date === undefined ? [] : [{ label: 'Date', text: date }];
}
