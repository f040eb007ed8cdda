import { tolerance } from './tolerance.js';

/** Exact for polynomials up to the 23rd degree: the last place for an integrand that turns by a radian or two. */
const pointCount = 12;

/** Where to take a function over [-1, 1] or [0, 1], and with what weight in its integral. */
export interface QuadraturePoint {
    readonly place: number;
    readonly weight: number;
}

const points: readonly QuadraturePoint[] = legendrePoints(pointCount);

/** The points of the rule for the integral from 0 to 1 on equal panels, for those who integrate several functions at once. */
export function unitPoints(panels: number): readonly QuadraturePoint[] {
    return Array.from({ length: panels }, (_, panel) =>
        points.map(({ place, weight }) => ({ place: (panel + (1 + place) / 2) / panels, weight: weight / 2 / panels })),
    ).flat();
}

/** The integral of a smooth function, by Gauss and Legendre's rule on equal panels. */
export function integral(f: (t: number) => number, from: number, to: number, panels = 1): number {
    const half = (to - from) / panels / 2;
    let sum = 0;
    for (let panel = 0; panel < panels; panel++) {
        const middle = from + (2 * panel + 1) * half;
        for (const { place, weight } of points) {
            sum += weight * f(middle + half * place);
        }
    }
    return sum * half;
}

/** Roots of the Legendre polynomial of a degree, with the weights 2 / ((1 - x^2) P'(x)^2) (Abramowitz and Stegun, 25.4.29, from memory). */
function legendrePoints(degree: number): readonly QuadraturePoint[] {
    return Array.from({ length: degree }, (_, index) => {
        let place = Math.cos((Math.PI * (index + 0.75)) / (degree + 0.5));
        for (;;) {
            const { value, slope } = legendre(degree, place);
            const step = value / slope;
            place -= step;
            if (Math.abs(step) < tolerance.relative) {
                const final = legendre(degree, place).slope;
                return { place, weight: 2 / ((1 - place * place) * final * final) };
            }
        }
    });
}

/** The Legendre polynomial of a degree and its derivative, by its three-term recurrence. */
function legendre(degree: number, x: number): { readonly value: number; readonly slope: number } {
    let before = 1;
    let value = x;
    for (let n = 2; n <= degree; n++) {
        [before, value] = [value, ((2 * n - 1) * x * value - (n - 1) * before) / n];
    }
    return { value, slope: (degree * (before - x * value)) / (1 - x * x) };
}
