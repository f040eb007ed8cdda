/** The front of a part under a curve: which line it follows, and how its edge meets that line across its thickness. */
import { tolerance } from '../../geometry/index.js';
import { dimension, quantity } from '../../quantity/index.js';
import type { EdgeStatement } from '../design/design.js';
import type { EdgeStep, FaceName, FrontEdge } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CurveLaw } from './curve-law.js';
import { curvesOf } from './front-line.js';
import { facesOfAxis, type KindOfPart, nameOfFace } from './kinds.js';
import { derived, larger, minus, negative, numberOf, plus, type Says, smaller } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import type { Spot } from './room.js';
import type { Extent, Extents } from './run.js';

export type FrontForm = NonNullable<EdgeStatement['form']>;

/** A front edge and the line across the thickness of its part: where the line is at its two faces, and what the edge makes of that. */
export interface FrontFaces {
    readonly form: FrontForm;
    readonly low: Measure;
    readonly high: Measure;
    readonly line: CurveLaw;
}

/** What a front edge does where the text does not say: a lying board is sawn square, an upright is bevelled to the line. */
function formOf(part: PlacedPart, kind: KindOfPart): FrontForm {
    return part.description.value?.frontForm ?? (kind.thickness === 'x' ? 'bevelled' : 'square');
}

/** The front of a part that lies under a curve: its line where it follows one along its edge, and how deep it is. */
export function finishFront(part: PlacedPart, kind: KindOfPart | undefined, extents: Extents): Extents {
    const { line, beyond } = extents.y.hi;
    if (!line) return extents;
    if (kind?.thickness === 'y') return bentToLine(part, extents);
    const bound = { name: `the curve ${line.name}`, stopped: false };
    const withFront = (hi: Omit<Spot, 'bound'>): Extents => ({ ...extents, y: { lo: extents.y.lo, hi: { bound, ...hi } } });
    if (!kind) {
        const measure = line.greatestOver(extents, `the ends of ${part.name}`);
        return withFront({ measure, line, ...(beyond ? { beyond } : {}) });
    }
    const { height, width } = curvesOf(line);
    const isLying = kind.thickness === 'z';
    const along = isLying ? width : height;
    const across = isLying ? height : width;
    // what lies under a curve over the height is as far past it as is said; square to a curve is only what follows it
    const acrossHere = across && beyond && !along && !isLying ? across.parallel(beyond) : across;
    const faces = acrossHere && facesUnder(part, kind, acrossHere, extents[kind.thickness]);
    if (acrossHere && !faces) return withFront({ measure: undefined });
    if (!along) {
        if (!faces) return extents;
        return withFront(isLying ? moved(faces, beyond) : spotOfFaces(faces));
    }
    const base = faces ? along.moved(faces.depth, `at ${part.name}`) : along;
    const law = beyond ? base.parallel(beyond) : base;
    const where = `the ends of ${part.name}`;
    const measure = law.greatestOver(extents, where);
    return withFront({ measure, line: law, ...(faces ? frontAt(faces, along.greatestOver(extents, where), beyond) : {}) });
}

interface Faces extends FrontFaces {
    /** What the form makes of it. */
    readonly depth: Measure;
}

/** The line at both faces of a part; a square front takes the shallower place of what is between them, a bevelled one the deeper. */
function facesUnder(part: PlacedPart, kind: KindOfPart, line: CurveLaw, { lo, hi }: Extent): Faces | undefined {
    const name = (face: FaceName) => `the ${nameOfFace(part.kind, face, part.hand)} face of ${part.name}`;
    const low = line.at(lo.measure, name(facesOfAxis[kind.thickness].lo));
    const high = line.at(hi.measure, name(facesOfAxis[kind.thickness].hi));
    if (!low || !high) return undefined;
    const form = formOf(part, kind);
    const between = line.extreme(lo.measure, hi.measure, form === 'square' ? 'least' : 'greatest', `the faces of ${part.name}`);
    const atFaces = form === 'square' ? smaller(high, low) : larger(high, low);
    const depth = between && atFaces && (form === 'square' ? smaller(atFaces, between) : larger(atFaces, between));
    return depth && { form, low, high, line, depth };
}

function spotOfFaces({ depth, ...front }: Faces): Omit<Spot, 'bound'> {
    return { measure: depth, front };
}

function moved(faces: Faces, beyond: Measure | undefined): Omit<Spot, 'bound'> {
    if (!beyond) return spotOfFaces(faces);
    const says: Says = { kind: 'face', about: ['past the curve', 'the text'] };
    const [depth, low, high] = [plus(faces.depth, beyond, says), plus(faces.low, beyond, says), plus(faces.high, beyond, says)];
    return depth && low && high ? spotOfFaces({ ...faces, depth, low, high }) : { measure: undefined };
}

/** Of a front that follows a line along its edge: how deep the line is at the two faces, where it is deepest. */
function frontAt({ form, line, low, high }: Faces, along: Measure | undefined, beyond: Measure | undefined): Pick<Spot, 'front'> {
    const says: Says = { kind: 'operation', about: ['both curves together'] };
    const past: Says = { kind: 'face', about: ['past the curve', 'the text'] };
    const [atLow, atHigh] = [low, high].map((face) => {
        const depth = plus(face, along, says);
        return beyond ? plus(depth, beyond, past) : depth;
    });
    return atLow && atHigh ? { front: { form, line, low: atLow, high: atHigh } } : {};
}

/** A board that is bent to its line reaches from where its back is furthest in to where its front is furthest out. */
function bentToLine(part: PlacedPart, extents: Extents): Extents {
    const { lo, hi } = extents.y;
    const { width: front } = hi.line ? curvesOf(hi.line) : {};
    const { width: back } = lo.line ? curvesOf(lo.line) : {};
    if (!front || !back) return extents;
    const ends = extents.x;
    const where = `the ends of ${part.name}`;
    const reach = (law: CurveLaw, which: 'greatest' | 'least') => law.extreme(ends.lo.measure, ends.hi.measure, which, where);
    return { ...extents, y: { lo: { ...lo, measure: reach(back, 'least') }, hi: { ...hi, measure: reach(front, 'greatest') } } };
}

/** A board that stands across and is bent: its two faces follow lines as far apart as it is thick. Undefined where its line does not run that way. */
export function bentExtent(part: PlacedPart, spot: Spot, end: 'lo' | 'hi', room: Extent): Extent | undefined {
    const thickness = part.thickness.value;
    const law = spot.line && spot.line.over === 'width' ? spot.line : undefined;
    if (!law || !thickness) return undefined;
    const says: Says = { kind: 'face', about: [end === 'hi' ? 'back' : 'front', part.name] };
    const zero = minus(thickness, thickness, says);
    const near = spot.beyond ?? zero;
    const far = end === 'hi' ? minus(near, thickness, says) : plus(near, thickness, says);
    if (!near || !far) return undefined;
    const { nameSpan } = part.declaration;
    const [nearLaw, farLaw] = [spot.beyond ? law.parallel(near) : law.parallel(near, nameSpan), law.parallel(far, nameSpan)];
    const [front, back] = end === 'hi' ? [nearLaw, farLaw] : [farLaw, nearLaw];
    const bound = { name: `the curve ${law.name}`, stopped: false };
    const reach = (line: CurveLaw, which: 'greatest' | 'least') =>
        line.extreme(room.lo.measure, room.hi.measure, which, `the ends of ${part.name}`);
    return {
        lo: { measure: reach(back, 'least'), bound, line: back },
        hi: { measure: reach(front, 'greatest'), bound, line: front },
    };
}

/** How the front edge of a part meets its line: depths from the back of the part, and the bevel between them. */
export function frontEdgeOf(part: PlacedPart): FrontEdge | undefined {
    const { lo, hi } = part.extents.value?.y ?? {};
    const front = hi?.front;
    const thickness = part.thickness.value;
    if (!front || !lo || !thickness) return undefined;
    const says: Says = { kind: 'between', about: [lo.bound.name, 'the line'] };
    const [low, high] = [minus(front.low, lo.measure, says), minus(front.high, lo.measure, says)];
    if (!low || !high) return undefined;
    const angle = (Math.atan((numberOf(high) - numberOf(low)) / numberOf(thickness)) * 180) / Math.PI;
    const bevel = derived(quantity.inBaseUnits(angle, dimension.angle), { kind: 'operation', about: ['off square'] }, [
        low,
        high,
        thickness,
    ]);
    const along = bevelAlong(part, numberOf(bevel));
    return { form: front.form, low, high, bevel, ...(along ? { along } : {}) };
}

/**
 * Where the edge runs aslant by an angle, a plane that is off square by a bevel fore and aft is off square to the edge by less: the tangent
 * of the bevel times the cosine of that angle. The slope of the edge is greatest or least at its ends, where it is level and where it turns
 * from belly to hollow.
 */
function bevelAlong(part: PlacedPart, degrees: number): FrontEdge['along'] {
    const line = part.frontLaw;
    const curve = line?.curve;
    const extent = line && part.extents.value?.[line.axis];
    if (!curve || !extent) return undefined;
    const [from, to] = [numberOf(extent.lo.measure), numberOf(extent.hi.measure)];
    const inner = [...curve.turns(), ...curve.inflections().map(({ point }) => point)].map(({ x }) => x);
    const isTurned = line.axis === 'x' && part.build.mirror.isTurned;
    const places = [from, ...inner.filter((x) => x > from && x < to).sort((a, b) => a - b), to].map((x) => {
        // a slope at the very end counts from inside
        const slope = curve.slopeAt(Math.min(Math.max(x, curve.span.from), curve.span.to - tolerance.geometry));
        const square = Math.atan(Math.abs(Math.tan((degrees * Math.PI) / 180)) / Math.hypot(1, slope));
        return { degrees: (square * 180) / Math.PI, at: isTurned ? to - x : x - from };
    });
    const best = (isBetter: (a: number, b: number) => boolean) => places.reduce((a, b) => (isBetter(b.degrees, a.degrees) ? b : a));
    return { least: best((a, b) => a < b), greatest: best((a, b) => a > b) };
}

/** What the strips on a front edge take off, where that is bevelled: a band lies on the bevel, a nosing on a square edge and is bevelled itself. */
export function takenByBevel(part: PlacedPart, { does, amount }: EdgeStep): Measure | undefined {
    const edge = bevelledEdge(part);
    if (!edge || !amount) return amount;
    const run: Says = { kind: 'edge', about: ['the run of the bevel', 'the front'] };
    const says: Says = { kind: 'edge', about: [`the ${does} and its bevel`, 'the front'] };
    if (does === 'nosing') return plus(amount, absolute(minus(edge.high, edge.low, run)), says);
    return derived(quantity.scale(amount.quantity, 1 / cosineOf(edge)), says, [amount, edge.bevel]);
}

/** How wide the bevelled front of a part is, from face to face. */
export function widthOfFront(part: PlacedPart, thickness: Measure | undefined): Measure | undefined {
    const edge = bevelledEdge(part);
    if (!edge || !thickness) return thickness;
    return derived(quantity.scale(thickness.quantity, 1 / cosineOf(edge)), { kind: 'edge', about: ['over the bevel', 'front'] }, [
        thickness,
        edge.bevel,
    ]);
}

/** How thick the blank of a nosing is: where its front is bevelled to the line, the line's run over its own height comes on. */
export function blankOfNosing(part: PlacedPart, { amount, width, proud }: EdgeStep): Measure | undefined {
    const { y, z } = part.extents.value ?? {};
    const front = y?.hi.front;
    if (!amount || front?.form !== 'bevelled' || part.kindOf?.thickness !== 'z') return amount;
    const says: Says = { kind: 'edge', about: ['the bevel over the height of the nosing', 'front'] };
    const top = proud ? plus(z?.hi.measure, proud, says) : z?.hi.measure;
    const bottom = minus(top, width, says);
    const [most, least] = (['greatest', 'least'] as const).map((which) =>
        front.line.extreme(bottom, top, which, `the nosing of ${part.name}`),
    );
    return plus(amount, minus(most, least, says), says);
}

function bevelledEdge(part: PlacedPart): FrontEdge | undefined {
    return part.extents.value?.y.hi.front?.form === 'bevelled' ? frontEdgeOf(part) : undefined;
}

function cosineOf({ bevel }: FrontEdge): number {
    return Math.cos((numberOf(bevel) * Math.PI) / 180);
}

function absolute(measure: Measure | undefined): Measure | undefined {
    return measure && (numberOf(measure) < 0 ? negative(measure) : measure);
}

/** Whether a part is a board that is bent to a line. */
export function isBent(part: PlacedPart): boolean {
    return part.kindOf?.thickness === 'y' && part.frontLaw !== undefined;
}
