/** The same pieces with less work at the saw: small layouts whose best cuts are plain to see. */
import { describe, expect, test } from 'vitest';
import { layOutSheets, type Piece, type SheetJob } from '../../src/stock/index.js';
import { faultsOf } from './replay.js';

function laidOut(job: SheetJob): Piece {
    const layout = layOutSheets(job, { steps: 640 });
    expect(faultsOf(job, layout)).toEqual([]);
    expect(layout.sheets).toHaveLength(1);
    return layout.sheets[0]!.whole;
}

const blank = (id: string, width: number, height: number, count: number) => ({ id, width, height, count, mayTurn: false });
const depth = (piece: Piece): number => (piece.kind === 'cut' ? 1 + Math.max(...piece.pieces.map(depth)) : 0);

describe('easier cuts', () => {
    test('a grid of eight equal pieces is two strips of four, with one offcut beside them', () => {
        const whole = laidOut({ kerf: 2, blanks: [blank('a', 28, 20, 8)], stock: [{ id: 's', width: 60, height: 98, cost: 1 }] });
        // two strips of 28 and a kerf of 2 are 58; four pieces of 20 and three kerfs are 86
        expect(depth(whole)).toBe(2);
        expect(whole).toMatchObject({ kind: 'cut' });
        const sizes = (whole as Piece & { pieces: readonly Piece[] }).pieces
            .filter(({ kind }) => kind === 'cut')
            .map(({ width, height }) => [width, height]);
        expect(sizes).toEqual([
            [28, 98],
            [28, 98],
        ]);
    });

    test('what all pieces of a strip would have trimmed off is cut off the strip', () => {
        const whole = laidOut({
            kerf: 1,
            blanks: [blank('a', 30, 40, 1), blank('b', 30, 25, 1)],
            stock: [{ id: 's', width: 50, height: 66, cost: 1 }],
        });
        // 40, a kerf and 25 are the height: beside both lies one offcut of 50 - 30 - 1 over the whole height
        expect(whole).toMatchObject({
            kind: 'cut',
            along: 'width',
            pieces: [
                { kind: 'cut', width: 30, height: 66 },
                { kind: 'offcut', width: 19, height: 66 },
            ],
        });
    });
});
