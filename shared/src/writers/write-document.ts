/** A document in a format, as the text of its file. */
import type { FormatName, Sheet, ShopDocument } from '../documents/index.js';
import { writeCsv } from './csv.js';
import { sheetAsData, writeJson } from './json.js';
import { writeMarkdown } from './markdown.js';

const sheetWriters: Readonly<Record<FormatName, (sheet: Sheet) => string>> = {
    csv: writeCsv,
    md: writeMarkdown,
    json: (sheet) => writeJson(sheetAsData(sheet)),
};

/**
 * The text of a document, to be written as UTF-8.
 * @throws RangeError if data that is no sheet is asked for in another format than JSON; its kind says which formats it comes in.
 */
export function writeDocument(document: ShopDocument, format: FormatName): string {
    if (document.is === 'sheet') return sheetWriters[format](document.sheet);
    if (format !== 'json') throw new RangeError(`data can be written as json, not as ${format}`);
    return writeJson(document.data);
}
