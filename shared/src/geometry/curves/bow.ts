import { tolerance } from '../tolerance.js';
import { between, isMeasurableLength, type Point } from '../vector.js';
import { type Chord, chordBetween, greatestEndAngle } from './chord.js';
import { type Curve, type CurveOutcome, made, refused } from './curve.js';
import { CurveByDistance } from './curve-by-distance.js';
import { type BowShape, bowShapeOfEndAngle, bowShapeOfRise } from './elastica.js';
import { ElasticaSeries } from './elastica-series.js';
import { HermiteTable } from './hermite-table.js';

/** What a maker needs to know to spring the strip. */
export interface BowStrip {
    /** Length of the strip between the points where the string holds it. */
    readonly length: number;
    /** Length of the string: the chord. */
    readonly stringLength: number;
    /**
     * Pull of the string over the load that first buckles the straight strip: the pull is
     * loadRatio pi^2 B / length^2, with B the strip's flexural rigidity.
     */
    readonly loadRatio: number;
    /** Greatest curvature, at the middle of the strip, positive. */
    readonly greatestCurvature: number;
    /** Angle between the end of the strip and the string. */
    readonly endAngle: number;
}

/** The line of a uniform strip whose ends a string pulls together. */
export interface BowCurve extends Curve {
    readonly kind: 'bow';
    /** From the middle of the string, square to it: positive towards greater ordinates. */
    readonly rise: number;
    readonly strip: BowStrip;
}

/** What is over an abscissa: the half-turn share, the ordinate, and the change of the abscissa with the share. */
interface AbscissaPlace {
    readonly share: number;
    readonly y: number;
    readonly slope: number;
}

/** Enough for one step from a guess to the last place on the shallow bows of casework. */
const guessCells = 16;

class ElasticaBow extends CurveByDistance implements BowCurve {
    readonly kind = 'bow';
    readonly breaks: readonly number[] = [];
    readonly curvaturePeaks: readonly number[];
    readonly start: Point;
    readonly end: Point;
    readonly length: number;
    readonly strip: BowStrip;
    private readonly middle: Point;
    private readonly tilt: number;
    /** Components of the strip's length along the string, and square to it on the side of the rise. */
    private readonly alongX: number;
    private readonly alongY: number;
    private readonly riseX: number;
    private readonly riseY: number;
    private readonly side: number;
    private readonly series: ElasticaSeries;
    /** Curvature for each millimetre of height over the string: load over flexural rigidity. */
    private readonly stiffness: number;
    private readonly guesses: HermiteTable;

    constructor(
        chord: Chord,
        readonly rise: number,
        shape: BowShape,
    ) {
        super();
        this.start = chord.from;
        this.end = chord.to;
        this.length = chord.length / shape.chord;
        this.curvaturePeaks = [this.length / 2];
        this.side = rise < 0 ? -1 : 1;
        this.middle = between(chord.from, chord.to, 0.5);
        this.tilt = chord.tilt;
        this.alongX = (this.length * (chord.to.x - chord.from.x)) / chord.length;
        this.alongY = (this.length * (chord.to.y - chord.from.y)) / chord.length;
        this.riseX = -this.alongY * this.side;
        this.riseY = this.alongX * this.side;
        this.series = new ElasticaSeries(shape);
        this.stiffness = (2 * shape.integrals.first) ** 2 / this.length;
        this.strip = {
            length: this.length,
            stringLength: chord.length,
            loadRatio: shape.loadRatio,
            greatestCurvature: shape.greatestCurvature / this.length,
            endAngle: shape.endAngle,
        };
        this.guesses = this.tableOfGuesses();
    }

    pointAt(distance: number): Point {
        if (distance <= 0) {
            return this.start;
        }
        if (distance >= this.length) {
            return this.end;
        }
        const place = this.series.at(this.halfTurnShare(distance));
        return {
            x: this.middle.x + place.along * this.alongX + place.height * this.riseX,
            y: this.middle.y + place.along * this.alongY + place.height * this.riseY,
        };
    }

    angleAt(distance: number): number {
        return this.tilt - 2 * this.side * Math.asin(this.series.at(this.halfTurnShare(distance)).halfTurnSine);
    }

    /** The string's pull times its arm over the rigidity: curvature goes with the height over the string. */
    curvatureAt(distance: number): number {
        return -this.side * this.stiffness * this.series.at(this.halfTurnShare(distance)).height;
    }

    curvatureRateAt(distance: number): number {
        const sine = this.series.at(this.halfTurnShare(distance)).halfTurnSine;
        return (this.side * this.stiffness * 2 * sine * Math.sqrt(1 - sine * sine)) / this.length;
    }

    protected inflectionDistances(): readonly number[] {
        return [];
    }

    protected override distanceInside(x: number): number {
        return this.length * (this.overAbscissa(x).share / Math.PI + 0.5);
    }

    protected override valueInside(x: number): number {
        return this.overAbscissa(x).y;
    }

    private halfTurnShare(distance: number): number {
        return Math.PI * (Math.min(Math.max(distance / this.length, 0), 1) - 0.5);
    }

    /**
     * The half-turn share of the place over an abscissa, and its ordinate: Newton's steps held in a bracket.
     * The ordinate comes by the last step's tangent, since that step's square no longer counts.
     */
    private overAbscissa(x: number, guess = this.guesses.at(x)): AbscissaPlace {
        const offset = x - this.middle.x;
        let low = -Math.PI / 2;
        let high = Math.PI / 2;
        let share = guess >= low && guess <= high ? guess : (Math.PI * offset) / (this.end.x - this.start.x);
        let lastStep = Math.PI;
        for (;;) {
            const place = this.series.at(share);
            const excess = place.along * this.alongX + place.height * this.riseX - offset;
            if (excess > 0) {
                high = share;
            } else {
                low = share;
            }
            const sine = place.halfTurnSine;
            const turnCosine = 1 - 2 * sine * sine;
            const turnSine = -2 * sine * Math.sqrt(1 - sine * sine);
            const slope = (this.alongX * turnCosine + this.riseX * turnSine) / Math.PI;
            let step = -excess / slope;
            if (!(share + step >= low && share + step <= high) || Math.abs(step) > lastStep / 2) {
                step = (low + high) / 2 - share;
            }
            lastStep = Math.abs(step);
            share += step;
            // said by what goes on, so that a place that is no number ends the search too
            const goesOn = lastStep * lastStep * this.alongX > tolerance.convergence * slope && lastStep > tolerance.convergence;
            if (!goesOn) {
                const y = this.middle.y + place.along * this.alongY + place.height * this.riseY;
                return { share, y: y + (step * (this.alongY * turnCosine + this.riseY * turnSine)) / Math.PI, slope };
            }
        }
    }

    /** Half-turn shares over a few abscissas, to begin the search for others: found once, since a bow is asked for many depths. */
    private tableOfGuesses(): HermiteTable {
        const shares: number[] = [];
        const slopes: number[] = [];
        for (let index = 0; index <= guessCells; index++) {
            const place = this.overAbscissa(this.start.x + ((this.end.x - this.start.x) * index) / guessCells, Number.NaN);
            shares.push(place.share);
            slopes.push(1 / place.slope);
        }
        return new HermiteTable(this.start.x, this.end.x, shares, slopes);
    }
}

/**
 * The bow between two points, given in either order, with a rise.
 * @param rise from the middle of the string, square to it, in millimetres: positive bellies towards greater ordinates
 * @returns the bow, with its strip; refused when the ends span nothing or the strip would fold back over the abscissa
 */
export function bowCurve(p: Point, q: Point, rise: number): CurveOutcome<BowCurve> {
    const found = chordBetween(p, q);
    if (!found.ok) {
        return found;
    }
    if (!isMeasurableLength(rise)) {
        return refused({ reason: 'out-of-range' });
    }
    const { chord } = found;
    const steepest = bowShapeOfEndAngle(greatestEndAngle(chord));
    const greatest = (chord.length * steepest.rise) / steepest.chord;
    if (Math.abs(rise) > greatest + tolerance.geometry) {
        return refused({ reason: 'rise-too-great', rise, greatest });
    }
    const height = Math.min(Math.abs(rise), greatest);
    return made(new ElasticaBow(chord, rise < 0 ? -height : height, bowShapeOfRise(height / chord.length)));
}

/** Whether a curve is that of a sprung strip. */
export function isBow(curve: Curve): curve is BowCurve {
    return curve.kind === 'bow';
}
