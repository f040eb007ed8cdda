/**
 * Layouts that get better: pieces are taken out and put back in otherwise, towards the goal of a cheaper set of sheets, by
 * S. Gardeyn and T. Wauters, "A goal-driven ruin and recreate heuristic for the 2D variable-sized bin packing problem with
 * guillotine constraints", European Journal of Operational Research 301 (2022), with the acceptance of E. K. Burke and Y. Bykov,
 * "The late acceptance hill-climbing heuristic", European Journal of Operational Research 258 (2017).
 */
import { RandomNumbers } from './random-numbers.js';
import { OpenSheet, type SheetRegion } from './sheet-region.js';

/** One blank that is to be cut; measures with one kerf added. */
export interface SinglePiece {
    /** Which of the blanks of the job. */
    readonly blank: number;
    readonly width: number;
    readonly height: number;
    readonly mayTurn: boolean;
}

/** A stock size with one kerf added to its measures. */
export interface SheetOffer {
    readonly width: number;
    readonly height: number;
    readonly cost: number;
    readonly count: number;
}

/** Sheets laid out, to be kept while the search goes on. */
export interface FoundSheets {
    readonly sheets: readonly { readonly offer: number; readonly root: SheetRegion }[];
    readonly cost: number;
    /** Which pieces found no place. */
    readonly unplaced: readonly number[];
}

interface Spot {
    readonly sheet: OpenSheet;
    readonly region: SheetRegion;
    readonly turned: boolean;
    readonly stripOfWidth: boolean;
}

type Order = (one: SinglePiece, other: SinglePiece) => number;

const area = ({ width, height }: { width: number; height: number }): number => width * height;
const longest = ({ width, height }: SinglePiece): number => Math.max(width, height);

const orders: readonly Order[] = [
    (one, other) => area(other) - area(one),
    (one, other) => area(other) - area(one),
    (one, other) => longest(other) - longest(one) || area(other) - area(one),
    (one, other) => other.height - one.height || other.width - one.width,
    (one, other) => other.width - one.width || other.height - one.height,
];

/** How many earlier states a new one is held against. */
const memory = 100;
/** How often a place is passed over, so that the same pieces do not always go to the same places. */
const blinks = 0.02;
/** How many pieces are taken out at once, at most. */
const mostTaken = 12;

export class SheetSearch {
    private readonly random: RandomNumbers;
    private sheets: OpenSheet[] = [];
    private opened: number[];
    private spent = 0;
    /** What the sheets may cost. */
    private budget = Number.POSITIVE_INFINITY;
    private unplaced: number[];
    /** Where each piece lies. */
    private readonly regions: (SheetRegion | undefined)[];
    private readonly homes: (OpenSheet | undefined)[];
    private readonly touched = new Map<OpenSheet, ReturnType<OpenSheet['remember']>>();
    private readonly earlier: number[] = [];
    private score: number;
    private steps = 0;
    private goal: 'cost' | 'offcuts' = 'cost';
    private found: FoundSheets;
    private foundOffcuts = 0;

    /**
     * @param pieces with the kerf in their measures
     * @param offers with the kerf in their measures
     * @param greatestDepth how many times a piece may be turned between cuts
     * @param seed any whole number: the same finds the same
     */
    constructor(
        private readonly pieces: readonly SinglePiece[],
        private readonly offers: readonly SheetOffer[],
        private readonly greatestDepth: number,
        seed: number,
    ) {
        this.random = new RandomNumbers(seed);
        this.regions = pieces.map(() => undefined);
        this.homes = pieces.map(() => undefined);
        this.opened = offers.map(() => 0);
        this.unplaced = pieces.map((_, index) => index);
        this.recreate(orders[0]!, 0);
        this.score = this.scoreNow();
        this.found = this.keep();
        this.tighten();
    }

    /** The best so far: the fewest left over, then the cheapest, then the one with the largest offcuts. */
    get best(): FoundSheets {
        return this.found;
    }

    /** From here on the cost stays, and the offcuts get larger. */
    lookForLargeOffcuts(): void {
        this.goal = 'offcuts';
        this.budget = this.found.cost;
        this.resume(this.found);
        this.foundOffcuts = this.offcutsNow();
        this.score = this.scoreNow();
        this.earlier.fill(this.score);
    }

    /** Takes some pieces out, puts them back, and keeps that unless it is much worse than before. */
    step(): void {
        const before = { sheets: [...this.sheets], opened: [...this.opened], spent: this.spent, unplaced: [...this.unplaced] };
        this.touched.clear();
        this.ruin();
        this.recreate(orders[this.random.below(orders.length)]!, blinks);
        const score = this.scoreNow();
        const slot = this.steps++ % memory;
        if (score <= this.score || score <= (this.earlier[slot] ?? score)) {
            this.score = score;
            this.takeNote();
        } else {
            this.sheets = before.sheets;
            this.opened = before.opened;
            this.spent = before.spent;
            this.unplaced = before.unplaced;
            for (const [sheet, state] of this.touched) {
                sheet.comeBackTo(state);
                this.settle(sheet, sheet.root);
            }
            for (const piece of before.unplaced) {
                this.homes[piece] = undefined;
                this.regions[piece] = undefined;
            }
        }
        this.earlier[slot] = this.score;
    }

    private takeNote(): void {
        const fewer = this.areaOf(this.unplaced) - this.areaOf(this.found.unplaced);
        if (this.goal === 'offcuts') {
            const offcuts = this.offcutsNow();
            if (fewer > 0 || offcuts <= this.foundOffcuts) return;
            this.foundOffcuts = offcuts;
            this.found = this.keep();
        } else if (fewer < 0 || (fewer === 0 && this.spent < this.found.cost)) {
            this.found = this.keep();
            this.tighten();
        }
    }

    private keep(): FoundSheets {
        return {
            sheets: this.sheets.map((sheet) => ({ offer: sheet.stock, root: sheet.remember().root })),
            cost: this.spent,
            unplaced: [...this.unplaced],
        };
    }

    private resume({ sheets, cost, unplaced }: FoundSheets): void {
        this.opened = this.offers.map((_, index) => sheets.filter(({ offer }) => offer === index).length);
        this.spent = cost;
        this.unplaced = [...unplaced];
        this.homes.fill(undefined);
        this.regions.fill(undefined);
        this.sheets = sheets.map(({ offer, root }) => {
            const sheet = new OpenSheet(offer, root.width, root.height);
            const free: SheetRegion[] = [];
            sheet.comeBackTo({ root: root.copyInto(free), free });
            this.settle(sheet, sheet.root);
            return sheet;
        });
    }

    /** A layout of everything is found: the next must cost less. The sheet that gives least for its cost goes first. */
    private tighten(): void {
        if (this.unplaced.length > 0) return;
        const cheapest = Math.min(...this.offers.map(({ cost }) => cost).filter((cost) => cost > 0));
        this.budget = this.spent - Math.min(cheapest, this.spent) * 1e-6;
        while (this.spent > this.budget && this.sheets.length > 0) {
            const use = (sheet: OpenSheet) => this.filledArea(sheet) / (this.offers[sheet.stock]?.cost ?? 1);
            const paid = this.sheets.filter(({ stock }) => (this.offers[stock]?.cost ?? 0) > 0);
            const worst = paid.reduce((one, other) => (use(other) < use(one) ? other : one));
            this.touch(worst);
            worst.clear(worst.root, (piece) => this.takeOut(piece));
            this.close(worst);
        }
        this.score = this.scoreNow();
        this.earlier.fill(this.score);
    }

    private filledArea(sheet: OpenSheet): number {
        return sheet.width * sheet.height - sheet.free.reduce((sum, region) => sum + area(region), 0);
    }

    private scoreNow(): number {
        return this.goal === 'cost' ? this.areaOf(this.unplaced) : this.areaOf(this.unplaced) * 1e3 - this.offcutsNow();
    }

    private areaOf(pieces: readonly number[]): number {
        let sum = 0;
        for (const piece of pieces) sum += area(this.pieces[piece]!);
        return sum;
    }

    /** Grows with the largest offcuts more than with many small ones. */
    private offcutsNow(): number {
        let sum = 0;
        for (const { free, width, height } of this.sheets) {
            for (const region of free) sum += (area(region) * area(region)) / (width * height);
        }
        return sum;
    }

    private ruin(): void {
        const placed = this.pieces.length - this.unplaced.length;
        if (placed === 0) return;
        if (this.offers.length > 1 && this.random.fraction() < 0.05) {
            this.takeSheetOut(this.sheets[this.random.below(this.sheets.length)]!);
            return;
        }
        let toTake = Math.min(placed, 1 + this.random.below(mostTaken));
        let piece = this.somePlacedPiece();
        while (toTake > 0) {
            const sheet = this.homes[piece]!;
            let region = this.regions[piece]!;
            while (region.parent && this.random.fraction() < 0.5 && countBlanks(region.parent) <= toTake) region = region.parent;
            this.touch(sheet);
            sheet.clear(region, (taken) => {
                this.takeOut(taken);
                toTake--;
            });
            if (this.pieces.length === this.unplaced.length) break;
            const near = this.random.fraction() < 0.6 ? this.pieceOn(sheet) : undefined;
            piece = near ?? this.somePlacedPiece();
        }
        for (const sheet of [...this.touched.keys()]) if (sheet.isEmpty) this.close(sheet);
    }

    private takeSheetOut(sheet: OpenSheet): void {
        this.touch(sheet);
        sheet.clear(sheet.root, (piece) => this.takeOut(piece));
        this.close(sheet);
    }

    private somePlacedPiece(): number {
        let piece = this.random.below(this.pieces.length);
        while (!this.homes[piece]) piece = (piece + 1) % this.pieces.length;
        return piece;
    }

    private pieceOn(sheet: OpenSheet): number | undefined {
        const on = blanksIn(sheet.root);
        return on[this.random.below(on.length)];
    }

    private touch(sheet: OpenSheet): void {
        if (!this.touched.has(sheet)) this.touched.set(sheet, sheet.remember());
    }

    private takeOut(piece: number): void {
        this.homes[piece] = undefined;
        this.regions[piece] = undefined;
        this.unplaced.push(piece);
    }

    private close(sheet: OpenSheet): void {
        this.sheets.splice(this.sheets.indexOf(sheet), 1);
        this.opened[sheet.stock]!--;
        this.spent -= this.offers[sheet.stock]!.cost;
    }

    /** Says of each piece on a sheet where it lies. */
    private settle(sheet: OpenSheet, region: SheetRegion): void {
        if (region.blank >= 0) {
            this.homes[region.blank] = sheet;
            this.regions[region.blank] = region;
        }
        for (const part of region.parts) this.settle(sheet, part);
    }

    private recreate(order: Order, passedOver: number): void {
        const waiting = this.unplaced.sort((one, other) => order(this.pieces[one]!, this.pieces[other]!) || one - other);
        const hopeless = new Set<number>();
        this.unplaced = waiting.filter((index) => {
            const piece = this.pieces[index]!;
            if (hopeless.has(piece.blank)) return true;
            const spot = this.bestSpot(piece, passedOver) ?? this.spotOnNewSheet(piece);
            if (!spot) {
                hopeless.add(piece.blank);
                return true;
            }
            const [width, height] = spot.turned ? [piece.height, piece.width] : [piece.width, piece.height];
            this.touch(spot.sheet);
            this.regions[index] = spot.sheet.place(spot.region, index, width, height, spot.turned, spot.stripOfWidth);
            this.homes[index] = spot.sheet;
            return false;
        });
    }

    /** Where a piece breaks up the free regions least. This is where nearly all the time goes: nothing is made here that is not needed. */
    private bestSpot(piece: SinglePiece, passedOver: number): Spot | undefined {
        let [sheet, region]: [OpenSheet | undefined, SheetRegion | undefined] = [undefined, undefined];
        let [isTurned, ofWidth] = [false, false];
        let least = Number.POSITIVE_INFINITY;
        const turns = piece.mayTurn && piece.width !== piece.height ? 2 : 1;
        for (const open of this.sheets) {
            for (const free of open.free) {
                const whole = worth(free.width, free.height);
                if (whole === 0) continue;
                for (let turn = 0; turn < turns; turn++) {
                    const width = turn === 0 ? piece.width : piece.height;
                    const height = turn === 0 ? piece.height : piece.width;
                    if (width > free.width || height > free.height) continue;
                    if (passedOver > 0 && this.random.fraction() < passedOver) continue;
                    const beside = free.width - width;
                    const above = free.height - height;
                    const lossOfWidth = whole - worth(beside, free.height) - worth(width, above);
                    if (lossOfWidth < least && this.isShallow(free, true, beside > 0, above > 0)) {
                        [least, sheet, region, isTurned, ofWidth] = [lossOfWidth, open, free, turn === 1, true];
                    }
                    const lossOfHeight = whole - worth(free.width, above) - worth(beside, height);
                    if (lossOfHeight < least && this.isShallow(free, false, above > 0, beside > 0)) {
                        [least, sheet, region, isTurned, ofWidth] = [lossOfHeight, open, free, turn === 1, false];
                    }
                }
            }
        }
        return sheet && region && { sheet, region, turned: isTurned, stripOfWidth: ofWidth };
    }

    /** Whether a piece, cut out so, is reached with as many turns as may be, and a last trim. What lies beside a trim is waste. */
    private isShallow(region: SheetRegion, alongWidth: boolean, cutsFirst: boolean, cutsThen: boolean): boolean {
        if (this.greatestDepth === Number.POSITIVE_INFINITY) return true;
        const { depth, parent } = region;
        const joins = parent !== undefined && parent.alongWidth === alongWidth;
        const turns = depth + (cutsFirst && !joins ? 1 : 0) + (cutsThen && !(!cutsFirst && parent?.alongWidth === !alongWidth) ? 1 : 0);
        return depth <= this.greatestDepth && turns <= this.greatestDepth + 1;
    }

    private spotOnNewSheet(piece: SinglePiece): Spot | undefined {
        const fitting = this.offers.flatMap((offer, stock) => {
            const upright = piece.width <= offer.width && piece.height <= offer.height;
            const turned = piece.mayTurn && piece.height <= offer.width && piece.width <= offer.height;
            const isThere = this.opened[stock]! < offer.count && this.spent + offer.cost <= this.budget;
            return (upright || turned) && isThere ? [stock] : [];
        });
        if (fitting.length === 0) return undefined;
        const price = (stock: number) => this.offers[stock]!.cost / area(this.offers[stock]!);
        const cheapest = fitting.reduce((one, other) => (price(other) < price(one) ? other : one));
        const stock = this.steps === 0 || this.random.fraction() < 0.5 ? cheapest : fitting[this.random.below(fitting.length)]!;
        const { width, height, cost } = this.offers[stock]!;
        const sheet = new OpenSheet(stock, width, height);
        const turned = piece.mayTurn && (piece.width > width || piece.height > height || (this.steps > 0 && this.turnFits(piece, sheet)));
        this.sheets.push(sheet);
        this.opened[stock]!++;
        this.spent += cost;
        const beside = width - (turned ? piece.height : piece.width);
        const above = height - (turned ? piece.width : piece.height);
        return { sheet, region: sheet.root, turned, stripOfWidth: beside * height > above * width };
    }

    private turnFits(piece: SinglePiece, sheet: OpenSheet): boolean {
        return piece.height <= sheet.width && piece.width <= sheet.height && this.random.fraction() < 0.5;
    }
}

/** What a free region is worth: a large one more than two of half its area. */
function worth(width: number, height: number): number {
    const size = width * height;
    return size * size;
}

function countBlanks(region: SheetRegion): number {
    if (region.blank >= 0) return 1;
    let count = 0;
    for (const part of region.parts) count += countBlanks(part);
    return count;
}

function blanksIn(region: SheetRegion): number[] {
    return region.blank >= 0 ? [region.blank] : region.parts.flatMap(blanksIn);
}
