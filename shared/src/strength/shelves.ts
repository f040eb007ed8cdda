/** How far shelves sag under what they carry, at once and in years, and how near they come to breaking. */
import type { Casework, Part, Thing } from '../casework/index.js';
import { type Beam, type BeamLoad, type Bending, bendingOf, type Extreme, greatestMoment, greatestSag } from './beam.js';
import { continuousBending } from './continuous-beam.js';
import { loadsOn, type PartLoad } from './loads.js';
import { bendingStress } from './section.js';
import { type ShelfStrip, sectionOf, stripsOfShelf, type UncountedBearer } from './shelf-section.js';
import { depthOf, weightOf } from './shelf-shape.js';
import { longestOf, runsOn, stretchesOf } from './shelf-supports.js';
import { ruptureOf, shareOfRupture } from './stiffness.js';

/** What is found of one shelf. Millimetres, newtons, megapascals. */
export interface ShelfSag {
    readonly part: Part;
    /** Clear between its supports, where they are furthest apart. Simple ends, but for posts that it is joined to and runs on over. */
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
    /** Where it runs on over posts: over how many stretches, and the moments at the ends of this one with the load on every other. */
    readonly overSupports?: { readonly spans: number; readonly moments: readonly [left: number, right: number] };
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
        const alike = new Map<string, UnderLoad>();
        shelves = [...casework.parts.values()].flatMap((part) => strengthOf(casework, part, alike) ?? []);
        found.set(casework, shelves);
    }
    return shelves;
}

/** Those whose stiffness is known. */
export function knownShelves(casework: Casework): readonly ShelfSag[] {
    return shelfStrengths(casework).filter((shelf) => shelf.is === 'known');
}

function strengthOf(casework: Casework, part: Part, alike: Map<string, UnderLoad>): ShelfStrength | undefined {
    if (part.directions.thickness !== 'z' || part.directions.length !== 'x') return undefined;
    const [first, ...others] = loadsOn(casework, part);
    if (!first) return undefined;
    const section = stripsOfShelf(casework, part);
    const shelf = section.ok ? shelfOver(casework, part, section.strips) : undefined;
    if (!section.ok || !shelf) return { is: 'unknown', part, load: first, material: section.ok ? undefined : section.unknown };
    const results = [first, ...others].map((load) => sagOfAlike(alike, shelf, load));
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

function shelfOver(casework: Casework, part: Part, strips: readonly ShelfStrip[]): Shelf | undefined {
    const stretches = stretchesOf(casework, part);
    const longest = longestOf(stretches);
    const depth = depthOf(casework, part);
    const ownPerLength = weightOf(casework, part) / (part.box.most.x - part.box.least.x);
    const shapes = stretches.map(({ from, to }): Shape => ({ span: to - from, depthAt: (x) => depth(from + x) }));
    const own = shapes[longest];
    if (!own) return undefined;
    const isOne = runsOn(casework, part);
    return {
        ...own,
        strips,
        ownWeight: ownPerLength * own.span,
        isStraight: part.frontCurve === undefined,
        spans: isOne ? shapes : [own],
        place: isOne ? longest : 0,
    };
}

/** A shelf between two supports. */
interface Shape {
    readonly span: number;
    /** Of the core, front to back, at a distance from the left support. */
    readonly depthAt: (x: number) => number;
}

/** A shelf as a beam: what does not hang on its load. Its span is the longest of those that it runs over. */
interface Shelf extends Shape {
    readonly strips: readonly ShelfStrip[];
    readonly ownWeight: number;
    /** Whether it is as deep all along. */
    readonly isStraight: boolean;
    /** Those that it runs over in one, from the left, and which of them is its own; one alone where it is simply supported. */
    readonly spans: readonly Shape[];
    readonly place: number;
}

type UnderLoad = Pick<ShelfSag, 'load' | 'loadForce' | 'sagAtOnce' | 'sagInYears' | 'momentAt' | 'greatestMoment' | 'overSupports'> & {
    readonly stresses: readonly Omit<StripStress, 'allowable'>[];
};

/** Most shelves of a case are alike and carry alike: that is worked out once. */
function sagOfAlike(alike: Map<string, UnderLoad>, shelf: Shelf, load: PartLoad): UnderLoad {
    if (!shelf.isStraight) return sagUnder(shelf, load);
    const numbers = [load.intensity, shelf.ownWeight, shelf.depthAt(0), shelf.place, ...shelf.spans.map(({ span }) => span)];
    const strips = shelf.strips.map(({ name, role, material, loose, width, height, below, modulus }) =>
        [name, role, material.id, loose === true, ...[width, height, below, modulus].map(rounded)].join(' '),
    );
    const key = [load.way, ...numbers.map(rounded), ...strips].join(', ');
    let known = alike.get(key);
    if (!known) {
        known = sagUnder(shelf, load);
        alike.set(key, known);
    }
    return { ...known, load };
}

/** Boxes of alike shelves differ in the last places. */
const rounded = (value: number): string => value.toPrecision(12);

/** The sag and stress of a shelf under one load and its own weight. */
function sagUnder(shelf: Shelf, load: PartLoad): UnderLoad {
    const { span, depthAt, strips, spans, place } = shelf;
    const beam = beamOf(shelf, load, 'at once', shelf, true);
    // on every other stretch the load makes it sag most; on all of them it bends it most over a support
    const alternate = bendingIn(shelf, load, (index) => (index - place) % 2 === 0);
    const patterns = spans.length === 1 ? [alternate] : [alternate, bendingIn(shelf, load, () => true)];
    const moments = patterns.map((bending) => greatestMoment(beam, bending));
    const moment = moments.reduce((a, b) => (b.value > a.value ? b : a));
    const section = sectionOf(strips, depthAt(moment.at), 'at once');
    const whole = alternate.reactions[0] + alternate.reactions[1];
    return {
        load,
        loadForce: whole - shelf.ownWeight,
        sagAtOnce: greatestSag(beam, alternate).value,
        sagInYears: greatestSag(beamOf(shelf, load, 'in years', shelf, true), alternate).value,
        momentAt: alternate.momentAt,
        greatestMoment: moment,
        ...(spans.length === 1
            ? {}
            : { overSupports: { spans: spans.length, moments: [alternate.momentAt(0), alternate.momentAt(span)] } }),
        stresses: section.strips.map((strip, index) => ({
            strip: strips[index]!,
            stress: bendingStress(section, strip, moment.value),
        })),
    };
}

/** The bending of the longest stretch, where the load is on some of them. */
function bendingIn(shelf: Shelf, load: PartLoad, isLoaded: (index: number) => boolean): Bending {
    const beams = shelf.spans.map((shape, index) => beamOf(shelf, load, 'at once', shape, isLoaded(index)));
    return (beams.length === 1 ? [bendingOf(beams[0]!)] : continuousBending(beams))[shelf.place]!;
}

function beamOf(shelf: Shelf, load: PartLoad, when: 'at once' | 'in years', { span, depthAt }: Shape, isLoaded: boolean): Beam {
    const own = shelf.ownWeight / shelf.span;
    const weight: BeamLoad = { is: 'spread', from: 0, to: span, perLength: () => own };
    return {
        span,
        stiffnessAt: (x) => sectionOf(shelf.strips, depthAt(x), when).stiffness,
        ends: 'simple',
        loads: isLoaded ? [weight, beamLoad(load, { span, depthAt }, shelf.strips)] : [weight],
    };
}

function beamLoad({ way, intensity }: PartLoad, { span, depthAt }: Shape, strips: readonly ShelfStrip[]): BeamLoad {
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
    const shelf = shelfOver(casework, part, strips);
    if (!nosing || !shelf) return undefined;
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
