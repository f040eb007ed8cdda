/**
 * What joints and edges do to parts, as places in space: slots, holes, and what is driven into them.
 *
 * All lengths are in millimetres. All places are in the coordinates of `Part.box`: from the corner of the outermost case, x to the right,
 * y forward from the wall, z up. Directions are unit vectors.
 */
import type { Axis, FaceName, Joint, Part, Path } from '../casework/index.js';
import type { Box, Interval, Point, SpacePoint } from '../geometry/index.js';

export type FeatureKind =
    /** A slot that another part enters: across the grain, and along it. */
    | 'dado'
    | 'groove'
    /** A step along an edge. */
    | 'rabbet'
    /** Half of a lap, or another corner that is taken out. */
    | 'notch'
    /** What is taken off beside a tongue or a tenon. */
    | 'shoulder'
    /** What is left between shoulders. It is no cut. */
    | 'tongue'
    | 'mitre'
    | 'spline slot'
    | 'mortise'
    | 'biscuit slot'
    /** The slanted bore in which the head of a pocket screw lies. */
    | 'pocket'
    | HoleKind;

export type HoleKind = 'pilot hole' | 'clearance hole' | 'counterbore' | 'countersink' | 'dowel hole' | 'pin hole' | 'bolt hole';

/** One cut in one part, or a tongue that cuts leave. */
export interface Feature {
    readonly does: FeatureKind;
    readonly part: Path;
    /** The side of the part from which it is cut: where the tool goes in. */
    readonly side: FaceName;
    readonly cause: Cause;
    /**
     * What is taken out; of a tongue, what is left. It does not reach outside the box of the part but for the rounding of numbers; a slanted
     * hole begins outside, so that its whole mouth is cut.
     */
    readonly solid: FeatureSolid;
    /** How deep the tool goes in: square to the side, or along the axis of a hole. */
    readonly depth: number;
    /** What is driven into it: its place in `Joinery.fasteners`. */
    readonly fastener?: number;
}

/** The sentence behind a feature: a step of a joint, or a step of an edge of the part. All are counted from 0. */
export type Cause =
    | { readonly is: 'joint'; readonly joint: number; readonly step: number }
    | { readonly is: 'edge'; readonly edge: number; readonly step: number };

export type FeatureSolid =
    | { readonly is: 'box'; readonly box: Box }
    /** From the middle of the disc with which it begins: on the surface of the part, at the end of the bore before it, or outside where it is slanted. */
    | {
          readonly is: 'cylinder';
          readonly start: SpacePoint;
          readonly direction: SpacePoint;
          readonly diameter: number;
          readonly length: number;
          /** The diameter at its end, where that is another: a countersink. */
          readonly endDiameter?: number;
      }
    /**
     * What a disc saws that is plunged into a surface. The middle of its chord lies on the surface; the middle of the disc lies outside
     * (radius - depth) behind it, against `into`. Its thickness lies half on either side of the plane of `along` and `into`.
     */
    | {
          readonly is: 'segment';
          readonly middle: SpacePoint;
          /** Along the chord. */
          readonly along: SpacePoint;
          readonly into: SpacePoint;
          readonly radius: number;
          readonly depth: number;
          readonly thickness: number;
      }
    /**
     * A polygon drawn out along an axis. Corners run counter-clockwise seen against the axis, in the two other axes in cyclic order:
     * (y, z) along x, (z, x) along y, (x, y) along z.
     */
    | { readonly is: 'prism'; readonly along: Axis; readonly over: Interval; readonly section: readonly Point[] };

export type FastenerKind =
    | 'screw'
    | 'pocket screw'
    | 'panel screw'
    | 'nail'
    | 'pin'
    | 'dowel'
    | 'biscuit'
    | 'loose tenon'
    | 'bolt'
    | 'shelf pin';

/** Something driven or glued in, where it lies when the joint is closed. */
export interface Fastener {
    readonly kind: FastenerKind;
    readonly cause: Cause;
    /** Declaration id of what is bought, where the text or the library has it. */
    readonly thing?: string;
    /** `#8`, as the text says it. */
    readonly size?: string;
    /** The end by which it is driven, on its axis. Of what is glued in, the end in the part that enters. */
    readonly head: SpacePoint;
    readonly direction: SpacePoint;
    /** Undefined where the text does not say it: it is then in no part. */
    readonly length: number | undefined;
    readonly shank?: number;
    /** Between the threads, of the rolled and of the cut form: never to be mixed. */
    readonly rolledRoot?: number;
    readonly cutRoot?: number;
    readonly headDiameter?: number;
    /** The parts that it is in, in the order in which it passes them. */
    readonly passes: readonly Passage[];
}

/** How a fastener lies in one part. */
export interface Passage {
    readonly part: Path;
    /** Along its axis from the head, as far as its length goes: a cut in the part before it is not counted as wood. */
    readonly stretch: Interval;
    /** From the head to where the axis leaves the part: where the stretch ends sooner, the point stays in the wood. */
    readonly leaves: number;
    /** The side by which the axis leaves, or would if it were long enough. */
    readonly leavesBy: FaceName;
    /** The layer in which the stretch ends, counted from 0 in the order of `Part.layers`; undefined in a plain board. */
    readonly layer?: number;
    /** Whether it goes in along the grain of a solid board or the core of a panel, as into an end or an edge. */
    readonly intoEdge: boolean;
}

/** Where the two parts of a joint meet. */
export interface Contact {
    /** Its place in `Casework.joints`. */
    readonly joint: number;
    readonly enters: Path;
    readonly receives: Path;
    /** The axis along which one goes into the other, or up to it. */
    readonly axis: Axis;
    /** The side of each with which it meets the other. */
    readonly sideOfEntering: FaceName;
    readonly sideOfReceiving: FaceName;
    /** How deep it enters: 0 where the two only touch. */
    readonly depth: number;
    /** Where the entering part ends, along the axis: on the bottom of the cut that it enters. */
    readonly at: number;
    /** What the two have in common across the axis, flat along it, at that place. */
    readonly face: Box;
    /** The longest way of the face, in which fasteners are laid out, and the way across it. */
    readonly along: Axis;
    readonly across: Axis;
    /** Along the face, as far as there is wood in both: a curved or bevelled front takes off what the boxes have. */
    readonly reach: Interval;
}

/** A step of a joint for which no place was found, and why, in words after its name. */
export interface Unplaced {
    readonly joint: number;
    readonly step: number;
    readonly because: string;
}

/** All features and fasteners of a casework. */
export interface Joinery {
    readonly features: readonly Feature[];
    readonly fasteners: readonly Fastener[];
    /** By the place of the joint in `Casework.joints`; those whose parts do not meet, or that join whole cases, have none. */
    readonly contacts: ReadonlyMap<number, Contact>;
    /** By the place of the joint, where both its parts are known. After an edit those that it leaves alone are the same objects. */
    readonly byJoint: ReadonlyMap<number, JointJoinery>;
    /** What concerns a part, by its path; a part with nothing has none. */
    readonly byPart: ReadonlyMap<Path, PartJoinery>;
    readonly unplaced: readonly Unplaced[];
}

/** What one joint does. */
export interface JointJoinery {
    readonly joint: Joint;
    readonly enters: Part;
    readonly receives: Part;
    readonly contact: Contact | undefined;
    readonly features: readonly Feature[];
    readonly fasteners: readonly Fastener[];
}

/** What concerns one part, in the order of the text. */
export interface PartJoinery {
    readonly features: readonly Feature[];
    readonly fasteners: readonly Fastener[];
    /** The contacts in which it enters others, and in which it receives them. */
    readonly enters: readonly Contact[];
    readonly receives: readonly Contact[];
}
