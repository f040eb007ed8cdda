/** A document in a format, as the content of its file. */
import type { FormatName, Sheet, ShopDocument } from '../documents/index.js';
import { type Drawing, sideBySide } from '../drawing/index.js';
import { writeCsv } from './csv.js';
import { sheetAsData, writeJson } from './json.js';
import { writeMarkdown } from './markdown.js';
import type { PaperName } from './paper.js';
import type { Typeface } from './pdf-typeface.js';
import { writeSvg } from './svg.js';

export interface WriteOptions {
    /** What drawings at full size are printed on; letter for a document in inches and A4 in millimetres where it is not given. */
    readonly paper?: PaperName;
    /** What a PDF is set in where the typefaces that every reader has do not have all of its letters. */
    readonly typeface?: Typeface;
}

/** Between two drawings in one file, in millimetres. */
const gap = 100;

const sheetWriters: Partial<Readonly<Record<FormatName, (sheet: Sheet) => string>>> = {
    csv: writeCsv,
    md: writeMarkdown,
    json: (sheet) => writeJson(sheetAsData(sheet)),
};

/** A library of a format is loaded when the format is asked for: together they are larger than all else. */
const drawingWriters: Partial<Readonly<Record<FormatName, () => Promise<(drawing: Drawing) => string>>>> = {
    dxf: async () => (await import('./dxf.js')).writeDxf,
    svg: async () => writeSvg,
};

/** The bytes of a file as Base64 text (RFC 4648, section 4), for ways that carry text only. */
export async function contentAsBase64(content: Uint8Array): Promise<string> {
    const { base64Of } = await import('./base64.js');
    return base64Of(content);
}

/**
 * The content of a document's file: text, to be written as UTF-8, or bytes.
 * @throws RangeError for a format in which such a document does not come; its kind says in which it does
 */
export async function writeDocument(
    document: ShopDocument,
    format: FormatName,
    { paper, typeface }: WriteOptions = {},
): Promise<string | Uint8Array> {
    switch (document.is) {
        case 'sheet': {
            const write = sheetWriters[format];
            if (!write && document.pages) return writeDocument({ is: 'pages', ...document.pages }, format, paper ? { paper } : {});
            if (!write) throw new RangeError(`a sheet cannot be written as ${format}`);
            return write(document.sheet);
        }
        case 'data':
            if (format === 'glb' && document.scene) {
                const { writeGlb } = await import('./glb.js');
                return writeGlb(document.scene);
            }
            if (format !== 'json') throw new RangeError(`data can be written as json${document.scene ? ' or glb' : ''}, not as ${format}`);
            return writeJson(document.data);
        case 'pages':
        case 'drawings': {
            const { drawings, units } = document;
            if (format === 'pdf') {
                const printedOn = paper ?? (units === 'in' ? 'letter' : 'a4');
                const { writePages, writePdf } = await import('./pdf.js');
                return document.is === 'pages' ? writePages(drawings, printedOn, typeface) : writePdf(drawings, printedOn, units, typeface);
            }
            const writer = drawingWriters[format];
            if (!writer) throw new RangeError(`drawings cannot be written as ${format}`);
            const write = await writer();
            return write(sideBySide(drawings, gap));
        }
    }
}
