import { risingRoot } from '../roots.js';
import { sameLength, tolerance } from '../tolerance.js';
import { direction, type Point } from '../vector.js';
import type { Curve, CurveKind, CurvePlace, CurveValue, Interval, LeastRadius } from './curve.js';

/** No curve of casework needs so many points between two breaks: they bound the work on one absurdly large for its tolerance. */
const mostPoints = 100_000;

/**
 * What every curve does alike once point, angle and curvature are known by distance along it.
 *
 * A kind of curve gives those, and the distances at which it breaks, inflects and may bend most;
 * between neighbouring inflections and breaks its angle only rises or only falls, on which the searches here rely.
 */
export abstract class CurveByDistance implements Curve {
    private foundTurns: readonly Point[] | undefined;

    abstract readonly kind: CurveKind;
    abstract readonly length: number;
    abstract readonly start: Point;
    abstract readonly end: Point;
    abstract readonly breaks: readonly number[];
    abstract readonly curvaturePeaks: readonly number[];

    abstract pointAt(distance: number): Point;
    abstract angleAt(distance: number): number;
    abstract curvatureAt(distance: number): number;
    abstract curvatureRateAt(distance: number): number;
    protected abstract inflectionDistances(): readonly number[];

    get span(): Interval {
        return { from: this.start.x, to: this.end.x };
    }

    tangentAt(distance: number): Point {
        return direction(this.angleAt(distance));
    }

    distanceAt(x: number): number {
        if (x <= this.start.x) {
            return 0;
        }
        if (x >= this.end.x) {
            return this.length;
        }
        return this.distanceInside(x);
    }

    valueAt(x: number): CurveValue {
        if (x <= this.start.x) {
            return { value: this.start.y, beyond: this.start.x - x > tolerance.geometry };
        }
        if (x >= this.end.x) {
            return { value: this.end.y, beyond: x - this.end.x > tolerance.geometry };
        }
        return { value: this.valueInside(x), beyond: false };
    }

    slopeAt(x: number): number {
        if (this.start.x - x > tolerance.geometry || x - this.end.x > tolerance.geometry) {
            return 0;
        }
        const angle = this.angleAt(this.distanceAt(x));
        return Math.PI / 2 - Math.abs(angle) <= tolerance.angle ? Math.sign(angle) * Infinity : Math.tan(angle);
    }

    abscissasAt(value: number): readonly number[] {
        const found: number[] = [];
        const note = (x: number) => {
            const last = found.at(-1);
            if (last === undefined || !sameLength(last, x)) {
                found.push(x);
            }
        };
        const stations = this.monotoneStations();
        for (let index = 0; index + 1 < stations.length; index++) {
            this.noteCrossings(stations[index] as number, stations[index + 1] as number, value, note);
        }
        return found;
    }

    leastRadius(): LeastRadius {
        let at = 0;
        let greatest = 0;
        for (const distance of [0, ...this.breaks, ...this.curvaturePeaks, this.length]) {
            const curvature = Math.abs(this.curvatureAt(distance));
            if (curvature > greatest) {
                at = distance;
                greatest = curvature;
            }
        }
        return { radius: 1 / greatest, distance: at, point: this.pointAt(at) };
    }

    inflections(): readonly CurvePlace[] {
        return this.inflectionDistances().map((distance) => ({ distance, point: this.pointAt(distance) }));
    }

    turns(): readonly Point[] {
        this.foundTurns ??= this.findTurns();
        return this.foundTurns;
    }

    sample(within: number): readonly Point[] {
        const stations = [...new Set([0, ...this.breaks, ...this.curvaturePeaks, ...this.inflectionDistances(), this.length])];
        stations.sort((a, b) => a - b);
        const points: Point[] = [this.pointAt(0)];
        for (let index = 0; index + 1 < stations.length; index++) {
            this.sampleStretch(stations[index] as number, stations[index + 1] as number, Math.max(within, tolerance.geometry), points);
        }
        return points;
    }

    protected findTurns(): readonly Point[] {
        return turningPoints(this.monotoneStations().map((distance) => this.pointAt(distance)));
    }

    /** Distance to the place over an abscissa inside the span. */
    protected distanceInside(x: number): number {
        return this.distanceBetween(x, 0, this.length);
    }

    /** Distance to the place over an abscissa that lies between the places at two distances. */
    protected distanceBetween(x: number, from: number, to: number): number {
        const first = this.pointAt(from).x;
        const last = this.pointAt(to).x;
        return risingRoot(
            (distance) => this.pointAt(distance).x - x,
            (distance) => Math.cos(this.angleAt(distance)),
            from,
            to,
            from + ((x - first) / (last - first)) * (to - from),
        );
    }

    /** Ordinate over an abscissa inside the span. */
    protected valueInside(x: number): number {
        return this.pointAt(this.distanceInside(x)).y;
    }

    /** Distances from end to end between which the ordinate only rises or only falls. */
    private monotoneStations(): readonly number[] {
        const turning = [0, ...this.breaks, ...this.inflectionDistances(), this.length].sort((a, b) => a - b);
        const stations: number[] = [];
        for (let index = 0; index + 1 < turning.length; index++) {
            const from = turning[index] as number;
            const to = turning[index + 1] as number;
            stations.push(from);
            const level = this.levelBetween(from, to);
            if (level !== undefined) {
                stations.push(level);
            }
        }
        stations.push(this.length);
        return stations;
    }

    /** Distance between two neighbouring stations at which the curve runs level, if it does. */
    private levelBetween(from: number, to: number): number | undefined {
        const middle = (from + to) / 2;
        const last = justInside(to, from);
        const rising = this.curvatureAt(middle) > 0 ? 1 : -1;
        const angle = (distance: number) => rising * this.angleAt(distance);
        if (!(angle(from) < 0 && angle(last) > 0)) {
            return undefined;
        }
        return risingRoot(angle, (distance) => rising * this.curvatureAt(distance), from, last, middle);
    }

    private noteCrossings(from: number, to: number, value: number, note: (x: number) => void): void {
        const first = this.pointAt(from);
        const last = this.pointAt(to);
        const startsThere = sameLength(first.y, value);
        const endsThere = sameLength(last.y, value);
        if (startsThere) {
            note(first.x);
        }
        if (!startsThere && !endsThere && first.y < value !== last.y < value) {
            const rising = last.y > first.y ? 1 : -1;
            const distance = risingRoot(
                (along) => rising * (this.pointAt(along).y - value),
                (along) => rising * Math.sin(this.angleAt(along)),
                from,
                to,
                from + ((value - first.y) / (last.y - first.y)) * (to - from),
            );
            note(this.pointAt(distance).x);
        }
        if (endsThere) {
            note(last.x);
        }
    }

    /** Adds points after `from` up to `to`; the curvature only rises or only falls in the stretch, so it is greatest at an end. */
    private sampleStretch(from: number, to: number, within: number, points: Point[]): void {
        const greatest = Math.max(Math.abs(this.curvatureAt(from)), Math.abs(this.curvatureAt(justInside(to, from))));
        const step = Math.sqrt((8 * within) / greatest);
        const count = Math.min(Math.max(1, Math.ceil((to - from) / step)), mostPoints);
        for (let index = 1; index <= count; index++) {
            points.push(this.pointAt(index === count ? to : from + ((to - from) * index) / count));
        }
    }
}

/** A distance on the near side of a break, where the law of the curve is still that of the stretch from `from`. */
export function justInside(to: number, from: number): number {
    return to - (to - from) * tolerance.relative;
}

/** Of points between which a curve only rises or only falls, those at which it turns. */
export function turningPoints(stations: readonly Point[]): readonly Point[] {
    return stations.filter(({ y }, index) => {
        const [before, after] = [stations[index - 1], stations[index + 1]];
        return before !== undefined && after !== undefined && (y - before.y) * (after.y - y) < 0;
    });
}
