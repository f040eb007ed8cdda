/** The shapes that want a form: boards that are bent to a line, one form for all that are alike. */
import type { Casework, CurveModel, Part } from '../casework/index.js';
import { type Curve, continuedCurve, parallelCurve, tolerance } from '../geometry/index.js';
import { real } from '../quantity/index.js';

/** What one form is of. Millimetres, in the curve's own coordinates. */
export interface FormShape {
    /** At least one. */
    readonly parts: readonly Part[];
    readonly line: CurveModel;
    /** The face of the board that lies on the form, the one on the inside of the bend, going on past its ends. */
    readonly face: Curve;
    /** The other face, as the piece stands when it is done. */
    readonly outer: Curve;
    /** On which side of the board the form is. */
    readonly lies: 'behind' | 'before';
    /** Where the finished piece begins along the width, and how far it goes. */
    readonly start: number;
    readonly length: number;
    /** What it is left long at each end. */
    readonly long: number;
    readonly thickness: number;
    readonly layers: number;
    /** How wide the board is, so how high the form. */
    readonly height: number;
}

/** Every form, in the order in which the curves and their parts are built. */
export function formShapes(casework: Casework): readonly FormShape[] {
    const shapes = new Map<string, FormShape>();
    for (const line of casework.curves) {
        for (const path of line.parts) {
            const part = casework.parts.get(path);
            const shape = part && formOf(part, line, casework);
            if (!shape) continue;
            const key = sameness(shape);
            const known = shapes.get(key);
            shapes.set(key, known ? { ...known, parts: [...known.parts, part] } : shape);
        }
    }
    return [...shapes.values()];
}

function formOf(part: Part, line: CurveModel, casework: Casework): FormShape | undefined {
    const { curve } = line;
    const corner = casework.assemblies.find(({ path }) => path === line.assembly)?.room?.least;
    const measure = part.sizes.finished.thickness;
    if (!curve || !corner || !part.bent || !measure) return undefined;
    const { least, most } = part.box;
    const [start, length] = [least.x - corner.x, most.x - least.x];
    const thickness = real.toNumber(measure.quantity.value);
    const long = real.toNumber(casework.shop.bentLong.quantity.value);
    const back = parallelCurve(curve, thickness);
    if (!back.ok || !(length > tolerance.fit)) return undefined;
    const over = { from: start - long, to: start + length + long };
    const [front, behind] = [continuedCurve(curve, over), continuedCurve(back.curve, over)];
    const isHollow = curve.curvatureAt(curve.leastRadius().distance) > tolerance.curvature;
    return {
        parts: [part],
        line,
        face: isHollow ? front : behind,
        outer: isHollow ? behind : front,
        lies: isHollow ? 'before' : 'behind',
        start,
        length,
        long,
        thickness,
        layers: part.layers.length,
        height: most.z - least.z,
    };
}

/** Shapes with one key have one form. */
function sameness({ line, face, start, length, long, thickness, layers, height }: FormShape): string {
    const depths = [0, 0.25, 0.5, 0.75, 1].map((share) => face.valueAt(start + share * length).value);
    const numbers = [start, length, long, thickness, layers, height, ...depths];
    return [line.follows?.path ?? line.path, ...numbers.map((number) => number.toFixed(4))].join(' ');
}
