import { risingRoot } from '../roots.js';
import type { Point } from '../vector.js';
import type { Curve } from './curve.js';
import { CurveByDistance } from './curve-by-distance.js';

/**
 * The parallel of a stretch of a smooth curve, at an offset under every radius it bends to on that side.
 *
 * The point offset from the base's own at base distance s lies at distance (s - from) + offset (angle(s) - angle(from)) along the
 * parallel, since the parallel is 1 + offset curvature times as long as the base.
 */
export class ParallelPiece extends CurveByDistance {
    readonly kind = 'parallel';
    readonly start: Point;
    readonly end: Point;
    readonly length: number;
    readonly breaks: readonly number[];
    readonly curvaturePeaks: readonly number[];
    private readonly fromAngle: number;

    /**
     * @param offset positive towards lesser ordinates
     * @param from distance along the base where the stretch begins
     * @param to distance along the base where it ends
     */
    constructor(
        readonly base: Curve,
        private readonly offset: number,
        readonly from: number,
        readonly to: number,
    ) {
        super();
        this.fromAngle = base.angleAt(from);
        this.start = this.offsetPoint(from);
        this.end = this.offsetPoint(to);
        this.length = this.distanceOf(to);
        this.breaks = this.distancesOf(base.breaks);
        this.curvaturePeaks = this.distancesOf(base.curvaturePeaks);
    }

    pointAt(distance: number): Point {
        return this.offsetPoint(this.baseDistance(distance));
    }

    angleAt(distance: number): number {
        return this.base.angleAt(this.baseDistance(distance));
    }

    curvatureAt(distance: number): number {
        const curvature = this.base.curvatureAt(this.baseDistance(distance));
        return curvature / (1 + this.offset * curvature);
    }

    curvatureRateAt(distance: number): number {
        const along = this.baseDistance(distance);
        return this.base.curvatureRateAt(along) / (1 + this.offset * this.base.curvatureAt(along)) ** 3;
    }

    /** Distance along the base to the place whose offset point is over an abscissa, held to the stretch. */
    baseDistanceOver(x: number): number {
        if (x <= this.start.x) {
            return this.from;
        }
        if (x >= this.end.x) {
            return this.to;
        }
        return risingRoot(
            (along) => this.offsetPoint(along).x - x,
            (along) => Math.cos(this.base.angleAt(along)) * (1 + this.offset * this.base.curvatureAt(along)),
            this.from,
            this.to,
            this.base.distanceAt(x - this.offset * Math.sin(this.base.angleAt(this.base.distanceAt(x)))),
        );
    }

    /** Square to a level line is straight on: a parallel turns where its base does. */
    protected override findTurns(): readonly Point[] {
        const places = this.base.turns().map(({ x }) => this.base.distanceAt(x));
        return places.filter((along) => along > this.from && along < this.to).map((along) => this.offsetPoint(along));
    }

    protected inflectionDistances(): readonly number[] {
        return this.distancesOf(this.base.inflections().map(({ distance }) => distance));
    }

    protected override distanceInside(x: number): number {
        return this.distanceOf(this.baseDistanceOver(x));
    }

    protected override valueInside(x: number): number {
        return this.offsetPoint(this.baseDistanceOver(x)).y;
    }

    private offsetPoint(along: number): Point {
        const { x, y } = this.base.pointAt(along);
        const angle = this.base.angleAt(along);
        return { x: x + this.offset * Math.sin(angle), y: y - this.offset * Math.cos(angle) };
    }

    /** Distance along the parallel for one along the base. */
    private distanceOf(along: number): number {
        return along - this.from + this.offset * (this.base.angleAt(along) - this.fromAngle);
    }

    private distancesOf(places: readonly number[]): readonly number[] {
        return places.filter((along) => along > this.from && along < this.to).map((along) => this.distanceOf(along));
    }

    /** Distance along the base for one along the parallel. */
    private baseDistance(distance: number): number {
        if (distance <= 0) {
            return this.from;
        }
        if (distance >= this.length) {
            return this.to;
        }
        return risingRoot(
            (along) => this.distanceOf(along) - distance,
            (along) => 1 + this.offset * this.base.curvatureAt(along),
            this.from,
            this.to,
            this.from + (distance / this.length) * (this.to - this.from),
        );
    }
}
