/** Wood that is bent to a curve: bands and nosings on curved fronts, and boards that follow a plan. */
import type { Casework, CurveModel, EdgeStep, Measure, Part, Span } from '../../casework/index.js';
import type { Curve } from '../../geometry/index.js';
import { amountOf, covers, edgeStepsIn } from './edge-steps.js';
import { isSound, millimetresOf } from './sound-parts.js';

export interface BentWood {
    readonly part: Part;
    readonly line: CurveModel;
    /** Its outer face, on the side of the room. */
    readonly curve: Curve;
    /** `the band of 1/8in on the front edge of`, which its part's name follows, without its thickness. */
    readonly called: (thickness: string) => string;
    readonly thickness: Measure;
    /** Declaration id. */
    readonly material: string | undefined;
    readonly span: Span;
}

export function* bentWoodIn(casework: Casework): Generator<BentWood> {
    const lines = new Map(casework.curves.map((line) => [line.path, line]));
    const lineOf = (part: Part) => (part.frontCurve === undefined ? undefined : lines.get(part.frontCurve));
    for (const { part, edge, step } of edgeStepsIn(casework)) {
        const line = lineOf(part);
        if (!line?.curve || edge.name !== 'front' || !covers(step) || !step.amount || amountOf(step) === undefined) continue;
        yield { part, line, curve: line.curve, called: stepCalled(step), thickness: step.amount, material: step.material, span: edge.span };
    }
    for (const part of casework.parts.values()) {
        const line = lineOf(part);
        if (!part.bent || !line?.curve || !isSound(part)) continue;
        // layers are bent one by one, and glued up in the bend
        for (const { thickness, material } of part.layers) {
            if (!thickness || millimetresOf(thickness) === 0) continue;
            yield { part, line, curve: line.curve, called: (of) => `the board of ${of} of`, thickness, material, span: part.nameSpan };
            break;
        }
    }
}

function stepCalled({ does }: EdgeStep): BentWood['called'] {
    return (thickness) => `the ${does} of ${thickness} on the front edge of`;
}

/** Radius of the face on the inside of the bend: its inner face on a belly, its outer one in a hollow. */
export function insideRadius(curve: Curve, thickness: number): number {
    const { radius, distance } = curve.leastRadius();
    return curve.curvatureAt(distance) < 0 ? radius - thickness : radius;
}

/** Radius of its middle. */
export function middleRadius(curve: Curve, thickness: number): number {
    const inside = insideRadius(curve, thickness);
    return inside + thickness / 2;
}
