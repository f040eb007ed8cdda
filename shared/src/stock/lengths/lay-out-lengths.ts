/** Lengths cut from boards at the least cost: a good layout at once, better ones after, and what no layout can cost less than. */
import { RandomNumbers } from '../random-numbers.js';
import { PatternFinder } from './best-pattern.js';
import { type FractionalBoards, type FractionalSolution, fractionalBoards } from './fractional-boards.js';
import { fullBoards, greedyBoards, type WholeBoards } from './greedy-boards.js';
import type { CutBoard, LengthJob, LengthLayout, LengthProblem, Pattern } from './length-job.js';

export interface LayOutLengthsOptions {
    /** How often a layout is built from the fractional one; the same number finds the same. With none, the first layout and its bound by length. */
    readonly rounds: number;
    /** Asked again and again whether to go on; without it all rounds are made. */
    readonly goesOn?: () => boolean;
    /** Any whole number: another finds others. */
    readonly seed?: number;
}

/**
 * Lays out lengths on boards. Pieces longer than every board, or for which the boards do not suffice, are left over and counted.
 *
 * Each round takes the whole boards out of the fractional solution, rounds some of the others up, and solves the rest again: diving, as in
 * J. Desrosiers and M. E. Luebbecke, "A primer in column generation", 2005.
 */
export function layOutLengths(job: LengthJob, { rounds, goesOn = () => true, seed = 1 }: LayOutLengthsOptions): LengthLayout {
    const layouts = new LengthSearch(problemOf(job), seed);
    for (let round = 0; round < rounds && !layouts.isProved && goesOn(); round++) layouts.dive(round, goesOn);
    return layouts.describe(job);
}

/** Kinds of one length together, the longest first, those that fit no board left out. */
interface Prepared extends LengthProblem {
    readonly demand: readonly number[];
    readonly supply: readonly number[];
    /** By kind: the pieces of the job. */
    readonly pieces: readonly (readonly number[])[];
}

function problemOf({ pieces, stock, kerf }: LengthJob): Prepared {
    const stocks = stock.map(({ length, cost, count = Number.POSITIVE_INFINITY }) => ({ length: length + kerf, cost, count }));
    const longest = Math.max(0, ...stocks.filter(({ count }) => count > 0).map(({ length }) => length));
    const byLength = new Map<number, number[]>();
    pieces.forEach(({ length, count }, index) => {
        if (count <= 0 || length + kerf > longest) return;
        const same = byLength.get(length + kerf);
        if (same) same.push(index);
        else byLength.set(length + kerf, [index]);
    });
    const kinds = [...byLength].sort(([one], [other]) => other - one);
    return {
        lengths: kinds.map(([length]) => length),
        stocks,
        demand: kinds.map(([, same]) => same.reduce((sum, index) => sum + pieces[index]!.count, 0)),
        supply: stocks.map(({ count }) => count),
        pieces: kinds.map(([, same]) => same),
    };
}

/** From this share on, a fractional board is rounded up together with others. */
const nearlyWhole = 0.9;
const accuracy = 1e-6;
/** Of no more pieces than these, each board is filled as well as can be. */
const mostToFill = 60;

class LengthSearch {
    private readonly random: RandomNumbers;
    private readonly finder: PatternFinder;
    private readonly known: Pattern[] = [];
    private readonly penalty: number;
    private best: WholeBoards;
    private bestCost: number;
    private bestLeft: number;
    private least: number;
    private atRoot: FractionalSolution | undefined;

    constructor(
        private readonly problem: Prepared,
        seed: number,
    ) {
        this.random = new RandomNumbers(seed);
        this.finder = new PatternFinder(problem.lengths);
        const dearest = Math.max(1e-9, ...problem.stocks.map(({ cost }) => cost));
        this.penalty = (2 * dearest) / Math.min(...problem.lengths, 1e12);
        this.best = greedyBoards(problem, problem.demand, problem.supply);
        this.bestCost = this.costOf(this.best.boards);
        this.bestLeft = this.lengthOf(this.best.unplaced);
        this.known.push(...this.best.boards.map(({ pattern }) => pattern));
        this.least = this.wholeCost(this.costByLength());
    }

    /** Whether nothing cheaper can be found. */
    get isProved(): boolean {
        return this.bestLeft === 0 && this.bestCost <= this.least + accuracy;
    }

    /** One layout from the fractional solution; after the first one with some chance in it. */
    dive(round: number, goesOn: () => boolean): void {
        const demand = [...this.problem.demand];
        const supply = [...this.problem.supply];
        const taken: { pattern: Pattern; times: number }[] = [];
        let isFirst = true;
        while (demand.some((count) => count > 0)) {
            const solution = isFirst && this.atRoot ? this.atRoot : this.solve(demand, supply, goesOn);
            if (isFirst) this.prove(solution);
            isFirst = false;
            if (this.isProved) return;
            if (solution.isOptimal) {
                const spent = this.costOf(taken) + this.costOf(solution.boards);
                if (this.bestLeft === 0 && this.wholeCost(spent) >= this.bestCost - accuracy) return;
            }
            const fixed = this.roundBoards(solution.boards, demand, supply, round > 0);
            taken.push(...fixed);
            this.complete(taken, demand, supply);
            if (fixed.length === 0 || this.isProved || !goesOn()) return;
        }
    }

    describe(job: LengthJob): LengthLayout {
        const unplaced = job.pieces.map(({ count }) => Math.max(0, count));
        const waiting = this.problem.pieces.map((pieces) => [...pieces]);
        const boards = new Map<string, CutBoard>();
        const byFilling = [...this.best.boards].sort((one, other) => one.pattern.stock - other.pattern.stock || byKinds(one, other));
        for (const { pattern, times } of byFilling) {
            for (let board = 0; board < times; board++) {
                const cuts = this.cutsOf(pattern, waiting, unplaced);
                if (cuts.length === 0) continue;
                const used = cuts.reduce((sum, { piece, times: often }) => sum + often * (job.pieces[piece]!.length + job.kerf), 0);
                const left = Math.max(0, job.stock[pattern.stock]!.length - used);
                const key = JSON.stringify([pattern.stock, cuts]);
                boards.set(key, { stock: pattern.stock, times: (boards.get(key)?.times ?? 0) + 1, cuts, left });
            }
        }
        return { boards: [...boards.values()], cost: this.bestCost, unplaced, leastCost: this.least };
    }

    /** Says which pieces a board gives: of several of one length those first that come first in the job. */
    private cutsOf({ kinds, times }: Pattern, waiting: readonly number[][], unplaced: number[]): CutBoard['cuts'] {
        const cuts: { piece: number; times: number }[] = [];
        kinds.forEach((kind, index) => {
            for (let left = times[index]!; left > 0; ) {
                const piece = waiting[kind]![0];
                if (piece === undefined) return;
                const taken = Math.min(left, unplaced[piece]!);
                if (taken > 0) cuts.push({ piece, times: taken });
                unplaced[piece]! -= taken;
                left -= taken;
                if (unplaced[piece] === 0) waiting[kind]!.shift();
            }
        });
        return cuts;
    }

    private solve(demand: readonly number[], supply: readonly number[], goesOn: () => boolean): FractionalSolution {
        return fractionalBoards(this.problem, demand, supply, this.known, this.finder, this.penalty, goesOn);
    }

    /** The least cost by the values of the pieces: whatever they are, all pieces cost at least what they are worth when no board holds more worth than it costs. */
    private prove(solution: FractionalSolution): void {
        if (this.atRoot) return;
        if (solution.isOptimal) this.atRoot = solution;
        const { stocks, demand, supply } = this.problem;
        let worth = demand.reduce((sum, count, kind) => sum + count * solution.values[kind]!, 0);
        let share = 1;
        stocks.forEach(({ length, cost }, stock) => {
            if (supply[stock]! <= 0) return;
            const most = this.finder.best(stock, length, solution.values, demand).value;
            if (Number.isFinite(supply[stock])) worth -= Math.max(0, most - cost) * supply[stock]!;
            else if (most > cost) share = Math.min(share, cost / most);
        });
        this.least = Math.max(this.least, this.wholeCost(share * worth));
    }

    /** Takes whole boards out of a fractional solution, and rounds up what is nearly one, or else one of them. */
    private roundBoards(
        boards: readonly FractionalBoards[],
        demand: number[],
        supply: number[],
        byChance: boolean,
    ): readonly { pattern: Pattern; times: number }[] {
        const taken: { pattern: Pattern; times: number }[] = [];
        const take = (pattern: Pattern, wanted: number) => {
            const times = pattern.kinds.reduce(
                (most, kind, index) => Math.min(most, Math.floor(demand[kind]! / pattern.times[index]!)),
                Math.min(wanted, supply[pattern.stock]!),
            );
            if (times <= 0) return;
            taken.push({ pattern, times });
            supply[pattern.stock]! -= times;
            pattern.kinds.forEach((kind, index) => {
                demand[kind]! -= times * pattern.times[index]!;
            });
        };
        const rest = boards.map(({ pattern, times }) => {
            const whole = Math.floor(times + accuracy);
            if (whole > 0) take(pattern, whole);
            return { pattern, share: Math.max(0, times - whole) };
        });
        const order = rest
            .map((one) => ({ ...one, rank: one.share * (byChance ? 0.4 + 0.6 * this.random.fraction() : 1) }))
            .sort((one, other) => other.rank - one.rank);
        for (const { pattern, share } of order) {
            if (share < accuracy) continue;
            if (taken.length === 0 || share > nearlyWhole) take(pattern, 1);
        }
        return taken;
    }

    /** Cuts what is still wanted from boards at once, and keeps the whole if it is the best so far. */
    private complete(taken: readonly { pattern: Pattern; times: number }[], demand: readonly number[], supply: readonly number[]): void {
        this.keep(taken, greedyBoards(this.problem, demand, supply));
        const pieces = demand.reduce((sum, count) => sum + count, 0);
        if (pieces <= mostToFill) this.keep(taken, fullBoards(this.problem, demand, supply, this.finder));
    }

    private keep(taken: WholeBoards['boards'], rest: WholeBoards): void {
        const boards = [...taken, ...rest.boards];
        const [left, cost] = [this.lengthOf(rest.unplaced), this.costOf(boards)];
        if (left > this.bestLeft || (left === this.bestLeft && cost >= this.bestCost)) return;
        this.best = { boards, unplaced: rest.unplaced };
        this.bestLeft = left;
        this.bestCost = cost;
    }

    private costOf(boards: readonly FractionalBoards[]): number {
        return boards.reduce((sum, { pattern, times }) => sum + times * this.problem.stocks[pattern.stock]!.cost, 0);
    }

    private lengthOf(counts: readonly number[]): number {
        return counts.reduce((sum, count, kind) => sum + count * this.problem.lengths[kind]!, 0);
    }

    /** What all lengths cost in the cheapest boards by the length, those on hand first. */
    private costByLength(): number {
        let open = this.lengthOf(this.problem.demand);
        let cost = 0;
        const byPrice = [...this.problem.stocks].sort((one, other) => one.cost / one.length - other.cost / other.length);
        for (const stock of byPrice) {
            const used = Math.min(open, stock.length * stock.count);
            cost += (used / stock.length) * stock.cost;
            open -= used;
        }
        return cost;
    }

    /** The next cost that whole boards can have, where all costs are multiples of one. */
    private wholeCost(cost: number): number {
        const costs = this.problem.stocks.map((stock) => stock.cost).filter((one) => one > 0);
        const [first] = costs;
        if (first === undefined) return 0;
        const step = costs.every((one) => one === first)
            ? first
            : costs.every(Number.isInteger)
              ? costs.reduce(greatestDivisor)
              : undefined;
        return step === undefined ? cost : Math.ceil(cost / step - accuracy) * step;
    }
}

function greatestDivisor(one: number, other: number): number {
    return other === 0 ? one : greatestDivisor(other, one % other);
}

function byKinds(one: { readonly pattern: Pattern }, other: { readonly pattern: Pattern }): number {
    const [a, b] = [one.pattern.kinds, other.pattern.kinds];
    for (let index = 0; index < Math.max(a.length, b.length); index++) {
        const difference = (a[index] ?? -1) - (b[index] ?? -1);
        if (difference !== 0) return difference;
    }
    return 0;
}
