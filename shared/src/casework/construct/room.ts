/**
 * Rooms: the outside of a case, and the openings that parts make in it. A part takes its place from the room that is left.
 */
import type { DeclarationId, Span } from '../design/design.js';
import type { Axis, Bound, FaceName, Path } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import type { CurveLaw } from './curve-law.js';

/** A place on an axis, and what is there. Where the front of a room is a curve, `line` is it, and `measure` its greatest depth. */
export interface Spot {
    readonly measure: Measure | undefined;
    readonly bound: Bound;
    readonly line?: CurveLaw;
    /** How far past the line it is, measured forward. */
    readonly beyond?: Measure;
}

/** Who asks for a face of a room: room kept for a part is there for that part alone. */
export interface Asker {
    /** Its turn in the order of writing. */
    readonly order: number;
    readonly declaration: { readonly id: DeclarationId } | undefined;
}

export class Room {
    constructor(
        readonly name: string,
        readonly path: Path,
        readonly build: CaseBuild,
        readonly span: Span,
        private readonly faces: Readonly<Record<FaceName, (asker: Asker) => Spot | undefined>>,
        /** From which end parts in it run when something stands in the middle of their way. */
        readonly from: Partial<Record<Axis, 'lo' | 'hi'>> = {},
    ) {}

    face(name: FaceName, asker: Asker): Spot | undefined {
        return this.faces[name](asker);
    }

    /** The same room with some of its faces elsewhere. */
    within(
        name: string,
        path: Path,
        span: Span,
        faces: Partial<Record<FaceName, (asker: Asker) => Spot | undefined>>,
        from: Room['from'] = this.from,
    ): Room {
        return new Room(name, path, this.build, span, { ...this.faces, ...faces }, from);
    }
}

/** Whoever comes last sees all that is kept free. */
export const anyone: Asker = { order: Number.POSITIVE_INFINITY, declaration: undefined };
