/**
 * Which way the line of a template is cut with the grain, and where an ordinary feed tears out. Common practice, no source: a cutter that
 * goes down from the wide wood to the narrow one, along its fibres, shears them off; one that goes up lifts them out.
 */
import type { Curve, Interval } from '../geometry/index.js';

/** A stretch of the line in which one way of cutting is with the grain. */
export interface GrainZone {
    /** Along the template, in millimetres from its low end. */
    readonly along: Interval;
    /** The way with the grain: `up` from the low to the high end of the template. */
    readonly way: 'up' | 'down';
    /**
     * Whether an ordinary feed tears out there. The bit of a router that is held from above turns clockwise, and is fed so that it pushes
     * back, which is counter-clockwise round the outside of the work: up along a front that lies to the right, and to the right along one
     * that lies towards the viewer.
     */
    readonly tearsOut: boolean;
}

/** Places along the line at which its slope is looked at. */
const places = 256;
/** A shorter stretch is not worth turning the work over. */
const shortest = 20;
/** Nearer to the grain (or to square across it) than this, either way is as good: about one degree. */
const eitherWay = 0.0175;

/**
 * The zones of a line in order.
 * @param grain of the face that is cut: along the template, or across it from back to front
 * @param start abscissa of the low end of the template
 */
export function grainZones(line: Curve, start: number, length: number, grain: 'along' | 'across'): readonly GrainZone[] {
    const ways = Array.from({ length: places }, (_, place) => wayAt(line.slopeAt(start + ((place + 0.5) / places) * length), grain));
    const zones: { from: number; to: number; way: 'up' | 'down' }[] = [];
    for (const [place, found] of ways.entries()) {
        const last = zones.at(-1);
        const [from, to] = [(place / places) * length, ((place + 1) / places) * length];
        // where either way is as good, the stretch goes on as it was
        const way = found ?? last?.way ?? ways.find((one) => one !== undefined) ?? 'up';
        if (last?.way === way) last.to = to;
        else zones.push({ from, to, way });
    }
    return zones
        .filter(({ from, to }) => to - from >= Math.min(shortest, length))
        .map(({ from, to, way }) => ({ along: { from, to }, way, tearsOut: way === 'down' }));
}

/** The way in which fibres that point forward run out of the wood; undefined where they lie along its edge or square to it. */
function wayAt(slope: number, grain: 'along' | 'across'): 'up' | 'down' | undefined {
    const off = Number.isFinite(slope) ? slope : Math.sign(slope) * 1e6;
    if (Math.abs(off) < eitherWay || (grain === 'across' && Math.abs(1 / off) < eitherWay)) return undefined;
    const downhill = off < 0 ? 'up' : 'down';
    const uphill = off < 0 ? 'down' : 'up';
    return grain === 'along' ? downhill : uphill;
}
