/** Flat parts whose front edge is cut to a curve, and what their bands take off it. */
import type { Casework, CurveModel, Edge, Part } from '../../casework/index.js';
import type { Curve } from '../../geometry/index.js';
import { real } from '../../quantity/index.js';
import { isSound } from './sound-parts.js';

export interface CurvedFront {
    readonly part: Part;
    readonly line: CurveModel;
    readonly curve: Curve;
    /** The treatments of its front edge. */
    readonly edges: readonly Edge[];
    /** What they take off the core there, in mm. */
    readonly takesOff: number;
}

/** Every sound part whose front follows a curve that could be made. */
export function* curvedFrontsIn(casework: Casework): Generator<CurvedFront> {
    const lines = new Map(casework.curves.map((line) => [line.path, line]));
    for (const part of casework.parts.values()) {
        const line = part.frontCurve === undefined ? undefined : lines.get(part.frontCurve);
        if (!line?.curve || !isSound(part)) continue;
        const edges = part.edges.filter(({ name }) => name === 'front');
        const takesOff = edges.reduce((sum, edge) => sum + (edge.takesOff ? real.toNumber(edge.takesOff.quantity.value) : 0), 0);
        yield { part, line, curve: line.curve, edges, takesOff };
    }
}
