/** A placed part as the model shows it: sizes at every stage, faces, layers, edges, pieces. */
import { type Box, boxBetween } from '../../geometry/index.js';
import type { Axis, Bound, Edge, EdgeName, FaceName, Hand, Layer, Part, Piece } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { withDescendants } from './descendants.js';
import { finishOfPart } from './finishes.js';
import { frontEdgeOf, isBent } from './front.js';
import { axisByFace, axisOfFace, facesOfAxis, isFaceName, type KindOfPart } from './kinds.js';
import { because, minus, negative, numberOf, plus } from './measures.js';
import type { Mirror } from './mirror.js';
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
    const opening = placed.box;
    if (!kind || !extents || !opening) return undefined;
    const { mirror } = placed.build;
    const box = mirror.box(finishedBox(placed, opening));
    const layers = layersOf(construction, placed, kind, box, mirror);
    const edges = placed.facts.edges.map((edge) => ({ ...edge, name: mirror.face(edge.name) }));
    const hand = handOf(placed, edges, mirror);
    const pieces = piecesOf({ construction, part: placed, layers, edges, quantity: count, hand });
    const bounds = {} as Record<FaceName, Bound | undefined>;
    for (const [face, { axis, end }] of ends) bounds[mirror.face(face)] = extents[axis][end].bound;
    const line = placed.frontLaw;
    const finish = finishOfPart(construction, placed);
    let faces: Part['faces'] | undefined;
    let clear: { readonly is: Measure | undefined } | undefined;
    const part: Part = {
        path: placed.path,
        name: placed.name,
        kind: placed.kind,
        assembly: placed.build.path,
        quantity: count,
        sizes: {
            opening: sizeOfPart(placed, 'opening'),
            finished: sizeOfPart(placed, 'finished'),
            core: sizeOfPart(placed, 'core'),
            rough: sizeOfPart(placed, 'rough'),
        },
        directions: { length: kind.length, width: kind.width, thickness: kind.thickness },
        // each has a derivation, and few of them are ever asked for
        get faces() {
            faces ??= finishedFaces(placed, mirror);
            return faces;
        },
        get clear() {
            clear ??= { is: kind.thickness === 'z' ? placed.clearAbove() : undefined };
            return clear.is;
        },
        box,
        bounds,
        layers,
        edges,
        past: pastFaces(placed).map((face) => mirror.face(face)),
        joints,
        pieces: pieces.map((piece) => piece.id),
        openings: placed.build.openings
            .filter((room) => room.span.file === placed.span.file && inside(room.span, placed.span))
            .map((room) => room.path),
        span: placed.span,
        nameSpan: placed.declaration.nameSpan,
        notes: notesOf(placed),
        ...(hand === undefined ? {} : { hand }),
        ...(line ? { frontCurve: line.path } : {}),
        ...(finish === undefined ? {} : { finish }),
        ...frontEdge(placed),
        ...(isBent(placed) ? { bent: true as const } : {}),
        ...(placed.declaration.doc === undefined ? {} : { doc: placed.declaration.doc }),
    };
    return { part, pieces };
}

/** How its front edge meets the line, as it is shown: where the case is mirrored, left and right are the other way round. */
function frontEdge(placed: PlacedPart): Pick<Part, 'front'> {
    const edge = frontEdgeOf(placed);
    if (!edge) return {};
    const isTurned = placed.kindOf?.thickness === 'x' && placed.build.mirror.isTurned;
    return { front: isTurned ? { ...edge, low: edge.high, high: edge.low, bevel: negative(edge.bevel) } : edge };
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

const otherSide = { left: 'right', right: 'left' } as const;

/** The hand of a side is where it stands; of other parts it is told only where there is one of the other hand. */
function handOf(placed: PlacedPart, edges: readonly Edge[], mirror: Mirror): Hand | undefined {
    if (placed.hand) return mirror.isTurned ? otherSide[placed.hand] : placed.hand;
    if (!isLopsided(edges)) return undefined;
    if (mirror.isTurned) return 'left';
    return hasMirroredTwin(placed) ? 'right' : undefined;
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

/** Whether its design is also built the other way round. */
function hasMirroredTwin({ build }: PlacedPart): boolean {
    const { project } = build.construction.design;
    const isTwin = (one: CaseBuild): boolean => one.declaration === build.declaration && one.mirror.isTurned !== build.mirror.isTurned;
    return (
        project?.builds.some((one) => one.mirrored && one.design === build.outermost.declaration.id) === true ||
        withDescendants(build.outermost).some(isTwin)
    );
}

const ends = Object.entries(axisByFace) as readonly (readonly [FaceName, { readonly axis: Axis; readonly end: 'lo' | 'hi' }])[];

function finishedFaces(placed: PlacedPart, mirror: Mirror): Part['faces'] {
    const faces = {} as Record<FaceName, Measure | undefined>;
    for (const [face, { axis, end }] of ends) {
        const measure = finishedFace(placed, face, axis, end);
        faces[mirror.face(face)] = axis === 'x' ? mirror.place(measure) : measure;
    }
    return faces;
}

function finishedFace(placed: PlacedPart, face: FaceName, axis: Axis, end: 'lo' | 'hi'): Measure | undefined {
    const spot = placed.faceSpot(axis, end);
    const added = placed.facts.adds[face];
    if (!added || !spot) return spot?.measure;
    const says = { kind: 'joint' as const, about: ['it goes into', face], span: placed.span };
    return end === 'lo' ? minus(spot.measure, added, says) : plus(spot.measure, added, says);
}

/** Faces that the text places past something. */
function pastFaces(placed: PlacedPart): readonly FaceName[] {
    const edges = placed.description.value?.edges ?? [];
    const past = edges
        .filter(({ said }) => said.at?.some((place) => place.relation === 'past'))
        .flatMap(({ said }) => said.edges.map((edge) => edge.name));
    return past.filter(isFaceName);
}

/** The layers from the outer face in, each with its own size and box. */
function layersOf(construction: Construction, placed: PlacedPart, kind: KindOfPart, box: Box, mirror: Mirror): readonly Layer[] {
    const plans = placed.layers.value ?? [];
    const isFromHigh = (kind.thickness === 'x' && mirror.isTurned) !== (placed.hand === 'right');
    const isCrossed = isBent(placed);
    let from = isFromHigh ? box.most[kind.thickness] : box.least[kind.thickness];
    return plans.map((plan, index) => {
        const step = numberOf(plan.thickness) * (isFromHigh ? -1 : 1);
        const to = from + step;
        const less = shortened(construction, placed, kind, index, mirror);
        const layer: Layer = {
            material: plan.material,
            thickness: plan.thickness,
            grain: plan.grain,
            size: layerSize(placed, index, less.sizes),
            // the layers of a bent board cross the planes of one another
            box: Number.isNaN(to) ? undefined : isCrossed ? box : layerBox(box, kind.thickness, from, to, less.faces),
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
function shortened(construction: Construction, placed: PlacedPart, kind: KindOfPart, index: number, mirror: Mirror): Shortened {
    const sizes = new Map<'length' | 'width', Measure>();
    const faces = new Map<FaceName, number>();
    for (const leave of placed.layers.value?.[index]?.leaves ?? []) {
        for (const reserve of reservesOfLeave(construction, placed, leave)) {
            const size = reserve.isKept() ? reserve.size() : undefined;
            if (!size) continue;
            const { axis } = axisOfFace(reserve.face);
            const name = axis === kind.length ? 'length' : 'width';
            const before = sizes.get(name);
            const says = { kind: 'reserve' as const, about: [reserve.for.name], span: reserve.span };
            const sum = before ? plus(before, size, says) : because(size, says);
            if (sum) sizes.set(name, sum);
            const face = mirror.face(reserve.face);
            faces.set(face, (faces.get(face) ?? 0) + numberOf(size));
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
