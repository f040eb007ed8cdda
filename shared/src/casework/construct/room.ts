/**
 * Rooms: the outside of a case, and the openings that parts make in it. A part takes its place from the room that is left.
 */
import type { DeclarationId, Span } from '../design/design.js';
import type { Axis, Bound, FaceName, Path } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import type { FrontFaces } from './front.js';
import type { FrontLine } from './front-line.js';

/** A place on an axis, and what is there. Where the front of a room is a curve, `line` is it, and `measure` its greatest depth. */
export interface Spot {
    readonly measure: Measure | undefined;
    readonly bound: Bound;
    readonly line?: FrontLine;
    /** How far past the line it is, measured forward. */
    readonly beyond?: Measure;
    /** How a front edge meets the line across its thickness. */
    readonly front?: FrontFaces;
}

/** Who asks for a face of a room: room kept for a part is there for that part alone. */
export interface Asker {
    /** Its turn in the order of writing. */
    readonly order: number;
    readonly declaration: { readonly id: DeclarationId } | undefined;
}

export type RoomFaces = Partial<Record<FaceName, (asker: Asker) => Spot | undefined>>;

export class Room {
    constructor(
        readonly name: string,
        readonly path: Path,
        readonly build: CaseBuild,
        readonly span: Span,
        private readonly faces: Readonly<Record<FaceName, (asker: Asker) => Spot | undefined>>,
        /** From which end parts in it run when something stands in the middle of their way. */
        readonly from: Partial<Record<Axis, 'lo' | 'hi'>> = {},
        /** What named it, for an opening that has a name. */
        readonly opening?: DeclarationId,
    ) {}

    face(name: FaceName, asker: Asker): Spot | undefined {
        return this.faces[name](asker);
    }

    /** Part of the room, from the same ends and under the same name. */
    lessened(span: Span, faces: RoomFaces, from: Room['from']): Room {
        return new Room(this.name, this.path, this.build, span, { ...this.faces, ...faces }, from, this.opening);
    }

    /** An opening in it. Without a name of its own it goes by the path of the room. */
    divided(span: Span, faces: RoomFaces, as: { readonly name: string; readonly path: Path; readonly opening?: DeclarationId }): Room {
        return new Room(as.name, as.path, this.build, span, { ...this.faces, ...faces }, this.from, as.opening);
    }

    /** Whether it is the other room, or an opening or a case in it. */
    isIn(other: Room): boolean {
        return this.path === other.path || this.path.startsWith(`${other.path}.`);
    }
}

/** Whoever comes last sees all that is kept free. */
export const anyone: Asker = { order: Number.POSITIVE_INFINITY, declaration: undefined };
/** Before anything is kept free. */
export const noOne: Asker = { order: Number.NEGATIVE_INFINITY, declaration: undefined };
