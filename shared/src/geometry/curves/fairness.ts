import { integral } from '../quadrature.js';
import type { Curve } from './curve.js';

/** What fairness is measured from: any law of curvature along a length. */
export type CurvatureLaw = Pick<Curve, 'length' | 'breaks' | 'curvatureAt' | 'curvatureRateAt'>;

/** How much a curve bends and how unevenly; lower is fairer. Kinks and jumps of curvature at breaks are not counted. */
export interface Fairness {
    /** Integral of curvature squared along the curve, 1/mm: what a batten makes least (Horn 1983, from memory). */
    readonly bendingEnergy: number;
    /** Integral of the squared change of curvature, 1/mm^3: 0 for circles (Moreton and Sequin 1992, from memory). */
    readonly curvatureVariation: number;
    /** Bending energy times the length: the same for the same shape at any size. */
    readonly scaledBendingEnergy: number;
    /** Curvature variation times the length cubed: the same for the same shape at any size. */
    readonly scaledCurvatureVariation: number;
}

/** Panels of the quadrature between two breaks. */
const panels = 8;

/** Bending energy and curvature variation of a curve, by quadrature between its breaks. */
export function fairnessOf(law: CurvatureLaw): Fairness {
    const stations = [0, ...law.breaks, law.length];
    let bendingEnergy = 0;
    let curvatureVariation = 0;
    for (let index = 0; index + 1 < stations.length; index++) {
        const from = stations[index] as number;
        const to = stations[index + 1] as number;
        bendingEnergy += integral((distance) => law.curvatureAt(distance) ** 2, from, to, panels);
        curvatureVariation += integral((distance) => law.curvatureRateAt(distance) ** 2, from, to, panels);
    }
    return {
        bendingEnergy,
        curvatureVariation,
        scaledBendingEnergy: bendingEnergy * law.length,
        scaledCurvatureVariation: curvatureVariation * law.length ** 3,
    };
}
