/** File formats, one file each: sheets and data in, text out. Knows no casework and touches no file. */
export { writeDocument } from './write-document.js';
