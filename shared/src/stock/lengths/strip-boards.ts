/** Boards ripped from end to end into strips, and the strips crosscut: the way in which bands, nosings and rails are made. */
import type { LaidOutSheet, Piece, SheetJob, SheetLayout } from '../sheet-job.js';
import { layOutLengths } from './lay-out-lengths.js';
import type { CutBoard } from './length-job.js';

/** A strip as long as a board, with what is crosscut from it. */
interface Lane {
    readonly width: number;
    readonly cuts: CutBoard['cuts'];
}

/** Lengths are laid out in steps of so many units of the job: finer than a saw follows, and a hundredth of the work. */
const coarse = 10;

/** How often the layout of the lengths of one width, and that of the strips of one length, is tried. */
const rounds = 4;

/**
 * Lays blanks that may not turn out as strips that run the whole length of a board. Boards are tried of all lengths together and of each length alone.
 * @param job its stock without counts; blanks that fit none of it are left over
 */
export function layOutStrips(job: SheetJob): Omit<SheetLayout, 'leastCost'> {
    const heights = [...new Set(job.stock.map(({ height }) => height))];
    const tried = [heights, ...(heights.length > 1 ? heights.map((height) => [height]) : [])].map((some) => withLengths(job, some));
    const left = ({ unplaced }: { unplaced: readonly number[] }) => unplaced.reduce((sum, count) => sum + count, 0);
    return tried.reduce((one, other) => ((left(other) - left(one) || other.cost - one.cost) < 0 ? other : one));
}

function withLengths(job: SheetJob, heights: readonly number[]): Omit<SheetLayout, 'leastCost'> {
    const unplaced = job.blanks.map(({ count }) => count);
    const lanes = new Map<number, Lane[]>(heights.map((height) => [height, []]));
    for (const width of [...new Set(job.blanks.map((blank) => blank.width))]) {
        const offered = heights.filter((height) => job.stock.some((stock) => stock.height === height && stock.width >= width));
        const blanks = job.blanks.flatMap((blank, index) => (blank.width === width ? [index] : []));
        const layout = layOutLengths(
            {
                kerf: Math.ceil(job.kerf / coarse),
                pieces: blanks.map((index) => ({
                    id: job.blanks[index]!.id,
                    length: Math.ceil(job.blanks[index]!.height / coarse),
                    count: job.blanks[index]!.count,
                })),
                stock: offered.map((height) => ({ id: String(height), length: Math.floor(height / coarse), cost: height })),
            },
            { rounds },
        );
        for (const { stock, times, cuts } of layout.boards) {
            const own = cuts.map((cut) => ({ ...cut, piece: blanks[cut.piece]! }));
            for (const cut of own) unplaced[cut.piece]! -= times * cut.times;
            for (let lane = 0; lane < times; lane++) lanes.get(offered[stock]!)!.push({ width, cuts: own });
        }
    }
    const sheets = heights.flatMap((height) => boardsOf(job, height, lanes.get(height)!));
    return { sheets, cost: sheets.reduce((sum, { stock }) => sum + job.stock[stock]!.cost, 0), unplaced };
}

/** Lays strips of one length side by side on boards. */
function boardsOf(job: SheetJob, height: number, lanes: readonly Lane[]): readonly LaidOutSheet[] {
    const stocks = job.stock.flatMap((stock, index) => (stock.height === height ? [index] : []));
    const layout = layOutLengths(
        {
            kerf: Math.ceil(job.kerf / coarse),
            pieces: lanes.map(({ width }, index) => ({ id: String(index), length: Math.ceil(width / coarse), count: 1 })),
            stock: stocks.map((index) => ({
                id: String(index),
                length: Math.floor(job.stock[index]!.width / coarse),
                cost: job.stock[index]!.cost,
            })),
        },
        { rounds },
    );
    return layout.boards.flatMap(({ stock, times, cuts }) =>
        Array.from({ length: times }, () => ({
            stock: stocks[stock]!,
            whole: boardOf(
                job,
                stocks[stock]!,
                cuts.flatMap(({ piece }) => lanes[piece] ?? []),
            ),
        })),
    );
}

function boardOf({ stock, blanks, kerf }: SheetJob, index: number, lanes: readonly Lane[]): Piece {
    const { width, height } = stock[index]!;
    let x = 0;
    const strips = lanes.map((lane) => {
        let y = 0;
        const pieces: Piece[] = lane.cuts.flatMap(({ piece, times }) =>
            Array.from({ length: times }, (): Piece => {
                const at = { x, y, width: lane.width, height: blanks[piece]!.height };
                y += at.height + kerf;
                return { ...at, kind: 'blank', blank: piece, turned: false };
            }),
        );
        const whole = { x, y: 0, width: lane.width, height };
        x += lane.width + kerf;
        return rowOf(whole, 'height', pieces, { x: whole.x, y, width: lane.width, height: height - y });
    });
    return rowOf({ x: 0, y: 0, width, height }, 'width', strips, { x, y: 0, width: width - x, height });
}

/** What is cut into pieces, with what is left behind the last of them; the piece itself where it is all. */
function rowOf(
    whole: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
    along: 'width' | 'height',
    pieces: readonly Piece[],
    left: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): Piece {
    const [only, ...others] = pieces;
    const isLeft = left.width > 0 && left.height > 0;
    if (only && others.length === 0 && only.width === whole.width && only.height === whole.height) return only;
    return { ...whole, kind: 'cut', along, pieces: isLeft ? [...pieces, { ...left, kind: 'offcut' }] : pieces };
}
