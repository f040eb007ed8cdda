/** How far shelves sag under what they carry, at once and in years, and how near they come to breaking. */
import type { Casework, Part, Thing } from '../casework/index.js';
import { type Beam, type BeamLoad, bendingOf, type Extreme, greatestMoment, greatestSag } from './beam.js';
import { loadsOn, type PartLoad } from './loads.js';
import { bendingStress } from './section.js';
import { type ShelfStrip, sectionOf, stripsOfShelf, type UncountedBearer } from './shelf-section.js';
import { depthOf, weightOf } from './shelf-shape.js';
import { longestStretch, type Stretch } from './shelf-supports.js';
import { ruptureOf, shareOfRupture } from './stiffness.js';

/** What is found of one shelf. Millimetres, newtons, megapascals. */
export interface ShelfSag {
    readonly part: Part;
    /** Clear between its supports, where they are furthest apart. Simple ends: what glue and screws add is not counted on. */
    readonly span: number;
    /** The worse of what it carries. */
    readonly load: PartLoad;
    /** What the load comes to on the span, and the shelf's own weight there; 0 where no density is known. */
    readonly loadForce: number;
    readonly ownWeight: number;
    readonly sagAtOnce: number;
    readonly sagInYears: number;
    readonly strips: readonly ShelfStrip[];
    /** Of the core, front to back, at a distance from the left support. */
    readonly depthAt: (x: number) => number;
    /** The bending moment at a distance from the left support, in N mm. */
    readonly momentAt: (x: number) => number;
    /** Where that is greatest, and how great. */
    readonly greatestMoment: Extreme;
    /** Of the strip that comes nearest to breaking, of those whose strength is known; undefined where none is. */
    readonly stress: StripStress | undefined;
    /** What it is made of and nothing says at what stress it breaks. */
    readonly strengthUnknown: readonly Thing[];
    /** Boards on edge under it that are not counted on. */
    readonly uncounted: readonly UncountedBearer[];
}

export interface StripStress {
    readonly strip: ShelfStrip;
    readonly stress: number;
    /** What the strip may carry for years. */
    readonly allowable: number;
}

/** A shelf that carries something, and whose stiffness cannot be known. */
export interface UnknownShelf {
    readonly part: Part;
    readonly load: PartLoad;
    /** The material of which no modulus is known, where that is the reason. */
    readonly material: Thing | undefined;
}

export type ShelfStrength = ({ readonly is: 'known' } & ShelfSag) | ({ readonly is: 'unknown' } & UnknownShelf);

const found = new WeakMap<Casework, readonly ShelfStrength[]>();

/** All lying parts that carry something, in the order of building. Computed once for each casework. */
export function shelfStrengths(casework: Casework): readonly ShelfStrength[] {
    let shelves = found.get(casework);
    if (!shelves) {
        shelves = [...casework.parts.values()].flatMap((part) => strengthOf(casework, part) ?? []);
        found.set(casework, shelves);
    }
    return shelves;
}

/** Those whose stiffness is known. */
export function knownShelves(casework: Casework): readonly ShelfSag[] {
    return shelfStrengths(casework).filter((shelf) => shelf.is === 'known');
}

function strengthOf(casework: Casework, part: Part): ShelfStrength | undefined {
    if (part.directions.thickness !== 'z' || part.directions.length !== 'x') return undefined;
    const [first, ...others] = loadsOn(casework, part);
    if (!first) return undefined;
    const stretch = longestStretch(casework, part);
    const section = stripsOfShelf(casework, part);
    if (!section.ok || !stretch) return { is: 'unknown', part, load: first, material: section.ok ? undefined : section.unknown };
    const shelf = shelfOver(casework, part, stretch, section.strips);
    const results = [first, ...others].map((load) => sagUnder(shelf, load));
    const worst = results.reduce((a, b) => (b.sagAtOnce > a.sagAtOnce ? b : a));
    return {
        is: 'known',
        part,
        ...shelf,
        ...worst,
        stress: stressOf(casework, worst.stresses),
        strengthUnknown: [...new Set(section.strips.map(({ material }) => material))].filter(
            (one) => ruptureOf(casework, one) === undefined,
        ),
        uncounted: section.uncounted,
    };
}

function shelfOver(casework: Casework, part: Part, { from, to }: Stretch, strips: readonly ShelfStrip[]): Shelf {
    const span = to - from;
    const depth = depthOf(casework, part);
    const whole = part.box.most.x - part.box.least.x;
    return { span, depthAt: (x) => depth(from + x), strips, ownWeight: (weightOf(casework, part) * span) / whole };
}

/** A shelf as a beam: what does not hang on its load. */
interface Shelf {
    readonly span: number;
    /** Of the core, front to back, at a distance from the left support. */
    readonly depthAt: (x: number) => number;
    readonly strips: readonly ShelfStrip[];
    readonly ownWeight: number;
}

type UnderLoad = Pick<ShelfSag, 'load' | 'loadForce' | 'sagAtOnce' | 'sagInYears' | 'momentAt' | 'greatestMoment'> & {
    readonly stresses: readonly Omit<StripStress, 'allowable'>[];
};

/** The sag and stress of a shelf under one load and its own weight. */
function sagUnder(shelf: Shelf, load: PartLoad): UnderLoad {
    const { span, depthAt, strips } = shelf;
    const own = shelf.ownWeight / span;
    const loads: readonly BeamLoad[] = [{ is: 'spread', from: 0, to: span, perLength: () => own }, beamLoad(load, shelf)];
    const beam = (when: 'at once' | 'in years'): Beam => ({
        span,
        stiffnessAt: (x) => sectionOf(strips, depthAt(x), when).stiffness,
        ends: 'simple',
        loads,
    });
    const now = beam('at once');
    const bending = bendingOf(now);
    const moment = greatestMoment(now, bending);
    const section = sectionOf(strips, depthAt(moment.at), 'at once');
    const whole = bending.reactions[0] + bending.reactions[1];
    return {
        load,
        loadForce: whole - shelf.ownWeight,
        sagAtOnce: greatestSag(now, bending).value,
        sagInYears: greatestSag(beam('in years'), bending).value,
        momentAt: bending.momentAt,
        greatestMoment: moment,
        stresses: section.strips.map((strip, index) => ({
            strip: strips[index]!,
            stress: bendingStress(section, strip, moment.value),
        })),
    };
}

function beamLoad({ way, intensity }: PartLoad, { span, depthAt, strips }: Shelf): BeamLoad {
    if (way === 'at the middle') return { is: 'point', at: span / 2, force: intensity };
    const edges = strips.filter(({ role }) => role === 'edge').reduce((sum, { width }) => sum + width, 0);
    return { is: 'spread', from: 0, to: span, perLength: (x) => (way === 'along' ? intensity : intensity * (depthAt(x) + edges)) };
}

function stressOf(casework: Casework, stresses: UnderLoad['stresses']): StripStress | undefined {
    let nearest: StripStress | undefined;
    for (const { strip, stress } of stresses) {
        const rupture = ruptureOf(casework, strip.material);
        if (rupture === undefined) continue;
        const allowable = rupture * shareOfRupture(strip.material);
        if (!nearest || stress / allowable > nearest.stress / nearest.allowable) nearest = { strip, stress, allowable };
    }
    return nearest;
}

/**
 * The least height of a nosing, in millimetres, with which a shelf sags no more than so far; undefined where even `most` is too little, or
 * where there is no nosing.
 */
export function leastNosing(
    casework: Casework,
    { part, load, strips }: ShelfSag,
    when: 'sagAtOnce' | 'sagInYears',
    sag: number,
    most: number,
): number | undefined {
    const nosing = strips.find(({ role, width }) => role === 'edge' && width >= thinnestNosing);
    const stretch = longestStretch(casework, part);
    if (!nosing || !stretch) return undefined;
    const shelf = shelfOver(casework, part, stretch, strips);
    const sagWith = (height: number) =>
        sagUnder({ ...shelf, strips: strips.map((strip) => (strip === nosing ? { ...strip, height } : strip)) }, load)[when];
    if (sagWith(most) > sag) return undefined;
    let [low, high] = [nosing.height, most];
    while (high - low > 0.01) {
        const middle = (low + high) / 2;
        if (sagWith(middle) > sag) low = middle;
        else high = middle;
    }
    return high;
}

/** What is thinner is a band, which nobody makes higher to stiffen a shelf. */
const thinnestNosing = 10;
