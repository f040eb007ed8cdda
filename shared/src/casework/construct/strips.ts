/** The bands and nosings on the edges of a part, as they are cut: in the order of work, one glued on later covers the ends of those before it. */
import { Rational } from '../../quantity/index.js';
import type { Axis, Edge, EdgeName, EdgeStep, FaceName, Piece, Size, Words } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CurveLaw } from './curve-law.js';
import { blankOfNosing, frontEdgeOf, widthOfFront } from './front.js';
import { axisOfFace, facesOfAxis, type KindOfPart } from './kinds.js';
import { derived, isPositive, minus, negative, numberOf, plus, times, total } from './measures.js';
import { PartPiece, type PieceContext } from './piece.js';
import { sayBevel, sayLine } from './piece-words.js';
import type { PlacedPart } from './placed-part.js';
import { isStrip, sizeOfPart, wayAlong } from './sizes.js';

interface Strip {
    readonly edge: Edge;
    readonly step: EdgeStep;
    /** Strips on the edges at its ends that are on before it. */
    readonly covers: readonly Strip[];
    /** The axes along and across its edge. */
    readonly along: Axis;
    readonly across: Axis;
}

export function stripsOf(context: PieceContext, kind: KindOfPart): readonly Piece[] {
    const strips: Strip[] = [];
    // worked out as it is written; where the case is mirrored the names are the other way round
    for (const edge of context.part.facts.edges) {
        const { axis: across } = axisOfFace(edge.name);
        const along = across === kind.length ? kind.width : kind.length;
        for (const step of edge.steps.filter(isStrip)) {
            const covers = strips.filter((before) => before.across === along);
            strips.push({ edge, step, covers, along, across });
        }
    }
    return strips.map((strip, index) => pieceOfStrip(context, kind, strip, index + 1));
}

function pieceOfStrip(context: PieceContext, kind: KindOfPart, strip: Strip, number: number): Piece {
    const { part, construction } = context;
    const { edge, step, covers } = strip;
    const { bandLong, bandOver } = part.shop;
    const { material } = step;
    const length = lengthOf(part, kind, strip);
    const isFront = edge.name === 'front';
    const width = isFront && step.does === 'band' ? widthOfFront(part, step.width) : step.width;
    const thickness = isFront && step.does === 'nosing' ? blankOfNosing(part, step) : step.amount;
    const size: Size = { length, width, thickness };
    const name = `${part.path}, the ${step.does}`;
    const rough: Size = {
        length: largerAtBothEnds(length, bandLong, ['rough', 'length', name]),
        width: step.does === 'band' ? largerAtBothEnds(width, bandOver, ['rough', 'width', name]) : width,
        thickness,
    };
    const { mirror } = part.build;
    const covered = [...new Set(covers.map((one) => mirror.face(one.edge.name)))];
    const own = {
        id: `${part.path}/strip ${number}`,
        role: step.does === 'nosing' ? ('nosing' as const) : ('band' as const),
        name: `${part.name}, ${mirror.face(edge.name)} ${step.does}`,
        material,
        grain: material === undefined ? 'length' : construction.things.grainOf(material),
        finished: size,
        core: size,
        rough,
        notes: [...(covered.length > 0 ? [[coveringWords(covered)]] : []), ...(isFront ? stripNotes(part, step) : [])],
    };
    return new PartPiece(context, own, () => []);
}

function coveringWords(covered: readonly EdgeName[]): string {
    const them = covered.length === 1 ? 'strip, and cover its end' : 'strips, and cover their ends';
    return `glue on after the ${covered.join(' and ')} ${them}`;
}

/** What is done to a front strip that follows a curve, along its edge or across it. */
function stripNotes(part: PlacedPart, step: EdgeStep): readonly Words[] {
    const line = part.frontLaw;
    const edge = frontEdgeOf(part);
    const isBevelled = step.does === 'nosing' && edge?.form === 'bevelled';
    return [
        ...(line ? [['bent to ', ...sayLine(line), ': its length is the way round']] : []),
        ...(isBevelled ? [[`bevelled ${sayBevel(edge)} after gluing, down to `, step.amount ?? '?', ' at its thin edge']] : []),
    ];
}

function largerAtBothEnds(of: Measure | undefined, more: Measure, about: readonly string[]): Measure | undefined {
    return plus(of, times(more, Rational.of(2), { kind: 'operation', about: ['both ends'] }), { kind: 'stage', about });
}

/** From end to end of its edge and over the strips that it covers; round the curve, where its edge follows one. */
function lengthOf(part: PlacedPart, kind: KindOfPart, strip: Strip): Measure | undefined {
    const line = part.frontLaw;
    const straight = line && strip.along === 'y' && line.axis === strip.across ? depthAt(part, line, strip) : coreAlong(part, kind, strip);
    let length = strip.step.does === 'nosing' ? withoutWhatEnters(part, strip, straight) : straight;
    for (const { edge, step } of strip.covers)
        length = plus(length, step.amount, {
            kind: 'edge',
            about: ['it covers the end of the strip on', edge.name],
            span: strip.edge.span,
        });
    return line && strip.edge.name === 'front' && strip.along === line.axis ? roundTheCurve(part, line, strip, length) : length;
}

function coreAlong(part: PlacedPart, kind: KindOfPart, { along }: Strip): Measure | undefined {
    return sizeOfPart(part, 'core')[along === kind.length ? 'length' : 'width'];
}

/** A nosing stands below its board, so it cannot go into another part: it is cut to fit between them. */
function withoutWhatEnters(part: PlacedPart, { along }: Strip, length: Measure | undefined): Measure | undefined {
    const { adds } = part.facts;
    const { lo, hi } = facesOfAxis[along];
    let left = length;
    for (const face of [lo, hi])
        if (isPositive(adds[face])) left = minus(left, adds[face], { kind: 'joint', about: ['without what enters at', face] });
    return left;
}

/** The edge that lies across a curve, a side's top edge for one, is as deep as the core is there. */
function depthAt(part: PlacedPart, line: CurveLaw, { edge, across }: Strip): Measure | undefined {
    const extents = part.extents.value;
    if (!extents) return undefined;
    const outer = extents[across][axisOfFace(edge.name).end].measure;
    const front = takenOff(part, 'front');
    const core = front ? line.parallel(negative(front)) : line;
    const depth = core.extreme(withoutStrips(part, edge.name, outer), outer, 'greatest', `the ${edge.name} edge of ${part.name}`);
    const whole = minus(depth, extents.y.lo.measure, { kind: 'between', about: [extents.y.lo.bound.name, `the curve ${line.name}`] });
    const behind = takenOff(part, 'back');
    return behind ? minus(whole, behind, { kind: 'edge', about: ['without bands', 'back'] }) : whole;
}

/** A place at an edge, moved in by what the strips there are thick. */
function withoutStrips(part: PlacedPart, name: EdgeName, place: Measure | undefined): Measure | undefined {
    const taken = takenOff(part, name);
    if (!taken) return place;
    const says = { kind: 'edge' as const, about: ['inside the bands', name] };
    return axisOfFace(name).end === 'hi' ? minus(place, taken, says) : plus(place, taken, says);
}

/** What the strips on an edge take off together; undefined where there are none. */
function takenOff(part: PlacedPart, name: EdgeName): Measure | undefined {
    const taken = part.facts.edges.filter((edge) => edge.name === name && edge.takesOff).map((edge) => edge.takesOff);
    return total(taken, { kind: 'edge', about: ['bands and nosings', name] });
}

/** The way along the finished line from one end of the strip to the other. */
function roundTheCurve(part: PlacedPart, line: CurveLaw, strip: Strip, straight: Measure | undefined): Measure | undefined {
    const extent = part.extents.value?.[strip.along];
    if (!extent || !straight) return undefined;
    const { lo, hi } = facesOfAxis[strip.along];
    const reach = (face: FaceName, measure: Measure | undefined): number => {
        const isCovered = strip.covers.some((one) => one.edge.name === face);
        return numberOf(isCovered ? measure : withoutStrips(part, face, measure));
    };
    // A band goes with its board into what that is let into, as a straight one does; a nosing cannot.
    const entering = (face: FaceName): number => {
        const added = part.facts.adds[face] ? numberOf(part.facts.adds[face]) : 0;
        return strip.step.does === 'nosing' ? Math.min(0, added) : added;
    };
    const [from, to] = [reach(lo, extent.lo.measure) - entering(lo), reach(hi, extent.hi.measure) + entering(hi)];
    const way = wayAlong(line, from, to);
    if (way === undefined) return undefined;
    const says = { kind: 'measured' as const, about: ['the way along its edge', line.name, line.name], span: strip.edge.span };
    return derived({ ...straight.quantity, value: way }, says, [straight]);
}
