/** Layouts of lengths at once: each piece, the longest first, goes on the board where the least is left. */
import type { PatternFinder } from './best-pattern.js';
import type { LengthProblem, Pattern } from './length-job.js';

/** Boards cut alike, and what found no place. */
export interface WholeBoards {
    readonly boards: readonly { readonly pattern: Pattern; readonly times: number }[];
    readonly unplaced: readonly number[];
}

/**
 * Best fit decreasing (D. S. Johnson and others, "Worst-case performance bounds for simple one-dimensional packing algorithms", SIAM
 * Journal on Computing 3 (1974)); a new board is the one whose length costs least, and in the end each board is as cheap as its pieces allow.
 */
export function greedyBoards({ lengths, stocks }: LengthProblem, demand: readonly number[], supply: readonly number[]): WholeBoards {
    const left = [...supply];
    const unplaced = demand.map(() => 0);
    const boards: { stock: number; room: number; kinds: number[] }[] = [];
    const byPrice = stocks.map((_, stock) => stock).sort((one, other) => price(stocks[one]!) - price(stocks[other]!) || one - other);
    demand.forEach((count, kind) => {
        const length = lengths[kind]!;
        for (let placed = 0; placed < count; placed++) {
            let best: (typeof boards)[number] | undefined;
            for (const board of boards) if (board.room >= length && (!best || board.room < best.room)) best = board;
            if (!best) {
                const stock = byPrice.find((one) => left[one]! > 0 && stocks[one]!.length >= length);
                if (stock === undefined) {
                    unplaced[kind] = count - placed;
                    return;
                }
                left[stock]!--;
                best = { stock, room: stocks[stock]!.length, kinds: [] };
                boards.push(best);
            }
            best.room -= length;
            best.kinds.push(kind);
        }
    });
    for (const board of boards) {
        const used = stocks[board.stock]!.length - board.room;
        for (const [stock, { length, cost }] of stocks.entries()) {
            if (length < used || left[stock]! <= 0 || cost >= stocks[board.stock]!.cost) continue;
            left[board.stock]!++;
            left[stock]!--;
            board.stock = stock;
        }
    }
    return { boards: boards.map(({ stock, kinds }) => ({ pattern: patternOf(stock, kinds), times: 1 })), unplaced };
}

/**
 * Board after board, each filled as well as can be around the longest piece that is left: minimum bin slack, by J. N. D. Gupta and
 * J. C. Ho, "A new heuristic algorithm for the one-dimensional bin-packing problem", Production Planning & Control 10 (1999).
 */
export function fullBoards(
    { lengths, stocks }: LengthProblem,
    demand: readonly number[],
    supply: readonly number[],
    finder: PatternFinder,
): WholeBoards {
    const open = [...demand];
    const left = [...supply];
    const boards: { pattern: Pattern; times: number }[] = [];
    const unplaced = demand.map(() => 0);
    const byPrice = stocks.map((_, stock) => stock).sort((one, other) => price(stocks[one]!) - price(stocks[other]!) || one - other);
    for (let kind = 0; kind < open.length; kind++) {
        while (open[kind]! > 0) {
            const stock = byPrice.find((one) => left[one]! > 0 && stocks[one]!.length >= lengths[kind]!);
            if (stock === undefined) {
                unplaced[kind] = open[kind]!;
                break;
            }
            open[kind]!--;
            const { pattern } = finder.best(stock, stocks[stock]!.length - lengths[kind]!, lengths, open);
            const kinds = pattern.kinds.flatMap((one, index) => new Array<number>(pattern.times[index]!).fill(one));
            for (const one of kinds) open[one]!--;
            left[stock]!--;
            boards.push({ pattern: patternOf(stock, [kind, ...kinds]), times: 1 });
        }
    }
    return { boards, unplaced };
}

function price({ length, cost }: { length: number; cost: number }): number {
    return cost / length;
}

/** @param kinds of every piece, in rising order */
function patternOf(stock: number, kinds: readonly number[]): Pattern {
    const different = [...new Set(kinds)];
    return { stock, kinds: different, times: different.map((kind) => kinds.filter((one) => one === kind).length) };
}
