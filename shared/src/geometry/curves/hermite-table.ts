/**
 * A smooth function kept as values and slopes at equally spaced abscissas, with a cubic between neighbours.
 *
 * It only gives good first guesses: what is exact is found from there.
 */
export class HermiteTable {
    private readonly cell: number;

    /**
     * @param values at `from`, at `to` and at equal steps between
     * @param slopes of the function at the same places
     */
    constructor(
        private readonly from: number,
        to: number,
        private readonly values: readonly number[],
        private readonly slopes: readonly number[],
    ) {
        this.cell = (to - from) / (values.length - 1);
    }

    at(x: number): number {
        const steps = (x - this.from) / this.cell;
        const index = Math.min(Math.max(Math.floor(steps), 0), this.values.length - 2);
        const share = steps - index;
        const left = 1 - share;
        const before = this.values[index] as number;
        const after = this.values[index + 1] as number;
        const slopes = (this.slopes[index] as number) * left - (this.slopes[index + 1] as number) * share;
        return before * left * left * (1 + 2 * share) + after * share * share * (1 + 2 * left) + slopes * this.cell * share * left;
    }
}
