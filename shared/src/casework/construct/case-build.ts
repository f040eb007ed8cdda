/** A case being built: its room, the parts put into it in order, the openings they make, and what is kept free. */
import { dimension, quantity, Rational } from '../../quantity/index.js';
import type { Argument, DeclarationId, DesignDeclaration, Expression, FactDeclaration, Span, Statement } from '../design/design.js';
import type { Axis, FaceName, Path } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { runBody } from './body.js';
import { Cell } from './cell.js';
import type { Construction } from './construction.js';
import { type CurveLaw, DeclaredCurve } from './curve-law.js';
import type { EveryRule } from './described.js';
import { evaluate, evaluateMeasure, expectLength } from './evaluate.js';
import type { FrontExtents } from './front-line.js';
import { JointBook } from './joint-book.js';
import { axes, facesOfAxis } from './kinds.js';
import { because, derived, zeroLength } from './measures.js';
import { Mirror } from './mirror.js';
import type { PlacedPart } from './placed-part.js';
import { lessReserves, type Reserve, reservesOfLeave, reservesOfPart } from './reserves.js';
import { type Asker, noOne, Room, type Spot } from './room.js';
import { Scope } from './scope.js';
import type { Value } from './value.js';

/** A sentence of a case that is looked at when all parts are placed. */
export interface Sentence {
    readonly statement: Extract<Statement, { is: 'join' | 'hold' | 'load' | 'require' | 'allow' }>;
    readonly scope: Scope;
}

export interface BuildOrigin {
    readonly declaration: DesignDeclaration;
    readonly arguments: readonly Argument[];
    /** Where the arguments are evaluated. */
    readonly outside: Scope;
    readonly path: Path;
    readonly name: string;
    readonly span: Span;
    readonly mirrored: boolean;
    /** The part that it fills, for a case inside a case. */
    readonly place?: PlacedPart;
}

export class CaseBuild {
    readonly declaration: DesignDeclaration;
    readonly path: Path;
    readonly name: string;
    readonly span: Span;
    readonly mirrored: boolean;
    readonly parent: CaseBuild | undefined;
    readonly place: PlacedPart | undefined;
    readonly fileScope: Scope;
    readonly scope: Scope;
    readonly room: Room;
    readonly parts: PlacedPart[] = [];
    readonly openings: Room[] = [];
    readonly everys: EveryRule[] = [];
    readonly sentences: Sentence[] = [];
    readonly children: CaseBuild[] = [];
    private readonly leaves: Reserve[] = [];
    private readonly laws = new Map<DeclarationId, DeclaredCurve>();
    private reserved: { readonly generation: number; readonly all: readonly Reserve[] } | undefined;
    private jointBook: JointBook | undefined;
    private turnedOver: Mirror | undefined;
    /** Its six sides before anything is kept free, as long as no parts are added. */
    private outerSpots: { readonly generation: number; readonly faces: Partial<Record<FaceName, Spot>> } | undefined;
    private readonly sizes: Readonly<Record<'width' | 'height' | 'depth', Cell<Spot>>>;

    constructor(
        readonly construction: Construction,
        origin: BuildOrigin,
    ) {
        this.declaration = origin.declaration;
        this.path = origin.path;
        this.name = origin.name;
        this.span = origin.span;
        this.mirrored = origin.mirrored;
        this.place = origin.place;
        this.parent = origin.place?.build;
        this.fileScope = new Scope(undefined, this);
        this.scope = new Scope(this.fileScope, this);
        this.bindParameters(origin);
        const cell = (name: 'width' | 'height' | 'depth') =>
            new Cell(construction, `${this.path}.${name}`, this.declaration.nameSpan, () => this.statedSize(name));
        this.sizes = { width: cell('width'), height: cell('height'), depth: cell('depth') };
        this.room = new Room(this.name, this.path, this, this.span, this.outside());
    }

    /** The way to where its parts stand, if it or a case it is in is mirrored. Asked for when all parts are there. */
    get mirror(): Mirror {
        this.turnedOver ??= new Mirror(this);
        return this.turnedOver;
    }

    /** Puts the parts of the design into the room. */
    furnish(): void {
        const { leaves } = this.declaration.phrases;
        this.keepFree(
            leaves.flatMap((said) => reservesOfLeave(this.construction, { order: -1, build: this }, { said, scope: this.scope })),
        );
        runBody(this.construction, this.declaration.statements, { build: this, scope: this.scope, room: this.room, repeats: [] });
    }

    get outermost(): CaseBuild {
        return this.parent?.outermost ?? this;
    }

    curve(declaration: FactDeclaration): CurveLaw {
        let law = this.laws.get(declaration.id);
        if (!law) {
            law = new DeclaredCurve(this.construction, declaration, this, this.scope);
            this.laws.set(declaration.id, law);
        }
        return law;
    }
    get curves(): readonly DeclaredCurve[] {
        return [...this.laws.values()];
    }

    /** An end of the room as it is stated. */
    edgeOfRoom(axis: Axis, end: 'lo' | 'hi'): Measure | undefined {
        return this.room.face(facesOfAxis[axis][end], noOne)?.measure;
    }

    /** Where the room begins and ends as it is stated; worked out as each axis is asked for. */
    private get outer(): FrontExtents {
        const nowhere: Spot = { measure: undefined, bound: { name: 'the room', stopped: false } };
        const along = (axis: Axis) => ({
            lo: this.room.face(facesOfAxis[axis].lo, noOne) ?? nowhere,
            hi: this.room.face(facesOfAxis[axis].hi, noOne) ?? nowhere,
        });
        return {
            get x() {
                return along('x');
            },
            get y() {
                return along('y');
            },
            get z() {
                return along('z');
            },
        };
    }

    /** All that is kept free at its faces. Asked for only when all parts are there. */
    get reserves(): readonly Reserve[] {
        const { generation } = this.construction;
        if (this.reserved?.generation !== generation) {
            const all = [...this.leaves, ...this.parts.flatMap((part) => reservesOfPart(this.construction, part))];
            this.reserved = { generation, all };
        }
        return this.reserved.all;
    }
    /** How its parts and those of the cases in it meet; asked for when all parts are there. */
    get joints(): JointBook {
        this.jointBook ??= new JointBook(this.construction, this);
        return this.jointBook;
    }
    keepFree(reserves: readonly Reserve[]): void {
        this.leaves.push(...reserves);
        this.changed();
    }

    addPart(part: PlacedPart): void {
        this.parts.push(part);
        this.changed();
    }
    addRule(rule: EveryRule): void {
        this.everys.push(rule);
        this.changed();
    }
    private changed(): void {
        this.construction.generation += 1;
    }
    partsBefore(part: PlacedPart): readonly PlacedPart[] {
        return this.parts.filter((other) => other.order < part.order);
    }
    /** The turn of the last part of a statement: parts of one statement do not see what the others keep free. */
    lastOrderOf(statement: PlacedPart['statement']): number {
        return this.parts.findLast((part) => part.statement === statement)?.order ?? 0;
    }
    findPart(id: DeclarationId | undefined): PlacedPart | undefined {
        if (id === undefined) return undefined;
        return this.parts.find((part) => part.declaration.id === id) ?? this.parent?.findPart(id);
    }

    /** Whether a part of the case stands in the opening, or in the case, that an expression names. */
    isWithin(part: PlacedPart, within: Expression, scope: Scope): boolean {
        const value = evaluate(this.construction, within, scope);
        if (value?.is === 'opening') return part.room.isIn(value.room);
        if (value?.is !== 'parts') return false;
        for (let build: CaseBuild | undefined = this; build; build = build.parent) {
            if (build.place && value.parts.includes(build.place)) return true;
        }
        return false;
    }

    private bindParameters(origin: BuildOrigin): void {
        const { parameters } = this.declaration;
        for (const [index, parameter] of parameters.entries()) {
            const argument =
                origin.arguments.find((one) => one.name === parameter.name) ??
                (origin.arguments[index]?.name === undefined ? origin.arguments[index] : undefined);
            const said = argument?.value ?? parameter.value;
            const scope = argument ? origin.outside : this.scope;
            const cell = new Cell<Value>(this.construction, parameter.name, parameter.nameSpan, () => {
                if (!said) {
                    return this.construction.report('PRP-004', {
                        span: origin.span,
                        message: `\`${this.declaration.name}\` needs \`${parameter.name}\``,
                        hint: `write it so: \`${this.declaration.name}(${parameter.name} = ...)\``,
                    });
                }
                const value = evaluate(this.construction, said, scope);
                if (value?.is !== 'measure') return value;
                const says = { kind: 'parameter' as const, about: [parameter.name], span: parameter.nameSpan };
                return { is: 'measure', measure: derived(value.measure.quantity, says, [value.measure]) };
            });
            this.scope.bind(parameter.id, () => cell.value);
        }
    }

    /** The six sides of the case: what it states, or the place it is put in. */
    private outside(): Record<FaceName, (asker: Asker) => Spot | undefined> {
        const faces = {} as Record<FaceName, (asker: Asker) => Spot | undefined>;
        for (const axis of axes) {
            for (const end of ['lo', 'hi'] as const) {
                const face = facesOfAxis[axis][end];
                faces[face] = (asker) => {
                    const spot = this.outerSpot(axis, end, face);
                    return spot && lessReserves(spot, this.reserves, face, asker);
                };
            }
        }
        return faces;
    }

    private outerSpot(axis: Axis, end: 'lo' | 'hi', face: FaceName): Spot | undefined {
        const { generation } = this.construction;
        if (this.outerSpots?.generation !== generation) this.outerSpots = { generation, faces: {} };
        const { faces } = this.outerSpots;
        const spot = faces[face] ?? this.findOuterSpot(axis, end, face);
        if (spot) faces[face] = spot;
        return spot;
    }

    private findOuterSpot(axis: Axis, end: 'lo' | 'hi', face: FaceName): Spot | undefined {
        const bound = { name: `the case's ${face}`, stopped: false };
        if (this.place) {
            const spot = this.place.extents.value?.[axis][end];
            if (!spot) return undefined;
            const says = { kind: 'face' as const, about: [face, this.path] };
            return spot.line
                ? { measure: because(spot.measure, says), bound, line: spot.line }
                : { measure: because(spot.measure, says), bound };
        }
        if (end === 'lo') return { measure: derived(zeroLength, { kind: 'face', about: [face, this.name] }, []), bound };
        const stated = this.sizes[axis === 'x' ? 'width' : axis === 'y' ? 'depth' : 'height'].value;
        return stated && { ...stated, bound: stated.line ? { name: `the curve ${stated.line.name}`, stopped: false } : bound };
    }

    /** `width 40in`, or `depth Sweep`. */
    private statedSize(name: 'width' | 'height' | 'depth'): Spot | undefined {
        const property = this.declaration.phrases.properties.find((one) => one.name === name);
        const bound = { name: `the case's ${name}`, stopped: false };
        if (!property?.value) {
            const isParameter = this.declaration.parameters.some((parameter) => parameter.name === name);
            return this.construction.report('PLC-011', {
                span: this.declaration.nameSpan,
                message: `\`${this.declaration.name}\` has no \`${name}\``,
                hint: isParameter
                    ? `the parameter is only a value until it is used: write \`${name} ${name}\` in the braces`
                    : `say how ${name === 'width' ? 'wide' : name === 'height' ? 'high' : 'deep'} it is, such as \`${name} ${name === 'depth' ? '12in' : '36in'}\``,
                needed: `a ${name}`,
            });
        }
        const value = evaluate(this.construction, property.value, this.scope);
        if (!value) return undefined;
        if (value.is === 'curve') {
            if (name !== 'depth') {
                return this.construction.report('PRP-005', {
                    span: property.value.span,
                    message: `a ${name} cannot be a curve`,
                    hint: 'a curve shapes the depth: `depth Sweep`',
                });
            }
            const { law } = value;
            const measure = law.greatestOver(this.outer, `the ends of ${this.name}`);
            return { measure, bound, line: law };
        }
        const measure = expectLength(
            this.construction,
            evaluateMeasure(this.construction, property.value, this.scope),
            property.value.span,
        );
        const says = { kind: 'property' as const, about: [name, this.name], span: property.span };
        const named = because(measure, says);
        if (named) this.construction.note(property.span, named);
        if (named && !isPositiveLength(named)) {
            return this.construction.report('PLC-002', {
                span: property.value.span,
                message: `the ${name} of \`${this.name}\` is not above zero`,
                needed: 'a length above zero',
            });
        }
        return named && { measure: named, bound };
    }
}

function isPositiveLength(measure: Measure): boolean {
    return quantity.compare(measure.quantity, quantity.inBaseUnits(Rational.zero, dimension.length)) === 1;
}
