import type { Example } from '../rule.js';

/** The text of an example without its marks, and where the words are that it marks, in UTF-16 offsets. */
export interface MarkedExample {
    readonly text: string;
    /** Absent in a good example. */
    readonly flagged?: { readonly start: number; readonly end: number };
}

const opening = '»';
const closing = '«';

/** Takes the marks round the flagged words out of an example. */
export function readMarks({ text }: Example): MarkedExample {
    const start = text.indexOf(opening);
    const end = text.indexOf(closing);
    if (start < 0 || end < 0) return { text };
    const plain = text.slice(0, start) + text.slice(start + 1, end) + text.slice(end + 1);
    return { text: plain, flagged: { start, end: end - 1 } };
}
