import { type ArcRun, distanceToRun, runMiddle } from '../arc-run.js';
import { tolerance } from '../tolerance.js';
import { add, dot, magnitude, scale, subtract, turnBetween } from '../vector.js';
import type { Curve } from './curve.js';
import { justInside } from './curve-by-distance.js';

/** A curve as arcs and lines for tools that read no others. */
export interface ArcReduction {
    /** End to end, in order of the abscissa; tangents are continuous where the curve's are. */
    readonly runs: readonly ArcRun[];
    /** The greatest distance measured between the curve and the runs, in millimetres. */
    readonly deviation: number;
}

/** No curve of casework takes so many stretches: they bound the work on one that is absurdly large for its tolerance. */
const mostStretches = 2000;

/** Places on each stretch at which its deviation is measured. */
const measuredPlaces = 32;

/** Measured at so many places, the greatest deviation is missed by less than this share. */
const measureSafety = 0.95;

/**
 * Lines and arcs that stay within a distance of a curve: pairs of arcs that meet on a common tangent (biarcs) on equal stretches,
 * as many as it takes between each two breaks or inflections.
 * @param within in millimetres; held to no less than the geometry tolerance. A curve so large or so tightly bent that thousands of
 *     arcs do not come so near gets those, and `deviation` says how near they come.
 */
export function reduceToArcs(curve: Curve, within: number): ArcReduction {
    const goal = measureSafety * Math.max(within, tolerance.geometry);
    const stations = [0, ...curve.breaks, ...curve.inflections().map((place) => place.distance), curve.length].sort((a, b) => a - b);
    const reductions = stations.slice(1).map((to, index) => reduceStretch(curve, stations[index] as number, to, goal));
    return {
        runs: mergeArcs(reductions.flatMap(({ runs }) => runs)),
        deviation: Math.max(...reductions.map(({ deviation }) => deviation)),
    };
}

/** Equal stretches, more and more of them until every one is near enough; the error of a biarc goes with its length cubed. */
function reduceStretch(curve: Curve, from: number, to: number, goal: number): ArcReduction {
    if (to - from <= tolerance.geometry) {
        return { runs: [], deviation: 0 };
    }
    for (let count = 1; ; ) {
        const stretches = Array.from({ length: count }, (_, index) =>
            biarcOver(curve, from + ((to - from) * index) / count, from + ((to - from) * (index + 1)) / count),
        );
        const deviation = Math.max(...stretches.map((stretch) => stretch.deviation));
        if (deviation <= goal || count === mostStretches) {
            return { runs: stretches.flatMap(({ runs }) => runs), deviation };
        }
        count = Math.min(Math.max(count + 1, Math.ceil(count * Math.cbrt(deviation / goal))), mostStretches);
    }
}

/** The biarc, or straight line, over a stretch that bends one way, and how far the stretch strays from it. */
function biarcOver(curve: Curve, from: number, to: number): ArcReduction {
    const start = curve.pointAt(from);
    const end = curve.pointAt(to);
    const startTangent = curve.tangentAt(from);
    const endTangent = curve.tangentAt(justInside(to, from));
    const chord = subtract(end, start);
    const sagitta = Math.abs(turnBetween(startTangent, endTangent)) * magnitude(chord);
    if (sagitta <= tolerance.geometry) {
        return measured(curve, from, to, [{ from: start, to: end, bulge: 0 }]);
    }
    // Tangent lengths d, equal at both ends, whose tips are 2 d apart: |chord - d (start + end tangent)| = 2 d.
    const sum = dot(chord, add(startTangent, endTangent));
    const opening = 2 * (1 - dot(startTangent, endTangent));
    const tip = dot(chord, chord) / (sum + Math.sqrt(sum * sum + opening * dot(chord, chord)));
    const firstTip = add(start, scale(startTangent, tip));
    const lastTip = subtract(end, scale(endTangent, tip));
    const joint = scale(add(firstTip, lastTip), 0.5);
    return measured(curve, from, to, [
        { from: start, to: joint, bulge: Math.tan(turnBetween(startTangent, subtract(joint, start)) / 2) },
        { from: joint, to: end, bulge: Math.tan(turnBetween(subtract(end, joint), endTangent) / 2) },
    ]);
}

/** The runs, with the greatest distance from them to places on the stretch. */
function measured(curve: Curve, from: number, to: number, runs: readonly ArcRun[]): ArcReduction {
    let deviation = 0;
    for (let index = 1; index < measuredPlaces; index++) {
        const place = curve.pointAt(from + ((to - from) * index) / measuredPlaces);
        deviation = Math.max(deviation, Math.min(...runs.map((run) => distanceToRun(place, run))));
    }
    return { runs, deviation };
}

/** Makes one run of neighbours that lie on one circle or line. */
function mergeArcs(runs: readonly ArcRun[]): readonly ArcRun[] {
    const merged: ArcRun[] = [];
    for (const run of runs) {
        const before = merged.at(-1);
        const whole = before === undefined ? undefined : oneRun(before, run);
        if (whole === undefined) {
            merged.push(run);
        } else {
            merged[merged.length - 1] = whole;
        }
    }
    return merged;
}

/** The run that goes over two neighbours, if it is the same line to the geometry tolerance. */
function oneRun(before: ArcRun, after: ArcRun): ArcRun | undefined {
    const halfTurn = 2 * (Math.atan(before.bulge) + Math.atan(after.bulge));
    if (Math.abs(halfTurn) >= Math.PI) {
        return undefined;
    }
    const whole = { from: before.from, to: after.to, bulge: Math.tan(halfTurn / 2) };
    const middles = [before, after].map(runMiddle);
    return [before.to, ...middles].every((place) => distanceToRun(place, whole) <= tolerance.geometry / 8) ? whole : undefined;
}
