import { tolerance } from '../tolerance.js';
import { type BowShape, completeEllipticIntegrals } from './elastica.js';

/** A place on a bow of strip length 1, seen with its string level and its middle over the origin. */
export interface ElasticaPlace {
    /** Along the string from its middle. */
    readonly along: number;
    /** Square to the string. */
    readonly height: number;
    /** Sine of half the angle by which the strip has turned downwards since the middle. */
    readonly halfTurnSine: number;
}

/**
 * Jacobi's functions along one bow, by their Fourier series in the nome q = exp(-pi K'/K).
 *
 * With v = pi (distance from the middle), from -pi/2 to pi/2, and u = 2Kv/pi:
 * along = (2 E(am u) - u) / 2K, height = (k/K) cn u, half-turn sine = k sn u (the elastica, as in `BowShape`), and
 * E(am u) = Eu/K + (2 pi/K) sum q^n/(1 - q^2n) sin 2nv, cn u = (2 pi/kK) sum q^(n+1/2)/(1 + q^(2n+1)) cos (2n+1)v,
 * sn u likewise with 1 - q^(2n+1) and sines (Abramowitz and Stegun, 16.23 and 17.4.38, from memory). The series end where a
 * term no longer changes the sum, so they are exact to rounding, and their coefficients are found once for a bow.
 */
export class ElasticaSeries {
    private readonly drift: number;
    private readonly alongTerms: readonly number[];
    private readonly heightTerms: readonly number[];
    private readonly sineTerms: readonly number[];

    constructor(shape: BowShape) {
        const { first } = shape.integrals;
        const nome = nomeOf(shape);
        const along: number[] = [];
        const height: number[] = [];
        const sine: number[] = [];
        const scale = (2 * Math.PI) / first;
        for (let n = 0; n === 0 || nome ** n > tolerance.convergence / 8; n++) {
            const odd = nome ** (2 * n + 1);
            height.push(((scale / first) * nome ** (n + 0.5)) / (1 + odd));
            sine.push((scale * nome ** (n + 0.5)) / (1 - odd));
            along.push(((scale / first) * nome ** (n + 1)) / (1 - nome ** (2 * n + 2)));
        }
        this.drift = shape.chord / Math.PI;
        this.alongTerms = along;
        this.heightTerms = height;
        this.sineTerms = sine;
    }

    /** The place at a share v of the half turn, -pi/2 at one end of the strip and pi/2 at the other. All sums by Clenshaw's scheme. */
    at(v: number): ElasticaPlace {
        const sine = Math.sin(v);
        const cosine = Math.cos(v);
        const sineTwice = 2 * sine * cosine;
        const factor = 2 - 4 * sine * sine;
        let along = 0;
        let alongNext = 0;
        let height = 0;
        let heightNext = 0;
        let turn = 0;
        let turnNext = 0;
        for (let n = this.alongTerms.length - 1; n >= 0; n--) {
            const a = (this.alongTerms[n] as number) + factor * along - alongNext;
            alongNext = along;
            along = a;
            const h = (this.heightTerms[n] as number) + factor * height - heightNext;
            heightNext = height;
            height = h;
            const t = (this.sineTerms[n] as number) + factor * turn - turnNext;
            turnNext = turn;
            turn = t;
        }
        return {
            along: this.drift * v + along * sineTwice,
            height: (height - heightNext) * cosine,
            halfTurnSine: (turn + turnNext) * sine,
        };
    }
}

/** Jacobi's nome, exp(-pi K'/K) with K' of the complementary modulus. */
function nomeOf(shape: BowShape): number {
    if (shape.modulus === 0) {
        return 0;
    }
    const complementary = completeEllipticIntegrals(Math.cos(shape.endAngle / 2), shape.modulus);
    return Math.exp((-Math.PI * complementary.first) / shape.integrals.first);
}
