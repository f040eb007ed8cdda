/** A placed part as the model shows it: sizes at every stage, faces, layers, edges, pieces. */
import { type Box, boxBetween } from '../../geometry/index.js';
import type { Axis, Bound, Edge, EdgeName, FaceName, Hand, Layer, Part, Piece, Stage } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { boxOf } from './box.js';
import type { Construction } from './construction.js';
import { axes, axisOfFace, facesOfAxis, isFaceName, type KindOfPart } from './kinds.js';
import { because, minus, numberOf, plus } from './measures.js';
import { layerSize, notesOf, piecesOf } from './pieces.js';
import type { PlacedPart } from './placed-part.js';
import { reservesOfLeave } from './reserves.js';
import { sizeOfPart } from './sizes.js';

export interface PartAndPieces {
    readonly part: Part;
    readonly pieces: readonly Piece[];
}

/** Undefined for a part whose place is unknown: its line says why. */
export function modelOfPart(
    construction: Construction,
    placed: PlacedPart,
    count: number,
    joints: readonly number[],
): PartAndPieces | undefined {
    const kind = placed.kindOf;
    const extents = placed.extents.value;
    const opening = boxOf(placed);
    if (!kind || !extents || !opening) return undefined;
    const isMirrored = placed.build.outermost.mirrored;
    const box = mirroredBox(finishedBox(placed, opening), placed, isMirrored);
    const layers = layersOf(construction, placed, kind, box);
    const edges = placed.facts.edges.map((edge) => (isMirrored ? mirroredEdge(edge) : edge));
    const hand = handOf(placed, edges, isMirrored);
    const pieces = piecesOf({ construction, part: placed, layers, edges, quantity: count, hand });
    const bounds = {} as Record<FaceName, Bound | undefined>;
    const faces = {} as Record<FaceName, Measure | undefined>;
    for (const axis of axes) {
        for (const end of ['lo', 'hi'] as const) {
            const face = facesOfAxis[axis][end];
            bounds[face] = extents[axis][end].bound;
            faces[face] = finishedFace(placed, face, axis, end);
        }
    }
    const stages: readonly Stage[] = ['opening', 'finished', 'core', 'rough'];
    const line = extents.y.hi.line;
    const clear = kind.thickness === 'z' ? placed.clearAbove() : undefined;
    const part: Part = {
        path: placed.path,
        name: placed.name,
        kind: placed.kind,
        assembly: placed.build.path,
        quantity: count,
        sizes: Object.fromEntries(stages.map((stage) => [stage, sizeOfPart(placed, stage)])) as Part['sizes'],
        directions: { length: kind.length, width: kind.width, thickness: kind.thickness },
        faces,
        box,
        bounds,
        layers,
        edges,
        past: pastFaces(placed, isMirrored),
        joints,
        pieces: pieces.map((piece) => piece.id),
        openings: placed.build.openings
            .filter((room) => room.span.file === placed.span.file && inside(room.span, placed.span))
            .map((room) => room.path),
        span: placed.span,
        nameSpan: placed.declaration.nameSpan,
        notes: notesOf(placed),
        ...(clear ? { clear } : {}),
        ...(hand === undefined ? {} : { hand }),
        ...(line ? { frontCurve: `${placed.build.outermost.path}.${line.name}` } : {}),
        ...(placed.declaration.doc === undefined ? {} : { doc: placed.declaration.doc }),
    };
    return { part, pieces };
}

function inside(inner: Part['span'], outer: Part['span']): boolean {
    return inner.start >= outer.start && inner.end <= outer.end;
}

/** A part that enters another is longer by what the joint adds. */
function finishedBox(placed: PlacedPart, opening: Box): Box {
    const { adds } = placed.facts;
    const at = (axis: Axis, end: 'lo' | 'hi'): number => {
        const added = adds[facesOfAxis[axis][end]];
        const more = added ? numberOf(added) : 0;
        return end === 'lo' ? opening.least[axis] - more : opening.most[axis] + more;
    };
    return boxBetween({ x: at('x', 'lo'), y: at('y', 'lo'), z: at('z', 'lo') }, { x: at('x', 'hi'), y: at('y', 'hi'), z: at('z', 'hi') });
}

function mirroredBox(box: Box, placed: PlacedPart, isMirrored: boolean): Box {
    if (!isMirrored) return box;
    const width = numberOf(placed.build.outermost.edgeOfRoom('x', 'hi'));
    return boxBetween({ ...box.least, x: width - box.most.x }, { ...box.most, x: width - box.least.x });
}

const otherSide = { left: 'right', right: 'left' } as const;

function mirroredFace(face: FaceName): FaceName {
    return face === 'left' ? 'right' : face === 'right' ? 'left' : face;
}

function mirroredEdge(edge: Edge): Edge {
    return { ...edge, name: mirroredFace(edge.name) };
}

function handOf(placed: PlacedPart, edges: readonly Edge[], isMirrored: boolean): Hand | undefined {
    if (placed.hand) return isMirrored ? otherSide[placed.hand] : placed.hand;
    return isLopsided(edges) && isMirrored ? 'left' : isLopsided(edges) && hasMirroredTwin(placed) ? 'right' : undefined;
}

/** Whether the treatments of its left and right edges differ. */
function isLopsided(edges: readonly Edge[]): boolean {
    const said = (name: EdgeName) =>
        edges
            .filter((edge) => edge.name === name)
            .map((edge) => edge.recipe)
            .join();
    return said('left') !== said('right');
}

function hasMirroredTwin(placed: PlacedPart): boolean {
    return (
        placed.build.construction.design.project?.builds.some(
            (build) => build.mirrored && build.design === placed.build.outermost.declaration.id,
        ) === true
    );
}

function finishedFace(placed: PlacedPart, face: FaceName, axis: Axis, end: 'lo' | 'hi'): Measure | undefined {
    const spot = placed.faceSpot(axis, end);
    const added = placed.facts.adds[face];
    if (!added || !spot) return spot?.measure;
    const says = { kind: 'joint' as const, about: ['it goes into', face], span: placed.span };
    return end === 'lo' ? minus(spot.measure, added, says) : plus(spot.measure, added, says);
}

/** Faces that the text places past something. */
function pastFaces(placed: PlacedPart, isMirrored: boolean): readonly FaceName[] {
    const edges = placed.description.value?.edges ?? [];
    const past = edges
        .filter(({ said }) => said.at?.some((place) => place.relation === 'past'))
        .flatMap(({ said }) => said.edges.map((edge) => edge.name));
    return past.filter(isFaceName).map((name) => (isMirrored ? mirroredFace(name) : name));
}

/** The layers from the outer face in, each with its own size and box. */
function layersOf(construction: Construction, placed: PlacedPart, kind: KindOfPart, box: Box): readonly Layer[] {
    const plans = placed.layers.value ?? [];
    const isFromHigh =
        placed.hand === 'right' ? !placed.build.outermost.mirrored : placed.hand === 'left' && placed.build.outermost.mirrored;
    let from = isFromHigh ? box.most[kind.thickness] : box.least[kind.thickness];
    return plans.map((plan, index) => {
        const step = numberOf(plan.thickness) * (isFromHigh ? -1 : 1);
        const to = from + step;
        const less = shortened(construction, placed, kind, index);
        const layer: Layer = {
            material: plan.material,
            thickness: plan.thickness,
            grain: plan.grain,
            size: layerSize(placed, index, less.sizes),
            box: Number.isNaN(to) ? undefined : layerBox(box, kind.thickness, from, to, less.faces),
            span: plan.span,
            ...(plan.name === undefined ? {} : { name: plan.name }),
        };
        from = to;
        return layer;
    });
}

interface Shortened {
    readonly sizes: ReadonlyMap<'length' | 'width', Measure>;
    readonly faces: ReadonlyMap<FaceName, number>;
}

/** What a layer leaves free for another part at its ends. */
function shortened(construction: Construction, placed: PlacedPart, kind: KindOfPart, index: number): Shortened {
    const sizes = new Map<'length' | 'width', Measure>();
    const faces = new Map<FaceName, number>();
    for (const leave of placed.layers.value?.[index]?.leaves ?? []) {
        for (const reserve of reservesOfLeave(construction, placed, leave)) {
            const size = reserve.size();
            if (!size) continue;
            const { axis } = axisOfFace(reserve.face);
            const name = axis === kind.length ? 'length' : 'width';
            const before = sizes.get(name);
            const says = { kind: 'reserve' as const, about: [reserve.for.name], span: reserve.span };
            const sum = before ? plus(before, size, says) : because(size, says);
            if (sum) sizes.set(name, sum);
            faces.set(reserve.face, (faces.get(reserve.face) ?? 0) + numberOf(size));
        }
    }
    return { sizes, faces };
}

function layerBox(box: Box, through: Axis, from: number, to: number, less: ReadonlyMap<FaceName, number>): Box {
    const at = (axis: Axis, end: 'lo' | 'hi'): number => {
        if (axis === through) return end === 'lo' ? Math.min(from, to) : Math.max(from, to);
        const taken = less.get(facesOfAxis[axis][end]) ?? 0;
        return end === 'lo' ? box.least[axis] + taken : box.most[axis] - taken;
    };
    return boxBetween({ x: at('x', 'lo'), y: at('y', 'lo'), z: at('z', 'lo') }, { x: at('x', 'hi'), y: at('y', 'hi'), z: at('z', 'hi') });
}
