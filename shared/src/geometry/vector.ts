import { tolerance } from './tolerance.js';

/** A point or a displacement in a plane, in millimetres. */
export interface Point {
    readonly x: number;
    readonly y: number;
}

/** A point or a displacement in space, in millimetres. */
export interface SpacePoint {
    readonly x: number;
    readonly y: number;
    readonly z: number;
}

/** The point with the given coordinates. */
export function point(x: number, y: number): Point {
    return { x, y };
}

/** The sum of two displacements, or a point displaced. */
export function add(a: Point, b: Point): Point {
    return { x: a.x + b.x, y: a.y + b.y };
}

/** The displacement from `b` to `a`. */
export function subtract(a: Point, b: Point): Point {
    return { x: a.x - b.x, y: a.y - b.y };
}

/** A displacement so many times as long; a negative factor turns it round. */
export function scale(a: Point, factor: number): Point {
    return { x: a.x * factor, y: a.y * factor };
}

/** The scalar product: the product of the lengths and the cosine of the angle between. */
export function dot(a: Point, b: Point): number {
    return a.x * b.x + a.y * b.y;
}

/** The z component of the cross product: positive when `b` lies counter-clockwise of `a`. */
export function cross(a: Point, b: Point): number {
    return a.x * b.y - a.y * b.x;
}

/** Length of a displacement. */
export function magnitude(a: Point): number {
    return Math.hypot(a.x, a.y);
}

/** Distance between two points. */
export function distance(a: Point, b: Point): number {
    return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The point at the given share of the way from `a` to `b`; share 0 gives `a` and share 1 gives `b` exactly. */
export function between(a: Point, b: Point, share: number): Point {
    return { x: (1 - share) * a.x + share * b.x, y: (1 - share) * a.y + share * b.y };
}

/** The unit vector at an angle counter-clockwise from the x axis. */
export function direction(angle: number): Point {
    return { x: Math.cos(angle), y: Math.sin(angle) };
}

/** The angle of a vector, counter-clockwise from the x axis, in (-pi, pi]. */
export function angleOf(a: Point): number {
    return Math.atan2(a.y, a.x);
}

/** The angle turned through from `a` to `b`, counter-clockwise positive, in (-pi, pi]. */
export function turnBetween(a: Point, b: Point): number {
    return Math.atan2(cross(a, b), dot(a, b));
}

/** Whether both coordinates are numbers that the geometry can work with. */
export function isMeasurable(a: Point): boolean {
    return isMeasurableLength(a.x) && isMeasurableLength(a.y);
}

/** Whether a length is a number no greater than the geometry can work with; NaN and the infinities are not. */
export function isMeasurableLength(length: number): boolean {
    return Math.abs(length) <= tolerance.greatestLength;
}
