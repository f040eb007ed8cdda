/**
 * Casework: parts in space, built from a design.
 *
 * A part is what is delivered; a piece is what is cut from stock (a layer, a band, a board). Cut lists, layouts and buying see pieces;
 * drawings, rules and hovers see parts. Sizes are the truth: exact where the text is exact, each with its derivation.
 * Boxes are plain numbers in millimetres and must agree with the sizes within the fit tolerance.
 *
 * Axes of a case: x from the outer face of the left side to the right, y from the wall forward, z up from the floor.
 */
import type { Box, Curve, CurveJoint, CurveKind, Interval } from '../../geometry/index.js';
import type { DeviationSource } from '../../quantity/index.js';
import type { Design, Span } from '../design/design.js';
import type { Measure } from './measure.js';
import type { Batten, Shop, Thing } from './things.js';

/** The path of a thing in the built design: `PotteryCase.Tier[2]`, `LibraryWall.Unit[1].Fixed`. Indices start at 1. */
export type Path = string;
export type Axis = 'x' | 'y' | 'z';
export type FaceName = 'left' | 'right' | 'back' | 'front' | 'bottom' | 'top';
export type Hand = 'left' | 'right';

export interface Casework {
    readonly design: Design;
    readonly project?: ProjectModel;
    /** What the project builds; where a file has no project, each of its cases once. */
    readonly assemblies: readonly Assembly[];
    readonly parts: ReadonlyMap<Path, Part>;
    /** Parts whose place is not known, and that are nowhere else for that: a finding says why. */
    readonly unplaced?: ReadonlySet<Path>;
    readonly pieces: readonly Piece[];
    readonly openings: ReadonlyMap<Path, Opening>;
    readonly joints: readonly Joint[];
    /** The curves that parts follow, once for each case that is built with one. */
    readonly curves: readonly CurveModel[];
    /** What the parts carry, in the order of the text. */
    readonly loads: readonly CarriedLoad[];
    readonly requirements: readonly Requirement[];
    readonly allowances: readonly Allowance[];
    /** Every material, species and other thing that was evaluated, by declaration id. */
    readonly things: ReadonlyMap<string, Thing>;
    /** The finishes of the parts, by declaration id. */
    readonly finishes?: ReadonlyMap<string, Finish>;
    readonly shop: Shop;
    /** Where tolerances come from: one stated deviation on one piece. */
    readonly deviations: ReadonlyMap<string, DeviationSource>;
    /** What could not be computed, each reported once, at its origin. */
    readonly problems: readonly Problem[];
    /** Values by the span of the words that state them, for hovers: `file:start:end`. */
    readonly values: ReadonlyMap<string, Measure>;
}

export interface ProjectModel {
    readonly title: string;
    readonly client?: string;
    readonly revision?: string;
    readonly units: 'in' | 'mm';
    /** How much of its span a shelf may sag, where the project says it. */
    readonly sag?: Measure;
    /** Relative humidity of the room, of the driest month and the dampest, where the project says it. */
    readonly climate?: readonly Measure[];
    /** How far the floor falls from the wall to the room, as a share of the way, where the project says it. */
    readonly slope?: Measure;
    /** How much higher the back of a case stands than its front, on a carpet. */
    readonly carpet?: Measure;
    /** Whether it stands where the public comes and rules of access hold. */
    readonly isAccessible?: true;
    /** The way into the house. */
    readonly route?: RouteModel;
    readonly notes: readonly string[];
    /** What a quote says besides its price, a sentence each. */
    readonly terms?: readonly string[];
    /** The same built of other things. */
    readonly alternatives?: readonly Alternative[];
    /** All that it states. */
    readonly thing?: Thing;
}

/** The same project with other things in it. */
export interface Alternative {
    readonly name: string;
    /** Declaration ids: what is taken, and for what. */
    readonly takes: readonly { readonly taken: string; readonly instead: string }[];
    readonly span: Span;
}

/** The way into the house, as the project declares it. */
export interface RouteModel {
    /** Each width and height. */
    readonly doorways: readonly (readonly Measure[])[];
    /** Two halls that meet square, the width of each. */
    readonly corners: readonly (readonly Measure[])[];
    readonly ceiling?: Measure;
    readonly span: Span;
}

/** A case as it is built, or a case inside one. */
export interface Assembly {
    readonly path: Path;
    readonly name: string;
    readonly kind: string;
    /** How many are built. */
    readonly count: number;
    readonly mirrored: boolean;
    /** The room as written. */
    readonly width: Measure | undefined;
    readonly height: Measure | undefined;
    readonly depth: Measure | undefined;
    /**
     * The room as written, in millimetres from the corner of the outermost case, so that boxes of parts compare with it. Where a size is
     * a curve, it reaches to the curve's greatest value. Undefined where a size is unknown.
     */
    readonly room: Box | undefined;
    /** Over all parts, in millimetres; what stands past the room is in it. */
    readonly extent: Box;
    readonly overall: { readonly width: Measure | undefined; readonly height: Measure | undefined; readonly depth: Measure | undefined };
    readonly inside?: Path;
    /** How high over the floor it is anchored to the wall; a case without it stands by itself. */
    readonly anchor?: Measure;
    /** The level push along the wall, at its top, that it is to take. */
    readonly push?: Measure;
    readonly parts: readonly Path[];
    readonly span: Span;
    readonly doc?: string;
}

/** Along the grain or the longest way of use, across it, and through. */
export interface Size {
    readonly length: Measure | undefined;
    readonly width: Measure | undefined;
    readonly thickness: Measure | undefined;
}
/** opening: between what bounds it; finished: as delivered; core: without bands and nosings; rough: as first cut. */
export type Stage = 'opening' | 'finished' | 'core' | 'rough';

export interface Part {
    readonly path: Path;
    /** `Tier[2]`, or the kind where it has no name */
    readonly name: string;
    readonly kind: string;
    readonly assembly: Path;
    /** How many are delivered, over all builds of its case. */
    readonly quantity: number;
    /** Left or right where the two differ: of a mirrored pair, or of a mirrored build. */
    readonly hand?: Hand;
    readonly sizes: Readonly<Record<Stage, Size>>;
    /** Which axis its length, width and thickness lie along. */
    readonly directions: { readonly length: Axis; readonly width: Axis; readonly thickness: Axis };
    /** Where its faces are, finished, from the corner of its case. */
    readonly faces: Readonly<Record<FaceName, Measure | undefined>>;
    /** The finished part, in millimetres from the corner of its outermost case. */
    readonly box: Box;
    /** Above a shelf, the clear height up to what is over it. */
    readonly clear?: Measure | undefined;
    /** Who it runs up to on each side, in words for `why`: `Left.inner`, `Floor.lower`, `the floor`. */
    readonly bounds: Readonly<Record<FaceName, Bound | undefined>>;
    /** Outer to inner (side), left to right, back to front, bottom to top. One for a plain board. */
    readonly layers: readonly Layer[];
    /** In the order of work. */
    readonly edges: readonly Edge[];
    /** The curved line that its front follows along the edge, where it has one: the path of a curve model. */
    readonly frontCurve?: Path;
    /** How its front edge meets a curved line across its thickness, where there is one. */
    readonly front?: FrontEdge;
    /** Declaration id of how its surfaces are finished; not there where the text does not say it. */
    readonly finish?: string;
    /** Whether it is a board that is bent to its front curve; its length is then the way round its front face. */
    readonly bent?: true;
    /** The faces that the text places past something: they may stand out of the case. */
    readonly past: readonly FaceName[];
    readonly joints: readonly number[];
    readonly pieces: readonly string[];
    readonly openings: readonly Path[];
    readonly span: Span;
    readonly nameSpan: Span;
    readonly doc?: string;
    readonly notes: readonly string[];
}

/**
 * A front edge under a line that changes across the thickness of its part: of a shelf under a curve over the height, of a side under one
 * over the width. Where the front also follows a curve along its edge, depths are those of the deepest place.
 */
export interface FrontEdge {
    /** Square to the faces at the shallower of them, or bevelled so that both faces reach the line. */
    readonly form: 'square' | 'bevelled';
    /** From the back of the part to the line, at its lower or left face and at its upper or right one. */
    readonly low: Measure;
    readonly high: Measure;
    /** How far the line is off square to the faces, measured fore and aft: the tilt of a saw that cuts it. Above zero where the high face is the deeper. */
    readonly bevel: Measure;
    /** Of an edge that also follows a line along its length, and so runs aslant to the bevel in places: how steep it is square to the edge. */
    readonly along?: { readonly least: BevelPlace; readonly greatest: BevelPlace };
}

/** How far a bevelled edge is off square to the faces, measured square to the edge: what a tilted saw or a chamfer bit cuts. */
export interface BevelPlace {
    /** Without a sign. */
    readonly degrees: number;
    /** From the left or lower end of the part, in millimetres. */
    readonly at: number;
}

export interface Bound {
    /** `Left.inner`, `the room's top` */
    readonly name: string;
    readonly part?: Path;
    /** True where the part would have gone on but for an earlier one. */
    readonly stopped: boolean;
}

export interface Layer {
    readonly name?: string;
    /** Declaration id of the material. */
    readonly material: string | undefined;
    readonly thickness: Measure | undefined;
    readonly grain: Grain;
    readonly size: Size;
    /** Where it lies, in millimetres, as for the box of its part; it may stop short of the part's own box. */
    readonly box: Box | undefined;
    readonly span: Span;
}
/** Along the length, along the width, or none (fibreboard, glass). */
export type Grain = 'length' | 'width' | 'none';

export type EdgeName = 'front' | 'back' | 'left' | 'right' | 'top' | 'bottom';

/** Words with lengths among them, which each document prints in its own style. */
export type Words = readonly (string | Measure)[];

/** One treatment of one edge; an edge may have several, in the order of work. */
export interface Edge {
    readonly name: EdgeName;
    /** Name of the edging, or the steps in words where it was written in place. */
    readonly recipe: string;
    readonly steps: readonly EdgeStep[];
    /** What bands and nosings take off the core here. */
    readonly takesOff: Measure | undefined;
    readonly span: Span;
}
export interface EdgeStep {
    readonly does: 'band' | 'nosing' | 'rabbet' | 'groove' | 'round' | 'chamfer' | 'bevel';
    /** band, nosing: thickness; round: radius; chamfer: width; rabbet, groove: depth into the board's thickness. */
    readonly amount: Measure | undefined;
    /** band, nosing: height over the edge; rabbet, groove: width of the cut. */
    readonly width?: Measure | undefined;
    readonly proud?: Measure | undefined;
    readonly material?: string;
    /** The part that a rabbet or groove is for. */
    readonly for?: Path;
    readonly span: Span;
}

/** A curve of a case as it is built. */
export interface CurveModel {
    /** `PotteryCase.Sweep`; of a line that follows from it `PotteryCase.Sweep, 1in outside` */
    readonly path: Path;
    /** Of the curve as it is declared. */
    readonly name: string;
    /** The declared curve that this line follows from, and how: `1in outside`, `at Tier[1]` where a second curve moves it forward there. */
    readonly follows?: { readonly path: Path; readonly how: string };
    readonly assembly: Path;
    /** The abscissa: height runs along z, width along x; the ordinate is depth. Millimetres from the corner of its case. */
    readonly over: 'height' | 'width';
    /** The finished line; undefined where it could not be made, which has been reported. */
    readonly curve: Curve | undefined;
    /** Its pieces, by rising abscissa, each with the words that say it; of a line that follows from another those of that one. */
    readonly pieces: readonly CurvePiece[];
    /** How each piece goes on into the next: one fewer than the pieces. */
    readonly joints: readonly CurveJoint[];
    /** From the least to the greatest abscissa at which something asks its depth. */
    readonly used: Interval | undefined;
    /** Who follows it. */
    readonly parts: readonly Path[];
    /** What it is drawn with: its own, or else the shop's. */
    readonly batten?: Batten;
    readonly span: Span;
    readonly nameSpan: Span;
}

/** One piece of a curve, from one `to` to the next. */
export interface CurvePiece {
    readonly kind: CurveKind;
    /** Over which abscissas it runs. */
    readonly over: Interval;
    readonly span: Span;
    /** Of a line through points, where each of those is said, by rising abscissa. */
    readonly points?: readonly Span[];
}

/** What is cut from stock. */
export interface Piece {
    readonly id: string;
    readonly part: Path;
    readonly role: 'core' | 'layer' | 'band' | 'nosing' | 'solid';
    readonly name: string;
    readonly material: string | undefined;
    readonly quantity: number;
    readonly hand?: Hand;
    readonly grain: Grain;
    readonly finished: Size;
    readonly core: Size;
    readonly rough: Size;
    /** Edges and treatments in words, in the order of work. */
    readonly edges: readonly string[];
    readonly notes: readonly Words[];
    /** Pieces with one key are truly identical: material, all sizes exactly, hand, edges, grain, shape. */
    readonly alike: string;
}

export interface Opening {
    readonly path: Path;
    readonly name: string;
    /** In millimetres from the corner of its outermost case; undefined while a side of it is unknown. */
    readonly box: Box | undefined;
    readonly width: Measure | undefined;
    readonly height: Measure | undefined;
    readonly depth: Measure | undefined;
    readonly bounds: Readonly<Record<FaceName, Bound | undefined>>;
    readonly span: Span;
}

export interface Joint {
    /** The part that enters, and the part that receives. */
    readonly enters: Path;
    readonly receives: Path;
    readonly recipe: string;
    readonly steps: readonly JointStep[];
    /** What it adds to (or, a gap, takes off) the entering part at that end. */
    readonly adds: Measure | undefined;
    readonly onSite: boolean;
    readonly touching: boolean;
    readonly span: Span;
}
export interface JointStep {
    readonly does: string;
    readonly amount?: Measure | undefined;
    readonly size?: string;
    readonly count?: number;
    readonly spacing?: Measure | undefined;
    readonly inset?: Measure | undefined;
    /** The first of `3.5mm x 25mm`, of a screw, a dowel or a bolt. */
    readonly diameter?: Measure;
    /** Lengths by their words: those of its value (`1/4in wide 3/8in deep`) and of its options. `thick` may be a share of the stock. */
    readonly lengths?: Readonly<Partial<Record<JointLength, Measure>>>;
    /** The face of the entering part in which it is cut. */
    readonly face?: FaceName;
    /** Declaration id of what it rests on, and how many more holes there are for that. */
    readonly on?: string;
    readonly up?: number;
    readonly down?: number;
    readonly span: Span;
}
/** What is done to the surfaces of a part, in the order of work. */
export interface Finish {
    readonly name: string;
    readonly steps: readonly FinishStep[];
    readonly span: Span;
}
export type FinishStep =
    | { readonly does: 'sand'; readonly grit?: string; readonly span: Span }
    /** So many coats of a coating, by its declaration id. */
    | { readonly does: 'coat'; readonly coating: string; readonly count: number; readonly span: Span };

export type JointLength = 'wide' | 'deep' | 'thick' | 'long' | 'pitch' | 'into' | 'bore' | 'seat' | 'pilot' | 'head' | 'hole';

/** `hold Teapot on Tier[1]`, `load 25 lb/ft2 on Floor`: on each of the parts. */
export type CarriedLoad =
    /** So many of the goods, or as many as fit. */
    | {
          readonly is: 'goods';
          readonly goods: string;
          readonly count: number | undefined;
          readonly parts: readonly Path[];
          readonly span: Span;
      }
    /** A mass or a force, by itself, by length or by area; undefined where it could not be computed. */
    | { readonly is: 'load'; readonly amount: Measure | undefined; readonly parts: readonly Path[]; readonly span: Span };

/** Holds, fails, or holds as drawn but not when everything is at its worst. */
export interface Requirement {
    readonly answer: 'holds' | 'fails' | 'depends' | 'unknown';
    readonly left: Measure | undefined;
    readonly right: Measure | undefined;
    readonly operator: string;
    readonly because?: string;
    readonly span: Span;
    readonly assembly?: Path;
}

export interface Allowance {
    /** Code or name of the rule. */
    readonly rule: string;
    readonly parts: readonly Path[];
    /** Cases that are named: it holds for each as a whole and for all that is in it. */
    readonly assemblies: readonly Path[];
    /** True where the text names no part: it holds for all of its file. */
    readonly everywhere: boolean;
    /** The case that it stands in; not there where it stands by itself in its file. */
    readonly within?: Path;
    readonly because?: string;
    readonly span: Span;
    readonly ruleSpan: Span;
}

/** An error of the text that stopped a value from being computed. `code` is that of the rule that explains it. */
export interface Problem {
    readonly code: string;
    readonly span: Span;
    readonly message: string;
    readonly hint?: string;
    readonly found?: string;
    readonly needed?: string;
    readonly related: readonly { readonly span: Span; readonly message: string }[];
    /** A change to the text that mends it. */
    readonly fix?: TextEdit;
    readonly part?: Path;
}
export interface TextEdit {
    readonly title: string;
    readonly span: Span;
    readonly text: string;
    /** What has to be changed with it, elsewhere. */
    readonly also?: readonly { readonly span: Span; readonly text: string }[];
    readonly safe: boolean;
}
