/**
 * A drawing before any file format: lines and texts in millimetres at full size, x to the right, y up. Circular arcs stay arcs;
 * other curves come as arcs that stay within `drawingTolerance` of them.
 */
import type { ArcRun, Point } from '../geometry/index.js';

/** What a line means; a format gives each its own layer. */
export type LineRole = 'finished' | 'core' | 'joint' | 'centre' | 'dimension' | 'grain' | 'tearOut' | 'curve' | 'comb' | 'envelope';

/** Runs end to end. */
export interface DrawnLine {
    readonly role: LineRole;
    readonly runs: readonly ArcRun[];
    readonly closed: boolean;
    /** Of a line that belongs to the legend, and not to what is drawn at full size. */
    readonly isLegend?: true;
}

/** Where a text is. */
export interface TextPlace {
    /** The left end, middle or right end of its base line. */
    readonly at: Point;
    readonly anchor: 'start' | 'middle' | 'end';
}

export interface DrawnText extends TextPlace {
    readonly text: string;
    /** Height of its capitals. */
    readonly height: number;
    /** Whether it is read from the right, turned a quarter to the left. */
    readonly turned: boolean;
    readonly isLegend?: true;
    /** Where it may stand as well, where a sheet of paper has no room for it: the better place first. */
    readonly elsewhere?: readonly TextPlace[];
    /** The line that it is about and runs along: where a drawing is cut into sheets, each that the line crosses has the text. */
    readonly names?: { readonly from: Point; readonly to: Point };
}

/** What is cut to a drawing at full size, and from where it is measured. */
export interface Cut {
    /** What has to be printed at full size: what lies straight is set out with a square. */
    readonly edge: readonly ArcRun[];
    /** What lies where x and y are 0: `the back edge`. */
    readonly from: { readonly x: string; readonly y: string };
    /** Whether it lies below where y is 0. */
    readonly isBelow: boolean;
}

export interface Drawing {
    readonly title: string;
    readonly lines: readonly DrawnLine[];
    readonly texts: readonly DrawnText[];
    readonly cut?: Cut;
}

/** How far an arc of a drawing may stray from the curve that it stands for, in millimetres: finer than any tool of a workshop. */
export const drawingTolerance = 0.001;

/** Width of a line, and its dashes and gaps in turn (none: continuous). */
export interface LineStyle {
    /** What the line is called: `FINISHED_LINE`. */
    readonly layer: string;
    readonly width: number;
    readonly dashes: readonly number[];
}

/**
 * Line types of ISO 128, wide to narrow 2 : 1 (from memory): wide continuous for the edge that is cut; narrow long dash double dot for the
 * finished outline around a blank; narrow continuous for positions and dimensions; narrow long dash dot for centre lines;
 * the narrowest for hatching. On a fairness page
 * the line itself is wide, and what measures its bend is narrow.
 */
export const lineStyles: Readonly<Record<LineRole, LineStyle>> = {
    finished: { layer: 'FINISHED_LINE', width: 0.25, dashes: [12, 2, 0.5, 2, 0.5, 2] },
    core: { layer: 'CORE_LINE', width: 0.5, dashes: [] },
    joint: { layer: 'JOINT_POSITION', width: 0.25, dashes: [] },
    centre: { layer: 'CENTRE_LINE', width: 0.18, dashes: [12, 2, 0.5, 2] },
    dimension: { layer: 'DIMENSION', width: 0.18, dashes: [] },
    grain: { layer: 'GRAIN', width: 0.25, dashes: [] },
    tearOut: { layer: 'TEAR_OUT', width: 0.13, dashes: [] },
    curve: { layer: 'CURVE', width: 0.5, dashes: [] },
    comb: { layer: 'CURVATURE_COMB', width: 0.13, dashes: [] },
    envelope: { layer: 'CURVATURE_ENVELOPE', width: 0.25, dashes: [] },
};

/** The layer of texts. */
export const textLayer = 'TEXT';
