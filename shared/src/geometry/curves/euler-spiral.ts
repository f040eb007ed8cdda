import { integral, unitPoints } from '../quadrature.js';
import { risingRoot } from '../roots.js';
import type { Point } from '../vector.js';

/** A piece of an Euler spiral: its curvature changes evenly along it. */
export interface EulerSpiral {
    readonly start: Point;
    readonly startAngle: number;
    readonly startCurvature: number;
    readonly curvatureRate: number;
    readonly length: number;
}

/** Direction of the spiral at a distance from its start. */
export function spiralAngle(spiral: EulerSpiral, distance: number): number {
    return spiral.startAngle + distance * (spiral.startCurvature + (spiral.curvatureRate * distance) / 2);
}

/** Point of the spiral at a distance from its start: the integral of its direction, to rounding. */
export function spiralPoint(spiral: EulerSpiral, distance: number): Point {
    const turn = Math.abs(spiral.startCurvature * distance) + Math.abs(spiral.curvatureRate * distance * distance) / 2;
    const panels = 1 + Math.floor(turn);
    return {
        x: spiral.start.x + integral((along) => Math.cos(spiralAngle(spiral, along)), 0, distance, panels),
        y: spiral.start.y + integral((along) => Math.sin(spiralAngle(spiral, along)), 0, distance, panels),
    };
}

/** An Euler spiral over a chord of length 1, by its end angles, with its curvatures' changes as those angles change. */
export interface ChordSpiral {
    readonly length: number;
    readonly startCurvature: number;
    readonly endCurvature: number;
    readonly startCurvatureByStart: number;
    readonly startCurvatureByEnd: number;
    readonly endCurvatureByStart: number;
    readonly endCurvatureByEnd: number;
}

/** How far the end angles may stand from the chord: beyond, a spiral over the chord may wind or not exist. */
export const greatestChordAngle = 2;

/** How far from its guess the change of curvature may be: wider than the spread over all end angles allowed. */
const bracket = 8;

/** The direction of a spiral over its chord turns by up to seven radians; on three panels the rule is then exact to rounding. */
const momentPoints = unitPoints(3);

/**
 * The Euler spiral over a level chord of length 1 whose ends stand at given angles to it (counter-clockwise), each within
 * `greatestChordAngle`.
 *
 * With the share t along it, the angle is start + (end - start - a) t + a t^2, and `a` makes the rise over the chord vanish
 * (Bertolazzi and Frego, G1 fitting with clothoids, 2015, from memory). The changes follow from the same condition.
 */
export function spiralOverChord(start: number, end: number): ChordSpiral {
    const turn = end - start;
    const guess = 3 * (start + end);
    let moments = directionMoments(start, turn, guess);
    const momentsFor = (a: number) => {
        if (a !== moments.a) {
            moments = directionMoments(start, turn, a);
        }
        return moments;
    };
    const a = risingRoot(
        (trial) => -momentsFor(trial).sine0,
        (trial) => momentsFor(trial).cosine1 - momentsFor(trial).cosine2,
        guess - bracket,
        guess + bracket,
        guess,
    );
    const { sine1, sine2, cosine0, cosine1, cosine2 } = momentsFor(a);
    const aByStart = (cosine0 - cosine1) / (cosine1 - cosine2);
    const aByEnd = cosine1 / (cosine1 - cosine2);
    const chordByStart = sine1 + (sine1 - sine2) * aByStart;
    const chordByEnd = -sine1 + (sine1 - sine2) * aByEnd;
    return {
        length: 1 / cosine0,
        startCurvature: (turn - a) * cosine0,
        endCurvature: (turn + a) * cosine0,
        startCurvatureByStart: (-1 - aByStart) * cosine0 + (turn - a) * chordByStart,
        startCurvatureByEnd: (1 - aByEnd) * cosine0 + (turn - a) * chordByEnd,
        endCurvatureByStart: (-1 + aByStart) * cosine0 + (turn + a) * chordByStart,
        endCurvatureByEnd: (1 + aByEnd) * cosine0 + (turn + a) * chordByEnd,
    };
}

/** Integrals over the share t, from 0 to 1, of the sine and cosine of the direction times powers of t. */
interface DirectionMoments {
    readonly a: number;
    readonly sine0: number;
    readonly sine1: number;
    readonly sine2: number;
    readonly cosine0: number;
    readonly cosine1: number;
    readonly cosine2: number;
}

function directionMoments(start: number, turn: number, a: number): DirectionMoments {
    let [sine0, sine1, sine2, cosine0, cosine1, cosine2] = [0, 0, 0, 0, 0, 0];
    for (const { place, weight } of momentPoints) {
        const angle = start + place * (turn - a + a * place);
        const sine = weight * Math.sin(angle);
        const cosine = weight * Math.cos(angle);
        sine0 += sine;
        sine1 += sine * place;
        sine2 += sine * place * place;
        cosine0 += cosine;
        cosine1 += cosine * place;
        cosine2 += cosine * place * place;
    }
    return { a, sine0, sine1, sine2, cosine0, cosine1, cosine2 };
}
