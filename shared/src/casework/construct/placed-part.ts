/** One part in the making: where it is, how thick it is, how far it runs. Everything is computed when it is first asked for. */
import { type Box, boxBetween, tolerance } from '../../geometry/index.js';
import type { Expression, PartDeclaration, PartStatement, Span } from '../design/design.js';
import type { Axis, FaceName, Hand, Path, Size, Stage } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Shop } from '../model/things.js';
import type { CaseBuild } from './case-build.js';
import { Cell } from './cell.js';
import type { Construction } from './construction.js';
import type { CurveLaw } from './curve-law.js';
import { type Description, describePart } from './described.js';
import { findExtents } from './extents.js';
import { axisOfFace, facesOfAxis, isAssemblyKind, type KindOfPart, kindOfPart, nameOfFace } from './kinds.js';
import { type LayerPlan, layersOfPart, thicknessOfPart } from './layers.js';
import { because, minus, numberOf } from './measures.js';
import type { Placement } from './place.js';
import type { CutForOther } from './reserves.js';
import type { Asker, Room, Spot } from './room.js';
import { type Ends, type Extent, type Extents, endsOf } from './run.js';
import type { Scope } from './scope.js';
import { factsOfPart, type PartFacts } from './sizes.js';
import { findPlacements, findThicknessExtent } from './thickness-place.js';

/** How a list of shares placed it along one axis, instead of a place of its own. */
export interface SharedPlace {
    readonly axis: Axis;
    readonly lo: () => Spot | undefined;
    readonly hi: () => Spot | undefined;
}

export interface PartOrigin {
    readonly declaration: PartDeclaration;
    readonly statement: PartStatement;
    readonly build: CaseBuild;
    readonly room: Room;
    readonly scope: Scope;
    readonly path: Path;
    readonly name: string;
    readonly order: number;
    /** Which of the parts of its statement it is, from 0, and how many there are. */
    readonly place: { readonly index: number; readonly count: number };
}

/** What was asked of a part and is kept, so that it is computed once. */
interface Known {
    readonly generation: number;
    readonly spots: Partial<Record<FaceName, Spot>>;
    readonly sizes: Partial<Record<Stage, Size>>;
    ends: Readonly<Record<Axis, Ends>> | undefined;
    box: Box | undefined;
    room: Extents | undefined;
    cuts: readonly CutForOther[] | undefined;
}

function nothingKnown(generation: number): Known {
    return { generation, spots: {}, sizes: {}, ends: undefined, box: undefined, room: undefined, cuts: undefined };
}

export class PlacedPart implements Asker {
    readonly kind: string;
    readonly declaration: PartDeclaration;
    readonly statement: PartStatement;
    readonly build: CaseBuild;
    readonly room: Room;
    readonly scope: Scope;
    readonly path: Path;
    readonly name: string;
    readonly order: number;
    readonly place: PartOrigin['place'];
    readonly description: Cell<Description>;
    readonly layers: Cell<readonly LayerPlan[]>;
    readonly thickness: Cell<Measure>;
    readonly placements: Cell<ReadonlyMap<Axis, Placement>>;
    readonly thicknessExtent: Cell<Extent>;
    readonly extents: Cell<Extents>;
    private readonly factsCell: Cell<PartFacts>;
    hand: Hand | undefined;
    private kept: Known = nothingKnown(0);
    shared: SharedPlace | undefined;
    /** The case that fills it, for a case inside a case. */
    nested: CaseBuild | undefined;

    constructor(
        private readonly construction: Construction,
        origin: PartOrigin,
    ) {
        this.kind = origin.statement.kind;
        this.declaration = origin.declaration;
        this.statement = origin.statement;
        this.build = origin.build;
        this.room = origin.room;
        this.scope = origin.scope;
        this.path = origin.path;
        this.name = origin.name;
        this.order = origin.order;
        this.place = origin.place;
        const { nameSpan } = origin.declaration;
        this.description = new Cell(construction, this.path, nameSpan, () => describePart(construction, this));
        this.layers = new Cell(construction, `${this.path}.layers`, nameSpan, () => layersOfPart(construction, this));
        this.thickness = new Cell(construction, `${this.path}.thickness`, nameSpan, () => thicknessOfPart(construction, this));
        this.placements = new Cell(construction, this.path, nameSpan, () => findPlacements(construction, this));
        this.thicknessExtent = new Cell(construction, this.path, nameSpan, () => findThicknessExtent(this));
        this.extents = new Cell(construction, this.path, nameSpan, () => findExtents(construction, this));
        this.factsCell = new Cell(construction, `the joints of ${this.path}`, nameSpan, () => factsOfPart(construction, this));
    }

    /** Its edges and what joints add; only asked for when all parts are there. */
    get facts(): PartFacts {
        return this.factsCell.value ?? { edges: [], adds: {}, unknownAt: new Set() };
    }
    get shop(): Shop {
        return this.construction.shop;
    }
    get span(): Span {
        return this.statement.span;
    }
    get kindOf(): KindOfPart | undefined {
        return kindOfPart(this.kind);
    }
    get isAssembly(): boolean {
        return isAssemblyKind(this.kind);
    }

    /** The line that its front follows along its edge, or that it is bent to. */
    get frontLaw(): CurveLaw | undefined {
        const line = this.extents.value?.y.hi.line;
        return line?.over === 'both' ? undefined : line;
    }

    /** Where one of its faces is, with the part as what bounds there. */
    faceSpot(axis: Axis, end: 'lo' | 'hi'): Spot | undefined {
        const { spots } = this.known;
        const side = facesOfAxis[axis][end];
        const known = spots[side];
        if (known) return known;
        // where a part lies must not depend on how far it runs: a curve may end at the part that it shapes
        const spot = (axis === this.kindOf?.thickness ? this.thicknessExtent.value : this.extents.value?.[axis])?.[end];
        if (!spot) return undefined;
        const face = nameOfFace(this.kind, side, this.hand);
        const says = { kind: 'face' as const, about: [face, this.path], span: this.declaration.nameSpan };
        const bound = { name: `${this.name}.${face}`, part: this.path, stopped: false };
        const own = { ...spot, measure: because(spot.measure, says), bound };
        spots[side] = own;
        return own;
    }

    /** Its extents as plain numbers; undefined while one of them is unknown. */
    get ends(): Readonly<Record<Axis, Ends>> | undefined {
        const { known } = this;
        if (!known.ends) {
            const { value } = this.extents;
            known.ends = value && endsOf(value);
        }
        return known.ends;
    }

    /** Where it runs, in millimetres from the corner of the outermost case, before joints add or take off; undefined while a side is unknown. */
    get box(): Box | undefined {
        const { known, ends } = this;
        known.box ??= ends && boxBetween({ x: ends.x.lo, y: ends.y.lo, z: ends.z.lo }, { x: ends.x.hi, y: ends.y.hi, z: ends.z.hi });
        return known.box;
    }

    /** What was found of it so far, as long as no parts are added. */
    get known(): Known {
        const { generation } = this.construction;
        if (this.kept.generation !== generation) this.kept = nothingKnown(generation);
        return this.kept;
    }

    face(name: FaceName): Spot | undefined {
        const { axis, end } = axisOfFace(name);
        return this.faceSpot(axis, end);
    }

    /** The clear height above a shelf: up to the nearest part over it, or the top of the room. */
    clearAbove(): Measure | undefined {
        const own = this.ends;
        if (!own) return undefined;
        let nearest: PlacedPart | undefined;
        let height = Number.POSITIVE_INFINITY;
        for (const other of this.build.parts) {
            const ends = other === this ? undefined : other.ends;
            if (!ends || ends.z.lo < own.z.hi - tolerance.fit || ends.z.lo >= height) continue;
            const isOver = (['x', 'y'] as const).every(
                (axis) => Math.min(ends[axis].hi, own[axis].hi) - Math.max(ends[axis].lo, own[axis].lo) > tolerance.fit,
            );
            if (isOver && (other.isAssembly || other.kindOf?.thickness === 'z')) [nearest, height] = [other, ends.z.lo];
        }
        const above = nearest ? nearest.faceSpot('z', 'lo') : this.build.room.face('top', this);
        if (!above || numberOf(above.measure) <= own.z.hi + tolerance.fit) return undefined;
        return minus(above.measure, this.faceSpot('z', 'hi')?.measure, {
            kind: 'between',
            about: [`${this.name}.upper`, above.bound.name],
        });
    }

    /** Whether it was put in the opening or part that an expression names. */
    isInside(within: Expression, scope: Scope): boolean {
        return this.build.isWithin(this, within, scope);
    }

    report(
        code: string,
        message: string,
        more: { readonly hint?: string; readonly found?: string; readonly needed?: string; readonly span?: Span } = {},
    ): undefined {
        const { span = this.declaration.nameSpan, ...rest } = more;
        return this.construction.report(code, { span, message, part: this.path, ...rest });
    }
}
