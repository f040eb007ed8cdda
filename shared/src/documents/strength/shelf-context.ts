/** What a shelf is worked out with, and where its numbers come from. */
import type { Casework, Span } from '../../casework/index.js';
import type { SagLimit } from '../../strength/index.js';
import type { Locate } from '../document-options.js';
import type { Units } from './worked.js';

export interface ShelfContext {
    readonly casework: Casework;
    readonly units: Units;
    readonly limit: SagLimit;
    readonly locate: Locate;
}

/** Where a span is in the text: `bookcase.case:5`. */
export function placeInWords(span: Span, { locate }: Pick<ShelfContext, 'locate'>): string {
    const { file, line } = locate(span);
    return `${file}:${line}`;
}
