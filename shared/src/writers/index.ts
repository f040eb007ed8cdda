/** File formats, one file each: sheets, data and drawings in, text or bytes out. Knows no casework and touches no file. */
export { type PaperName, papers } from './paper.js';
export type { Typeface } from './pdf-typeface.js';
export { contentAsBase64, type WriteOptions, writeDocument } from './write-document.js';
