/** Cuts in the order of the machine: what can be bored, slotted or sawn without a change of the tool, and then of the fence. */
import type { Axis, Casework, FaceName, Part } from '../casework/index.js';
import { type Interval, tolerance } from '../geometry/index.js';
import { axes, datums, lengthOf, middleOf, oppositeSide, placeOfSide, spanOf, stockOf, thirdAxis, wayOf } from './axes.js';
import { boundsOf } from './bounds.js';
import type { Feature, FeatureKind, Joinery } from './feature.js';
import { joineryOf } from './joinery.js';

/** What stays set on a machine. Lengths in millimetres. */
export interface Tooling {
    readonly does: FeatureKind;
    /** `#20`, of a biscuit. */
    readonly size?: string;
    /** Diameter of the bit; of a slot its width; of a mortise or a biscuit slot how thick it is. */
    readonly wide: number;
    /** Of a mortise: its length. */
    readonly long?: number;
    /** Undefined for a hole that goes through. */
    readonly depth: number | undefined;
    /** Of a pocket: the thickness that its jig is set to, and how far before the end the step of its bit stops, along the screw. */
    readonly pocket?: { readonly stock: number; readonly seat: number };
    /** Of a mitre: how far the saw is tilted, in degrees from square to the face. */
    readonly tilt?: number;
}

/** From what the fence, or the line that stands for it, is set: a side of the part, or the face of a left or right one that looks outwards. */
export type Reference = FaceName | 'outer';

/** One place of the fence, and what is cut at it. */
export interface FencePlace {
    /** Undefined where the jig or the mark of the joint gives the place. */
    readonly fence: { readonly from: Reference; readonly axis: Axis; readonly distance: number } | undefined;
    readonly cuts: readonly PartCuts[];
}

/** What is cut in one side of a part. */
export interface PartCuts {
    readonly part: Part;
    readonly side: FaceName;
    readonly from: FaceName;
    /** Middles along the fence, from that side of the part, rising: of holes and slots that are marked by their middles. */
    readonly at: readonly number[];
    /** Of slots that do not run through: from where to where, from that side. */
    readonly runs: readonly Interval[];
    readonly count: number;
}

export interface SetUp {
    readonly tooling: Tooling;
    readonly places: readonly FencePlace[];
}

/** A feature with where its fence stands and where it lies along it. */
interface Placed {
    readonly tooling: Tooling;
    readonly fence: FencePlace['fence'];
    readonly part: Part;
    readonly side: FaceName;
    readonly from: FaceName;
    readonly at?: number;
    readonly run?: Interval;
}

/** All cuts of a casework by set-up, in the order in which the text has the first of each. What is left between cuts is none. */
export function setUpsOf(casework: Casework): readonly SetUp[] {
    const joinery = joineryOf(casework);
    const placed = joinery.features.flatMap((feature) => {
        const part = casework.parts.get(feature.part);
        return part ? (placedOf(joinery, feature, part) ?? []) : [];
    });
    return grouped(placed, ({ tooling }) => key(tooling)).map((alike) => ({
        tooling: alike[0]!.tooling,
        places: grouped(alike, ({ fence }) => key(fence && [fence.from, fence.distance]))
            .map((one) => ({ fence: one[0]!.fence, cuts: cutsOf(one) }))
            .sort((one, other) => (one.fence?.distance ?? 0) - (other.fence?.distance ?? 0)),
    }));
}

function cutsOf(placed: readonly Placed[]): readonly PartCuts[] {
    return grouped(placed, ({ part, side, from }) => `${part.path} ${side} ${from}`).map((one) => {
        const { part, side, from } = one[0]!;
        const at = one.flatMap((each) => each.at ?? []).sort((a, b) => a - b);
        return { part, side, from, at, runs: one.flatMap(({ run }) => run ?? []), count: one.length };
    });
}

/** Lists of what has one key, in the order of the first of each. */
function grouped<Item>(items: readonly Item[], keyOf: (item: Item) => string): readonly (readonly Item[])[] {
    const groups = new Map<string, Item[]>();
    for (const item of items) {
        const known = groups.get(keyOf(item));
        if (known) known.push(item);
        else groups.set(keyOf(item), [item]);
    }
    return [...groups.values()];
}

/** Settings are the same to a hundredth of a millimetre: finer than any stop. */
function key(of: unknown): string {
    return JSON.stringify(of, (_, value: unknown) => (typeof value === 'number' ? binned(value) : value)) ?? '';
}

/**
 * A length in hundredths of a millimetre, for finding equal ones. No multiple of 1/256in or of a hundredth of a millimetre lies where one
 * bin ends and the next begins, so that the last digits of a double do not part what is equal.
 */
export function binned(millimetres: number): number {
    return Math.round(millimetres * 100 + 0.3);
}

function placedOf(joinery: Joinery, feature: Feature, part: Part): Placed | undefined {
    const { solid, does } = feature;
    if (does === 'tongue') return undefined;
    if (does === 'pocket') return pocketOf(joinery, feature, part);
    // the tip of a step bit bores it with the pocket
    if (solid.is === 'cylinder' && isSlanted(feature)) return undefined;
    if (solid.is === 'box' && does !== 'mortise') return slotOf(joinery, feature, part);
    if (solid.is === 'prism') return sawnAslant(joinery, feature, part);
    return pointOf(joinery, feature, part);
}

function isSlanted({ solid }: Feature): boolean {
    return solid.is === 'cylinder' && axes.every((axis) => Math.abs(solid.direction[axis]) < 1 - tolerance.angle);
}

/** The way along which the cuts of a joint follow one another, and the way in which its fence is moved; of an edge step its own. */
function waysOf({ contacts }: Joinery, { cause, does, side, solid }: Feature): { readonly along: Axis; readonly across: Axis } {
    const { axis } = wayOf(side);
    if (does === 'pin hole') return { along: 'z', across: 'y' };
    const contact = cause.is === 'joint' ? contacts.get(cause.joint) : undefined;
    if (contact && does === 'shoulder') return { along: thirdAxis(contact.axis, axis), across: contact.axis };
    if (contact && solid.is !== 'box' && contact.along !== axis) return { along: contact.along, across: thirdAxis(axis, contact.along) };
    const bounds = boundsOf(solid);
    const [one, other] = axes.filter((each) => each !== axis) as [Axis, Axis];
    const along = lengthOf(spanOf(bounds, other)) > lengthOf(spanOf(bounds, one)) ? other : one;
    return { along, across: thirdAxis(axis, along) };
}

function placement({ box }: Part, side: FaceName, along: Axis, place: number) {
    return { side, from: datums[along], at: place - box.least[along] };
}

/** Holes, biscuit slots and mortises: the fence gives their middle. */
function pointOf(joinery: Joinery, feature: Feature, part: Part): Placed {
    const { solid, side, does, depth, fastener } = feature;
    const { along, across } = waysOf(joinery, feature);
    const bounds = boundsOf(solid);
    const middle = middleOf(spanOf(bounds, across));
    const size = does === 'biscuit slot' && fastener !== undefined ? joinery.fasteners[fastener]?.size : undefined;
    const tooling: Tooling = {
        does,
        ...(size === undefined ? {} : { size }),
        wide: solid.is === 'cylinder' ? solid.diameter : solid.is === 'segment' ? solid.thickness : lengthOf(spanOf(bounds, across)),
        ...(does === 'mortise' ? { long: lengthOf(spanOf(bounds, along)) } : {}),
        depth: goesThrough(part, side, depth) ? undefined : depth,
    };
    const from = does === 'pin hole' ? nearestEdge(part, across, middle) : referenceOf(part, across);
    return {
        tooling,
        fence: fenceAt(part, from, across, { from: middle, to: middle }),
        part,
        ...placement(part, side, along, middleOf(spanOf(bounds, along))),
    };
}

function goesThrough({ box }: Part, side: FaceName, depth: number): boolean {
    return depth >= lengthOf(spanOf(box, wayOf(side).axis)) - tolerance.fit;
}

/** The jig lies against the end of the board: only places along that are marked. */
function pocketOf(joinery: Joinery, feature: Feature, part: Part): Placed | undefined {
    const { solid, side, depth, fastener } = feature;
    if (solid.is !== 'cylinder') return undefined;
    const { along } = waysOf(joinery, { ...feature, side });
    const tip = joinery.byPart.get(part.path)?.features.find((one) => one !== feature && one.fastener === fastener);
    const tooling = { does: feature.does, wide: solid.diameter, depth, pocket: { stock: stockOf(part), seat: tip?.depth ?? 0 } };
    return { tooling, fence: undefined, part, ...placement(part, side, along, solid.start[along]) };
}

/** Dados, grooves, rabbets, shoulders and notches: the fence gives the line that is nearer to it. */
function slotOf(joinery: Joinery, feature: Feature, part: Part): Placed {
    const { solid, side, does, depth } = feature;
    const { along, across } = waysOf(joinery, feature);
    const bounds = boundsOf(solid);
    const [span, run] = [spanOf(bounds, across), spanOf(bounds, along)];
    const whole = spanOf(part.box, along);
    const isWhole = run.from <= whole.from + tolerance.fit && run.to >= whole.to - tolerance.fit;
    return {
        tooling: { does, wide: lengthOf(span), depth },
        fence: fenceAt(part, runsOutAt(part, across, span) ?? referenceOf(part, across), across, span),
        part,
        side,
        from: datums[along],
        ...(isWhole ? {} : { run: { from: run.from - whole.from, to: run.to - whole.from } }),
    };
}

/** Mitres, and the slots of their splines: the mitre gives the place. */
function sawnAslant(joinery: Joinery, feature: Feature, part: Part): Placed {
    const { side, does, depth } = feature;
    const { along } = waysOf(joinery, feature);
    const { wide, deep, tilt } = sectionOf(feature, part);
    return {
        tooling: does === 'mitre' ? { does, wide, depth, tilt } : { does, wide, depth: deep },
        fence: undefined,
        part,
        side,
        from: datums[along],
    };
}

/** Of a mitre its tilt; of a slot square to it how wide and deep it is: its shorter and longer side. */
function sectionOf({ solid, side }: Feature, { directions: { thickness } }: Part) {
    const bounds = boundsOf(solid);
    const tilt = (Math.atan2(lengthOf(spanOf(bounds, wayOf(side).axis)), lengthOf(spanOf(bounds, thickness))) * 180) / Math.PI;
    const corners = solid.is === 'prism' ? solid.section : [];
    const sides = corners.map((corner, index) => {
        const next = corners[(index + 1) % corners.length]!;
        return Math.hypot(next.x - corner.x, next.y - corner.y);
    });
    return { wide: Math.min(...sides), deep: Math.max(...sides), tilt };
}

/** Left and right boards are turned so that the same face lies on the table; all others are measured from their datum. */
function referenceOf({ hand, directions: { thickness } }: Part, axis: Axis): Reference {
    return hand && thickness === axis && axis === 'x' ? 'outer' : datums[axis];
}

/** The edge to which a row is the nearer; a curved front is no edge for a fence. */
function nearestEdge({ box, front, frontCurve }: Part, axis: Axis, place: number): Reference {
    const isFront = axis === 'y' && !front && frontCurve === undefined && place > middleOf(spanOf(box, axis));
    return isFront ? oppositeSide(datums[axis]) : datums[axis];
}

/** The side at which a slot is open, if it is. */
function runsOutAt({ box }: Part, axis: Axis, { from, to }: Interval): Reference | undefined {
    if (from <= box.least[axis] + tolerance.fit) return datums[axis];
    return to >= box.most[axis] - tolerance.fit ? oppositeSide(datums[axis]) : undefined;
}

function fenceAt(part: Part, from: Reference, axis: Axis, span: Interval): FencePlace['fence'] {
    const side = from === 'outer' ? (part.hand ?? datums[axis]) : from;
    const at = placeOfSide(part.box, side);
    const distance = wayOf(side).way < 0 ? span.from - at : at - span.to;
    return { from, axis, distance: Math.max(0, distance) };
}
