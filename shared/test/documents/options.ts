import type { DocumentOptions } from '../../src/documents/index.js';

/** Options of a document whose text is one line a file: the column is the offset. */
export const options: DocumentOptions = {
    locate: ({ file, start }) => ({ file, line: 1, column: start + 1 }),
    findings: [],
};
