import { tolerance } from '../tolerance.js';
import { angleOf, distance, type Point, subtract } from '../vector.js';
import { greatestChordAngle, spiralOverChord } from './euler-spiral.js';

/** Fair lines that exist are found in about ten steps, hardly shortened. */
const stepLimit = 40;
const halvingLimit = 10;

/** One row of a system in which each unknown meets only its neighbours. */
interface Row {
    before: number;
    own: number;
    after: number;
    excess: number;
}

interface Balance {
    readonly rows: readonly Row[];
    /** Root of the sum of the squared excesses. */
    readonly size: number;
}

/**
 * Directions at points in order along the abscissa such that Euler spirals between them meet with one curvature and have none at the
 * ends: Newton's steps from the chords' own directions, each shortened until it helps.
 * @returns undefined when the steps do not settle or would wind a spiral about its chord
 */
export function fairAngles(points: readonly Point[]): readonly number[] | undefined {
    const chords = points.slice(1).map((end, index) => {
        const start = points[index] as Point;
        return { length: distance(start, end), tilt: angleOf(subtract(end, start)) };
    });
    const meanChord = chords.reduce((sum, { length }) => sum + length, 0) / chords.length;
    const balance = (angles: readonly number[]) => curvatureBalance(angles, chords, meanChord);

    let angles: readonly number[] = points.map((_, index) => {
        const before = chords[index - 1] ?? chords[index];
        const after = chords[index] ?? chords[index - 1];
        return before === undefined || after === undefined
            ? 0
            : (before.tilt * after.length + after.tilt * before.length) / (before.length + after.length);
    });
    let current = balance(angles);
    for (let count = 0; count < stepLimit && current !== undefined; count++) {
        if (current.size <= tolerance.angle * tolerance.angle) {
            return angles;
        }
        const step = solveNeighbours(current.rows);
        const next = shortenedStep(angles, step, current.size, balance);
        if (next === undefined) {
            // No step helps further: settled to rounding, or not to be settled at all.
            return current.size <= tolerance.angle ? angles : undefined;
        }
        [angles, current] = next;
    }
    return undefined;
}

/** The differences of curvature at the points, times the mean chord, with their changes; undefined where a spiral would wind. */
function curvatureBalance(
    angles: readonly number[],
    chords: readonly { readonly length: number; readonly tilt: number }[],
    meanChord: number,
): Balance | undefined {
    const rows: Row[] = angles.map(() => ({ before: 0, own: 0, after: 0, excess: 0 }));
    for (const [index, chord] of chords.entries()) {
        const start = (angles[index] as number) - chord.tilt;
        const end = (angles[index + 1] as number) - chord.tilt;
        if (!(Math.abs(start) <= greatestChordAngle && Math.abs(end) <= greatestChordAngle)) {
            return undefined;
        }
        const spiral = spiralOverChord(start, end);
        const scale = meanChord / chord.length;
        const left = rows[index] as Row;
        left.excess += scale * spiral.startCurvature;
        left.own += scale * spiral.startCurvatureByStart;
        left.after += scale * spiral.startCurvatureByEnd;
        const right = rows[index + 1] as Row;
        right.excess -= scale * spiral.endCurvature;
        right.before -= scale * spiral.endCurvatureByStart;
        right.own -= scale * spiral.endCurvatureByEnd;
    }
    return { rows, size: Math.hypot(...rows.map(({ excess }) => excess)) };
}

/** The step that would cancel every excess if the rows were straight, by elimination along the rows. */
function solveNeighbours(rows: readonly Row[]): readonly number[] {
    const own: number[] = [];
    const wanted: number[] = [];
    for (const [index, row] of rows.entries()) {
        const factor = index === 0 ? 0 : row.before / (own[index - 1] as number);
        own.push(row.own - factor * (rows[index - 1]?.after ?? 0));
        wanted.push(-row.excess - factor * (wanted[index - 1] ?? 0));
    }
    const step: number[] = new Array(rows.length).fill(0);
    for (let index = rows.length - 1; index >= 0; index--) {
        step[index] = ((wanted[index] as number) - (rows[index] as Row).after * (step[index + 1] ?? 0)) / (own[index] as number);
    }
    return step;
}

/** The longest of the step, its half, its quarter ... that lessens the imbalance. */
function shortenedStep(
    angles: readonly number[],
    step: readonly number[],
    size: number,
    balance: (angles: readonly number[]) => Balance | undefined,
): readonly [readonly number[], Balance] | undefined {
    let share = 1;
    for (let count = 0; count < halvingLimit; count++) {
        const trial = angles.map((angle, index) => angle + share * (step[index] as number));
        const found = balance(trial);
        if (found !== undefined && found.size < size) {
            return [trial, found];
        }
        share /= 2;
    }
    return undefined;
}
