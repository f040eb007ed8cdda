/** A strip that is bent to a bow by a string. Millimetres, newtons, megapascals. */
import type { BowStrip } from '../geometry/index.js';
import { outerStrain } from './bending-limits.js';

/** Of a rectangle: thickness in the plane of the bend, width square to it. */
interface StripSection {
    readonly thickness: number;
    readonly width: number;
}

/**
 * The tabulated modulus of elasticity of a bending test includes the deflection by shear at a span of 14 depths; bending alone is a tenth
 * stiffer (Wood Handbook FPL-GTR-282, Table 5-3b, note c). A strip is so slender that shear does not count.
 */
const withoutShear = 1.1;

/** Modulus of elasticity times second moment of area, in N mm^2. */
function flexuralRigidity({ thickness, width }: StripSection, modulusOfElasticity: number): number {
    return (withoutShear * modulusOfElasticity * width * thickness ** 3) / 12;
}

export interface BentStrip {
    /** Pull of the string, in newtons; undefined while width or stiffness is not known. */
    readonly pull: number | undefined;
    /** Of the outermost fibres, at the middle of the bow. */
    readonly strain: number;
}

/**
 * What a bow asks of a strip: its pull is loadRatio pi^2 B / length^2 with B its flexural rigidity (elastica with pinned ends: Timoshenko
 * and Gere, Theory of Elastic Stability, 2nd ed., section 2.7), its greatest strain is that of its outer fibres at the middle.
 */
export function bentStrip(
    { length, loadRatio, greatestCurvature }: Pick<BowStrip, 'length' | 'loadRatio' | 'greatestCurvature'>,
    thickness: number,
    stiffness: { readonly width: number; readonly modulusOfElasticity: number } | undefined,
): BentStrip {
    const rigidity = stiffness && flexuralRigidity({ thickness, width: stiffness.width }, stiffness.modulusOfElasticity);
    return {
        pull: rigidity === undefined ? undefined : (loadRatio * Math.PI ** 2 * rigidity) / length ** 2,
        strain: outerStrain(thickness, 1 / greatestCurvature),
    };
}
