/** Masses of pieces and parts, from the density of their materials. What cannot be known is undefined, never zero. */
import type { Casework, Part, Piece, Thing } from '../casework/index.js';
import { integral, type SpacePoint } from '../geometry/index.js';
import { dimension, type Quantity, quantity, Rational, real } from '../quantity/index.js';
import { grouped } from './grouped.js';
import { total } from './size-arithmetic.js';
import { isSolidWood, measureProperty, thingProperty } from './thing-values.js';

/**
 * The density of a material: its own, or for solid wood that of its species. The species of a panel is only that of its faces.
 */
export function densityOf(casework: Casework, material: Thing | undefined): Quantity | undefined {
    const own = measureProperty(material, 'density', dimension.density);
    if (own || !material || !isSolidWood(material)) return own?.quantity;
    return measureProperty(thingProperty(casework, material, 'species'), 'density', dimension.density)?.quantity;
}

/**
 * The mass of one delivered part: density times volume of the pieces it is made of, its bands and nosings among them. What rabbets,
 * grooves, rounds and joints take out is still in it. Unknown as soon as the density or a size of one of its pieces is. As drawn: by how
 * much sizes deviate is nothing against how much the density of wood does.
 */
export function massOfPart(casework: Casework, part: Part): Quantity | undefined {
    const known = masses.get(casework) ?? new Map<Part, Quantity | undefined>();
    masses.set(casework, known);
    if (!known.has(part)) known.set(part, weigh(casework, part));
    return known.get(part);
}

/** Several rules ask for the same masses at each keystroke. */
const masses = new WeakMap<Casework, Map<Part, Quantity | undefined>>();

function weigh(casework: Casework, part: Part): Quantity | undefined {
    const share = shareUnderCurve(casework, part);
    if (share === undefined || part.quantity === 0) return undefined;
    return total(
        piecesOf(casework, part).map((piece) => {
            const each = massOfBlock(casework, piece);
            const count = Rational.of(piece.quantity, part.quantity);
            return each && quantity.scale(quantity.scale(each, count), isStrip(piece) ? Rational.one : share);
        }),
    );
}

const piecesByPart = new WeakMap<readonly Piece[], ReadonlyMap<string, readonly Piece[]>>();

/** Sorted by part once for each casework: a whole project is weighed part by part. */
function piecesOf({ pieces }: Casework, { path }: Part): readonly Piece[] {
    let byPart = piecesByPart.get(pieces);
    if (!byPart) {
        byPart = grouped(pieces, (piece) => [piece.part]);
        piecesByPart.set(pieces, byPart);
    }
    return byPart.get(path) ?? [];
}

/** The mass of the block that the sizes of a piece span. Bands and nosings are pieces of their own, so the core is what counts. */
function massOfBlock(casework: Casework, piece: Piece): Quantity | undefined {
    const density = densityOf(casework, piece.material === undefined ? undefined : casework.things.get(piece.material));
    const { length, width, thickness } = piece.core;
    if (!density || !length || !width || !thickness) return undefined;
    return [width, thickness].reduce(
        (product, size) => quantity.multiply(product, quantity.nominal(size.quantity)),
        quantity.multiply(quantity.nominal(density), quantity.nominal(length.quantity)),
    );
}

function isStrip(piece: Piece): boolean {
    return piece.role === 'band' || piece.role === 'nosing';
}

/** Enough for a curve with a bend or two: the integral is good to far less than any board's density. */
const panels = 8;

/**
 * How much of the block that its sizes span a part under a curved front is: its mean depth over its greatest. One for a part that
 * follows no curve, or lies across it; undefined where the curve could not be made.
 */
export function shareUnderCurve(casework: Casework, part: Part): Rational | number | undefined {
    // a board that is bent is as long as the way round its curve: none of the block is cut off
    if (part.bent) return Rational.one;
    const front = curvedFront(casework, part);
    if (!front?.isAlong) return front ? Rational.one : part.frontCurve === undefined ? Rational.one : undefined;
    const { from, to, depthAt } = front;
    const greatest = part.box.most.y - part.box.least.y;
    if (to <= from || greatest <= 0) return undefined;
    return integral(depthAt, from, to, panels) / (to - from) / greatest;
}

/** The curved line that the front of a part follows, in millimetres from the corner of its outermost case. */
interface CurvedFront {
    readonly axis: 'x' | 'z';
    /** Whether the line runs along the part, and not across its thickness. */
    readonly isAlong: boolean;
    /** Where the part begins and ends along the line. */
    readonly from: number;
    readonly to: number;
    /** From the back of the part to the line, at a place along it. */
    readonly depthAt: (at: number) => number;
}

/** Undefined for a part that follows no curve, and where the curve could not be made. */
export function curvedFront(casework: Casework, part: Part): CurvedFront | undefined {
    const model = part.frontCurve === undefined ? undefined : casework.curves.find(({ path }) => path === part.frontCurve);
    const room = casework.assemblies.find(({ path }) => path === model?.assembly)?.room;
    const curve = model?.curve;
    if (!model || !curve || !room) return undefined;
    const axis = model.over === 'height' ? 'z' : 'x';
    const { least, most } = part.box;
    return {
        axis,
        isAlong: part.directions.thickness !== axis,
        from: least[axis],
        to: most[axis],
        depthAt: (at) => curve.valueAt(at - room.least[axis]).value - (least.y - room.least.y),
    };
}

function thicknessOf({ sizes: { finished } }: Part): number {
    return finished.thickness ? real.toNumber(finished.thickness.quantity.value) : 0;
}

/** The middle of the mass of a part, in millimetres from the corner of its outermost case: of its outline, taken as one wood throughout. */
export function middleOfMass(casework: Casework, part: Part): SpacePoint {
    const { least, most } = part.box;
    const middle = { x: (least.x + most.x) / 2, y: (least.y + most.y) / 2, z: (least.z + most.z) / 2 };
    const front = curvedFront(casework, part);
    if (!front?.isAlong) return middle;
    const { axis, from, to, depthAt } = front;
    if (part.bent) {
        const mean = integral(depthAt, from, to, panels) / (to - from);
        return { ...middle, y: least.y + mean - thicknessOf(part) / 2 };
    }
    const area = integral(depthAt, from, to, panels);
    const along = integral((at) => at * depthAt(at), from, to, panels) / area;
    const forward = integral((at) => depthAt(at) ** 2 / 2, from, to, panels) / area;
    return { ...middle, [axis]: along, y: least.y + forward };
}
