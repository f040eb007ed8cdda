/**
 * The cheapest way to cut all pieces when boards could be cut in fractions: column generation, by P. C. Gilmore and R. E. Gomory,
 * "A linear programming approach to the cutting-stock problem", Operations Research 9 (1961), with the revised simplex method.
 */
import type { PatternFinder } from './best-pattern.js';
import type { LengthProblem, Pattern } from './length-job.js';

/** A pattern that is cut so many times, a number that need not be whole. */
export interface FractionalBoards {
    readonly pattern: Pattern;
    readonly times: number;
}

export interface FractionalSolution {
    readonly boards: readonly FractionalBoards[];
    /** What a piece of each kind is worth: no pattern holds more worth than its board costs, within the accuracy of the numbers. */
    readonly values: Float64Array;
    /** By stock: what one more of a stock that runs out would save. */
    readonly shortage: readonly number[];
    /** Whether no pattern would make it cheaper. */
    readonly isOptimal: boolean;
}

interface Column {
    readonly cost: number;
    readonly rows: readonly number[];
    readonly times: readonly number[];
    /** Undefined for a piece that is left over, for what is cut too many and for boards that stay. */
    readonly pattern?: Pattern;
}

/** Below this share of the cheapest board, a saving is none. */
const tolerance = 1e-9;

/**
 * @param demand of each kind; kinds of which none is asked are left out
 * @param supply of each stock
 * @param known patterns found before; new ones are added
 * @param penalty what a piece costs that is not cut, for its length
 */
export function fractionalBoards(
    problem: LengthProblem,
    demand: readonly number[],
    supply: readonly number[],
    known: Pattern[],
    finder: PatternFinder,
    penalty: number,
    goesOn: () => boolean,
): FractionalSolution {
    const kinds = demand.flatMap((count, kind) => (count > 0 ? [kind] : []));
    const rowOfKind = new Map(kinds.map((kind, row) => [kind, row]));
    const limited = supply.flatMap((count, stock) => (Number.isFinite(count) ? [stock] : []));
    const rowOfStock = new Map(limited.map((stock, index) => [stock, kinds.length + index]));
    const asColumn = (pattern: Pattern): Column => {
        const stockRow = rowOfStock.get(pattern.stock);
        return {
            cost: problem.stocks[pattern.stock]!.cost,
            rows: [...pattern.kinds.map((kind) => rowOfKind.get(kind)!), ...(stockRow === undefined ? [] : [stockRow])],
            times: [...pattern.times, ...(stockRow === undefined ? [] : [1])],
            pattern,
        };
    };
    const fitsDemand = ({ kinds: held, times, stock }: Pattern) =>
        supply[stock]! > 0 && held.every((kind, index) => times[index]! <= demand[kind]!);
    const columns: Column[] = [
        ...kinds.map((_, row) => ({ cost: 0, rows: [row], times: [-1] })),
        ...limited.map((_, index) => ({ cost: 0, rows: [kinds.length + index], times: [1] })),
        ...known.filter(fitsDemand).map(asColumn),
    ];
    const simplex = new RevisedSimplex(
        [...kinds.map((kind) => demand[kind]!), ...limited.map((stock) => supply[stock]!)],
        [
            ...kinds.map((kind, row) => ({ cost: penalty * problem.lengths[kind]!, rows: [row], times: [1] })),
            ...limited.map((_, index) => ({ cost: 0, rows: [kinds.length + index], times: [1] })),
        ],
    );
    const values = new Float64Array(problem.lengths.length);
    const counts = new Array<number>(problem.lengths.length).fill(0);
    for (const kind of kinds) counts[kind] = demand[kind]!;
    const cheapest = Math.min(...problem.stocks.map(({ cost }) => cost).filter((cost) => cost > 0), Number.MAX_VALUE);
    const least = tolerance * cheapest;
    let isOptimal = false;
    while (!isOptimal) {
        simplex.improveWith(columns, least);
        kinds.forEach((kind, row) => {
            values[kind] = Math.max(0, simplex.values[row]!);
        });
        if (!goesOn()) break;
        let added = 0;
        problem.stocks.forEach(({ length, cost }, stock) => {
            if (supply[stock]! <= 0) return;
            const stockRow = rowOfStock.get(stock);
            const price = cost - (stockRow === undefined ? 0 : Math.min(0, simplex.values[stockRow]!));
            const { value, pattern } = finder.best(stock, length, values, counts);
            if (value <= price + least * 10) return;
            known.push(pattern);
            columns.push(asColumn(pattern));
            added++;
        });
        isOptimal = added === 0;
    }
    return {
        boards: simplex.solution().flatMap(({ column, amount }) => (column.pattern ? [{ pattern: column.pattern, times: amount }] : [])),
        values,
        shortage: supply.map((_, stock) => {
            const row = rowOfStock.get(stock);
            return row === undefined ? 0 : Math.max(0, -simplex.values[row]!);
        }),
        isOptimal,
    };
}

/** After so many exchanges the inverse of the basis is worked out anew, so that errors do not add up. */
const exchangesBetweenInversions = 400;

/** Least cost of columns in amounts that are not negative and meet every row exactly. The basis is kept with its whole inverse. */
class RevisedSimplex {
    /** By row: what one more would cost. */
    readonly values: Float64Array;
    private readonly size: number;
    private readonly basis: Column[];
    private readonly isInBasis: Set<Column>;
    private inverse: Float64Array;
    private amounts: Float64Array;
    private exchanges = 0;

    /** @param first one column for each row, which has that row alone, once */
    constructor(
        private readonly sides: readonly number[],
        first: readonly Column[],
    ) {
        this.size = sides.length;
        this.basis = [...first];
        this.isInBasis = new Set(first);
        this.inverse = identity(this.size);
        this.amounts = Float64Array.from(sides);
        this.values = new Float64Array(this.size);
        this.price();
    }

    /** Exchanges columns until none of these saves more than `least`. */
    improveWith(columns: readonly Column[], least: number): void {
        const most = 50 * this.size + 1000;
        for (let exchange = 0; exchange < most; exchange++) {
            let [best, entering]: [number, Column | undefined] = [-least, undefined];
            for (const column of columns) {
                const saved = this.reducedCost(column);
                if (saved < best && !this.isInBasis.has(column)) [best, entering] = [saved, column];
            }
            if (!entering || !this.exchange(entering)) return;
        }
    }

    solution(): readonly { readonly column: Column; readonly amount: number }[] {
        return this.basis.flatMap((column, row) => (this.amounts[row]! > 1e-9 ? [{ column, amount: this.amounts[row]! }] : []));
    }

    private reducedCost({ cost, rows, times }: Column): number {
        let reduced = cost;
        for (let index = 0; index < rows.length; index++) reduced -= this.values[rows[index]!]! * times[index]!;
        return reduced;
    }

    /** Brings a column in for the one that first becomes none; false where none would. */
    private exchange(entering: Column): boolean {
        const { size, inverse, amounts } = this;
        const change = this.changeBy(entering);
        let [leaving, least] = [-1, Number.POSITIVE_INFINITY];
        for (let row = 0; row < size; row++) {
            if (change[row]! <= 1e-9) continue;
            const ratio = Math.max(0, amounts[row]!) / change[row]!;
            if (ratio < least - 1e-12 || (ratio < least + 1e-12 && change[row]! > change[leaving]!)) [leaving, least] = [row, ratio];
        }
        if (leaving < 0) return false;
        const pivot = change[leaving]!;
        const pivotRow = inverse.subarray(leaving * size, (leaving + 1) * size);
        for (let at = 0; at < size; at++) pivotRow[at]! /= pivot;
        amounts[leaving] = least;
        for (let row = 0; row < size; row++) {
            const factor = change[row]!;
            if (row === leaving || factor === 0) continue;
            const start = row * size;
            for (let at = 0; at < size; at++) inverse[start + at]! -= factor * pivotRow[at]!;
            amounts[row]! -= factor * least;
        }
        this.isInBasis.delete(this.basis[leaving]!);
        this.isInBasis.add(entering);
        this.basis[leaving] = entering;
        if (++this.exchanges % exchangesBetweenInversions === 0) this.invert();
        this.price();
        return true;
    }

    private changeBy({ rows, times }: Column): Float64Array {
        const { size, inverse } = this;
        const change = new Float64Array(size);
        for (let row = 0; row < size; row++) {
            let sum = 0;
            for (let index = 0; index < rows.length; index++) sum += inverse[row * size + rows[index]!]! * times[index]!;
            change[row] = sum;
        }
        return change;
    }

    private price(): void {
        const { size, inverse, values } = this;
        values.fill(0);
        for (let row = 0; row < size; row++) {
            const { cost } = this.basis[row]!;
            if (cost === 0) continue;
            const start = row * size;
            for (let at = 0; at < size; at++) values[at]! += cost * inverse[start + at]!;
        }
    }

    /** Works out the inverse of the basis by Gauss and Jordan with the largest pivots. */
    private invert(): void {
        const { size } = this;
        const matrix = new Float64Array(size * size);
        this.basis.forEach(({ rows, times }, column) => {
            rows.forEach((row, index) => {
                matrix[row * size + column] = times[index]!;
            });
        });
        const inverse = identity(size);
        for (let column = 0; column < size; column++) {
            let pivotRow = column;
            for (let row = column + 1; row < size; row++) {
                if (Math.abs(matrix[row * size + column]!) > Math.abs(matrix[pivotRow * size + column]!)) pivotRow = row;
            }
            if (Math.abs(matrix[pivotRow * size + column]!) < 1e-11) return;
            if (pivotRow !== column) {
                swapRows(matrix, size, pivotRow, column);
                swapRows(inverse, size, pivotRow, column);
            }
            const pivot = matrix[column * size + column]!;
            for (let at = column; at < size; at++) matrix[column * size + at]! /= pivot;
            for (let at = 0; at < size; at++) inverse[column * size + at]! /= pivot;
            for (let row = 0; row < size; row++) {
                const factor = matrix[row * size + column]!;
                if (row === column || factor === 0) continue;
                for (let at = column; at < size; at++) matrix[row * size + at]! -= factor * matrix[column * size + at]!;
                for (let at = 0; at < size; at++) inverse[row * size + at]! -= factor * inverse[column * size + at]!;
            }
        }
        this.inverse = inverse;
        this.amounts = Float64Array.from({ length: size }, (_, row) => {
            let sum = 0;
            for (let at = 0; at < size; at++) sum += inverse[row * size + at]! * this.sides[at]!;
            return Math.max(0, sum);
        });
    }
}

function identity(size: number): Float64Array {
    const matrix = new Float64Array(size * size);
    for (let row = 0; row < size; row++) matrix[row * size + row] = 1;
    return matrix;
}

function swapRows(matrix: Float64Array, size: number, one: number, other: number): void {
    for (let at = 0; at < size; at++) {
        const kept = matrix[one * size + at]!;
        matrix[one * size + at] = matrix[other * size + at]!;
        matrix[other * size + at] = kept;
    }
}
