/** A curve as a case uses it: depth over height or over width, in the case's own coordinates, and the lines that follow from it. */
import { type Curve, continuedCurve, ordinateRange, parallelCurve } from '../../geometry/index.js';
import { dimension, quantity, real } from '../../quantity/index.js';
import type { FactDeclaration, Span } from '../design/design.js';
import type { Axis, Words } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import { Cell } from './cell.js';
import type { Construction } from './construction.js';
import { type CurveContext, type CurveFrame, type DrawnPiece, drawPieces, joinPieces, ownFrame, refuseCurve } from './curve-drawing.js';
import type { DepthRange, FrontExtents } from './front-line.js';
import { derived, negative, numberOf, plus, type Says } from './measures.js';
import { noOne } from './room.js';
import type { Ends } from './run.js';
import { sayLength } from './say-length.js';
import type { Scope } from './scope.js';

/** A line that parts follow: one that is declared, or one that follows from it. */
export abstract class CurveLaw {
    private readonly made: Cell<Curve>;
    readonly name: string;
    readonly over: 'height' | 'width';
    /** What makes it another line than the declared one: `1in past it`, `at Tier[1]`. */
    readonly variant: string | undefined = undefined;
    /** How far it is outside or inside of the declared one: `1in outside`. */
    readonly away: Words | undefined = undefined;

    constructor(protected readonly context: CurveContext) {
        const { construction, declaration, axis } = context;
        this.name = declaration.name;
        this.over = axis === 'x' ? 'width' : 'height';
        this.made = new Cell(construction, `curve ${this.name}`, declaration.nameSpan, () => this.draw(ownFrame));
    }

    /** Draws it in a frame; undefined where it cannot be drawn, which has been reported. */
    abstract draw(frame: CurveFrame): Curve | undefined;

    /** In the case's own coordinates. */
    get curve(): Curve | undefined {
        return this.made.value;
    }
    get declaration(): FactDeclaration {
        return this.context.declaration;
    }
    get build(): CaseBuild {
        return this.context.build;
    }
    /** The axis of its abscissa. */
    get axis(): Axis {
        return this.context.axis;
    }
    get declaredPath(): string {
        return `${this.build.path}.${this.name}`;
    }
    get path(): string {
        return this.variant === undefined ? this.declaredPath : `${this.declaredPath}, ${this.variant}`;
    }

    /** Where its abscissa begins: at the corner of its case, as that stands. */
    get origin(): number {
        const { room, mirror } = this.build;
        if (this.axis === 'z') return numberOf(room.face('bottom', noOne)?.measure);
        const [left, right] = [room.face('left', noOne)?.measure, room.face('right', noOne)?.measure];
        return Math.min(mirror.abscissa(numberOf(left)), mirror.abscissa(numberOf(right)));
    }

    /** As it is shown: from the corner of its case, in the mirror where the case is mirrored. */
    get shownFrame(): CurveFrame {
        const { room, mirror } = this.build;
        const depthFrom = numberOf(room.face('back', noOne)?.measure);
        const isTurned = this.axis === 'x' && mirror.isTurned;
        if (this.origin === 0 && depthFrom === 0 && !isTurned) return ownFrame;
        return { placeOf: (along) => (this.axis === 'x' ? mirror.abscissa(along) : along) - this.origin, depthFrom };
    }

    /** The line from the corner of its case, in the mirror where the case is mirrored. */
    get shown(): Curve | undefined {
        const frame = this.shownFrame;
        return this.curve && frame !== ownFrame ? this.draw(frame) : this.curve;
    }

    /** The same line so far outside, square to it. `asked` are the words that put it there: by default those that say the distance. */
    parallel(distance: Measure, asked = wordsOf(distance)): CurveLaw {
        return new ParallelLaw(this.context, this, distance, asked);
    }

    /** The same line, all of it so much further forward: what a front that is curved both ways comes to where a part lies. */
    moved(by: Measure | undefined, where: string): CurveLaw {
        return new MovedLaw(this.context, this, by, where);
    }

    /** The depth at a height (or across the width), with its deviations to first order. */
    at(place: Measure | undefined, where: string): Measure | undefined {
        const { curve } = this;
        if (!curve || !place) return undefined;
        const along = numberOf(place);
        const { value } = curve.valueAt(along);
        const slope = curve.slopeAt(along);
        const moved = quantity.scale(place.quantity, Number.isFinite(slope) ? slope : 0);
        const nominal = quantity.inBaseUnits(value - real.toNumber(moved.value), dimension.length);
        const depth = quantity.add(nominal, moved);
        return depth && derived({ ...depth, unit: place.quantity.unit }, this.says(where), [place]);
    }

    /** The greatest or least depth between two places. */
    extreme(from: Measure | undefined, to: Measure | undefined, which: 'greatest' | 'least', where: string): Measure | undefined {
        const { curve } = this;
        if (!curve || !from || !to) return undefined;
        const [low, high] = [numberOf(from), numberOf(to)].sort((a, b) => a - b) as [number, number];
        const place = ordinateRange(curve, low, high)[which];
        if (place.x === numberOf(from)) return this.at(from, where);
        if (place.x === numberOf(to)) return this.at(to, where);
        const depth = quantity.inBaseUnits(place.y, dimension.length, from.quantity.unit);
        return derived(depth, this.says(`its ${which === 'greatest' ? 'deepest' : 'shallowest'} place between ${where}`), [from, to]);
    }

    /** The depths, in millimetres, at which it lies between two abscissas; undefined where one of them is not known. */
    range(low: number, high: number): DepthRange | undefined {
        const { curve } = this;
        if (!curve || Number.isNaN(low) || Number.isNaN(high)) return undefined;
        const { least, greatest } = ordinateRange(curve, Math.min(low, high), Math.max(low, high));
        return { least: least.y, most: greatest.y };
    }

    rangeOver(x: Ends, z: Ends): DepthRange | undefined {
        const { lo, hi } = this.over === 'width' ? x : z;
        return this.range(lo, hi);
    }

    greatestOver(extents: FrontExtents, where: string): Measure | undefined {
        const { lo, hi } = extents[this.axis];
        return this.extreme(lo.measure, hi.measure, 'greatest', where);
    }

    private says(where: string): Says {
        const name = this.variant === undefined ? this.name : `${this.name} (${this.variant})`;
        return { kind: 'curve', about: [name, where], span: this.declaration.nameSpan };
    }
}

/** A curve as it is declared. */
export class DeclaredCurve extends CurveLaw {
    constructor(construction: Construction, declaration: FactDeclaration, build: CaseBuild, scope: Scope) {
        super({ construction, declaration, build, scope, axis: declaration.over === 'width' ? 'x' : 'z' });
    }

    override draw(frame: CurveFrame): Curve | undefined {
        const pieces = drawPieces(this.context, frame);
        return pieces && joinPieces(this.context, pieces);
    }

    /** Its pieces as they are shown, by rising abscissa. */
    get shownPieces(): readonly DrawnPiece[] {
        const pieces = this.curve ? (drawPieces(this.context, this.shownFrame) ?? []) : [];
        return [...pieces].sort((a, b) => a.curve.start.x - b.curve.start.x);
    }
}

/** A line that keeps its distance from another. */
class ParallelLaw extends CurveLaw {
    override readonly variant: string;
    override readonly away: Words;

    constructor(
        context: CurveContext,
        private readonly base: CurveLaw,
        /** Outwards; below zero inwards. */
        private readonly distance: Measure,
        private readonly asked: Span | undefined,
    ) {
        super(context);
        const away = numberOf(distance);
        const said = `${sayLength(base.build, Math.abs(away))} ${away < 0 ? 'inside' : 'outside'}`;
        this.variant = base.variant === undefined ? said : `${base.variant}, ${said}`;
        const words = [away < 0 ? negative(distance) : distance, away < 0 ? ' inside' : ' outside'];
        this.away = base.away === undefined ? words : [...base.away, ', ', ...words];
    }

    override draw(frame: CurveFrame): Curve | undefined {
        const base = this.base.draw(frame);
        if (!base) return undefined;
        // what stands past the sides of a case goes on following its line there, and an inner line begins inside of its own
        const away = numberOf(this.distance);
        const { from, to } = base.span;
        const onward = continuedCurve(base, { from: from - Math.abs(away), to: to + Math.abs(away) });
        const outcome = parallelCurve(onward, -away);
        if (outcome.ok) return outcome.curve;
        const { nameSpan } = this.declaration;
        return refuseCurve(this.context, outcome.refusal, this.asked ?? nameSpan, this.asked ? nameSpan : undefined);
    }
}

/** The words that a length comes from: the first that are found on the way to what it is made of. */
function wordsOf({ why }: Measure): Span | undefined {
    if (why.span) return why.span;
    for (const input of why.inputs) {
        const span = wordsOf(input);
        if (span) return span;
    }
    return undefined;
}

const bothTogether: Says = { kind: 'operation', about: ['both curves together'] };

/** A line that is all of another, further forward. */
class MovedLaw extends CurveLaw {
    override readonly variant: string;
    override readonly away: Words | undefined;

    constructor(
        context: CurveContext,
        private readonly base: CurveLaw,
        private readonly by: Measure | undefined,
        where: string,
    ) {
        super(context);
        this.variant = where;
        this.away = base.away;
    }

    override at(place: Measure | undefined, where: string): Measure | undefined {
        return plus(this.base.at(place, where), this.by, bothTogether);
    }

    override extreme(from: Measure | undefined, to: Measure | undefined, which: 'greatest' | 'least', where: string): Measure | undefined {
        return plus(this.base.extreme(from, to, which, where), this.by, bothTogether);
    }

    override draw(frame: CurveFrame): Curve | undefined {
        return this.by && this.base.draw({ ...frame, depthFrom: frame.depthFrom - numberOf(this.by) });
    }
}
