/** The most valuable set of pieces that fits one length. */
import type { Pattern } from './length-job.js';

/** How many branches are looked at before the table of all lengths is worked out instead, and what share of the table's cells that is at least. */
const fewestBranches = 1000;
const branchesPerCell = 0.02;

/** Scratch of the table, kept between calls: a job asks a thousand times. */
interface Table {
    worth: Float64Array;
    taken: Uint8Array;
}

export interface Filling {
    readonly value: number;
    readonly pattern: Pattern;
}

/**
 * Solves bounded knapsack problems, exactly: branch and bound in the order of value per length, and where that takes too long dynamic
 * programming over all lengths (P. C. Gilmore and R. E. Gomory, "A linear programming approach to the cutting stock problem, part II",
 * Operations Research 11 (1963); H. Kellerer, U. Pferschy and D. Pisinger, "Knapsack Problems", 2004, chapter 7).
 */
export class PatternFinder {
    private readonly table: Table = { worth: new Float64Array(0), taken: new Uint8Array(0) };

    /** @param lengths of each kind of piece, with the kerf */
    constructor(private readonly lengths: readonly number[]) {}

    /**
     * @param length of the board, with one kerf
     * @param values of a piece of each kind; those of no value are left out
     * @param counts how many there are of each kind
     */
    best(stock: number, length: number, values: ArrayLike<number>, counts: ArrayLike<number>): Filling {
        const kinds: number[] = [];
        for (let kind = 0; kind < this.lengths.length; kind++) {
            if (values[kind]! > 0 && counts[kind]! > 0 && this.lengths[kind]! <= length) kinds.push(kind);
        }
        kinds.sort((one, other) => values[other]! / this.lengths[other]! - values[one]! / this.lengths[one]! || one - other);
        const times = this.byBranching(kinds, length, values, counts) ?? this.byTable(kinds, length, values, counts);
        let value = 0;
        const used = kinds
            .map((kind, index) => ({ kind, times: times[index]! }))
            .filter((one) => one.times > 0)
            .sort((one, other) => one.kind - other.kind);
        for (const one of used) value += one.times * values[one.kind]!;
        return { value, pattern: { stock, kinds: used.map(({ kind }) => kind), times: used.map((one) => one.times) } };
    }

    /** How often each kind is taken; undefined when there are too many branches. */
    private byBranching(
        kinds: readonly number[],
        length: number,
        values: ArrayLike<number>,
        counts: ArrayLike<number>,
    ): readonly number[] | undefined {
        const size = kinds.length;
        const lengths = kinds.map((kind) => this.lengths[kind]!);
        const worth = kinds.map((kind) => values[kind]!);
        const limits = kinds.map((kind) => counts[kind]!);
        const shortest = new Array<number>(size + 1).fill(Number.POSITIVE_INFINITY);
        for (let index = size - 1; index >= 0; index--) shortest[index] = Math.min(shortest[index + 1]!, lengths[index]!);
        const taken = new Array<number>(size).fill(0);
        let best: number[] = [...taken];
        let most = 0;
        const mostBranches = Math.max(fewestBranches, size * length * branchesPerCell);
        let branches = 0;
        const visit = (from: number, room: number, value: number): boolean => {
            if (++branches > mostBranches) return false;
            if (value > most) {
                most = value;
                best = [...taken];
            }
            for (let index = from; index < size; index++) {
                if (shortest[index]! > room) return true;
                // What is left of the room filled with the best of what may follow, in fractions.
                if (value + atMost(index, room) <= most * (1 + 1e-12)) return true;
                if (lengths[index]! > room) continue;
                for (let times = Math.min(limits[index]!, Math.floor(room / lengths[index]!)); times > 0; times--) {
                    taken[index] = times;
                    const isDone = visit(index + 1, room - times * lengths[index]!, value + times * worth[index]!);
                    taken[index] = 0;
                    if (!isDone) return false;
                }
            }
            return true;
        };
        const atMost = (from: number, room: number): number => {
            let value = 0;
            let open = room;
            for (let index = from; index < size && open > 0; index++) {
                const fit = Math.min(limits[index]!, open / lengths[index]!);
                value += fit * worth[index]!;
                open -= fit * lengths[index]!;
            }
            return value;
        };
        return visit(0, length, 0) ? best : undefined;
    }

    private byTable(kinds: readonly number[], length: number, values: ArrayLike<number>, counts: ArrayLike<number>): readonly number[] {
        // A number of pieces as ones, twos, fours and so on: each of those is taken or not.
        const bundles = kinds.flatMap((kind, index) => {
            const size = this.lengths[kind]!;
            const parts: { index: number; times: number; length: number; value: number }[] = [];
            let left = Math.min(counts[kind]!, Math.floor(length / size));
            for (let times = 1; left > 0; times *= 2) {
                const taken = Math.min(times, left);
                parts.push({ index, times: taken, length: taken * size, value: taken * values[kind]! });
                left -= taken;
            }
            return parts;
        });
        const across = length + 1;
        if (this.table.worth.length < across) this.table.worth = new Float64Array(across);
        if (this.table.taken.length < across * bundles.length) this.table.taken = new Uint8Array(across * bundles.length);
        const { worth, taken } = this.table;
        worth.fill(0, 0, across);
        taken.fill(0, 0, across * bundles.length);
        bundles.forEach((bundle, row) => {
            const at = row * across;
            for (let room = length; room >= bundle.length; room--) {
                const value = worth[room - bundle.length]! + bundle.value;
                if (value > worth[room]!) {
                    worth[room] = value;
                    taken[at + room] = 1;
                }
            }
        });
        const times = new Array<number>(kinds.length).fill(0);
        let room = length;
        for (let row = bundles.length - 1; row >= 0; row--) {
            if (taken[row * across + room] === 0) continue;
            times[bundles[row]!.index]! += bundles[row]!.times;
            room -= bundles[row]!.length;
        }
        return times;
    }
}
