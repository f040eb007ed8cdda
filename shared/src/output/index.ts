/** How documents get into a folder, wherever it is kept: what may be replaced, and what is remembered of it. Knows no disk and no casework. */
export { recordName } from './build-record.js';
export { type Destination, folderBeside, type NewDocument, NotPut, type OutputFolder, putDocuments } from './output-folder.js';
