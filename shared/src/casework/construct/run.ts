/**
 * Running: a part goes on until it meets something that was written before it.
 *
 * What stands in the way right across the part's way stops it; what stands there only in part does not (that is an overlap, which a
 * rule reports). Decided in plain numbers within the fit tolerance; the size itself comes from the spot of what it meets.
 */
import { tolerance } from '../../geometry/index.js';
import type { Axis } from '../model/casework.js';
import type { FrontLine } from './front-line.js';
import { axes, facesOfAxis, nameOfFace } from './kinds.js';
import { because, numberOf } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { noOne, type Spot } from './room.js';

export interface Extent {
    readonly lo: Spot;
    readonly hi: Spot;
}
export type Extents = Record<Axis, Extent>;
export interface Ends {
    readonly lo: number;
    readonly hi: number;
}

export interface Run {
    readonly extents: Extents;
    /** The axes along which it still runs, and the ends of them that are placed already. */
    readonly free: readonly Axis[];
    readonly fixed: ReadonlySet<string>;
    /** Which end it starts from where something stands in the middle of its way. */
    readonly from: Partial<Record<Axis, 'lo' | 'hi'>>;
    /** Axes that an obstacle need not cover: those along which the thing is only as thick as it is. */
    readonly through: readonly Axis[];
    readonly obstacles: readonly PlacedPart[];
    readonly name: string;
}

export interface RunResult {
    readonly extents: Extents;
    /** What stands in the middle of the way, when it is not said from where to run. */
    readonly unclear: { readonly obstacle: PlacedPart; readonly axis: Axis } | undefined;
}

/** Follows a run to its ends. A part that could not be placed stops nothing: its own line says why. */
export function follow(run: Run): RunResult {
    const state: RunState = { extents: { ...run.extents }, waiting: new Set(run.obstacles), unclear: undefined };
    // What closes the way for all of the thing stops it first. Then, as it grows from where it starts, what closes the way there.
    while (stopOnce(run, state, 'all of it') || stopOnce(run, state, 'where it starts'));
    return { extents: state.extents, unclear: state.unclear };
}

interface RunState {
    readonly extents: Extents;
    readonly waiting: Set<PlacedPart>;
    unclear: RunResult['unclear'];
}
type Closing = 'all of it' | 'where it starts';

/** Lets the obstacles in their order stop the run; whether any did. */
function stopOnce(run: Run, state: RunState, closing: Closing): boolean {
    let progress = false;
    let ends = endsOf(state.extents);
    for (const obstacle of state.waiting) {
        const met = ends && meeting(state.extents, ends, obstacle);
        const axis = met && run.free.find((one) => isStopped(run, one, met, closing));
        if (!met || !axis) continue;
        state.waiting.delete(obstacle);
        const stop = stopAt(run, state.extents, obstacle, axis, met);
        if (stop) {
            state.extents[axis] = stop;
            ends = endsOf(state.extents);
            progress = true;
        } else if (isRoomOnBothSides(axis, met)) {
            state.unclear ??= { obstacle, axis };
        }
    }
    return progress;
}

interface Meeting {
    readonly own: Readonly<Record<Axis, Ends>>;
    readonly other: Readonly<Record<Axis, Ends>>;
    /** Under a curve, the least depth of the thing where the other one is: what stands so far forward closes its way. */
    readonly ownDepth: Ends;
    readonly obstacle: PlacedPart;
}

/** Where two things share room, each with its own extent there. */
function meeting(extents: Extents, ends: Readonly<Record<Axis, Ends>>, obstacle: PlacedPart): Meeting | undefined {
    const others = obstacle.ends;
    if (!others || isApart(ends.x, others.x) || isApart(ends.y, others.y) || isApart(ends.z, others.z)) return undefined;
    const [x, z] = [common(ends.x, others.x), common(ends.z, others.z)];
    const ownLine = extents.y.hi.line;
    const own = ownLine ? { ...ends, y: localDepth(ends.y, ownLine, x, z, 'most') } : ends;
    const ownDepth = ownLine ? localDepth(ends.y, ownLine, x, z, 'least') : ends.y;
    const otherLine = obstacle.extents.value?.y.hi.line;
    const other = otherLine ? { ...others, y: localDepth(others.y, otherLine, x, z, 'most') } : others;
    return isApart(own.y, other.y) ? undefined : { own, other, ownDepth, obstacle };
}

function common(a: Ends, b: Ends): Ends {
    return { lo: Math.max(a.lo, b.lo), hi: Math.min(a.hi, b.hi) };
}
function isApart(a: Ends, b: Ends): boolean {
    return Math.min(a.hi, b.hi) - Math.max(a.lo, b.lo) <= tolerance.fit;
}

/** How deep a thing with a curved front is where the other one is. */
function localDepth(ends: Ends, line: FrontLine, x: Ends, z: Ends, which: 'least' | 'most'): Ends {
    const range = line.rangeOver(x, z);
    return range ? { lo: ends.lo, hi: range[which] } : ends;
}

export function endsOf(extents: Extents): Record<Axis, Ends> | undefined {
    const [x, y, z] = [endsAlong(extents.x), endsAlong(extents.y), endsAlong(extents.z)];
    return x && y && z && { x, y, z };
}

function endsAlong({ lo, hi }: Extent): Ends | undefined {
    const ends = { lo: numberOf(lo.measure), hi: numberOf(hi.measure) };
    return Number.isNaN(ends.lo) || Number.isNaN(ends.hi) ? undefined : ends;
}

/** Whether the obstacle closes the way along an axis: it covers the other axes, or the thing is thin there. */
function isStopped(run: Run, axis: Axis, { own, other, ownDepth, obstacle }: Meeting, closing: Closing): boolean {
    if (run.fixed.has(`${axis}lo`) && run.fixed.has(`${axis}hi`)) return false;
    const needed = { ...own, y: ownDepth };
    return axes.every((across) => {
        if (across === axis || run.through.includes(across)) return true;
        const start = closing === 'where it starts' ? fromOf(run, across) : undefined;
        const covers = (end: 'lo' | 'hi') =>
            reaches(other[across], needed[across], end) || (run.fixed.has(across + end) && isAtSideOfCase(obstacle, other, across, end));
        return (start === 'hi' || covers('lo')) && (start === 'lo' || covers('hi'));
    });
}

function reaches(other: Ends, needed: Ends, end: 'lo' | 'hi'): boolean {
    return end === 'lo' ? other.lo <= needed.lo + tolerance.fit : other.hi >= needed.hi - tolerance.fit;
}

/** What reaches a side of the case closes the way there for all that stands past that side. */
function isAtSideOfCase(obstacle: PlacedPart, own: Readonly<Record<Axis, Ends>>, axis: Axis, end: 'lo' | 'hi'): boolean {
    const side = numberOf(obstacle.build.room.face(facesOfAxis[axis][end], noOne)?.measure);
    return Math.abs(own[axis][end] - side) <= tolerance.fit;
}

/** Where there is not, two parts claim the same wood, and it is not the place that is unclear. */
function isRoomOnBothSides(axis: Axis, { own, other }: Meeting): boolean {
    return other[axis].lo > own[axis].lo + tolerance.fit && other[axis].hi < own[axis].hi - tolerance.fit;
}

function stopAt(run: Run, extents: Extents, obstacle: PlacedPart, axis: Axis, { own, other }: Meeting): Extent | undefined {
    const atLow = other[axis].lo <= own[axis].lo + tolerance.fit;
    const atHigh = other[axis].hi >= own[axis].hi - tolerance.fit;
    const side = atLow && !atHigh ? 'lo' : atHigh && !atLow ? 'hi' : oppositeOf(fromOf(run, axis));
    if (!side || run.fixed.has(axis + side)) return undefined;
    const { lo, hi } = extents[axis];
    return side === 'lo' ? { lo: stoppingSpot(obstacle, axis, 'hi'), hi } : { lo, hi: stoppingSpot(obstacle, axis, 'lo') };
}

/** A placed end is where it runs from. */
function fromOf(run: Run, axis: Axis): 'lo' | 'hi' | undefined {
    if (run.fixed.has(`${axis}lo`)) return 'lo';
    if (run.fixed.has(`${axis}hi`)) return 'hi';
    return run.from[axis];
}

function oppositeOf(end: 'lo' | 'hi' | undefined): 'lo' | 'hi' | undefined {
    return end === 'lo' ? 'hi' : end === 'hi' ? 'lo' : undefined;
}

function stoppingSpot(obstacle: PlacedPart, axis: Axis, end: 'lo' | 'hi'): Spot {
    const spot = obstacle.faceSpot(axis, end);
    const face = nameOfFace(obstacle.kind, facesOfAxis[axis][end], obstacle.hand);
    const name = `${obstacle.name}.${face}`;
    const says = { kind: 'stops' as const, about: [name, obstacle.name], span: obstacle.statement.span };
    return { measure: because(spot?.measure, says), bound: { name, part: obstacle.path, stopped: true } };
}
