/** In which order a sheet is cut at the saw: each piece that is cut further gets a letter, and is set aside until its turn. */
import type { Piece } from '../../stock/index.js';

/** One setting of the fence and the cuts that are made with it, on one piece in hand. */
export interface SawStep {
    readonly number: number;
    /** What is cut: the sheet, or the letter of a piece that was set aside. */
    readonly from: string;
    /** Along the grain of the sheet, or across it. */
    readonly direction: 'along' | 'across';
    /** From the fence to the blade, in the unit of the layout. */
    readonly fence: number;
    /** How many pieces are cut off at this setting. */
    readonly times: number;
    /** What it gives: blanks of the job, by index, and letters of pieces that are cut further. */
    readonly gives: readonly SawResult[];
    /** The pieces that it gives, in the same order. */
    readonly pieces: readonly Piece[];
    /** What is in hand after the last cut of a piece: an offcut, or what needs no further cut; undefined while the next step goes on with it. */
    readonly left: { readonly offcut: Piece } | SawResult | undefined;
    /** Where the cuts lie. */
    readonly lines: readonly { readonly x: number; readonly y: number; readonly length: number }[];
}

export type SawResult = { readonly blank: number } | { readonly letter: string };

/** The steps for a sheet: first all cuts of the sheet itself, then those of the pieces that came off it, in order. */
export function cuttingSequence(whole: Piece): readonly SawStep[] {
    const steps: SawStep[] = [];
    const waiting: { readonly piece: Piece; readonly name: string }[] = [{ piece: whole, name: 'sheet' }];
    let letters = 0;
    for (let next = waiting.shift(); next; next = waiting.shift()) {
        const { piece, name } = next;
        if (piece.kind !== 'cut') continue;
        const isSide = piece.along === 'width';
        const size = (part: Piece) => (isSide ? part.width : part.height);
        const parts = piece.pieces.filter(({ kind }) => kind !== 'offcut');
        const end = isSide ? piece.x + piece.width : piece.y + piece.height;
        const offcut = piece.pieces.find(({ kind }) => kind === 'offcut');
        for (let index = 0; index < parts.length; ) {
            const same = parts.slice(index).filter((part) => Math.abs(size(part) - size(parts[index]!)) < 1e-6);
            const gives = same.map((part): SawResult => {
                if (part.kind === 'blank') return { blank: part.blank };
                const letter = letterOf(letters++);
                waiting.push({ piece: part, name: letter });
                return { letter };
            });
            index += same.length;
            // The last piece needs no cut where it reaches the edge.
            const cutOff = same.filter((part) => (isSide ? part.x : part.y) + size(part) < end - 1e-6);
            const times = cutOff.length;
            const before = steps.at(-1);
            if (times === 0 && before?.from === name) {
                steps[steps.length - 1] = { ...before, left: gives[0] };
                continue;
            }
            steps.push({
                number: steps.length + 1,
                from: name,
                direction: isSide ? 'along' : 'across',
                fence: size(same[0]!),
                times,
                gives,
                pieces: same,
                left: index >= parts.length && offcut ? { offcut } : undefined,
                lines: cutOff.map((part) =>
                    isSide
                        ? { x: part.x + part.width, y: piece.y, length: piece.height }
                        : { x: piece.x, y: part.y + part.height, length: piece.width },
                ),
            });
        }
    }
    return steps;
}

/** A, B, ..., Z, AA, AB, ... */
function letterOf(index: number): string {
    const last = String.fromCharCode(65 + (index % 26));
    return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}
