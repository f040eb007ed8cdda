/** Laps, mitres and their splines: both parts are cut where they lie in one another. */
import type { Axis } from '../casework/index.js';
import { type Box, boxOverlap, cross, type Point, point, subtract, tolerance } from '../geometry/index.js';
import { lengthOf, sideAt, spanOf, thirdAxis, wayOf, withSpan } from './axes.js';
import type { Bench, StepMaker } from './bench.js';
import type { FeatureSolid } from './feature.js';
import { millimetres } from './layout.js';

/** Each loses a half of its thickness: the entering part in its `face`, or at its back or underside where nothing is said. */
export const makeLap: StepMaker = (bench, step, cause) => {
    const { enters, receives } = bench;
    const { thickness } = enters.directions;
    const common = boxOverlap(enters.box, receives.box);
    if (!common || receives.directions.thickness !== thickness) return 'halves two boards that lie in one plane and in one another';
    const way = step.face && wayOf(step.face).axis === thickness ? wayOf(step.face).way : -1;
    const { from, to } = spanOf(common, thickness);
    const deep = millimetres(step.lengths?.deep) ?? (to - from) / 2;
    const middle = way < 0 ? from + deep : to - deep;
    const [low, high] = [
        { from, to: middle },
        { from: middle, to },
    ];
    const notch = (part: string, side: -1 | 1): void => {
        const box = withSpan(common, thickness, side < 0 ? low : high);
        const depth = lengthOf(spanOf(box, thickness));
        bench.cut({ does: 'notch', part, side: sideAt(thickness, side), cause, solid: { is: 'box', box }, depth });
    };
    notch(enters.path, way);
    notch(receives.path, way < 0 ? 1 : -1);
    return undefined;
};

/** The corner in which two boards lie in one another: seen along it, with one board's way to the right and the other's up. */
interface Corner {
    readonly common: Box;
    /** Along which way it is seen, along which the entering part goes in, and along which the receiving one comes. */
    readonly seen: Axis;
    readonly in: Axis;
    readonly up: Axis;
    readonly inner: Point;
    readonly outer: Point;
    /** The corner that stays with the entering part, and the one that stays with the receiving one. */
    readonly ofEntering: Point;
    readonly ofReceiving: Point;
    readonly end: -1 | 1;
}

function cornerOf({ enters, receives, contact }: Bench): Corner | undefined {
    const [axis, up] = [contact.axis, enters.directions.thickness];
    const common = boxOverlap(enters.box, receives.box);
    if (!common || receives.directions.thickness !== axis || up === axis) return undefined;
    const flush = (one: number, other: number) => Math.abs(one - other) <= tolerance.fit;
    const isHigh = flush(enters.box.most[up], receives.box.most[up]);
    if (!isHigh && !flush(enters.box.least[up], receives.box.least[up])) return undefined;
    const isRight = wayOf(contact.sideOfEntering).way > 0;
    const [a, b] = [spanOf(common, axis), spanOf(common, up)];
    const [innerA, outerA] = isRight ? [a.from, a.to] : [a.to, a.from];
    const [innerB, outerB] = isHigh ? [b.from, b.to] : [b.to, b.from];
    return {
        common,
        seen: thirdAxis(axis, up),
        in: axis,
        up,
        inner: point(innerA, innerB),
        outer: point(outerA, outerB),
        ofEntering: point(innerA, outerB),
        ofReceiving: point(outerA, innerB),
        end: isHigh ? 1 : -1,
    };
}

const noCorner = 'needs two boards that end at one corner, each with its face outwards';

export const makeMitre: StepMaker = (bench, _step, cause) => {
    const corner = cornerOf(bench);
    if (!corner) return noCorner;
    const { enters, receives, contact } = bench;
    const { inner, outer, ofEntering, ofReceiving, common } = corner;
    const solid = (lost: Point) => prism(corner, [inner, lost, outer]);
    const depth = lengthOf(spanOf(common, corner.in));
    bench.cut({ does: 'mitre', part: enters.path, side: contact.sideOfEntering, cause, solid: solid(ofReceiving), depth });
    bench.cut({ does: 'mitre', part: receives.path, side: sideAt(corner.up, corner.end), cause, solid: solid(ofEntering), depth });
    return undefined;
};

/** A slot in each mitre, in its middle and square to it, half as deep as the spline is wide. */
export const makeSpline: StepMaker = (bench, step, cause) => {
    const corner = cornerOf(bench);
    if (!corner) return noCorner;
    const [thick, wide] = [millimetres(step.lengths?.thick), millimetres(step.lengths?.wide)];
    if (thick === undefined || wide === undefined) return 'does not say how `thick` and how `wide` the spline is';
    const { inner, outer, ofEntering, ofReceiving } = corner;
    const long = Math.hypot(outer.x - inner.x, outer.y - inner.y);
    const [ux, uy] = [(outer.x - inner.x) / long, (outer.y - inner.y) / long];
    const middle = point((inner.x + outer.x) / 2, (inner.y + outer.y) / 2);
    const slot = (towards: Point): FeatureSolid => {
        const sign = cross(point(ux, uy), subtract(towards, middle)) < 0 ? -1 : 1;
        const at = (share: number, deep: number) =>
            point(middle.x + share * thick * ux - sign * deep * uy, middle.y + share * thick * uy + sign * deep * ux);
        return prism(corner, [at(-0.5, 0), at(0.5, 0), at(0.5, wide / 2), at(-0.5, wide / 2)]);
    };
    const { enters, receives, contact } = bench;
    const depth = wide / 2;
    bench.cut({ does: 'spline slot', part: enters.path, side: contact.sideOfEntering, cause, solid: slot(ofEntering), depth });
    bench.cut({ does: 'spline slot', part: receives.path, side: sideAt(corner.up, corner.end), cause, solid: slot(ofReceiving), depth });
    return undefined;
};

/** A polygon in (in, up) drawn out along the corner, with its corners in the order that a prism has them. */
function prism({ common, seen, in: right, up }: Corner, corners: readonly Point[]): FeatureSolid {
    const isCyclic = seen + right + up === 'xyz' || seen + right + up === 'yzx' || seen + right + up === 'zxy';
    const section = corners.map(({ x, y }) => (isCyclic ? point(x, y) : point(y, x)));
    const area = section.reduce((sum, one, index) => sum + cross(one, section[(index + 1) % section.length] ?? one), 0);
    return { is: 'prism', along: seen, over: spanOf(common, seen), section: area < 0 ? section.toReversed() : section };
}
