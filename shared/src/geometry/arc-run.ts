import { circularSegment } from './circular-segment.js';
import { add, angleOf, cross, direction, distance, dot, magnitude, type Point, scale, subtract } from './vector.js';

/** A straight line or circular arc from point to point. */
export interface ArcRun {
    readonly from: Point;
    readonly to: Point;
    /** tan(included angle / 4), positive when the arc turns counter-clockwise from `from` to `to`, 0 when straight (as in DXF). */
    readonly bulge: number;
}

/** The straight runs of a polyline. */
export function polylineRuns(points: readonly Point[]): readonly ArcRun[] {
    return points.slice(1).map((to, index) => ({ from: points[index] as Point, to, bulge: 0 }));
}

/** The same run the other way. */
export function reversedRun(run: ArcRun): ArcRun {
    return { from: run.to, to: run.from, bulge: -run.bulge };
}

/** The same runs the other way, last first. */
export function reversedRuns(runs: readonly ArcRun[]): readonly ArcRun[] {
    return runs.toReversed().map(reversedRun);
}

/** Length along a run. */
export function runLength(run: ArcRun): number {
    const chord = distance(run.from, run.to);
    return run.bulge === 0 ? chord : circularSegment(chord, (Math.abs(run.bulge) * chord) / 2).length;
}

/** Area between the run and its chord, positive when the run turns counter-clockwise; in square millimetres. */
export function runSegmentArea(run: ArcRun): number {
    const chord = distance(run.from, run.to);
    return run.bulge === 0 ? 0 : Math.sign(run.bulge) * circularSegment(chord, (Math.abs(run.bulge) * chord) / 2).area;
}

/** The point half-way along a run. */
export function runMiddle(run: ArcRun): Point {
    const chord = subtract(run.to, run.from);
    const middle = scale(add(run.from, run.to), 0.5);
    return add(middle, scale({ x: chord.y, y: -chord.x }, run.bulge / 2));
}

/** The ends of a run and the points of it that lie furthest along the axes. */
export function runExtremes(run: ArcRun): readonly Point[] {
    const found = [run.from, run.to];
    const chord = subtract(run.to, run.from);
    const halfTurn = 2 * Math.atan(run.bulge);
    const sense = Math.sign(halfTurn);
    const first = (angleOf(chord) - halfTurn) * sense;
    const last = (angleOf(chord) + halfTurn) * sense;
    const quarter = Math.PI / 2;
    for (let angle = Math.ceil(first / quarter) * quarter; sense !== 0 && angle <= last; angle += quarter) {
        // From the start to where the tangent has turned so far, the chord is in proportion to the sine of half the turn.
        const half = (angle - first) / 2;
        const length = (magnitude(chord) * Math.sin(half)) / Math.sin(Math.abs(halfTurn));
        found.push(add(run.from, scale(direction((first + half) * sense), length)));
    }
    return found;
}

/**
 * Distance from a point to the circle or line of a run; beyond an end of the run, to that end.
 * Written without the centre, so that it holds for any radius: with v from the run's start and n its left normal there,
 * the distance is 2 f / (1 + sqrt(1 - 2 curvature f)), f = n.v - curvature v.v / 2.
 */
export function distanceToRun(place: Point, run: ArcRun): number {
    const chord = subtract(run.to, run.from);
    const halfTurn = 2 * Math.atan(run.bulge);
    const tilt = Math.atan2(chord.y, chord.x);
    const startTangent = direction(tilt - halfTurn);
    const endTangent = direction(tilt + halfTurn);
    const offset = subtract(place, run.from);
    const before = dot(offset, startTangent) < 0;
    const after = dot(subtract(place, run.to), endTangent) > 0;
    if (before || after) {
        return Math.min(distance(place, run.from), distance(place, run.to));
    }
    const curvature = (2 * Math.sin(halfTurn)) / magnitude(chord);
    const f = cross(startTangent, offset) - (curvature * dot(offset, offset)) / 2;
    return Math.abs((2 * f) / (1 + Math.sqrt(Math.max(1 - 2 * curvature * f, 0))));
}

/**
 * On which side of the chord of a run a point lies: positive on the left, negative on the right, never 0 for a run with length.
 * A point on the chord counts as moved a little towards greater x, on a level chord towards greater y.
 */
export function sideOfChord(place: Point, run: ArcRun): number {
    const chord = subtract(run.to, run.from);
    return cross(chord, subtract(place, run.from)) || -chord.y || chord.x;
}

/** Whether a point lies between a run and its chord. */
export function isInRunSegment(place: Point, run: ArcRun): boolean {
    if (run.bulge === 0) {
        return false;
    }
    const chord = subtract(run.to, run.from);
    const offset = subtract(place, run.from);
    const sense = Math.sign(run.bulge);
    // Within the circle of the run f has the sign of its curvature (see `distanceToRun`).
    const halfTurn = 2 * Math.atan(run.bulge);
    const curvature = (2 * Math.sin(halfTurn)) / magnitude(chord);
    const f = cross(direction(angleOf(chord) - halfTurn), offset) - (curvature * dot(offset, offset)) / 2;
    return sense * sideOfChord(place, run) < 0 && sense * f > 0;
}
