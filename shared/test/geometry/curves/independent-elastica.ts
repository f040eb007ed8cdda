import { Outcome, Solver } from 'odex';

/** Integrates a system of differential equations with Hairer and Wanner's ODEX, to about the thirteenth place. */
export function integrate(
    derivative: (x: number, y: number[]) => number[],
    initial: readonly number[],
    to: number,
    from = 0,
): readonly number[] {
    const solver = new Solver(initial.length);
    solver.absoluteTolerance = 1e-13;
    solver.relativeTolerance = 1e-13;
    solver.initialStepSize = 1e-3;
    const { y, outcome } = solver.solve(derivative, from, [...initial], to);
    if (outcome !== Outcome.Converged) {
        throw new Error(`the differential equations did not converge (outcome ${outcome})`);
    }
    return y;
}

/** Complete elliptic integrals of the first and second kind from their definitions, for modulus sin(alpha / 2). */
export function integralsByQuadrature(alpha: number): { readonly first: number; readonly second: number } {
    const squared = Math.sin(alpha / 2) ** 2;
    const [first, second] = integrate(
        (angle) => {
            const root = Math.sqrt(1 - squared * Math.sin(angle) ** 2);
            return [1 / root, root];
        },
        [0, 0],
        Math.PI / 2,
    ) as [number, number];
    return { first, second };
}

/** A strip of length 1 pulled together by a string: from the middle, B theta' = M = P y, with `load` = P / B. */
export interface SprungStrip {
    readonly chord: number;
    readonly rise: number;
    readonly load: number;
}

/**
 * The strip whose end stands at an angle to the string, found from the differential equation alone.
 *
 * With pull P / B = 1 the angle to the string obeys theta'' = -sin(theta), theta = alpha and theta' = 0 at the end; it is
 * followed to the middle, where theta = 0, and the result scaled to length 1.
 */
export function stripOfEndAngle(alpha: number): SprungStrip {
    const follow = (arc: number) =>
        integrate(
            (_, [angle, curvature]) => [
                curvature as number,
                -Math.sin(angle as number),
                Math.cos(angle as number),
                Math.sin(angle as number),
            ],
            [alpha, 0, 0, 0],
            arc,
        ) as [number, number, number, number];
    let half = integralsByQuadrature(alpha).first;
    // The quadrature only starts the search for the middle; the equation itself ends it.
    for (let count = 0; count < 5; count++) {
        const [angle, curvature] = follow(half);
        half -= angle / curvature;
    }
    const [, , along, height] = follow(half);
    return { chord: along / half, rise: height / (2 * half), load: (2 * half) ** 2 };
}

/** Points of a strip of length 1 at equal steps from its middle to its end: along the string, and above it. */
export function stripPoints(alpha: number, count: number): readonly { readonly along: number; readonly height: number }[] {
    const strip = stripOfEndAngle(alpha);
    const greatest = 2 * Math.sqrt(strip.load) * Math.sin(alpha / 2);
    return Array.from({ length: count + 1 }, (_, index) => {
        if (index === 0) {
            return { along: 0, height: strip.rise };
        }
        const [, , along, drop] = integrate(
            (_distance, [angle, curvature]) => [
                curvature as number,
                -strip.load * Math.sin(angle as number),
                Math.cos(angle as number),
                Math.sin(angle as number),
            ],
            [0, greatest, 0, 0],
            (0.5 * index) / count,
        ) as [number, number, number, number];
        return { along, height: strip.rise - drop };
    });
}
