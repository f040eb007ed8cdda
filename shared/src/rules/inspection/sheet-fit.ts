/** Whether a piece can be cut from a sheet of its material, and with its grain the right way. */
import type { Casework, Part, Piece, Thing } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { grainOfSheet, materialOf, sheetsOf } from './material.js';
import { isSomething, millimetresOf } from './sound-parts.js';

export interface SheetFit {
    readonly material: Thing;
    /** In mm, as first cut. */
    readonly length: number;
    readonly width: number;
    /** fits; only if its grain ran the other way; or on no sheet. */
    readonly answer: 'fits' | 'across the grain' | 'no sheet';
}

/** Pieces of one size that do not fit, of parts that one statement makes. */
export interface Misfit extends SheetFit {
    readonly piece: Piece;
    readonly parts: readonly Part[];
    /** Their names, each once: what two builds of one case have in common has one name. */
    readonly names: readonly string[];
}

/** All pieces that fit as badly as asked, those of one statement and one size together. */
export function misfitsIn(casework: Casework, answer: SheetFit['answer']): readonly Misfit[] {
    const found = new Map<string, Misfit>();
    for (const piece of casework.pieces) {
        const fit = sheetFit(casework, piece);
        const part = casework.parts.get(piece.part);
        if (fit?.answer !== answer || !part) continue;
        const key = [part.span.file, part.span.start, fit.material.id, fit.length, fit.width, piece.role, piece.grain].join(' ');
        const alike = found.get(key);
        const parts = alike?.parts.includes(part) ? alike.parts : [...(alike?.parts ?? []), part];
        found.set(key, { ...fit, piece, ...alike, parts, names: [...new Set(parts.map(({ name }) => name))] });
    }
    return [...found.values()];
}

/** Undefined for pieces that are not cut from sheets, or whose size is unknown. Bands and nosings can be pieced together and are left out. */
function sheetFit(casework: Casework, piece: Piece): SheetFit | undefined {
    if (piece.role !== 'core' && piece.role !== 'layer') return undefined;
    const material = materialOf(casework, piece.material);
    const sheets = material ? sheetsOf(material) : [];
    const { length, width } = piece.rough;
    if (!material || sheets.length === 0 || !isSomething(length) || !isSomething(width)) return undefined;
    const size = { material, length: millimetresOf(length), width: millimetresOf(width) };
    const usable = sheets.map((sheet) => usableSheet(casework, sheet));
    const alongLength = usable.some((sheet) => fitsOn(size, sheet));
    const alongWidth = usable.some((sheet) => fitsOn({ length: size.width, width: size.length }, sheet));
    if (!alongLength && !alongWidth) return { ...size, answer: 'no sheet' };
    const way = wayOfGrain(piece, material);
    const fits = way === 'any' ? true : way === 'along length' ? alongLength : alongWidth;
    return { ...size, answer: fits ? 'fits' : 'across the grain' };
}

interface Rectangle {
    readonly length: number;
    readonly width: number;
}

function usableSheet(casework: Casework, sheet: ReturnType<typeof sheetsOf>[number]): Rectangle {
    const trim = casework.shop.trim ? 2 * millimetresOf(casework.shop.trim) : 0;
    return { length: millimetresOf(sheet.length) - trim, width: millimetresOf(sheet.width) - trim };
}

function fitsOn(piece: Rectangle, sheet: Rectangle): boolean {
    return piece.length <= sheet.length + tolerance.fit && piece.width <= sheet.width + tolerance.fit;
}

/** Which way of the sheet the length of the piece must lie. */
function wayOfGrain(piece: Piece, material: Thing): 'along length' | 'along width' | 'any' {
    const grain = grainOfSheet(material);
    if (piece.grain === 'none' || grain === 'none') return 'any';
    return piece.grain === grain ? 'along length' : 'along width';
}
