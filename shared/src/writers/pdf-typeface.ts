/** The typeface of a PDF: one that every reader has, or, where its letters do not do, one that is embedded with those that are used. */
import { type PDFDocument, type PDFFont, StandardFonts } from '@cantoo/pdf-lib';
import { type Letters, lettersOf } from './pdf-letters.js';

/** Reads a TrueType or OpenType typeface. */
export type Typeface = () => Promise<Uint8Array>;

export interface SetIn {
    readonly font: PDFFont;
    readonly letters: Letters;
}

/** What some texts are set in. The typeface that is given is read only where the reader's own has not all of their letters. */
export async function typefaceFor(document: PDFDocument, texts: readonly string[], typeface: Typeface | undefined): Promise<SetIn> {
    const own = await document.embedFont(StandardFonts.Helvetica);
    const letters = lettersOf(own.getCharacterSet());
    if (!typeface || letters.changedIn(texts).length === 0) return { font: own, letters };
    const [fontkit, bytes] = await Promise.all([import('@cantoo/fontkit'), typeface()]);
    document.registerFontkit(fontkit);
    const font = await document.embedFont(bytes, { subset: true });
    return { font, letters: lettersOf(font.getCharacterSet()) };
}
