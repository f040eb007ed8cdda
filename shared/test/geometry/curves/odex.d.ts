/** The part of the odex package that the tests use: it ships no declarations of its own that pass under strict settings. */
declare module 'odex' {
    export class Solver {
        constructor(dimension: number);
        absoluteTolerance: number;
        relativeTolerance: number;
        initialStepSize: number;
        maxSteps: number;
        solve(
            derivative: (x: number, y: number[]) => number[],
            from: number,
            initial: number[],
            to: number,
        ): { readonly y: number[]; readonly outcome: number };
    }
    export const Outcome: { readonly Converged: number };
}
