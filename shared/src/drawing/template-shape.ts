/** The shapes that want a template: flat parts whose front follows a curve, one shape for all that are alike or mirror images. */
import type { Casework, CurveModel, EdgeName, Part, Path } from '../casework/index.js';
import { type Curve, type Interval, parallelCurve, tolerance } from '../geometry/index.js';
import { dimension, real } from '../quantity/index.js';

/** A part that another meets with an edge, as it lies on the template. */
export interface JointPosition {
    readonly name: string;
    /** Its two faces, along the template. */
    readonly along: Interval;
    /** From its back to its front. */
    readonly across: Interval;
}

/** A rabbet along the back edge. */
export interface BackRabbet {
    readonly width: number;
    readonly depth: number;
}

/**
 * What one template is of. Millimetres; `along` runs with the height (or width) from the low end of the part, `across` with the depth from
 * its back edge.
 */
export interface TemplateShape {
    /** At least one. */
    readonly parts: readonly Part[];
    readonly over: CurveModel['over'];
    readonly line: CurveModel;
    /** The finished front, in the curve's own coordinates: add `start` to what is along, and `back` to what is across. */
    readonly finished: Curve;
    /** The front without its bands; undefined where they are too thick to leave a line. */
    readonly core: Curve | undefined;
    readonly start: number;
    readonly back: number;
    readonly length: number;
    /** What bands take off each edge. */
    readonly takesOff: Readonly<Record<'front' | 'back' | 'low' | 'high', number>>;
    readonly joints: readonly JointPosition[];
    readonly rabbet: BackRabbet | undefined;
}

const edgesAlong = { height: { low: 'bottom', high: 'top' }, width: { low: 'left', high: 'right' } } as const;
const axisOf = { height: 'z', width: 'x' } as const;
/** A curve over the height is seen on a part that stands from front to back, one over the width on a part that lies. */
const axisThrough = { height: 'x', width: 'z' } as const;

/** Every shape that wants a template, in the order in which the curves and their parts are built. */
export function templateShapes(casework: Casework): readonly TemplateShape[] {
    const shapes = new Map<string, TemplateShape>();
    for (const line of casework.curves) {
        for (const path of line.parts) {
            const part = casework.parts.get(path);
            const shape = part && shapeOf(part, line, casework);
            if (!shape) continue;
            const key = sameness(shape);
            const known = shapes.get(key);
            shapes.set(key, known ? { ...known, parts: [...known.parts, ...shape.parts] } : shape);
        }
    }
    return [...shapes.values()];
}

function shapeOf(part: Part, line: CurveModel, casework: Casework): TemplateShape | undefined {
    const { curve, over } = line;
    const axis = axisOf[over];
    const corner = casework.assemblies.find(({ path }) => path === line.assembly)?.room?.least;
    if (!curve || !corner || part.directions.thickness !== axisThrough[over]) return undefined;
    const { least, most } = part.box;
    const start = least[axis] - corner[axis];
    const length = most[axis] - least[axis];
    if (!(length > tolerance.fit)) return undefined;
    const ends = edgesAlong[over];
    const takesOff = {
        front: takenOff(part, 'front'),
        back: takenOff(part, 'back'),
        low: takenOff(part, ends.low),
        high: takenOff(part, ends.high),
    };
    const inner = takesOff.front === 0 ? undefined : parallelCurve(curve, takesOff.front);
    return {
        parts: [part],
        over,
        line,
        finished: curve,
        core: inner === undefined ? curve : inner.ok ? inner.curve : undefined,
        start,
        back: least.y - corner.y,
        length,
        takesOff,
        joints: jointsOf(part, axis, casework),
        rabbet: rabbetOf(part),
    };
}

/** Shapes with one key have one template, whatever their hand, and by whatever line that is the same where they lie. */
function sameness({ line, parts: _, joints, ...shape }: TemplateShape): string {
    const depths = [0, 0.5, 1].map((share) => shape.finished.valueAt(shape.start + share * shape.length).value - shape.back);
    const numbers = [shape.start, ...depths, shape.length, ...Object.values(shape.takesOff), shape.rabbet?.width, shape.rabbet?.depth];
    const positions = joints.flatMap(({ along, across }) => [along.from, along.to, across.from, across.to]);
    return [line.follows?.path ?? line.path, ...[...numbers, ...positions].map((number) => number?.toFixed(4))].join(' ');
}

function takenOff({ edges }: Part, name: EdgeName): number {
    return edges.filter((edge) => edge.name === name).reduce((sum, { takesOff }) => sum + (millimetres(takesOff) ?? 0), 0);
}

function millimetres(measure: Part['sizes']['core']['length']): number | undefined {
    return measure?.quantity.dimension === dimension.length ? real.toNumber(measure.quantity.value) : undefined;
}

function rabbetOf({ edges }: Part): BackRabbet | undefined {
    const cut = edges.filter(({ name }) => name === 'back').flatMap(({ steps }) => steps.filter(({ does }) => does === 'rabbet'))[0];
    const [width, depth] = [millimetres(cut?.width), millimetres(cut?.amount)];
    return width === undefined || depth === undefined ? undefined : { width, depth };
}

/** Where the parts lie that meet its face with an end, from low to high. */
function jointsOf(part: Part, axis: 'x' | 'z', casework: Casework): readonly JointPosition[] {
    const entering = [...new Set(part.joints.flatMap((index) => enteringAt(index, part.path, casework)))];
    return entering
        .flatMap((path) => {
            const other = casework.parts.get(path);
            if (!other || other.directions.thickness !== axis) return [];
            const { least, most } = other.box;
            return [
                {
                    name: other.name,
                    along: { from: least[axis] - part.box.least[axis], to: most[axis] - part.box.least[axis] },
                    across: { from: least.y - part.box.least.y, to: most.y - part.box.least.y },
                },
            ];
        })
        .sort((a, b) => a.along.from - b.along.from);
}

function enteringAt(index: number, receives: Path, { joints }: Casework): readonly Path[] {
    const joint = joints[index];
    return joint?.receives === receives ? [joint.enters] : [];
}
