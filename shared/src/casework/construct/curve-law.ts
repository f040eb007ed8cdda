/** A curve as a case uses it: depth over height or over width, in the case's own coordinates. */
import {
    arcCurve,
    arcCurveOfRadius,
    bowCurve,
    type Curve,
    type CurveOutcome,
    type CurveRefusal,
    lineCurve,
    ordinateRange,
    type Point,
    parallelCurve,
    point,
} from '../../geometry/index.js';
import { dimension, quantity, real } from '../../quantity/index.js';
import type { FactDeclaration, Property, Span } from '../design/design.js';
import type { Axis } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import { Cell } from './cell.js';
import type { Construction } from './construction.js';
import { evaluateMeasure, expectLength } from './evaluate.js';
import { derived, numberOf } from './measures.js';
import { placeAlong } from './place.js';
import { noOne } from './room.js';
import { sayLength } from './say-length.js';
import type { Scope } from './scope.js';

export type CurveUse = 'height' | 'width';

export class CurveLaw {
    protected readonly made: Cell<Curve>;
    readonly name: string;
    readonly over: CurveUse;

    constructor(
        protected readonly construction: Construction,
        readonly declaration: FactDeclaration,
        protected readonly build: CaseBuild,
        protected readonly scope: Scope,
    ) {
        this.name = declaration.name;
        this.over = declaration.over === 'width' ? 'width' : 'height';
        this.made = new Cell(construction, `curve ${this.name}`, declaration.nameSpan, () => this.make());
    }

    get curve(): Curve | undefined {
        return this.made.value;
    }
    get path(): string {
        return `${this.build.path}.${this.name}`;
    }

    /** Where its abscissa begins: at the corner of its case, as that stands. */
    get origin(): number {
        const { room, mirror } = this.build;
        if (this.axis === 'z') return numberOf(room.face('bottom', noOne)?.measure);
        const [left, right] = [room.face('left', noOne)?.measure, room.face('right', noOne)?.measure];
        return Math.min(mirror.abscissa(numberOf(left)), mirror.abscissa(numberOf(right)));
    }

    /** The line from the corner of its case, in the mirror where the case is mirrored. */
    get shown(): Curve | undefined {
        const { room, mirror } = this.build;
        const back = numberOf(room.face('back', noOne)?.measure);
        const isTurned = this.axis === 'x' && mirror.isTurned;
        if (!this.curve || (this.origin === 0 && back === 0 && !isTurned)) return this.curve;
        return this.draw((along) => (this.axis === 'x' ? mirror.abscissa(along) : along) - this.origin, back);
    }

    /** The same line so far outside, square to it. */
    parallel(distance: Measure): CurveLaw {
        return new ParallelLaw(this.construction, this.declaration, this.build, this.scope, this, distance);
    }

    /** The axis of its abscissa. */
    get axis(): Axis {
        return this.over === 'width' ? 'x' : 'z';
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
    range(low: number, high: number): { readonly least: number; readonly most: number } | undefined {
        const { curve } = this;
        if (!curve || Number.isNaN(low) || Number.isNaN(high)) return undefined;
        const { least, greatest } = ordinateRange(curve, Math.min(low, high), Math.max(low, high));
        return { least: least.y, most: greatest.y };
    }

    private says(where: string) {
        return { kind: 'curve' as const, about: [this.name, where], span: this.declaration.nameSpan };
    }

    protected make(): Curve | undefined {
        return this.draw((along) => along, 0);
    }

    private draw(placeOf: (along: number) => number, origin: number): Curve | undefined {
        const from = this.end('from', 'lo');
        const to = this.end('to', 'hi');
        if (!from || !to) return undefined;
        const shape = this.declaration.properties.find((one) => one.name === 'bow' || one.name === 'arc' || one.name === 'radius');
        const amount = shape ? this.amountOf(shape) : 0;
        if (amount === undefined) return undefined;
        const ends = [from, to].map(({ along, depth }) => point(placeOf(along), depth - origin)).sort((a, b) => a.x - b.x);
        const [p, q] = ends as [Point, Point];
        const outcome = !shape || amount === 0 ? lineCurve(p, q) : curveOfShape(shape.name, p, q, amount);
        if (outcome.ok) return outcome.curve;
        return this.refuse(outcome.refusal, shape ?? this.property('to') ?? this.declaration);
    }

    private property(name: string): Property | undefined {
        return this.declaration.properties.find((one) => one.name === name);
    }

    /** One end: a depth, at a place along the axis; without a place, the end of the room. */
    private end(name: 'from' | 'to', end: 'lo' | 'hi'): { readonly along: number; readonly depth: number } | undefined {
        const property = this.property(name);
        if (!property?.value) return undefined;
        const depth = expectLength(this.construction, evaluateMeasure(this.construction, property.value, this.scope), property.value.span);
        const [place] = property.at;
        const along = place
            ? placeAlong(this.construction, place, this.axis, this.build.room, this.scope)
            : this.build.edgeOfRoom(this.axis, end);
        if (!depth || !along) return undefined;
        return { along: numberOf(along), depth: numberOf(depth) };
    }

    /** The rise or radius: below zero where it goes in. */
    private amountOf(shape: Property): number | undefined {
        const value = shape.value;
        if (!value) return undefined;
        const [word, amount] = value.is === 'worded' ? [value.word, value.value] : [undefined, value];
        const length = expectLength(this.construction, evaluateMeasure(this.construction, amount, this.scope), amount.span);
        if (!length) return undefined;
        const inward = word?.is === 'word' && word.word === 'in';
        return inward ? -numberOf(length) : numberOf(length);
    }

    protected refuse(refusal: CurveRefusal, at: { readonly span: Span }): undefined {
        const [message, hint] = sayRefusal(refusal, this.name, (millimetres) => sayLength(this.build, millimetres));
        return this.construction.report('CRV-002', { span: at.span, message, hint });
    }
}

function curveOfShape(shape: string, from: Point, to: Point, amount: number): CurveOutcome {
    if (shape === 'bow') return bowCurve(from, to, amount);
    return shape === 'arc' ? arcCurve(from, to, amount) : arcCurveOfRadius(from, to, amount);
}

/** A line that keeps its distance from another. */
class ParallelLaw extends CurveLaw {
    constructor(
        construction: Construction,
        declaration: FactDeclaration,
        build: CaseBuild,
        scope: Scope,
        private readonly base: CurveLaw,
        private readonly distance: Measure,
    ) {
        super(construction, declaration, build, scope);
    }

    protected override make(): Curve | undefined {
        const { curve } = this.base;
        if (!curve) return undefined;
        const outcome = parallelCurve(curve, -numberOf(this.distance));
        return outcome.ok ? outcome.curve : this.refuse(outcome.refusal, this.declaration);
    }
}

function sayRefusal(refusal: CurveRefusal, name: string, length: (millimetres: number) => string): readonly [string, string] {
    switch (refusal.reason) {
        case 'rise-too-great':
            return [
                `\`${name}\` folds back on itself with a rise of ${length(Math.abs(refusal.rise))}`,
                `${length(Math.abs(refusal.greatest))} is the greatest rise between these ends`,
            ];
        case 'zero-chord':
        case 'upright-chord':
            return [`both ends of \`${name}\` are at one place`, 'give its ends places of their own, such as `at bottom` and `at top`'];
        default:
            return [`no such curve can be drawn between the ends of \`${name}\``, 'check the sizes of its ends and its rise'];
    }
}
